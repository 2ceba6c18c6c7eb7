// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/twolinebutton.h"

#include "core/record/shown.h"
#include "ui/look/appearance.h"
#include "ui/look/colours.h"
#include "ui/look/plate.h"

#include <QPainter>
#include <QStyleOptionButton>
#include <QStylePainter>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int margin = 14;

} // namespace

TwoLineButton::TwoLineButton(const QString& title, const QString& detail, QWidget* parent)
    : QPushButton(parent),
      m_title(asShown(title)),
      m_detail(asShown(detail)) {
    setAutoDefault(false);
    setProperty("twoLine", true); // its height is the style's
    describe();
}

void TwoLineButton::setTitle(const QString& title) {
    m_title = asShown(title);
    describe();
}

void TwoLineButton::setDetail(const QString& detail) {
    m_detail = asShown(detail);
    describe();
}

void TwoLineButton::setBadge(const QString& badge) {
    m_badge = asShown(badge);
    describe();
}

QSize TwoLineButton::sizeHint() const {
    return {scaled(200), scaled(60)};
}

void TwoLineButton::paintEvent(QPaintEvent*) {
    QStylePainter painter(this);
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);
    const Colours& colours = coloursOf(themeOf(palette()));
    const bool primary = property("primary").toBool();
    const QColor strong = primary ? onAmber() : isChecked() ? colours.ground : colours.text;
    const QColor quiet = primary || isChecked() ? strong : colours.secondary;
    const QFont badgeFont = windowFont(12, QFont::Bold);
    const int badge = m_badge.isEmpty() ? 0 : QFontMetrics(badgeFont).horizontalAdvance(m_badge) + 8;
    const QRect whole = rect().adjusted(margin, 8, -margin, -8);
    const auto line = [&](const QString& words, const QFont& font, const QColor& colour, int room,
                          Qt::Alignment place) {
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(whole, static_cast<int>(place | Qt::AlignLeft),
                         QFontMetrics(font).elidedText(words, Qt::ElideRight, room));
    };
    line(m_title, windowFont(15, QFont::DemiBold), strong, whole.width() - badge,
         m_detail.isEmpty() ? Qt::AlignVCenter : Qt::AlignTop);
    line(m_detail, windowFont(13), quiet, whole.width(), Qt::AlignBottom);
    painter.setFont(badgeFont);
    painter.setPen(isChecked() ? strong : colours.problem);
    painter.drawText(rect().adjusted(0, 8, -margin, -8), Qt::AlignRight | Qt::AlignTop, m_badge);
}

void TwoLineButton::describe() {
    setAccessibleName(m_title);
    setAccessibleDescription(m_badge.isEmpty() ? m_detail : u"%1. %2"_s.arg(m_detail, m_badge));
    update();
}

} // namespace setfolio
