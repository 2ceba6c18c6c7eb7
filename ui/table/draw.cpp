// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/draw.h"

#include "ui/look/plate.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <algorithm>

namespace setfolio::draw {

namespace {

constexpr double capHeight = 0.727; // of Inter, in parts of its size

double headHeight(const Look& look) {
    return look.px(30);
}

} // namespace

double text(QPainter& painter, QPointF centre, const QString& words, const QFont& font, const QColor& colour, From from,
            double room) {
    const QFontMetricsF metrics(font);
    const QString shown = room > 0 ? metrics.elidedText(words, Qt::ElideRight, room) : words;
    const double width = metrics.horizontalAdvance(shown);
    double x = centre.x();
    if (from == From::Centre) {
        x -= width / 2;
    } else if (from == From::Right) {
        x -= width;
    }
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(QPointF(x, centre.y() + capHeight * font.pixelSize() / 2), shown);
    return width;
}

double paragraph(QPainter& painter, const QRectF& box, const QString& words, const QFont& font, const QColor& colour) {
    painter.setFont(font);
    painter.setPen(colour);
    QRectF used;
    painter.drawText(box, static_cast<int>(Qt::AlignLeft | Qt::AlignTop) | static_cast<int>(Qt::TextWordWrap), words,
                     &used);
    return used.height();
}

double widthOf(const QString& words, const QFont& font) {
    return QFontMetricsF(font).horizontalAdvance(words);
}

QRectF keyCap(QPainter& painter, QPointF rightCentre, const QString& key, const Look& look, bool enabled) {
    const QFont font = look.font(11, QFont::DemiBold);
    const double height = look.px(19);
    const double width = std::max(height, widthOf(key, font) + look.px(11));
    const QRectF box(rightCentre.x() - width, rightCentre.y() - height / 2, width, height);
    painter.setPen(QPen(look.colours.edge, 1));
    painter.setBrush(look.colours.button);
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), look.px(4), look.px(4));
    text(painter, box.center(), key, font, enabled ? look.colours.text : look.colours.secondary, From::Centre);
    return box;
}

void plate(QPainter& painter, const QRectF& box, Team team, const QString& code, const Look& look) {
    paintPlate(painter, box, team, code, std::max(11, qRound(look.px(13))));
}

void card(QPainter& painter, const QRectF& box, const Look& look) {
    painter.setPen(QPen(look.colours.rule, 1));
    painter.setBrush(look.colours.panel);
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), look.px(8), look.px(8));
}

void amberHead(QPainter& painter, const QRectF& card, const QString& left, const QString& right, const Look& look) {
    const double radius = look.px(8);
    const QRectF head(card.left(), card.top(), card.width(), headHeight(look));
    QPainterPath top;
    top.addRoundedRect(QRectF(head.left(), head.top(), head.width(), head.height() + radius), radius, radius);
    QPainterPath cut;
    cut.addRect(head);
    painter.fillPath(top.intersected(cut), amber());
    const QFont rightFont = look.font(13, QFont::DemiBold);
    const double margin = look.px(14);
    const double rightWidth =
        text(painter, QPointF(head.right() - margin, head.center().y()), right, rightFont, onAmber(), From::Right);
    text(painter, QPointF(head.left() + margin, head.center().y()), left, look.font(14, QFont::Bold), onAmber(),
         From::Left, head.width() - 2.5 * margin - rightWidth);
}

void focusRing(QPainter& painter, const QRectF& box, double radius, const Look& look) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look.colours.focus, look.px(3)));
    const double inset = look.px(1.5);
    painter.drawRoundedRect(box.adjusted(inset, inset, -inset, -inset), radius, radius);
}

} // namespace setfolio::draw
