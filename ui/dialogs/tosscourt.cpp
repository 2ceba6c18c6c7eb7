// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/tosscourt.h"

#include "core/record/shown.h"
#include "ui/look/appearance.h"
#include "ui/look/colours.h"
#include "ui/look/plate.h"

#include <QMouseEvent>
#include <QPainter>

namespace setfolio {

namespace {

constexpr double outside = 56; ///< room for the server behind each end line, in pixels

} // namespace

TossCourt::TossCourt(const PerTeam<TeamName>& teams, QWidget* parent) : QWidget(parent), m_teams(teams) {
    for (const Team team : bothTeams)
        m_teams[team] = {asShown(teams[team].name), asShown(teams[team].code), teams[team].colour};
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    describe();
}

void TossCourt::setLeft(std::optional<Team> left) {
    m_left = left;
    describe();
}

void TossCourt::setServesFirst(std::optional<Team> serves) {
    m_serves = serves;
    describe();
}

QSize TossCourt::sizeHint() const {
    return {620, scaled(190)};
}

void TossCourt::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintLines(painter);
    paintHalf(painter, Side::Left);
    paintHalf(painter, Side::Right);
}

void TossCourt::mousePressEvent(QMouseEvent* event) {
    Q_EMIT halfClicked(event->position().x() < width() / 2.0 ? Side::Left : Side::Right);
}

std::optional<Team> TossCourt::teamOn(Side side) const {
    if (!m_left)
        return std::nullopt;
    return side == Side::Left ? *m_left : opponentsOf(*m_left);
}

QRectF TossCourt::court() const {
    const double tall = height() - scaled(24);
    const double wide = std::min(2 * tall + 40, width() - 2 * outside);
    return {(width() - wide) / 2, 4, wide, tall};
}

void TossCourt::paintLines(QPainter& painter) const {
    const Colours& colours = coloursOf(themeOf(palette()));
    const QRectF all = court();
    painter.setPen(QPen(colours.courtLine, 2));
    painter.setBrush(colours.court);
    painter.drawRect(all);
    const double attack = all.width() / 6; // the attack line is 3 m from the net, a half is 9 m long
    painter.setPen(QPen(colours.courtLine, 1));
    for (const double x : {all.center().x() - attack, all.center().x() + attack})
        painter.drawLine(QPointF(x, all.top()), QPointF(x, all.bottom()));
    painter.setPen(QPen(colours.courtLine, 4, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(all.center().x(), 0), QPointF(all.center().x(), all.bottom() + 4));
    painter.setPen(colours.secondary);
    paintCentred(painter, QRectF(all.left(), all.bottom() + 4, all.width(), scaled(16)),
                 windowFont(12, QFont::DemiBold), tr("your table is on this side"));
}

void TossCourt::paintHalf(QPainter& painter, Side side) const {
    const Colours& colours = coloursOf(themeOf(palette()));
    const bool left = side == Side::Left;
    QRectF half = court();
    left ? half.setRight(half.center().x()) : half.setLeft(half.center().x());
    const auto team = teamOn(side);
    if (!team) {
        painter.setPen(colours.secondary);
        paintCentred(painter, half, windowFont(30, QFont::Bold), QStringLiteral("?"));
        return;
    }
    const QPointF middle = half.center();
    paintPlate(painter, QRectF(middle.x() - scaled(56), middle.y() - scaled(26), scaled(112), scaled(52)), *team,
               m_teams[*team].code, scaled(24));
    if (m_serves != team)
        return;
    // the server stands behind the end line, at the right of her own half
    const double x = left ? half.left() - 28 : half.right() + 28;
    const double y = left ? half.bottom() - 30 : half.top() + 30;
    painter.setPen(QPen(onAmber(), 2));
    painter.setBrush(amber());
    painter.drawEllipse(QPointF(x, y), 19, 19);
    painter.setPen(onAmber());
    paintCentred(painter, QRectF(x - 19, y - 19, 38, 38), windowFont(16, QFont::Bold), QStringLiteral("1"));
}

void TossCourt::describe() {
    if (!m_left)
        setAccessibleName(tr("Court: the sides are not chosen yet"));
    else if (!m_serves)
        setAccessibleName(
            tr("Court: %1 left, %2 right").arg(m_teams[*m_left].name, m_teams[opponentsOf(*m_left)].name));
    else
        setAccessibleName(tr("Court: %1 left, %2 right, %3 serves first")
                              .arg(m_teams[*m_left].name, m_teams[opponentsOf(*m_left)].name, m_teams[*m_serves].name));
    update();
}

} // namespace setfolio
