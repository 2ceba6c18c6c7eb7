// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/topbar.h"

#include "ui/table/draw.h"
#include "ui/table/keybutton.h"

#include <QHBoxLayout>
#include <QMenuBar>
#include <QPainter>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

KeyButton* makeToggle(TableCommand command, QWidget* parent) {
    auto* button = new KeyButton(command, parent);
    button->setCheckable(true);
    return button;
}

KeyButton* makeSign(TableCommand command, const QString& sign, QWidget* parent) {
    auto* button = new KeyButton(command, parent);
    button->setSign(sign);
    button->setToolTip(nameOf(command));
    return button;
}

} // namespace

TopBar::TopBar(QWidget* parent) : QWidget(parent) {
    setObjectName(u"topBar"_s);
    m_menus = new QMenuBar(this);
    m_menus->setNativeMenuBar(false);
    m_menus->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Expanding);
    m_liveBand = makeToggle(TableCommand::LiveBand, this);
    m_pageWidth = makeToggle(TableCommand::PageWidth, this);
    m_wholePage = makeToggle(TableCommand::WholePage, this);
    m_smaller = makeSign(TableCommand::Smaller, u"−"_s, this);
    m_larger = makeSign(TableCommand::Larger, u"+"_s, this);
    m_row = new QHBoxLayout(this);
    m_row->addWidget(m_menus);
    for (KeyButton* button : sights())
        m_row->addWidget(button);
    m_row->addStretch(1);
    setSight(Sight::LiveBand);
}

void TopBar::setLook(const Look& look) {
    m_look = look;
    setFixedHeight(look.whole(46));
    m_row->setContentsMargins(look.whole(6), 1, look.whole(10), 1);
    m_row->setSpacing(look.whole(6));
    m_menus->setFont(look.font(14));
    m_menus->setStyleSheet(u"QMenuBar { background: %1; color: %2; }"
                           u"QMenuBar::item { padding: %3px %4px %9px; background: transparent; }"
                           u"QMenuBar::item:selected, QMenuBar::item:pressed { background: %5; }"
                           u"QMenu { background: %5; color: %2; border: 1px solid %6; }"
                           u"QMenu::item { padding: %11px 24px; min-height: %12px; }"
                           u"QMenu::item:selected { background: %7; color: %8; }"
                           u"QMenu::item:disabled { color: %10; }"_s.arg(
                               look.colours.bar.name(), look.colours.text.name(), QString::number(look.whole(14)),
                               QString::number(look.whole(11)), look.colours.panel.name(), look.colours.edge.name(),
                               amber().name(), onAmber().name(), QString::number(look.whole(13)),
                               look.colours.secondary.name(), QString::number(look.whole(10)),
                               QString::number(look.whole(24))));
    const std::pair<KeyButton*, int> widths[] = {
        {m_liveBand, 122}, {m_pageWidth, 130}, {m_wholePage, 134}, {m_smaller, 44}, {m_larger, 44}};
    for (const auto& [button, width] : widths) {
        button->setVisible(!look.stacked); // there is no room for them; the View menu has them all
        button->setLook(look);
        button->setFixedSize(look.whole(width), look.whole(44));
    }
    update();
}

void TopBar::setTitle(const QString& title, const QString& shorter) {
    m_titles = {title, shorter};
    update();
}

void TopBar::setSaved(const QString& words, bool good) {
    if (m_saved == words && m_good == good)
        return;
    m_saved = words;
    m_good = good;
    setAccessibleName(words);
    update();
}

void TopBar::setSight(Sight sight) {
    m_liveBand->setChecked(sight == Sight::LiveBand);
    m_pageWidth->setChecked(sight == Sight::PageWidth);
    m_wholePage->setChecked(sight == Sight::WholePage);
}

QList<KeyButton*> TopBar::sights() const {
    return {m_liveBand, m_pageWidth, m_wholePage, m_smaller, m_larger};
}

void TopBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), m_look.colours.bar);
    const double right = paintSaved(painter) - m_look.px(12);
    const QWidget* last = m_larger->isHidden() ? static_cast<QWidget*>(m_menus) : m_larger;
    const double left = last->geometry().right() + m_look.px(12);
    const QFont font = m_look.font(13, QFont::DemiBold);
    const auto fitting = std::ranges::find_if(
        m_titles, [&](const QString& title) { return draw::widthOf(title, font) <= right - left; });
    if (fitting != m_titles.end()) // the desktop shows the whole of it over the window
        draw::text(painter, {(left + right) / 2, height() / 2.0}, *fitting, font, m_look.colours.text,
                   draw::From::Centre);
}

double TopBar::paintSaved(QPainter& painter) const {
    const QFont font = m_look.font(13, m_good ? QFont::Medium : QFont::Bold);
    const double right = width() - m_look.px(14);
    const double middle = height() / 2.0;
    const double used = draw::text(painter, {right, middle}, m_saved, font,
                                   m_good ? m_look.colours.secondary : m_look.colours.problem, draw::From::Right);
    const QPointF dot(right - used - m_look.px(12), middle);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_good ? m_look.saved : m_look.alarm);
    if (m_good)
        painter.drawEllipse(dot, m_look.px(4), m_look.px(4));
    else
        painter.drawRect(QRectF(dot.x() - m_look.px(5), dot.y() - m_look.px(5), m_look.px(10), m_look.px(10)));
    return dot.x();
}

} // namespace setfolio
