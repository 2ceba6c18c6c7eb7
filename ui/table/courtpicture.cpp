// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/courtpicture.h"

#include "ui/table/draw.h"

#include <QCoreApplication>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr double markRadius = 16.5; // of a player, at scale 1
constexpr double reach = 26;        // how far from her middle a press still means her

/// The six of a side in words, for those who do not see the picture.
QString inWords(const std::vector<CourtPlayer>& players, Side side) {
    QStringList words;
    for (const CourtPlayer& player : players)
        if (player.side == side)
            words += u"%1: %2"_s.arg(player.position.value).arg(player.number.value);
    std::ranges::sort(words);
    return words.join(u", "_s);
}

} // namespace

CourtPicture::CourtPicture(QWidget* parent) : QWidget(parent) {
    setObjectName(u"courtPicture"_s);
    setAccessibleName(Table::tr("Players on court"));
}

void CourtPicture::setLook(const Look& look) {
    m_look = look;
    update();
}

void CourtPicture::setPlayers(const std::vector<CourtPlayer>& players) {
    if (players == m_players)
        return;
    m_players = players;
    setAccessibleDescription(Table::tr("Left, by court position: %1. Right: %2.")
                                 .arg(inWords(players, Side::Left), inWords(players, Side::Right)));
    update();
}

QRectF CourtPicture::court() const {
    const double margin = m_look.px(10); // the net's posts
    const double apron = m_look.px(64);  // where the server stands
    return {apron, margin, width() - 2 * apron, height() - 2 * margin};
}

QPointF CourtPicture::centreOf(const CourtPlayer& player) const {
    const QRectF field = court();
    const CourtPlace place = placeOf(player.position, player.side);
    const double y = field.top() + field.height() * (2 * place.row + 1) / 6;
    double fromNet = field.width() * (place.depth == 0 ? 0.085 : 0.345);
    if (player.server)
        fromNet = field.width() / 2 + m_look.px(34);
    const double x = field.center().x() + (player.side == Side::Left ? -fromNet : fromNet);
    return {x, y};
}

const CourtPlayer* CourtPicture::playerAt(QPointF place) const {
    const auto away = [&](const CourtPlayer& player) { return QLineF(centreOf(player), place).length(); };
    const auto nearest = std::ranges::min_element(m_players, {}, away);
    return nearest == m_players.end() || away(*nearest) > m_look.px(reach) ? nullptr : &*nearest;
}

void CourtPicture::mousePressEvent(QMouseEvent* event) {
    const CourtPlayer* player = event->button() == Qt::LeftButton ? playerAt(event->position()) : nullptr;
    if (player)
        Q_EMIT pressed(CourtPlayer(*player));
    else
        QWidget::mousePressEvent(event);
}

bool CourtPicture::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const CourtPlayer* player = playerAt(help->pos());
    QToolTip::showText(help->globalPos(),
                       !player          ? QString()
                       : player->libero ? Table::tr("Press for her replacement")
                                        : Table::tr("Press for a substitution in her place"),
                       this);
    return true;
}

void CourtPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintCourt(painter);
    for (const CourtPlayer& player : m_players)
        paintPlayer(painter, player);
}

void CourtPicture::paintCourt(QPainter& painter) const {
    painter.setPen(QPen(m_look.colours.rule, 1));
    painter.setBrush(m_look.courtGround);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), m_look.px(8), m_look.px(8));
    const QRectF field = court();
    painter.setBrush(m_look.colours.court);
    painter.setPen(QPen(m_look.colours.courtLine, m_look.px(2)));
    painter.drawRect(field);
    painter.setPen(QPen(m_look.colours.courtLine, m_look.px(1.2)));
    for (const double attackLine : {1 / 3.0, 2 / 3.0}) {
        const double x = field.left() + field.width() * attackLine;
        painter.drawLine(QPointF(x, field.top()), QPointF(x, field.bottom()));
    }
    painter.setPen(QPen(m_look.colours.courtLine, m_look.px(4), Qt::SolidLine, Qt::FlatCap));
    const double post = m_look.px(6);
    painter.drawLine(QPointF(field.center().x(), field.top() - post),
                     QPointF(field.center().x(), field.bottom() + post));
}

void CourtPicture::paintPlayer(QPainter& painter, const CourtPlayer& player) const {
    const QPointF centre = centreOf(player);
    if (player.server) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(amber());
        painter.drawEllipse(centre, m_look.px(markRadius + 5.5), m_look.px(markRadius + 5.5));
    } else {
        const double outward = player.side == Side::Left ? -1 : 1;
        draw::text(painter, centre + QPointF(outward * m_look.px(27), -m_look.px(12)),
                   QString::number(player.position.value), m_look.font(12), m_look.colours.secondary,
                   draw::From::Centre);
    }
    paintShape(painter, player, centre);
    if (player.captain)
        paintCaptain(painter, centre, player.side);
}

void CourtPicture::paintShape(QPainter& painter, const CourtPlayer& player, QPointF centre) const {
    const bool solid = player.team == Team::Home;
    painter.setPen(QPen(solid ? QColor(0x8B, 0x94, 0x9D) : onAmber(), m_look.px(solid ? 1.5 : 2.2)));
    painter.setBrush(solid ? plateDark() : plateLight());
    const QColor ink = solid ? plateLight() : onAmber();
    const QString number = player.number.isValid() ? QString::number(player.number.value) : u"?"_s;
    if (!player.libero) {
        painter.drawEllipse(centre, m_look.px(markRadius), m_look.px(markRadius));
        draw::text(painter, centre, number, m_look.font(17, QFont::Bold), ink, draw::From::Centre);
        return;
    }
    const double half = m_look.px(21);
    painter.drawPolygon(QPolygonF{centre + QPointF(0, -m_look.px(19)), centre + QPointF(half, m_look.px(14)),
                                  centre + QPointF(-half, m_look.px(14))});
    draw::text(painter, centre + QPointF(0, m_look.px(4)), number, m_look.font(15, QFont::Bold), ink,
               draw::From::Centre);
}

void CourtPicture::paintCaptain(QPainter& painter, QPointF centre, Side side) const {
    const double towardsNet = side == Side::Left ? 1 : -1;
    const QPointF badge = centre + QPointF(towardsNet * m_look.px(14), -m_look.px(12));
    painter.setPen(QPen(onAmber(), 1));
    painter.setBrush(plateLight());
    painter.drawEllipse(badge, m_look.px(7.5), m_look.px(7.5));
    draw::text(painter, badge, u"C"_s, m_look.font(11, QFont::Bold), onAmber(), draw::From::Centre);
}

} // namespace setfolio
