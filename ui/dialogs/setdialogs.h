// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The end of a set and the close of the match.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/framedialog.h"

#include <QLocale>

#include <optional>

namespace setfolio {

class TimeField;
class VerdictView;

/// The set is won: by whom, how high; to be confirmed with the second referee, and the time.
class SetEndDialog : public FrameDialog {
    Q_OBJECT

public:
    SetEndDialog(const MatchState& state, QTime now, const QLocale& locale, QWidget* parent = nullptr);
    [[nodiscard]] SetEnded result() const;
    /// The referee's reason, when the end is recorded against a finding.
    [[nodiscard]] std::optional<QString> overruled() const;

private:
    void addTime();
    void allowOrNot();

    TimeField* m_time;
    VerdictView* m_verdict;
};

/// The match is over: the sets with their points and times, and who won.
class MatchCloseDialog : public FrameDialog {
    Q_OBJECT

public:
    MatchCloseDialog(const MatchState& state, const QLocale& locale, QWidget* parent = nullptr);
    [[nodiscard]] MatchClosed result() const { return {}; }
    [[nodiscard]] std::optional<QString> overruled() const;

private:
    VerdictView* m_verdict;
};

} // namespace setfolio
