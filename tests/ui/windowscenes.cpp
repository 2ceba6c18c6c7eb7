// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/windowscenes.h"

#include "core/match/fold.h"
#include "core/record/writeup.h"
#include "tests/support/signoffs.h"
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/table/opentable.h"
#include "ui/dialogs/copydialog.h"
#include "ui/dialogs/lineupdialog.h"
#include "ui/dialogs/newmatchdialog.h"
#include "ui/dialogs/officialsdialog.h"
#include "ui/dialogs/rosterdialog.h"
#include "ui/dialogs/rulebookdialog.h"
#include "ui/dialogs/rulebooktable.h"
#include "ui/dialogs/setdialogs.h"
#include "ui/dialogs/startpage.h"
#include "ui/dialogs/tossdialog.h"
#include "ui/practice/practicedialog.h"
#include "ui/practice/practicesession.h"
#include "ui/print/preview.h"
#include "ui/signoff/reopendialog.h"
#include "ui/signoff/signoffdialog.h"
#include "ui/table/noticeband.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/openwords.h"
#include "ui/wording/tablewords.h"

#include <QApplication>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace setfolio::testing {

namespace {

const QLocale unitedStates(QLocale::English, QLocale::UnitedStates);

/// The match with the rosters of the dialogs, in a set that has begun.
MatchBuilder inPlay() {
    return linedUp().start();
}

ShownWindow table(const MatchBuilder& match, const std::function<void(OpenTable&)>& then = {}) {
    auto opened = std::make_shared<OpenTable>(match, smallestRoom);
    if (then)
        then(*opened);
    QWidget* window = &opened->window();
    return {opened, window};
}

ShownWindow shown(const std::shared_ptr<QWidget>& window) {
    showActive(*window);
    return {window, window.get()};
}

template <typename Window, typename... Arguments>
ShownWindow make(Arguments&&... arguments) {
    return shown(std::make_shared<Window>(std::forward<Arguments>(arguments)...));
}

/// Every band that can be over the sheet at once.
void tellAll(OpenTable& opened) {
    auto* band = opened.find<NoticeBand>("noticeBand");
    band->tell(BandKind::NotRecorded, notRecorded(sentence(FileError{FileError::Code::CannotWrite, opened.path(),
                                                                     u"No space left on device"_s})));
    band->tell(BandKind::TailSetAside, sentence(TornTail{6, {}, opened.path() + u".torn-1"_s}, opened.path()));
}

ShownWindow readOnlyTable() {
    struct Two {
        OpenTable first{inPlay(), smallestRoom};
        std::unique_ptr<TableWindow> second;
    };
    auto two = std::make_shared<Two>();
    auto file = MatchFile::open(two->first.path(), Ledger::Access::ReadWrite);
    const Clock clock{[] { return QDateTime(QDate(2026, 10, 14), QTime(22, 0), Qt::UTC); },
                      [] { return QTime(18, 0); }};
    two->second = std::make_unique<TableWindow>(std::move(file.value()), clock, SheetFonts::load().value());
    two->second->setWindowState(Qt::WindowNoState);
    two->second->resize(smallestRoom);
    showActive(*two->second);
    QWidget* window = two->second.get();
    return {two, window};
}

/// The longest sentences that a story can hold over the sheet.
ShownWindow practiceTable() {
    Story story = practiceStory(u"4-wrong-server"_s);
    auto opened = std::make_shared<OpenTable>(std::span<const Recorded>(story.given), smallestRoom);
    auto* session = new PracticeSession(opened->window(), story, Pace::Slow, {});
    while (!std::holds_alternative<WrongServer>(story.steps[session->reader().told()].told.entry))
        session->reader().tellNext();
    session->reader().tellNext();
    QCoreApplication::processEvents(); // it finds its room
    QWidget* window = &opened->window();
    return {opened, window};
}

Compared twoSheets() {
    const Story story = practiceStory(u"5-corrected-call"_s);
    const MatchRecord right = writeUp(story.right);
    return {right.sets.front(), writeUp(rightAfter(story, 20)).sets.front(), fold(story.right)};
}

ShownWindow startPage() {
    std::vector<RecentMatch> recent;
    for (int i = 0; i < 8; ++i)
        recent.push_back({u"/matches/2026-10-1%1-SAL-QRL.setfolio"_s.arg(i), matchTitle(withRosters().state()),
                          u"1%1 October 2026, SAL 3–1 QRL in sets"_s.arg(i)});
    const ShownWindow made = make<StartPage>(recent);
    qobject_cast<StartPage*>(made.window)
        ->offerLanguages({allLanguages.begin(), allLanguages.end()}, Language::English);
    return made;
}

/// A set with something of everything that a review can hold.
MatchBuilder reviewed() {
    MatchBuilder match;
    match.open(3, signedBySet()).toss(Team::Home);
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    match.play("hhvh").substitute(Team::Home, 7, 2).add(TimeOut{Team::Visitors}).play("h");
    match.add(Sanction{Team::Home, Member{ShirtNumber(4)}, SanctionLevel::Warning, u"words"_s}).play("hh").undo();
    for (int i = 0; i < 19; ++i)
        match.add(RallyWon{Team::Home});
    return match.add(SetEnded{QTime(18, 59)});
}

MatchBuilder answered() {
    MatchBuilder match = oneSetPlayed();
    std::vector<Entry> entries = signOffEntries(signedBySet(), 1);
    entries.pop_back();
    for (const Entry& entry : entries)
        match.add(entry);
    return match;
}

/// The sign-off of set 1, after presses on the buttons of these names.
ShownWindow signOff(const MatchBuilder& match, std::initializer_list<const char*> presses) {
    struct Signing {
        QTemporaryDir folder;
        std::unique_ptr<Recorder> recorder;
        std::unique_ptr<SignOffDialog> dialog;
    };
    auto signing = std::make_shared<Signing>();
    auto file = MatchFile::create(signing->folder.filePath(u"match.setfolio"_s));
    for (const Recorded& recorded : match.entries())
        if (!file->record(recorded.entry, recorded.time, recorded.overruled, recorded.placed))
            qFatal("not recorded");
    const Clock clock{[] { return QDateTime(QDate(2026, 10, 14), QTime(22, 0), Qt::UTC); },
                      [] { return QTime(18, 0); }};
    signing->recorder = std::make_unique<Recorder>(std::move(*file), clock);
    signing->dialog = std::make_unique<SignOffDialog>(*signing->recorder, 1, SheetFonts::load().value());
    showActive(*signing->dialog);
    for (const char* name : presses)
        signing->dialog->findChild<QPushButton*>(QLatin1String(name))->click();
    QWidget* window = signing->dialog.get();
    return {signing, window};
}

MatchDraft draft() {
    const MatchState last = linedUp().state();
    MatchDraft draft = draftAfter(last);
    draft.opened.date = QDate(2026, 10, 14);
    draft.opened.teams = last.opened->teams;
    draft.rosters.visitors = rowsOf(last.rosters.visitors.players);
    return draft;
}

ShownWindow newMatch(int page, const MatchDraft& from) {
    const ShownWindow made = make<NewMatchDialog>(from, u"/matches/of the season/2026"_s, unitedStates);
    for (int turned = 1; turned < page; ++turned)
        childOf<QPushButton>(*made.window, "next")->click();
    return made;
}

ShownWindow newMatchWithProblems() {
    MatchDraft from = draft();
    from.rosters.home.push_back({u"7"_s, u"Twice Over"_s, false, false});
    const ShownWindow made = newMatch(2, from);
    childOf<QPushButton>(*made.window, "record")->click();
    return made;
}

ShownWindow rulebook(const QString& key, const char* pressed = nullptr) {
    const Rulebook base = withRosters().state().rulebook();
    RulebookDraft adapted(base, copyToAdapt(base, u"Estuary League"_s, {}));
    static_cast<void>(adapted.setValue(u"cap"_s, 27));
    const ShownWindow made = make<RulebookDialog>(adapted.own(), RulebookShelf(), QStringList());
    if (pressed)
        childOf<QPushButton>(*made.window, pressed)->click();
    childOf<RulebookTable>(*made.window, "settings")->choose(key);
    QApplication::processEvents();
    return made;
}

MatchState threeSetsWon() {
    MatchBuilder match = withRosters();
    match.toss(Team::Home);
    for (int set = 0; set < 3; ++set)
        match.lineUp(Team::Home, {1, 3, 4, 7, 8, 9})
            .lineUp(Team::Visitors, {2, 4, 5, 8, 9, 10})
            .add(SetStarted{QTime(18 + set, 30)})
            .play("hhhhhhhhhhhhhhhhhhhhhhhhh")
            .add(SetEnded{QTime(18 + set, 52)});
    return match.state();
}

ShownWindow lineUps(const MatchState& state, const char* typed) {
    const ShownWindow made = make<LineUpDialog>(state, Team::Home);
    typeInto(*made.window, QString::fromLatin1(typed));
    return made;
}

ShownWindow preview() {
    PreviewOptions options;
    options.locale = unitedStates;
    options.utcNow = [] { return QDateTime(QDate(2026, 10, 14), QTime(22, 0), Qt::UTC); };
    MatchBuilder match = setWon();
    match.add(SetEnded{});
    const MatchRecord record = match.record();
    return make<Preview>(PrintedMatch{record, match.entries()}, SheetFonts::load().value(), options);
}

ShownWindow previewWithSentence() {
    const ShownWindow made = preview();
    auto* window = qobject_cast<Preview*>(made.window);
    static_cast<void>(
        window->saveTo(u"/nowhere/"_s + QString(50, u'w') + u"/"_s + QString(50, u'w') + u"/sheets.pdf"_s));
    QApplication::processEvents();
    return made;
}

/// With the longest sentence about where it was saved.
ShownWindow copyOf(Names names) {
    const MatchBuilder match = linedUp();
    const ShownWindow made = make<CopyDialog>(match.entries(), u"/matches"_s);
    auto* window = qobject_cast<CopyDialog*>(made.window);
    if (names == Names::LeftOut)
        childOf<QPushButton>(*window, "numbersOnly")->click();
    static_cast<void>(window->saveTo(u"/nowhere/"_s + QString(50, u'w') + u"/"_s + QString(50, u'w') + u".setfolio"_s));
    QApplication::processEvents();
    return made;
}

void press(OpenTable& opened, std::initializer_list<Qt::Key> keys) {
    for (const Qt::Key key : keys)
        opened.press(key);
}

std::vector<WindowScene> joined(std::vector<WindowScene> scenes, const std::vector<WindowScene>& more) {
    scenes.insert(scenes.end(), more.begin(), more.end());
    return scenes;
}

std::vector<WindowScene> rulebookScenes() {
    return {
        {"rulebook: a number", [] { return rulebook(u"time-outs"_s); }},
        {"rulebook: a number that may be absent", [] { return rulebook(u"cap"_s); }},
        {"rulebook: a word", [] { return rulebook(u"change-sides"_s); }},
        {"rulebook: long words", [] { return rulebook(u"default-result"_s); }},
        {"rulebook: numbers", [] { return rulebook(u"substitution-notices"_s); }},
        {"rulebook: a ladder", [] { return rulebook(u"conduct-ladder"_s); }},
        {"rulebook: who signs", [] { return rulebook(u"signing-order"_s); }},
        {"rulebook: a rule without a value", [] { return rulebook(u"rotation-order"_s); }},
        {"rulebook: only what differs", [] { return rulebook(u"cap"_s, "show1"); }},
        {"rulebook: only open points", [] { return rulebook(u"protest"_s, "show2"); }},
        {"rulebook that cannot be kept", [] { return rulebook(u"cap"_s, "record"); }},
    };
}

std::vector<WindowScene> signOffScenes() {
    return {
        {"sign-off: review", [] { return signOff(reviewed(), {}); }},
        {"sign-off: signatures",
         [] {
             return signOff(reviewed(), {"next", "underProtest"});
         }},
        {"sign-off: left unsigned",
         [] {
             return signOff(reviewed(), {"next", "leftUnsigned"});
         }},
        {"sign-off: to be sealed", [] { return signOff(answered(), {"next"}); }},
        {"sign-off: sealed", [] { return signOff(oneSetSealed(), {"next"}); }},
        {"reopening", [] { return make<ReopenDialog>(oneSetSealed().state(), 1); }},
    };
}

std::vector<WindowScene> dialogScenes() {
    return {
        {"start page", startPage},
        {"start page without matches", [] { return make<StartPage>(std::vector<RecentMatch>()); }},
        {"new match: match", [] { return newMatch(1, draft()); }},
        {"new match: home team", [] { return newMatch(2, draft()); }},
        {"new match: visitors", [] { return newMatch(3, draft()); }},
        {"new match: officials", [] { return newMatch(4, draft()); }},
        {"new match with something to mend", newMatchWithProblems},
        {"roster", [] { return make<RosterDialog>(withRosters().state(), Team::Home); }},
        {"officials", [] { return make<OfficialsDialog>(withRosters().state()); }},
        {"toss", [] { return make<TossDialog>(withRosters().state()); }},
        {"toss that is refused", [] { return make<TossDialog>(inPlay().state()); }},
        {"line-ups", [] { return lineUps(withRosters().toss(Team::Home).state(), "3478"); }},
        {"line-ups against the rules", [] { return lineUps(withRosters().toss(Team::Home).state(), "3478999"); }},
        {"line-ups of a later set", [] { return lineUps(setWon().add(SetEnded{}).state(), ""); }},
        {"end of a set", [] { return make<SetEndDialog>(setWon().state(), QTime(18, 59), unitedStates); }},
        {"end of a set that goes on", [] { return make<SetEndDialog>(inPlay().state(), QTime(18, 59), unitedStates); }},
        {"close of the match", [] { return make<MatchCloseDialog>(threeSetsWon(), unitedStates); }},
        {"practice", [] { return make<PracticeDialog>(); }},
        {"practice at the table", practiceTable},
        {"comparison of two sheets", [] { return make<ComparisonDialog>(twoSheets()); }},
        {"preview", preview},
        {"a copy", [] { return copyOf(Names::Given); }},
        {"a copy with numbers only", [] { return copyOf(Names::LeftOut); }},
        {"preview with a long sentence", previewWithSentence},
    };
}

} // namespace

const std::vector<WindowScene>& windowScenes() {
    using enum Qt::Key;
    static const std::vector<WindowScene> windows{
        {"table before the toss", [] { return table(withRosters()); }},
        {"table before the line-ups", [] { return table(withRosters().toss(Team::Visitors)); }},
        {"table before the set", [] { return table(linedUp()); }},
        {"table in a rally", [] { return table(inPlay().play("hvhs")); }},
        {"table late in a set",
         [] { return table(inPlay().play("hvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvhvh")); }},
        {"table with a substitution", [] { return table(inPlay(), [](OpenTable& t) {
                                               press(t, {Key_S, Key_2});
                                           }); }},
        {"table with a substitution against the rules",
         [] {
             return table(inPlay().substitute(Team::Home, 10, 1), [](OpenTable& t) {
                 press(t, {Key_S});
                 t.type("10");
             });
         }},
        {"table with a time-out", [] { return table(inPlay().play("hv"), [](OpenTable& t) { press(t, {Key_D}); }); }},
        {"table asking for the referee's word",
         [] {
             return table(inPlay().add(TimeOut{Team::Home}).add(TimeOut{Team::Home}),
                          [](OpenTable& t) { press(t, {Key_D}); });
         }},
        {"table with a remark", [] { return table(inPlay(), [](OpenTable& t) { press(t, {Key_M}); }); }},
        {"table with bands", [] { return table(inPlay(), tellAll); }},
        {"table that is read-only", readOnlyTable},
        {"table after a set", [] { return table(setWon()); }},
        {"table between two sets", [] { return table(setWon().add(SetEnded{QTime(18, 59)})); }},
    };
    static const std::vector<WindowScene> scenes =
        joined(joined(joined(joined(joined(windows, dialogScenes()), barScenes()), bookScenes()), rulebookScenes()),
               signOffScenes());
    return scenes;
}

} // namespace setfolio::testing
