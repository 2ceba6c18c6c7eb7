// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/noticestrip.h"

#include "ui/look/controls.h"
#include "ui/table/draw.h"

#include <QPainter>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

/// The largest type in which every row fits, as far as the strip's height allows; 11 at the least.
double sizeFor(const QStringList& rows, double room, const Look& look) {
    double size = rows.size() > 1 ? 12 : 14;
    for (; size > 11; --size) {
        const QFont font = look.font(size, QFont::DemiBold);
        const bool fits =
            std::ranges::all_of(rows, [&](const QString& row) { return draw::widthOf(row, font) <= room; });
        if (fits)
            break;
    }
    return size;
}

} // namespace

NoticeStrip::NoticeStrip(QWidget* parent) : QWidget(parent) {
    setObjectName(u"noticeStrip"_s);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void NoticeStrip::setLook(const Look& look) {
    m_look = look;
    updateGeometry();
    update();
}

void NoticeStrip::setView(const StripView& view) {
    if (view == m_view)
        return;
    m_view = view;
    QStringList all = view.points + view.quietPoints + view.told;
    if (!view.refused.isEmpty())
        all.prepend(view.refused);
    setAccessibleName(all.isEmpty() ? view.quiet : all.join(u' '));
    setToolTip(all.isEmpty() ? QString() : plainTip(all.join(u'\n')));
    update();
}

QSize NoticeStrip::sizeHint() const {
    return {m_look.whole(522), m_look.whole(34)};
}

void NoticeStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool refused = !m_view.refused.isEmpty();
    const bool told = !m_view.told.isEmpty();
    const QColor ground = refused ? m_look.alarm : told ? amber() : m_look.colours.panel;
    const QColor ink = refused ? m_look.onAlarm : told ? onAmber() : m_look.colours.secondary;
    painter.setPen(QPen(refused || told ? ink : m_look.colours.rule, 1));
    painter.setBrush(ground);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), m_look.px(7), m_look.px(7));
    const double right = paintPoints(painter);
    if (refused || told) {
        paintSign(painter, ink, ground);
        paintRows(painter, refused ? QStringList{m_view.refused} : m_view.told, ink, m_look.px(34), right);
    } else {
        paintRows(painter, {m_view.quiet}, ink, m_look.px(12), right);
    }
}

double NoticeStrip::paintPoints(QPainter& painter) const {
    double right = width() - m_look.px(6);
    for (const QString& point : m_view.points)
        right = paintPoint(painter, point, true, right);
    for (const QString& point : m_view.quietPoints)
        right = paintPoint(painter, point, false, right);
    return right;
}

double NoticeStrip::paintPoint(QPainter& painter, const QString& point, bool told, double right) const {
    const QFont font = m_look.font(13, told ? QFont::Bold : QFont::DemiBold);
    const double room = draw::widthOf(point, font) + m_look.px(20);
    const QRectF pill(right - room, height() / 2.0 - m_look.px(12), room, m_look.px(24));
    const QColor ink = told ? onAmber() : m_look.colours.text;
    painter.setPen(QPen(told ? ink : m_look.colours.edge, m_look.px(told ? 1.5 : 1)));
    painter.setBrush(told ? amber() : m_look.colours.panel);
    painter.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2);
    draw::text(painter, pill.center(), point, font, ink, draw::From::Centre);
    return pill.left() - m_look.px(6);
}

void NoticeStrip::paintSign(QPainter& painter, const QColor& ground, const QColor& ink) const {
    const QPointF centre(m_look.px(18), height() / 2.0);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    painter.drawEllipse(centre, m_look.px(9), m_look.px(9));
    draw::text(painter, centre, u"!"_s, m_look.font(14, QFont::Bold), ink, draw::From::Centre);
}

void NoticeStrip::paintRows(QPainter& painter, const QStringList& rows, const QColor& ink, double left,
                            double right) const {
    // A sentence too long for one line takes two.
    const QFont font = m_look.font(sizeFor(rows, right - left, m_look), QFont::DemiBold);
    if (rows.size() == 1 && draw::widthOf(rows.first(), font) > right - left) {
        painter.setClipRect(rect());
        const double top = height() / 2.0 - QFontMetricsF(font).height();
        draw::paragraph(painter, QRectF(left, top, right - left, height()), rows.first(), font, ink);
        painter.setClipping(false);
        return;
    }
    const double pitch = m_look.px(15);
    double y = height() / 2.0 - pitch * static_cast<double>(rows.size() - 1) / 2;
    for (const QString& row : rows) {
        draw::text(painter, {left, y}, row, font, ink, draw::From::Left, right - left);
        y += pitch;
    }
}

} // namespace setfolio
