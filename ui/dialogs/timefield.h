// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A field for a time of day, typed as a scorer types it.
#pragma once

#include <QLineEdit>
#include <QLocale>
#include <QTime>

namespace setfolio {

class TimeField : public QLineEdit {
    Q_OBJECT

public:
    /// Shows `proposed` as the locale writes it; with `mayBeEmpty`, no time at all is a time too.
    TimeField(QTime proposed, const QLocale& locale, bool mayBeEmpty = false, QWidget* parent = nullptr);

    [[nodiscard]] QTime time() const;
    /// Whether what stands in the field is a time.
    [[nodiscard]] bool isGood() const;

private:
    void showWhetherGood();

    bool m_mayBeEmpty;
};

} // namespace setfolio
