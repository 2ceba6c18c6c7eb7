// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A field that takes the next key that is pressed, whatever it is, instead of typing it. Tab and Escape keep their
/// meaning.
#pragma once

#include <QKeySequence>
#include <QLineEdit>

namespace setfolio {

class KeyField : public QLineEdit {
    Q_OBJECT

public:
    explicit KeyField(QWidget* parent = nullptr);

Q_SIGNALS:
    void keyPressed(const QKeySequence& key);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
};

} // namespace setfolio
