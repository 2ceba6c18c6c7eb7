// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Asks what the toss decided: who serves first, and who stands left of the scorer. Nothing is proposed: both are
/// chosen.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/framedialog.h"

#include <optional>

class QButtonGroup;

namespace setfolio {

class TossCourt;
class VerdictView;

class TossDialog : public FrameDialog {
    Q_OBJECT

public:
    /// The match must be opened.
    explicit TossDialog(const MatchState& state, QWidget* parent = nullptr);

    /// What was chosen; has a meaning once the dialog is accepted.
    [[nodiscard]] Toss result() const { return {*m_serves, *m_left}; }
    /// The referee's reason, when it is recorded against a finding.
    [[nodiscard]] std::optional<QString> overruled() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QButtonGroup* addChoice(const QString& question, const QString& name, const QString& caps);
    void chooseLeft(Team team);
    void chooseServer(Team team);
    void review();

    MatchState m_state;
    std::optional<Team> m_left;
    std::optional<Team> m_serves;
    TossCourt* m_court;
    QButtonGroup* m_leftButtons;
    QButtonGroup* m_serveButtons;
    VerdictView* m_verdict;
};

} // namespace setfolio
