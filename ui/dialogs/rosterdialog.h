// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A team's roster changed after the match was opened: a player came late, a number was wrong.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/framedialog.h"

#include <optional>

class QLineEdit;

namespace setfolio {

class RosterEditor;
class VerdictView;

class RosterDialog : public FrameDialog {
    Q_OBJECT

public:
    /// The match must be opened. Begins with the roster as it stands.
    RosterDialog(const MatchState& state, Team team, QWidget* parent = nullptr);

    /// The whole roster; it takes the place of the earlier one.
    [[nodiscard]] Roster result() const;
    [[nodiscard]] std::optional<QString> overruled() const;

private:
    void review();
    void allowOrNot();

    MatchState m_state;
    Team m_team;
    QLineEdit* m_coach;
    RosterEditor* m_roster;
    VerdictView* m_verdict;
};

} // namespace setfolio
