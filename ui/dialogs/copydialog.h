// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Saves a copy of a match for others: whole, as a table or as data, with or without names.
#pragma once

#include "core/ledger/filecalls.h"
#include "core/record/export.h"
#include "core/record/nameless.h"
#include "ui/dialogs/framedialog.h"

#include <vector>

class QButtonGroup;

namespace setfolio {

class CopyDialog : public FrameDialog {
    Q_OBJECT

public:
    /// `folder` is where a copy is first offered to be saved.
    CopyDialog(std::span<const Recorded> entries, const QString& folder, FileCalls calls = systemCalls(),
               QWidget* parent = nullptr);

    /// The name a copy is offered under: that of the match, "2026-10-10-SAL-QRL-numbers-only.csv".
    [[nodiscard]] QString fileName() const;
    /// Saves what is chosen; how it went is said in the window. False on an error. A match file that is there already
    /// is never overwritten, and another file only where that `mayReplace` it.
    bool saveTo(const QString& path, bool mayReplace = true);

public Q_SLOTS:
    void accept() override;

private:
    void addForms();
    void addNames();
    void explain();
    void say(const QString& sentence, bool problem);
    [[nodiscard]] ExportForm form() const;
    [[nodiscard]] Names names() const;
    /// Whether the match is such a copy itself: it is saved as it is.
    [[nodiscard]] bool isWithoutNames() const;

    std::vector<Recorded> m_entries;
    QString m_folder;
    FileCalls m_calls;
    QButtonGroup* m_forms;
    QPushButton* m_numbersOnly;
    QLabel* m_about;
    QLabel* m_said;
};

} // namespace setfolio
