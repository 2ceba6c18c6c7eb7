// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The start of a set, its end, and the close of the match.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/framedialog.h"

#include <QLocale>

#include <optional>

namespace setfolio {

class TimeField;
class VerdictView;

/// A dialog that asks for one time of day and records one entry with it.
class SetTimeDialog : public FrameDialog {
    Q_OBJECT

public:
    /// The referee's reason, when the entry is recorded against a finding.
    [[nodiscard]] std::optional<QString> overruled() const;

protected:
    SetTimeDialog(const QString& title, const QString& lead, const QString& record, QWidget* parent);

    [[nodiscard]] QTime time() const;
    /// Adds the time, then what the judge says of `entry`. Called once, after the rest of the body.
    void addTime(const QString& label, QTime proposed, const QLocale& locale, const MatchState& state,
                 const Entry& entry);

private:
    void allowOrNot();

    TimeField* m_time = nullptr;
    VerdictView* m_verdict = nullptr;
};

/// The whistle for the first serve: who serves first, and the time.
class SetStartDialog : public SetTimeDialog {
    Q_OBJECT

public:
    SetStartDialog(const MatchState& state, QTime now, const QLocale& locale, QWidget* parent = nullptr);
    [[nodiscard]] SetStarted result() const { return {time()}; }
};

/// The set is won: by whom, how high; to be confirmed with the second referee, and the time.
class SetEndDialog : public SetTimeDialog {
    Q_OBJECT

public:
    SetEndDialog(const MatchState& state, QTime now, const QLocale& locale, QWidget* parent = nullptr);
    [[nodiscard]] SetEnded result() const { return {time()}; }
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
