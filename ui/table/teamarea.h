// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A team's half of the deck: one large button that says what pressing it means.
#pragma once

#include "ui/table/deckview.h"
#include "ui/table/look.h"

#include <QAbstractButton>

namespace setfolio {

/// One click is one rally; the second press of a double click is not taken for another.
class TeamArea : public QAbstractButton {
    Q_OBJECT

public:
    TeamArea(Side side, QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setView(const TeamAreaView& view);
    [[nodiscard]] const TeamAreaView& view() const { return m_view; }

    [[nodiscard]] QSize sizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void paintGround(QPainter& painter) const;
    [[nodiscard]] QFont scoreFont() const;
    void paintScore(QPainter& painter) const;
    void paintWords(QPainter& painter, double room) const;
    void paintFoot(QPainter& painter) const;
    void paintArrow(QPainter& painter, const QRectF& box) const;
    [[nodiscard]] double fromOuter(double measure) const; ///< x at this distance from the outer edge
    [[nodiscard]] QColor ink() const;
    [[nodiscard]] bool isSolid() const { return m_view.team == Team::Home; }

    Side m_side;
    TeamAreaView m_view;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
