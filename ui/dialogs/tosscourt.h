// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The court as it is seen from the scorer's table, with the teams in their halves and the one that serves.
#pragma once

#include "core/match/entry.h"

#include <QWidget>

#include <optional>

namespace setfolio {

class TossCourt : public QWidget {
    Q_OBJECT

public:
    explicit TossCourt(const PerTeam<TeamName>& teams, QWidget* parent = nullptr);

    void setLeft(std::optional<Team> left);
    void setServesFirst(std::optional<Team> serves);
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void halfClicked(setfolio::Side side);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] std::optional<Team> teamOn(Side side) const;
    [[nodiscard]] QRectF court() const;
    void paintLines(QPainter& painter) const;
    void paintHalf(QPainter& painter, Side side) const;
    void describe();

    PerTeam<TeamName> m_teams;
    std::optional<Team> m_left;
    std::optional<Team> m_serves;
};

} // namespace setfolio
