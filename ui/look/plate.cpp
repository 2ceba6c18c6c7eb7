// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/look/plate.h"

#include "ui/look/appearance.h"
#include "ui/look/colours.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace setfolio {

namespace {

constexpr int smallestPixels = 11;

} // namespace

QFont typeface(int pixels, QFont::Weight weight) {
    QFont font(QStringLiteral("Inter"));
    font.setPixelSize(pixels);
    font.setWeight(weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

QFont windowFont(int pixels, QFont::Weight weight) {
    return typeface(scaled(pixels), weight);
}

void paintPlate(QPainter& painter, const QRectF& place, Team team, const QString& text, int pixels) {
    const bool solid = team == Team::Home;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double line = std::max(1.5, place.height() / 14);
    painter.setPen(QPen(solid ? coloursOf(Theme::Light).edge : plateDark(), solid ? 1.0 : line));
    painter.setBrush(solid ? plateDark() : plateLight());
    const double inset = solid ? 0.5 : line / 2;
    painter.drawRoundedRect(place.adjusted(inset, inset, -inset, -inset), 4, 4);
    painter.setPen(solid ? plateLight() : coloursOf(Theme::Light).text);
    paintCentred(painter, place.adjusted(6, 0, -6, 0), typeface(pixels, QFont::Bold), text);
    painter.restore();
}

void paintCentred(QPainter& painter, const QRectF& place, const QFont& font, const QString& text) {
    QFont fitted = font;
    QString shown = text;
    double width = QFontMetricsF(fitted).horizontalAdvance(shown);
    if (width > place.width()) {
        const int shrunk = static_cast<int>(std::floor(font.pixelSize() * place.width() / width));
        fitted.setPixelSize(std::max(smallestPixels, shrunk));
        shown = QFontMetricsF(fitted).elidedText(text, Qt::ElideRight, place.width());
        width = QFontMetricsF(fitted).horizontalAdvance(shown);
    }
    const double baseline = place.center().y() + QFontMetricsF(fitted).capHeight() / 2;
    painter.setFont(fitted);
    painter.drawText(QPointF(place.center().x() - width / 2, baseline), shown);
}

} // namespace setfolio
