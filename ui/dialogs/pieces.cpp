// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/pieces.h"

#include "core/record/shown.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plainfield.h"
#include "ui/look/plate.h"

#include <QFrame>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio::pieces {

QLabel* heading(const QString& text, int pixels) {
    auto* label = new QLabel(asShown(text));
    label->setFont(windowFont(pixels, QFont::Bold));
    label->setTextFormat(Qt::PlainText);
    return label;
}

QLabel* explanation(const QString& text) {
    auto* label = new QLabel(asShown(text));
    label->setFont(windowFont(13));
    label->setTextFormat(Qt::PlainText);
    label->setProperty("secondary", true);
    label->setWordWrap(true);
    return label;
}

void addField(QBoxLayout& layout, const QString& text, QWidget& field, const QString& name) {
    auto* label = new QLabel(text);
    label->setFont(windowFont(13, QFont::DemiBold));
    label->setProperty("secondary", true);
    label->setBuddy(&field);
    field.setObjectName(name);
    field.setAccessibleName(QString(text).remove(u'&'));
    auto* column = new QVBoxLayout;
    column->setSpacing(3);
    column->addWidget(label);
    column->addWidget(&field);
    layout.addLayout(column);
}

QLineEdit* lineEdit(const QString& placeholder, int longest) {
    auto* edit = new QLineEdit;
    edit->setPlaceholderText(placeholder);
    edit->setMaxLength(longest);
    takePlainWords(*edit);
    return edit;
}

QPushButton* button(const QString& text, const QString& name) {
    auto* made = new QPushButton(text);
    made->setObjectName(name);
    made->setAutoDefault(false);
    return made;
}

QPushButton* toggle(const QString& text, const QString& name) {
    auto* made = button(text, name);
    made->setCheckable(true);
    return made;
}

void fillWith(QWidget& window, QLayout* content) {
    if (textScale() == 1)
        return window.setLayout(content);
    auto* all = new QVBoxLayout(&window);
    all->setContentsMargins(0, 0, 0, 0);
    addContent(*all, content);
}

void addContent(QBoxLayout& column, QLayout* content) {
    if (textScale() == 1)
        return column.addLayout(content, 1);
    auto* inner = new QWidget;
    inner->setLayout(content);
    auto* scroll = new QScrollArea;
    scroll->setProperty("bare", true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidgetResizable(true);
    scroll->setWidget(inner);
    column.addWidget(scroll, 1);
}

QFrame* panel() {
    auto* frame = new QFrame;
    frame->setObjectName(u"panel"_s);
    return frame;
}

PathLabel::PathLabel(QWidget* parent) : QLabel(parent) {
    setFont(windowFont(13));
    setTextFormat(Qt::PlainText);
    setProperty("secondary", true);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
}

void PathLabel::setPath(const QString& words) {
    m_words = asShown(words);
    setAccessibleName(m_words);
    setToolTip(plainTip(m_words));
    setText(fontMetrics().elidedText(m_words, Qt::ElideMiddle, width()));
}

void PathLabel::resizeEvent(QResizeEvent* event) {
    QLabel::resizeEvent(event);
    setText(fontMetrics().elidedText(m_words, Qt::ElideMiddle, width()));
}

Plate::Plate(Team team, const QString& code, QWidget* parent) : QWidget(parent), m_team(team) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setCode(code);
}

void Plate::setCode(const QString& code) {
    m_code = asShown(code);
    setAccessibleName(m_code);
    update();
}

QSize Plate::sizeHint() const {
    return {scaled(76), scaled(34)};
}

void Plate::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paintPlate(painter, rect(), m_team, m_code, scaled(17));
}

} // namespace setfolio::pieces
