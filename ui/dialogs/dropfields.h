// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Fields that drop something down, with the sign that tells so drawn in the colours of the theme.
#pragma once

#include <QComboBox>
#include <QDateEdit>

namespace setfolio {

class ChoiceField : public QComboBox {
    Q_OBJECT

public:
    explicit ChoiceField(QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

/// A date with its calendar.
class DateField : public QDateEdit {
    Q_OBJECT

public:
    /// Shows the date as the locale writes it, the year in full.
    DateField(QDate date, const QLocale& locale, QWidget* parent = nullptr);

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace setfolio
