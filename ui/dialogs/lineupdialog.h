// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Asks for the line-ups of the coming set, both teams side by side, either of them first or alone.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/framedialog.h"

#include <functional>
#include <optional>
#include <vector>

class QLabel;

namespace setfolio {

class LineUpPanel;

/// A line-up to be recorded, with the referee's reason when it is recorded against a finding.
struct LineUpGiven {
    LineUp lineUp;
    std::optional<QString> overruled;
    bool operator==(const LineUpGiven&) const = default;
};

class LineUpDialog : public FrameDialog {
    Q_OBJECT

public:
    /// What counts down to the deadline, in words, and whether it has passed; empty words for nothing.
    struct Deadline {
        QString words;
        bool passed = false;
    };

    /// The match must be opened. The team left of the scorer is shown left; `first` gets the keyboard.
    LineUpDialog(const MatchState& state, Team first, QWidget* parent = nullptr);

    /// Shows beside the title what `deadline` says, asked again each second. It takes no keyboard.
    void countDown(std::function<Deadline()> deadline);

    /// The line-ups that are new or changed, one or two; has a meaning once the dialog is accepted.
    [[nodiscard]] std::vector<LineUpGiven> result() const;

private:
    void allowOrNot();
    void goOnFrom(const LineUpPanel* panel);
    [[nodiscard]] QString whatIsMissing() const;

    MatchState m_state;
    std::vector<LineUpPanel*> m_panels;
    QLabel* m_missing;
    QLabel* m_deadline;
};

} // namespace setfolio
