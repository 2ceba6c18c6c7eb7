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
struct CourtPlayer;

class Conductor : public QObject {
    Q_OBJECT

public:
    /// Dialogs open over `window`. `stepTime` gives the time of day that the next step writes on the sheet.
    Conductor(Recorder& recorder, InlineBars& bars, TableDialogs dialogs, std::function<QTime()> stepTime,
              QWidget& window);

    void perform(TableCommand command);
    /// Opens the corrections at an entry. What is sealed is reopened first, or stays as it is.
    void correct(EntryNumber entry);
    /// Asks who comes in for a player of the court: a substitution, or, for a libero, her replacement.
    void replace(const CourtPlayer& player);
    /// Whether the sign-off that is due has been put off, until another set has ended or the match is closed.
    [[nodiscard]] bool isSignOffPutOff() const;

Q_SIGNALS:
    /// Why something was not recorded, and the way out; empty when there is no longer anything to say.
    void refused(const QString& sentences);
    /// Another step comes next, though nothing was recorded.
    void stepChanged();
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
    /// The moment at which a sign-off was put off.
    struct PutOff {
        std::size_t sets = 0;
        bool closed = false;
        bool operator==(const PutOff&) const = default;
    };

    void performUnsealed(TableCommand command);
    void performStep();
    void signOffAsked();
    void signOff(std::optional<int> set);
    void reopenAsked();
    /// Asks for the name and the reason, and records them; whether it is open again.
    bool reopen(std::optional<int> set);
    /// Whether what stands in the way of an entry is a seal, and it has been reopened.
    bool reopenFor(const Findings& findings);
    [[nodiscard]] PutOff moment() const { return {state().sets.size(), state().closed}; }
    void undo();
    void redo();
    void print();
    void saveCopy();
    void attempt(const Entry& entry);
    Outcome attemptAndExplain(const Entry& entry);
    void explain(const Entry& entry, const Findings& findings);
    /// Asks again, with the same line, when the file could not take what `record` made of it.
    void ask(const Question& question, const std::function<Outcome(const QString&)>& record);
    void startSubstitution(Team team, std::optional<ShirtNumber> out = {});
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
    void askOfficials();
    void askSetEnd();
    void askMatchClosed();
    void record(const std::optional<Answer>& answer);

    [[nodiscard]] const MatchState& state() const { return m_recorder.state(); }

    Recorder& m_recorder;
    InlineBars& m_bars;
    TableDialogs m_dialogs;
    std::function<QTime()> m_stepTime;
    QWidget& m_window;
    std::optional<PutOff> m_putOff;
};

} // namespace setfolio
