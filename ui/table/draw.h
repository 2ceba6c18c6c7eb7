// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The few shapes that the table's widgets are drawn from. Text is placed by measured advances and Inter's cap height.
#pragma once

#include "core/match/ids.h"
#include "ui/table/look.h"

#include <QPainter>
#include <QString>

namespace setfolio::draw {

enum class From : std::uint8_t { Left, Centre, Right };

/// One line of text whose capitals are centred on `centre`; x is its left edge, its centre or its right edge. With a
/// `room` it is elided to that width. Returns the width drawn.
double text(QPainter& painter, QPointF centre, const QString& words, const QFont& font, const QColor& colour,
            From from = From::Left, double room = 0);

/// Words in a box, wrapped, top left. Returns the height used.
double paragraph(QPainter& painter, const QRectF& box, const QString& words, const QFont& font, const QColor& colour);

[[nodiscard]] double widthOf(const QString& words, const QFont& font);

/// A key's name in a cap whose right edge and centre line are given; returns the cap's rectangle.
QRectF keyCap(QPainter& painter, QPointF rightCentre, const QString& key, const Look& look, bool enabled = true);

/// A team's plate: solid for the first-listed team, outlined for the second.
void plate(QPainter& painter, const QRectF& box, Team team, const QString& code, const Look& look);

/// A raised card: panel ground, rounded.
void card(QPainter& painter, const QRectF& box, const Look& look);
/// The amber head of a card, with words at its left and right.
void amberHead(QPainter& painter, const QRectF& card, const QString& left, const QString& right, const Look& look);

/// The ring round a control that has the focus.
void focusRing(QPainter& painter, const QRectF& box, double radius, const Look& look);

} // namespace setfolio::draw
