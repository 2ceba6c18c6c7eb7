// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Carries out the commands: from a key or a click to an entry, with the questions in between.
#pragma once

#include "ui/table/askbar.h"
#include "ui/table/commands.h"
#include "ui/table/recorder.h"
#include "ui/table/sight.h"
#include "ui/table/tabledialogs.h"

#include <QObject>

namespace setfolio {

class InlineBars;

class Conductor : public QObject {
    Q_OBJECT

public:
    /// Dialogs open over `window`. `stepTime` gives the time of day that the next step writes on the sheet.
    Conductor(Recorder& recorder, InlineBars& bars, TableDialogs dialogs, std::function<QTime()> stepTime,
              QWidget& window);

    void perform(TableCommand command);
    /// Opens the corrections at an entry.
    void correct(EntryNumber entry);

Q_SIGNALS:
    /// Why something was not recorded, and the way out; empty when there is no longer anything to say.
    void refused(const QString& sentences);
    void newMatchAsked();
    void openMatchAsked();
    void closeAsked();
    void teamBookAsked();
    void helpAsked();
    void keysAsked();
    void goToLiveAsked();
    void pageAsked(int forward);
    void sightAsked(setfolio::Sight sight);
    void zoomAsked(int direction);

private:
    void performStep();
    void undo();
    void redo();
    void print();
    void attempt(const Entry& entry);
    Outcome attemptAndExplain(const Entry& entry);
    void explain(const Entry& entry, const Findings& findings);
    /// Asks again, with the same line, when the file could not take what `record` made of it.
    void ask(const Question& question, const std::function<Outcome(const QString&)>& record);
    void startSubstitution(Team team);
    void startLibero(Team team, Qt::Key key);
    void nameCaptain(Team team);
    void redesignate(Team team);
    void askForfeit();
    void askSuspended();
    void askResumed();
    void askDifference();
    void askPenalty(Team team);
    void askRemark();
    void askToss();
    void askLineUp(Team team);
    void askRoster(Team team);
    void askSetEnd();
    void askMatchClosed();
    void record(const std::optional<Answer>& answer);

    [[nodiscard]] const MatchState& state() const { return m_recorder.state(); }

    Recorder& m_recorder;
    InlineBars& m_bars;
    TableDialogs m_dialogs;
    std::function<QTime()> m_stepTime;
    QWidget& m_window;
};

} // namespace setfolio
