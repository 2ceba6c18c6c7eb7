// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A field for a shirt number in a row of such fields: it says when its number is whole, so that the next one takes the
/// keyboard.
#pragma once

#include "core/match/entry.h"

#include <QLineEdit>

namespace setfolio {

class ShirtField : public QLineEdit {
    Q_OBJECT

public:
    /// The roster tells when a number needs no further digit.
    explicit ShirtField(const Roster& roster, QWidget* parent = nullptr);

    [[nodiscard]] ShirtNumber number() const; ///< invalid while empty
    void setNumber(ShirtNumber number);

Q_SIGNALS:
    void filled();      ///< the number was typed whole, or Space or Enter was pressed
    void emptiedBack(); ///< Backspace in an empty field
    void entered();     ///< it took the keyboard

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    Roster m_roster;
    QString m_stood; ///< the number when it took the keyboard
};

} // namespace setfolio
