// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/numberstepper.h"

#include "ui/dialogs/pieces.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/wording/rulebooklabels.h"

#include <QHBoxLayout>
#include <QIntValidator>
#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int fieldWidth = 96;

} // namespace

NumberStepper::NumberStepper(Kind kind, const QJsonValue& value, QWidget* parent)
    : SettingEditor(parent),
      m_kind(std::move(kind)),
      m_field(pieces::lineEdit({}, 4)),
      m_less(stepButton(u"−"_s, u"less"_s, -1)),
      m_more(stepButton(u"+"_s, u"more"_s, 1)),
      m_range(pieces::explanation(rangeWords())),
      m_last(value.toInt(m_kind.lowest)) {
    m_less->setAccessibleName(tr("One less"));
    m_more->setAccessibleName(tr("One more"));
    m_field->setObjectName(u"number"_s);
    m_field->setAccessibleName(tr("Number, %1").arg(rangeWords()));
    m_field->setFixedWidth(scaled(fieldWidth));
    m_field->setAlignment(Qt::AlignCenter);
    m_field->setValidator(new QIntValidator(0, m_kind.highest, this));
    m_field->setText(QString::number(m_last));
    m_field->installEventFilter(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    for (QWidget* widget :
         {static_cast<QWidget*>(m_less), static_cast<QWidget*>(m_field), static_cast<QWidget*>(m_more)})
        row->addWidget(widget);
    column->addLayout(row);
    column->addWidget(m_range);
    if (m_kind.mayBeAbsent)
        makeAbsence();
    row->addStretch();
    if (m_absence) {
        row->insertWidget(row->count() - 1, m_absence);
        m_absence->setChecked(value.isNull());
        setAbsent(value.isNull());
    }
    setFirst(value.isNull() ? static_cast<QWidget*>(m_absence) : m_field);
    connect(m_field, &QLineEdit::textEdited, this, &NumberStepper::review);
}

bool NumberStepper::isGood() const {
    if (m_absence && m_absence->isChecked())
        return true;
    bool isNumber = false;
    const int number = m_field->text().toInt(&isNumber);
    return isNumber && number >= m_kind.lowest && number <= m_kind.highest;
}

bool NumberStepper::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_field && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down) {
            step(key == Qt::Key_Up ? 1 : -1);
            return true;
        }
    }
    return SettingEditor::eventFilter(watched, event);
}

QString NumberStepper::rangeWords() const {
    const QString range = tr("%1 to %2").arg(m_kind.lowest).arg(m_kind.highest);
    return m_kind.key.endsWith("seconds"_L1) ? tr("%1 seconds").arg(range) : range;
}

QPushButton* NumberStepper::stepButton(const QString& sign, const QString& name, int by) {
    QPushButton* button = pieces::button(sign, name);
    button->setProperty("chip", true);
    button->setFixedSize(scaled(targetHeight + 8), scaled(targetHeight));
    button->setAutoRepeat(true);
    connect(button, &QPushButton::clicked, this, [this, by] { step(by); });
    return button;
}

void NumberStepper::makeAbsence() {
    m_absence = pieces::button(settingWithoutNumber(m_kind.key), u"absent"_s);
    m_absence->setCheckable(true);
    connect(m_absence, &QPushButton::clicked, this, [this](bool absent) {
        setAbsent(absent);
        review();
    });
}

void NumberStepper::step(int by) {
    m_field->setText(QString::number(std::clamp(m_last + by, m_kind.lowest, m_kind.highest)));
    review();
}

void NumberStepper::setAbsent(bool absent) {
    for (QWidget* widget :
         {static_cast<QWidget*>(m_less), static_cast<QWidget*>(m_field), static_cast<QWidget*>(m_more)})
        widget->setEnabled(!absent);
    m_field->setText(absent ? QString() : QString::number(m_last));
}

void NumberStepper::review() {
    setProblem(*m_field, !isGood());
    Q_EMIT goodnessChanged();
    if (!isGood())
        return;
    if (m_absence && m_absence->isChecked()) {
        Q_EMIT changed(QJsonValue::Null);
        return;
    }
    m_last = m_field->text().toInt();
    Q_EMIT changed(m_last);
}

} // namespace setfolio
