// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where the keys of the commands are changed: choose a command, press its new key.
#pragma once

#include "ui/dialogs/framedialog.h"
#include "ui/table/keys.h"

class QTableWidget;

namespace setfolio {

class KeyField;

class KeysDialog : public FrameDialog {
    Q_OBJECT

public:
    explicit KeysDialog(const ChangedKeys& changed, QWidget* parent = nullptr);

    [[nodiscard]] const ChangedKeys& result() const { return m_changed; }

private:
    [[nodiscard]] QWidget* makeSide();
    void fillTable();
    [[nodiscard]] TableCommand chosen() const;
    void showChosen();
    void take(const QKeySequence& key);
    void giveBack();
    void giveAllBack();
    void say(const QString& sentence, bool problem);

    ChangedKeys m_changed;
    QTableWidget* m_table;
    QLabel* m_name;
    KeyField* m_field;
    QLabel* m_said;
};

} // namespace setfolio
