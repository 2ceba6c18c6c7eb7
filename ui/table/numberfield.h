// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Fields and buttons for shirt numbers.
#pragma once

#include "core/match/ids.h"
#include "ui/table/look.h"

#include <QAbstractButton>
#include <QLineEdit>

#include <optional>

namespace setfolio {

/// One or two digits. While it is empty, the table's keys pass through it; Backspace never does. A proposal shows in an
/// empty field and gives way to the first digit.
class NumberField : public QLineEdit {
    Q_OBJECT

public:
    explicit NumberField(QWidget* parent = nullptr);

    void setLook(const Look& look);
    [[nodiscard]] std::optional<ShirtNumber> number() const;
    void setNumber(std::optional<ShirtNumber> number);
    void propose(std::optional<ShirtNumber> number);
    [[nodiscard]] std::optional<ShirtNumber> proposed() const { return m_proposed; }
    /// Keeps the table's keys from passing through while something else of the same entry is typed already.
    void holdKeys(bool hold) { m_holdsKeys = hold; }

Q_SIGNALS:
    void emptiedBack(); ///< Backspace in the empty field

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    std::optional<ShirtNumber> m_proposed;
    bool m_holdsKeys = false;
};

inline constexpr double numberButtonWidth = 45; ///< at scale 1

/// A shirt number to be tapped, with a small word under it.
class NumberButton : public QAbstractButton {
    Q_OBJECT

public:
    NumberButton(ShirtNumber number, const QString& word, const Look& look, QWidget* parent = nullptr);

    [[nodiscard]] ShirtNumber number() const { return m_number; }

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    ShirtNumber m_number;
    QString m_word;
    Look m_look;
};

} // namespace setfolio
