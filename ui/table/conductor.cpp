// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/conductor.h"

#include "ui/table/choicebar.h"
#include "ui/table/deckview.h"
#include "ui/table/inlinebars.h"
#include "ui/table/substitutionbar.h"
#include "ui/wording/fill.h"
#include "ui/wording/findingwords.h"
#include "ui/wording/names.h"
#include "ui/wording/nextstep.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

QString inWords(const Findings& findings, const MatchState& state) {
    QStringList words;
    for (const Finding& finding : findings)
        words += sentence(finding, state);
    return words.join(u' ');
}

} // namespace

Conductor::Conductor(Recorder& recorder, InlineBars& bars, TableDialogs dialogs, std::function<QTime()> stepTime,
                     QWidget& window)
    : QObject(&window),
      m_recorder(recorder),
      m_bars(bars),
      m_dialogs(std::move(dialogs)),
      m_stepTime(std::move(stepTime)),
      m_window(window) {}

// clang-format off
void Conductor::perform(TableCommand command) {
    Q_EMIT refused({});
    const std::optional<Side> side = infoOf(command).side;
    const Team team = side ? teamOn(state(), *side) : Team::Home;
    switch (command) {
    case TableCommand::NextStep:          return performStep();
    case TableCommand::LeftWins:
    case TableCommand::RightWins:         return attempt(RallyWon{team});
    case TableCommand::ServeContacted:    return attempt(ServeContacted{});
    case TableCommand::Replay:            return attempt(Replay{Again::Replay});
    case TableCommand::ReServe:           return attempt(Replay{Again::ReServe});
    case TableCommand::NoServe:           return attempt(NoServe{});
    case TableCommand::LeftSubstitution:
    case TableCommand::RightSubstitution: return startSubstitution(team);
    case TableCommand::LeftTimeOut:
    case TableCommand::RightTimeOut:      return attempt(TimeOut{team});
    case TableCommand::LeftLibero:
    case TableCommand::RightLibero:       return serveByLibero(team);
    case TableCommand::LeftPenalty:
    case TableCommand::RightPenalty:      return askPenalty(team);
    case TableCommand::Remark:            return askRemark();
    case TableCommand::Undo:              return undo();
    case TableCommand::Redo:              return redo();
    case TableCommand::Toss:              return askToss();
    case TableCommand::LeftLineUp:
    case TableCommand::RightLineUp:       return askLineUp(team);
    case TableCommand::LeftRoster:
    case TableCommand::RightRoster:       return askRoster(team);
    case TableCommand::GoToLive:          return goToLiveAsked();
    case TableCommand::PageBack:          return pageAsked(-1);
    case TableCommand::PageOn:            return pageAsked(+1);
    case TableCommand::LiveBand:          return wholePageAsked(false);
    case TableCommand::WholePage:         return wholePageAsked(true);
    case TableCommand::NewMatch:          return newMatchAsked();
    case TableCommand::OpenMatch:         return openMatchAsked();
    case TableCommand::Print:             return print();
    case TableCommand::CloseWindow:       return closeAsked();
    }
}
// clang-format on

void Conductor::performStep() {
    const NextStep next = nextStep(state());
    switch (next.step) {
    case Step::OpenMatch:
        return newMatchAsked();
    case Step::Toss:
        return askToss();
    case Step::LineUp:
        return askLineUp(next.team.value_or(Team::Home));
    case Step::StartSet:
        return attempt(SetStarted{m_stepTime()});
    case Step::Serve:
    case Step::Decide:
        return;
    case Step::EndSet:
        return askSetEnd();
    case Step::CloseMatch:
        return askMatchClosed();
    case Step::Resume:
        return attempt(Resumed{});
    case Step::Print:
        return print();
    }
}

void Conductor::undo() {
    m_bars.dismiss();
    m_recorder.undo();
}

void Conductor::redo() {
    m_bars.dismiss();
    m_recorder.redo();
}

void Conductor::print() {
    m_bars.dismiss();
    m_dialogs.print(&m_window, m_recorder.file());
}

void Conductor::attempt(const Entry& entry) {
    attemptAndExplain(entry);
}

Outcome Conductor::attemptAndExplain(const Entry& entry) {
    m_bars.dismiss();
    Outcome outcome = m_recorder.attempt(entry);
    if (const auto* objected = std::get_if<Objected>(&outcome))
        explain(entry, objected->findings);
    return outcome;
}

void Conductor::explain(const Entry& entry, const Findings& findings) {
    const QString words = inWords(findings, state());
    if (isRefused(findings)) {
        Q_EMIT refused(words);
        return;
    }
    ask({.title = Table::tr("Against the rulebook: the referee decides"),
         .sentence = words,
         .prompt = Table::tr("The referee allows it: why"),
         .button = Table::tr("Allowed"),
         .warns = true},
        [this, entry](const QString& reason) { return m_recorder.overrule(entry, reason); });
}

void Conductor::ask(const Question& question, const std::function<Outcome(const QString&)>& record) {
    m_bars.ask().ask(question, [this, question, record](const QString& line) {
        if (!std::holds_alternative<Failed>(record(line)))
            return;
        Question again = question;
        again.line = line;
        ask(again, record);
    });
}

void Conductor::startSubstitution(Team team) {
    // A substitution of anybody would be refused now: say so before numbers are typed.
    const auto six = sixOf(state(), team);
    const ShirtNumber anybody = six.empty() ? ShirtNumber(0) : six.front().number;
    const Findings findings = m_recorder.judge(Substitution{team, ShirtNumber(0), anybody});
    if (isRefused(findings)) {
        m_bars.dismiss();
        Q_EMIT refused(inWords(findings, state()));
        return;
    }
    m_bars.substitution().open(team);
}

void Conductor::serveByLibero(Team team) {
    const TeamInSet& own = state().set().teams[team];
    const std::vector<ShirtNumber>& liberos = liberosOf(own);
    if (own.liberoServing)
        return attempt(LiberoServe{team, *own.liberoServing, LiberoServing::Ends});
    if (liberos.empty()) {
        m_bars.dismiss();
        Q_EMIT refused(fill(Table::tr("%1 has named no libero for this set: its line-up says who serves."),
                            {codeOf(state(), team)}));
        return;
    }
    if (liberos.size() == 1 || isRefused(m_recorder.judge(LiberoServe{team, liberos.front()})))
        return attempt(LiberoServe{team, liberos.front()});
    m_bars.choice().ask(fill(Table::tr("Libero of %1 serves"), {codeOf(state(), team)}), Table::tr("Which one serves?"),
                        liberos, [this, team](ShirtNumber number) {
                            attempt(LiberoServe{team, number});
                        });
}

void Conductor::askPenalty(Team team) {
    const Findings findings = m_recorder.judge(PenaltyPoint{team, {}});
    if (isRefused(findings)) {
        m_bars.dismiss();
        Q_EMIT refused(inWords(findings, state()));
        return;
    }
    ask({.title = fill(Table::tr("Penalty point to %1"), {codeOf(state(), team)}),
         .sentence = Table::tr("A point without a rally, on the referee's word."),
         .prompt = Table::tr("What for"),
         .button = Table::tr("Record")},
        [this, team](const QString& reason) {
            return attemptAndExplain(PenaltyPoint{team, reason});
        });
}

void Conductor::askRemark() {
    ask({.title = Table::tr("Remark"),
         .sentence = Table::tr("It is written among the remarks of this set."),
         .prompt = Table::tr("One sentence"),
         .button = Table::tr("Record")},
        [this](const QString& text) { return attemptAndExplain(Remark{text}); });
}

void Conductor::askToss() {
    m_bars.dismiss();
    record(m_dialogs.toss(&m_window, state()));
}

void Conductor::askLineUp(Team team) {
    m_bars.dismiss();
    for (const Answer& answer : m_dialogs.lineUp(&m_window, state(), team))
        record(answer);
}

void Conductor::askRoster(Team team) {
    m_bars.dismiss();
    record(m_dialogs.roster(&m_window, state(), team));
}

void Conductor::askSetEnd() {
    m_bars.dismiss();
    record(m_dialogs.setEnd(&m_window, state(), m_recorder.clock().timeOfDay()));
}

void Conductor::askMatchClosed() {
    m_bars.dismiss();
    record(m_dialogs.closeMatch(&m_window, state()));
}

void Conductor::record(const std::optional<Answer>& answer) {
    if (!answer)
        return;
    if (answer->overruled)
        m_recorder.overrule(answer->entry, *answer->overruled);
    else
        attempt(answer->entry);
}

} // namespace setfolio
