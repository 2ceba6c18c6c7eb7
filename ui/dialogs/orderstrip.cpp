// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/orderstrip.h"

#include "ui/look/appearance.h"
#include "ui/look/colours.h"
#include "ui/look/plate.h"
#include "ui/wording/names.h"

#include <QPainter>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

OrderStrip::OrderStrip(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setObjectName(u"order"_s);
    setOrder(std::nullopt, false);
}

void OrderStrip::setOrder(const std::optional<std::array<ShirtNumber, 6>>& order, bool servesFirst) {
    m_order = order;
    m_servesFirst = servesFirst;
    QStringList words;
    for (const Slot slot : allSlots) {
        const ShirtNumber number = order ? order->at(slot.index()) : ShirtNumber();
        words << u"%1 %2"_s.arg(roman(slot), number.isValid() ? QString::number(number.value) : tr("empty"));
    }
    setAccessibleName(order ? tr("Serving order: %1").arg(words.join(u", "_s))
                            : tr("The serving order is known after the toss"));
    update();
}

QSize OrderStrip::sizeHint() const {
    return {scaled(500), scaled(40)};
}

void OrderStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& colours = coloursOf(themeOf(palette()));
    const QString label = m_order ? tr("Serving order") : tr("The serving order is known after the toss.");
    const QFont font = windowFont(12, QFont::DemiBold);
    painter.setFont(font);
    painter.setPen(colours.secondary);
    const double cap = QFontMetricsF(font).capHeight();
    painter.drawText(QPointF(0, height() / 2.0 + cap / 2), label);
    if (!m_order)
        return;
    const double first = QFontMetricsF(font).horizontalAdvance(label) + 12;
    const double wide = (width() - first) / 6;
    for (const Slot slot : allSlots)
        paintCell(painter, QRectF(first + wide * static_cast<double>(slot.index()), 0, wide - 6, height()), slot);
}

void OrderStrip::paintCell(QPainter& painter, const QRectF& place, Slot slot) const {
    const Colours& colours = coloursOf(themeOf(palette()));
    const bool first = m_servesFirst && slot == Slot(1);
    painter.setPen(QPen(first ? onAmber() : colours.rule, 1));
    painter.setBrush(first ? amber() : colours.button);
    painter.drawRoundedRect(place.adjusted(0.5, 0.5, -0.5, -0.5), 5, 5);
    painter.setPen(first ? onAmber() : colours.secondary);
    paintCentred(painter, QRectF(place.left() + 4, place.top(), scaled(20), place.height()),
                 windowFont(12, QFont::DemiBold), roman(slot));
    const ShirtNumber number = m_order->at(slot.index());
    painter.setPen(first ? onAmber() : colours.text);
    if (number.isValid())
        paintCentred(painter, place.adjusted(scaled(22), 0, -2, 0), windowFont(18, QFont::Bold),
                     QString::number(number.value));
}

} // namespace setfolio
