// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The court as the scorer sees it, with the twelve players where they stand.
#pragma once

#include "ui/table/deckview.h"
#include "ui/table/look.h"

#include <QWidget>

namespace setfolio {

/// The server stands outside the end line in an amber ring; a libero who serves is a triangle; the captain carries a C.
/// A press on a player asks for somebody in her place.
class CourtPicture : public QWidget {
    Q_OBJECT

public:
    explicit CourtPicture(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setPlayers(const std::vector<CourtPlayer>& players);

    /// Where a player is drawn, in this widget: the middle of her mark.
    [[nodiscard]] QPointF centreOf(const CourtPlayer& player) const;

Q_SIGNALS:
    void pressed(const setfolio::CourtPlayer& player);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] const CourtPlayer* playerAt(QPointF place) const;
    [[nodiscard]] QRectF court() const;
    void paintCourt(QPainter& painter) const;
    void paintPlayer(QPainter& painter, const CourtPlayer& player) const;
    void paintShape(QPainter& painter, const CourtPlayer& player, QPointF centre) const;
    void paintCaptain(QPainter& painter, QPointF centre, Side side) const;

    std::vector<CourtPlayer> m_players;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
