// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/dropfields.h"

#include "ui/look/colours.h"

#include <QAbstractItemView>
#include <QPainter>
#include <QStyledItemDelegate>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

void paintChevron(QWidget& field) {
    QPainter painter(&field);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(coloursOf(themeOf(field.palette())).secondary, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const QPointF tip(field.width() - 19.5, field.height() / 2.0 + 3);
    painter.drawPolyline(QPolygonF{tip + QPointF(-5.5, -5.5), tip, tip + QPointF(5.5, -5.5)});
}

} // namespace

ChoiceField::ChoiceField(QWidget* parent) : QComboBox(parent) {
    view()->setTextElideMode(Qt::ElideRight);
    setItemDelegate(new QStyledItemDelegate(this)); // the usual one does not hear of the rows' height
}

void ChoiceField::paintEvent(QPaintEvent* event) {
    QComboBox::paintEvent(event);
    paintChevron(*this);
}

DateField::DateField(QDate date, const QLocale& locale, QWidget* parent) : QDateEdit(date, parent) {
    QString format = locale.dateFormat(QLocale::ShortFormat);
    if (!format.contains(u"yyyy"_s))
        format.replace(u"yy"_s, u"yyyy"_s);
    setLocale(locale);
    setDisplayFormat(format);
    setCalendarPopup(true);
}

void DateField::paintEvent(QPaintEvent* event) {
    QDateEdit::paintEvent(event);
    paintChevron(*this);
}

} // namespace setfolio
