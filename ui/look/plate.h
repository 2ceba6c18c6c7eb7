// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Type and plates of the window.
#pragma once

#include "core/match/ids.h"

#include <QFont>
#include <QString>

class QPainter;
class QRectF;

namespace setfolio {

/// The window's typeface at a size in pixels, without hinting so that widths do not jump.
[[nodiscard]] QFont typeface(int pixels, QFont::Weight weight = QFont::Normal);
/// The same at a size that grows with the words that were asked for; `pixels` are those at 100 %.
[[nodiscard]] QFont windowFont(int pixels, QFont::Weight weight = QFont::Normal);

/// Draws a team's plate: the home team solid, the visitors outlined, the text centred and shrunk to fit.
void paintPlate(QPainter& painter, const QRectF& place, Team team, const QString& text, int pixels);

/// Text centred on the height of its capitals, at most `place` wide (shrunk, then ended by an ellipsis).
void paintCentred(QPainter& painter, const QRectF& place, const QFont& font, const QString& text);

} // namespace setfolio
