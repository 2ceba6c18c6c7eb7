// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/conductor.h"

#include "core/match/signoff.h"
#include "ui/table/bench.h"
#include "ui/table/cardbar.h"
#include "ui/table/choicebar.h"
#include "ui/table/deckview.h"
#include "ui/table/formbar.h"
#include "ui/table/inlinebars.h"
#include "ui/table/keys.h"
#include "ui/table/liberobar.h"
#include "ui/table/repairbar.h"
#include "ui/table/serverbar.h"
#include "ui/table/substitutionbar.h"
#include "ui/table/tableforms.h"
#include "ui/wording/fill.h"
#include "ui/wording/findingwords.h"
#include "ui/wording/names.h"
#include "ui/wording/nextstep.h"

#include <QCoreApplication>

#include <algorithm>

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

/// The finding that says what is sealed; none where no seal is in the way.
const Finding* sealAgainst(const Findings& findings) {
    const auto found = std::ranges::find(findings, FindingKind::IsSealed, &Finding::kind);
    return found == findings.end() ? nullptr : &*found;
}

/// Commands that say by themselves what a seal means to them, or have nothing to do with it.
bool leavesSealAlone(TableCommand command) {
    using C = TableCommand;
    return command == C::NextStep || command == C::SignOff || command == C::Reopen || command == C::Undo ||
           command == C::Redo || command == C::Correct;
}

Qt::Key keyOf(TableCommand command) {
    const QList<QKeySequence> keys = keysOf(command);
    return keys.isEmpty() || keys.first().isEmpty() ? Qt::Key_unknown : keys.first()[0].key();
}

} // namespace

Conductor::Conductor(Recorder& recorder, InlineBars& bars, TableDialogs dialogs, std::function<QTime()> stepTime,
                     QWidget& window)
    : QObject(&window),
      m_recorder(recorder),
      m_bars(bars),
      m_dialogs(std::move(dialogs)),
      m_stepTime(std::move(stepTime)),
      m_window(window) {
    connect(&m_bars.repair(), &RepairBar::sealMet, this, &Conductor::correct);
}

void Conductor::perform(TableCommand command) {
    Q_EMIT refused({});
    // Where all that could be written is sealed, it is reopened before anything is asked: the least entry shows it.
    const bool writes = infoOf(command).records && !leavesSealAlone(command);
    if (writes && state().opened) {
        const Findings findings = m_recorder.judge(Remark{});
        if (sealAgainst(findings) && !reopenFor(findings))
            return;
    }
    performUnsealed(command);
}

// clang-format off
void Conductor::performUnsealed(TableCommand command) {
    const std::optional<Side> side = infoOf(command).side;
    const Team team = side ? teamOn(state(), *side) : Team::Home;
    switch (command) {
    case TableCommand::NextStep:          return performStep();
    case TableCommand::LeftWins: case TableCommand::RightWins: return attempt(RallyWon{team});
    case TableCommand::ServeContacted:    return attempt(ServeContacted{});
    case TableCommand::Replay:            return attempt(Replay{Again::Replay});
    case TableCommand::ReplayBecause:     return m_bars.form().ask(replayForm());
    case TableCommand::ReServe:           return attempt(Replay{Again::ReServe});
    case TableCommand::NoServe:           return attempt(NoServe{});
    case TableCommand::LeftSubstitution:
    case TableCommand::RightSubstitution: return startSubstitution(team);
    case TableCommand::LeftTimeOut: case TableCommand::RightTimeOut: return attempt(TimeOut{team});
    case TableCommand::LeftLibero:
    case TableCommand::RightLibero:       return startLibero(team, keyOf(command));
    case TableCommand::WhoServes:         return m_bars.server().open();
    case TableCommand::LeftCard: case TableCommand::RightCard: return m_bars.card().open(team);
    case TableCommand::LeftIllegalPlayer:
    case TableCommand::RightIllegalPlayer: return m_bars.form().ask(illegalPlayerForm(state(), team));
    case TableCommand::LeftCaptain: case TableCommand::RightCaptain: return nameCaptain(team);
    case TableCommand::LeftRedesignation:
    case TableCommand::RightRedesignation: return redesignate(team);
    case TableCommand::SidesChanged:      return attempt(SidesChanged{});
    case TableCommand::ComparedAgrees:    return attempt(SheetCompared{});
    case TableCommand::ComparedDiffers:   return askDifference();
    case TableCommand::Suspend:           return askSuspended();
    case TableCommand::Forfeit:           return askForfeit();
    case TableCommand::Correct:           return correct({});
    case TableCommand::LeftPenalty:
    case TableCommand::RightPenalty:      return askPenalty(team);
    case TableCommand::Remark:            return askRemark();
    case TableCommand::Undo: return undo();  case TableCommand::Redo: return redo();
    case TableCommand::Toss:              return askToss();
    case TableCommand::LeftLineUp:
    case TableCommand::RightLineUp:       return askLineUp(team);
    case TableCommand::LeftRoster:
    case TableCommand::RightRoster:       return askRoster(team);
    case TableCommand::Officials:         return askOfficials();
    case TableCommand::GoToLive:          return goToLiveAsked();
    case TableCommand::PageBack: return pageAsked(-1);  case TableCommand::PageOn: return pageAsked(+1);
    case TableCommand::LiveBand:          return sightAsked(Sight::LiveBand);
    case TableCommand::WholePage:         return sightAsked(Sight::WholePage);
    case TableCommand::PageWidth:         return sightAsked(Sight::PageWidth);
    case TableCommand::Larger: return zoomAsked(+1);  case TableCommand::Smaller: return zoomAsked(-1);
    case TableCommand::NewMatch: return newMatchAsked();  case TableCommand::OpenMatch: return openMatchAsked();
    case TableCommand::SignOff:           return signOffAsked();
    case TableCommand::Reopen:            return reopenAsked();
    case TableCommand::Print:             return print();
    case TableCommand::SaveCopy:          return saveCopy();
    case TableCommand::TeamBook:          return teamBookAsked();
    case TableCommand::CloseWindow:       return closeAsked();
    case TableCommand::Help:              return helpAsked();
    case TableCommand::ChangeKeys:        return keysAsked();
    }
}
// clang-format on

void Conductor::performStep() {
    const NextStep next = nextStep(state(), isSignOffPutOff());
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
    case Step::SignOff:
        return signOff(next.set);
    case Step::Resume:
        return askResumed();
    case Step::Print:
        return print();
    }
}

void Conductor::signOffAsked() {
    std::optional<SignedPart> part = firstSignOffDue(state());
    if (!part)
        part = newestSealed(state());
    if (part)
        return signOff(part->set);
    m_bars.dismiss();
    Q_EMIT refused(
        Table::tr("There is nothing to sign yet: a set is signed after its end, the match when it is closed."));
}

void Conductor::signOff(std::optional<int> set) {
    m_bars.dismiss();
    m_dialogs.signOff(&m_window, m_recorder, set);
    m_putOff = moment();
    const std::optional<SignedPart> due = firstSignOffDue(state());
    if (!due || due->set != set)
        m_putOff.reset(); // it is done; what is due beside it was not seen yet
    Q_EMIT stepChanged();
}

bool Conductor::isSignOffPutOff() const {
    return m_putOff == moment();
}

void Conductor::reopenAsked() {
    m_bars.dismiss();
    if (const std::optional<SignedPart> part = newestSealed(state())) {
        reopen(part->set);
        return;
    }
    Q_EMIT refused(Table::tr("Nothing is sealed: it can be changed as it is."));
}

bool Conductor::reopen(std::optional<int> set) {
    const std::optional<Answer> answer = m_dialogs.reopen(&m_window, state(), set);
    if (!answer)
        return false;
    m_putOff.reset();
    const Outcome outcome = m_recorder.attempt(answer->entry);
    if (const auto* objected = std::get_if<Objected>(&outcome))
        Q_EMIT refused(inWords(objected->findings, state()));
    return std::holds_alternative<Acknowledged>(outcome);
}

bool Conductor::reopenFor(const Findings& findings) {
    const Finding* seal = sealAgainst(findings);
    m_bars.dismiss();
    return seal && reopen(seal->count == 0 ? std::nullopt : std::optional(seal->count));
}

/// A seal is not undone: after it was reopened, what it covered is corrected or undone by another press.
void Conductor::undo() {
    m_bars.dismiss();
    if (m_recorder.place())
        return m_recorder.giveUpPlace(); // nothing is recorded there yet
    const Outcome outcome = m_recorder.undo();
    if (const auto* objected = std::get_if<Objected>(&outcome); objected && !reopenFor(objected->findings))
        Q_EMIT refused(inWords(objected->findings, state()));
}

void Conductor::redo() {
    m_bars.dismiss();
    m_recorder.giveUpPlace();
    const Outcome outcome = m_recorder.redo();
    if (const auto* objected = std::get_if<Objected>(&outcome); objected && !reopenFor(objected->findings))
        Q_EMIT refused(inWords(objected->findings, state()));
}

void Conductor::print() {
    m_bars.dismiss();
    m_dialogs.print(&m_window, m_recorder.file());
}

void Conductor::saveCopy() {
    m_bars.dismiss();
    m_dialogs.saveCopy(&m_window, m_recorder.file());
}

void Conductor::attempt(const Entry& entry) {
    attemptAndExplain(entry);
}

Outcome Conductor::attemptAndExplain(const Entry& entry) {
    if (m_recorder.place()) {
        m_bars.repair().confirm(entry);
        return Objected{}; // nothing is recorded yet
    }
    m_bars.dismiss();
    Outcome outcome = m_recorder.attempt(entry);
    if (const auto* objected = std::get_if<Objected>(&outcome))
        explain(entry, objected->findings);
    return outcome;
}

void Conductor::explain(const Entry& entry, const Findings& findings) {
    const QString words = inWords(findings, state());
    if (sealAgainst(findings) && reopenFor(findings))
        return attempt(entry);
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

void Conductor::startSubstitution(Team team, std::optional<ShirtNumber> out) {
    // A substitution of anybody would be refused now: say so before numbers are typed.
    const auto six = sixOf(state(), team);
    const ShirtNumber anybody = six.empty() ? ShirtNumber(0) : six.front().number;
    const Findings findings = m_recorder.judge(Substitution{team, ShirtNumber(0), anybody});
    if (isRefused(findings)) {
        m_bars.dismiss();
        Q_EMIT refused(inWords(findings, state()));
        return;
    }
    m_bars.substitution().open(team, out);
}

void Conductor::replace(const CourtPlayer& player) {
    Q_EMIT refused({});
    if (player.libero)
        return startLibero(player.team, sideOf(state(), player.team) == Side::Left ? Qt::Key_F : Qt::Key_J);
    const TeamInSet& own = state().set().teams[player.team];
    const ShirtNumber out = toLeave(own, slotAt(state().set(), player.team, player.position));
    startSubstitution(player.team, out.isValid() ? std::optional(out) : std::nullopt);
}

void Conductor::correct(EntryNumber entry) {
    if (m_recorder.isReadOnly())
        return;
    m_recorder.giveUpPlace();
    if (entry.value != 0) {
        const Findings findings = m_recorder.judge(Strike{entry, {}});
        if (sealAgainst(findings) && !reopenFor(findings))
            return;
    }
    m_bars.repair().open(entry);
}

void Conductor::startLibero(Team team, Qt::Key key) {
    if (!liberosOf(state().set().teams[team]).empty())
        return m_bars.libero().open(team, key);
    m_bars.dismiss();
    Q_EMIT refused(
        fill(Table::tr("%1 has named no libero for this set: its line-up says who serves."), {codeOf(state(), team)}));
}

void Conductor::nameCaptain(Team team) {
    std::vector<ShirtNumber> numbers;
    for (const BenchPlayer& player : sixOf(state(), team))
        numbers.push_back(player.number);
    m_bars.choice().ask(fill(Table::tr("Playing captain of %1"), {codeOf(state(), team)}),
                        Table::tr("Who is captain on court from now on?"), numbers, [this, team](ShirtNumber number) {
                            attempt(CaptainNamed{team, number});
                        });
}

void Conductor::redesignate(Team team) {
    if (liberosOf(state().set().teams[team]).empty())
        return startLibero(team, Qt::Key_unknown);
    m_bars.form().ask(redesignationForm(state(), team));
}

void Conductor::askForfeit() {
    m_bars.form().ask(forfeitForm(state()));
}

void Conductor::askResumed() {
    m_bars.form().ask(resumptionForm(state()));
}

void Conductor::askSuspended() {
    ask({.title = Table::tr("Suspend play"),
         .sentence = Table::tr("Nothing is played until the first referee resumes play."),
         .prompt = Table::tr("Why is play broken off?"),
         .button = Table::tr("Suspend")},
        [this](const QString& reason) { return attemptAndExplain(Suspended{reason}); });
}

void Conductor::askDifference() {
    ask({.title = Table::tr("Compared with the scoreboard"),
         .sentence = Table::tr("The sheet stands until the referees have settled it."),
         .prompt = Table::tr("What differs"),
         .button = Table::tr("Record")},
        [this](const QString& text) { return attemptAndExplain(SheetCompared{text}); });
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

void Conductor::askOfficials() {
    m_bars.dismiss();
    record(m_dialogs.officials(&m_window, state()));
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
    if (answer->overruled && !m_recorder.place())
        m_recorder.overrule(answer->entry, *answer->overruled);
    else
        attempt(answer->entry);
}

} // namespace setfolio
