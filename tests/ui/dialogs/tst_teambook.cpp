// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/delimited.h"
#include "ui/dialogs/newmatchdialog.h"
#include "ui/dialogs/rostercsv.h"
#include "ui/dialogs/rostereditor.h"
#include "ui/dialogs/rostertext.h"
#include "ui/dialogs/teambook.h"
#include "ui/dialogs/teambookdialog.h"
#include "ui/dialogs/teampage.h"

#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>

using namespace Qt::Literals::StringLiterals;
using namespace setfolio;
using namespace setfolio::testing;

namespace {

BookTeam herons() {
    return {{},
            {u"Saltmarsh Herons"_s, u"SAL"_s, u"navy"_s},
            u"M. Aldous"_s,
            {{ShirtNumber(7), u"Ada Lund"_s, true, false}, {ShirtNumber(2), {}, false, true}}};
}

BookTeam larks() {
    return {{}, {u"Quarry Ridge Larks"_s, u"QRL"_s, {}}, {}, {{ShirtNumber(11), {}, false, false}}};
}

/// A book in a folder of its own.
struct Book {
    QTemporaryDir folder;
    TeamBook book{folder.filePath(u"teams"_s)};

    [[nodiscard]] QStringList names() const {
        QStringList names;
        for (const BookTeam& team : book.content().teams)
            names << team.team.name;
        return names;
    }
};

/// What a team is, wherever it is kept.
BookTeam withoutFile(BookTeam team) {
    team.file.clear();
    return team;
}

struct Shown {
    explicit Shown(const Book& in, const MatchState& match = {}) : dialog(in.book, match) { showActive(dialog); }
    template <typename Child>
    [[nodiscard]] Child* find(const char* name) {
        return childOf<Child>(dialog, name);
    }
    void click(const char* name) { QTest::mouseClick(find<QPushButton>(name), Qt::LeftButton); }
    [[nodiscard]] QString said() { return find<QLabel>("said")->text(); }

    TeamBookDialog dialog;
};

} // namespace

class TestTeamBook : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aTeamComesBackAsItWasKept();
    void teamsStandByTheirNames();
    void aTeamOfTheSameNameIsReplaced();
    void noNameLeadsOutOfTheFolder_data();
    void noNameLeadsOutOfTheFolder();
    void whatIsNoTeamIsToldAndLeft();
    void aTeamIsTypedAndKept();
    void aTeamIsDeletedAndBroughtBack();
    void aDeletedTeamGoesWhenTheBookIsKept();
    void nothingIsWrittenWhenItIsCancelled();
    void aTeamOfTheMatchIsTakenOver();
    void aTeamNeedsANameOfItsOwn();
    void aNewMatchTakesATeamFromTheBook();
    void aNewMatchKeepsATeamInTheBook();
    void theLastMatchGivesItsTeamsAndOfficials();
    void aRosterGoesIntoACsvFileAndBack();
    void cellsThatWouldReckonAreMadeHarmless_data();
    void cellsThatWouldReckonAreMadeHarmless();
    void aCsvFileIsReadHoweverItIsWritten_data();
    void aCsvFileIsReadHoweverItIsWritten();
    void aRosterIsSavedFromItsEditor();
    void aFileThatCannotBeWrittenIsTold();
};

void TestTeamBook::aTeamComesBackAsItWasKept() {
    const Book book;
    QVERIFY(book.book.keep(herons()));
    const auto teams = book.book.content().teams;
    QCOMPARE(teams.size(), std::size_t(1));
    QVERIFY(!teams.front().file.isEmpty());
    QVERIFY(withoutFile(teams.front()) == herons());
}

void TestTeamBook::teamsStandByTheirNames() {
    const Book book;
    QVERIFY(book.book.keep(herons()));
    QVERIFY(book.book.keep(larks()));
    QCOMPARE(book.names(), (QStringList{u"Quarry Ridge Larks"_s, u"Saltmarsh Herons"_s}));
}

void TestTeamBook::aTeamOfTheSameNameIsReplaced() {
    const Book book;
    QVERIFY(book.book.keep(herons()));
    BookTeam changed = herons();
    changed.coach = u"J. Fenn"_s;
    QVERIFY(book.book.keep(changed));
    QCOMPARE(book.book.content().teams.size(), std::size_t(1));
    QCOMPARE(book.book.content().teams.front().coach, u"J. Fenn"_s);
}

void TestTeamBook::noNameLeadsOutOfTheFolder_data() {
    QTest::addColumn<QString>("name");
    QTest::newRow("a way up") << u"../../herons"_s;
    QTest::newRow("a root") << u"/herons"_s;
    QTest::newRow("signs alone") << u"..//"_s;
    QTest::newRow("letters of another script") << u"Чайки"_s;
    QTest::newRow("very long") << QString(300, u'h');
}

void TestTeamBook::noNameLeadsOutOfTheFolder() {
    QFETCH(QString, name);
    const Book book;
    BookTeam team = larks();
    team.team.name = name;
    QVERIFY(book.book.keep(team));
    QCOMPARE(book.names(), QStringList{name});
    QCOMPARE(QDir(book.folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot), QStringList{u"teams"_s});
}

void TestTeamBook::whatIsNoTeamIsToldAndLeft() {
    const Book book;
    QVERIFY(book.book.keep(larks()));
    const QString path = book.folder.filePath(u"teams/other.json"_s);
    write(path, "{\"kind\": \"something else\"}");
    QCOMPARE(book.book.content().unread, QStringList{path});
    Shown shown(book);
    QVERIFY(shown.said().contains(path));
    shown.click("record");
    QVERIFY(QFile::exists(path));
}

void TestTeamBook::aTeamIsTypedAndKept() {
    const Book book;
    Shown shown(book);
    QVERIFY(tabTo(shown.dialog, u"newTeam"_s));
    pressIn(shown.dialog, Qt::Key_Space);
    typeInto(shown.dialog, u"Saltmarsh Herons"_s);
    QCOMPARE(shown.find<QListWidget>("teams")->item(0)->text(), u"Saltmarsh Herons"_s);
    QVERIFY(tabTo(shown.dialog, u"coach"_s));
    typeInto(shown.dialog, u"M. Aldous"_s);
    putOnClipboard(u"7\tAda Lund\tC\n2\t\t\tL\n"_s);
    shown.click("paste");
    shown.click("record");
    QVERIFY(!shown.dialog.isVisible());
    BookTeam typed = herons();
    typed.team.colour.clear();
    QVERIFY(withoutFile(book.book.content().teams.at(0)) == typed);
}

void TestTeamBook::aTeamIsDeletedAndBroughtBack() {
    const Book book;
    QVERIFY(book.book.keep(herons()));
    QVERIFY(book.book.keep(larks()));
    Shown shown(book);
    auto* list = shown.find<QListWidget>("teams");
    QCOMPARE(list->currentItem()->text(), u"Quarry Ridge Larks"_s);
    shown.click("remove");
    QCOMPARE(list->count(), 1);
    QCOMPARE(shown.said(), u"Quarry Ridge Larks is out of the book once it is kept."_s);
    shown.click("bringBackTeam");
    QCOMPARE(list->count(), 2);
    shown.click("record");
    QCOMPARE(book.names(), (QStringList{u"Quarry Ridge Larks"_s, u"Saltmarsh Herons"_s}));
}

void TestTeamBook::aDeletedTeamGoesWhenTheBookIsKept() {
    const Book book;
    QVERIFY(book.book.keep(herons()));
    QVERIFY(book.book.keep(larks()));
    Shown shown(book);
    shown.click("remove");
    QCOMPARE(book.names().size(), 2);
    shown.click("record");
    QCOMPARE(book.names(), QStringList{u"Saltmarsh Herons"_s});
}

void TestTeamBook::nothingIsWrittenWhenItIsCancelled() {
    const Book book;
    QVERIFY(book.book.keep(herons()));
    Shown shown(book);
    shown.click("remove");
    pressIn(shown.dialog, Qt::Key_Escape);
    QVERIFY(shown.dialog.isVisible()); // it asks once
    QVERIFY(shown.said().contains(u"press Cancel or Escape once more"_s));
    pressIn(shown.dialog, Qt::Key_Escape);
    QVERIFY(!shown.dialog.isVisible());
    QCOMPARE(book.names(), QStringList{u"Saltmarsh Herons"_s});
}

void TestTeamBook::aTeamOfTheMatchIsTakenOver() {
    const Book book;
    const MatchState match = withRosters().state();
    Shown shown(book, match);
    shown.click("takeHome");
    shown.click("takeVisitors");
    shown.click("takeHome"); // once more takes the place of the one before
    shown.click("record");
    QCOMPARE(book.names().size(), 2);
    const auto teams = book.book.content().teams;
    for (const Team team : bothTeams)
        QVERIFY(std::ranges::any_of(teams,
                                    [&](const BookTeam& own) { return withoutFile(own) == bookTeamOf(match, team); }));
}

void TestTeamBook::aTeamNeedsANameOfItsOwn() {
    const Book book;
    QVERIFY(book.book.keep(larks()));
    Shown shown(book);
    shown.click("newTeam");
    shown.click("record");
    QCOMPARE(shown.said(), u"A team needs a name: type it, or delete the team."_s);
    typeInto(shown.dialog, u"Quarry Ridge Larks"_s);
    shown.click("record");
    QCOMPARE(shown.said(), u"Two teams are called Quarry Ridge Larks: give one of them another name."_s);
    QCOMPARE(book.names().size(), 1);
}

void TestTeamBook::aNewMatchTakesATeamFromTheBook() {
    const Book book;
    QVERIFY(book.book.keep(herons()));
    NewMatchDialog dialog({}, book.folder.path(), QLocale(QLocale::English));
    dialog.offer(book.book, {});
    showActive(dialog);
    QTest::mouseClick(childOf<QPushButton>(dialog, "next"), Qt::LeftButton);
    auto* page = childOf<TeamPage>(dialog, "homePage");
    auto* menu = childOf<QMenu>(*page, "bookTeams");
    QTimer::singleShot(50, menu, [menu] {
        QTest::keyClick(menu, Qt::Key_Down);
        QTest::keyClick(menu, Qt::Key_Return);
    });
    QTest::mouseClick(childOf<QPushButton>(*page, "fromBook"), Qt::LeftButton);
    QTRY_VERIFY(page->team() == herons());
    QCOMPARE(dialog.draft().rosters.home, rowsOf(herons().players));
}

void TestTeamBook::aNewMatchKeepsATeamInTheBook() {
    const Book book;
    NewMatchDialog dialog({}, book.folder.path(), QLocale(QLocale::English));
    dialog.offer(book.book, {});
    showActive(dialog);
    QTest::mouseClick(childOf<QPushButton>(dialog, "next"), Qt::LeftButton);
    auto* keep = childOf<QPushButton>(*childOf<QWidget>(dialog, "homePage"), "keepTeam");
    auto* said = childOf<QLabel>(dialog, "problem");
    QTest::mouseClick(keep, Qt::LeftButton);
    QCOMPARE(said->text(), u"Give the team a name first: the book finds it by that."_s);
    QVERIFY(book.names().isEmpty());
    QVERIFY(tabTo(dialog, u"name"_s));
    typeInto(dialog, u"Saltmarsh Herons"_s);
    QTest::mouseClick(keep, Qt::LeftButton);
    QCOMPARE(said->text(), u"Saltmarsh Herons is in the team book now."_s);
    QCOMPARE(book.names(), QStringList{u"Saltmarsh Herons"_s});
}

void TestTeamBook::theLastMatchGivesItsTeamsAndOfficials() {
    const Book book;
    const MatchState last =
        withRosters().add(Officials{{{Role::FirstReferee, u"R. Tarn"_s}, {Role::Scorer, u"S. Beck"_s}}}).state();
    NewMatchDialog dialog(draftAfter(last), book.folder.path(), QLocale(QLocale::English));
    dialog.offer(book.book, last);
    showActive(dialog);
    auto* menu = childOf<QMenu>(*childOf<QWidget>(dialog, "visitorsPage"), "bookTeams");
    QStringList offered;
    for (const QAction* action : menu->actions())
        offered << action->text();
    QCOMPARE(offered, (QStringList{last.opened->teams.home.name, last.opened->teams.visitors.name}));
    menu->actions().last()->trigger();
    QVERIFY(childOf<TeamPage>(dialog, "visitorsPage")->team() == bookTeamOf(last, Team::Visitors));
    QCOMPARE(dialog.draft().officials.size(), std::size_t(1)); // the crew stays, referees are new
    QTest::keyClick(&dialog, Qt::Key_4, Qt::AltModifier);
    QTest::mouseClick(childOf<QPushButton>(dialog, "asLast"), Qt::LeftButton);
    QCOMPARE(dialog.draft().officials, last.officials.officials);
}

void TestTeamBook::aRosterGoesIntoACsvFileAndBack() {
    const std::vector<RosterRow> rows{{u"7"_s, u"Ada \"Ace\" Lund, Jr."_s, true, false},
                                      {u"2"_s, {}, false, true},
                                      {u"11"_s, u"=SUM(A1)"_s, false, false},
                                      {u"12"_s, u"'=so"_s, false, false},
                                      {u"13"_s, u"Zoë; Ćuk"_s, false, false}};
    const QByteArray csv = rosterCsv(rows);
    QVERIFY(csv.startsWith("\xEF\xBB\xBFNumber,Name,Captain,Libero\r\n"));
    QVERIFY(csv.contains("7,\"Ada \"\"Ace\"\" Lund, Jr.\",C,\r\n"));
    QVERIFY(csv.contains("2,,,L\r\n"));
    QVERIFY(csv.contains("11,'=SUM(A1),,\r\n"));
    QCOMPARE(rosterFromText(textOfFile(csv)).rows, rows);
}

// clang-format off
void TestTeamBook::cellsThatWouldReckonAreMadeHarmless_data() {
    QTest::addColumn<QString>("cell");
    QTest::addColumn<QString>("harmless");
    QTest::newRow("equals")             << u"=1+1"_s     << u"'=1+1"_s;
    QTest::newRow("plus")               << u"+1"_s       << u"'+1"_s;
    QTest::newRow("minus")              << u"-1"_s       << u"'-1"_s;
    QTest::newRow("at")                 << u"@A1"_s      << u"'@A1"_s;
    QTest::newRow("tab")                << u"\t=1"_s     << u"'\t=1"_s;
    QTest::newRow("carriage return")    << u"\r=1"_s     << u"'\r=1"_s;
    QTest::newRow("behind another separator") << u"a;=1;b"_s << u"a;'=1;b"_s;
    QTest::newRow("harmless there")     << u"a;'=1,+2"_s << u"a;''=1,'+2"_s;
    QTest::newRow("a wide sign")        << u"\uFF1D1"_s << u"'\uFF1D1"_s;
    QTest::newRow("harmless already")   << u"'=1"_s      << u"''=1"_s;
    QTest::newRow("a name")             << u"Ada Lund"_s << u"Ada Lund"_s;
    QTest::newRow("a hyphen within")    << u"Thistle-wood"_s << u"Thistle-wood"_s;
    QTest::newRow("an apostrophe")      << u"'t Hoen"_s  << u"'t Hoen"_s;
    QTest::newRow("nothing")            << u""_s         << u""_s;
}
// clang-format on

void TestTeamBook::cellsThatWouldReckonAreMadeHarmless() {
    QFETCH(QString, cell);
    QTEST(harmlessCell(cell), "harmless");
    QCOMPARE(plainCell(harmlessCell(cell)), cell);
}

void TestTeamBook::aCsvFileIsReadHoweverItIsWritten_data() {
    QTest::addColumn<QByteArray>("file");
    QTest::newRow("without a mark") << QByteArray("Number,Name\r\n7,Zo\xC3\xAB Lund\r\n");
    QTest::newRow("with a mark") << QByteArray("\xEF\xBB\xBFNumber,Name\r\n7,Zo\xC3\xAB Lund\r\n");
    QTest::newRow("semicolons") << QByteArray("\xEF\xBB\xBFNumber;Name\n7;Zo\xC3\xAB Lund\n");
    QTest::newRow("an older spreadsheet") << QByteArray("Number;Name\r\n7;Zo\xEB Lund\r\n");
    QTest::newRow("quoted") << QByteArray("\"Number\",\"Name\"\r\n\"7\",\"Zo\xC3\xAB Lund\"\r\n");
    QTest::newRow("no line end at the end") << QByteArray("7,Zo\xC3\xAB Lund");
}

void TestTeamBook::aCsvFileIsReadHoweverItIsWritten() {
    QFETCH(QByteArray, file);
    QCOMPARE(rosterFromText(textOfFile(file)).rows, (std::vector<RosterRow>{{u"7"_s, u"Zoë Lund"_s, false, false}}));
}

void TestTeamBook::aRosterIsSavedFromItsEditor() {
    const QTemporaryDir folder;
    RosterEditor editor;
    editor.setRows(rowsOf(herons().players));
    editor.tools()->setParent(nullptr);
    showActive(*editor.tools());
    const ChoosingFile choosing(folder.filePath(u"herons"_s));
    QTest::mouseClick(childOf<QPushButton>(*editor.tools(), "saveFile"), Qt::LeftButton);
    QVERIFY(choosing.hasChosen());
    QFile file(folder.filePath(u"herons.csv"_s));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), rosterCsv(editor.rows()));
    QVERIFY(childOf<QLabel>(*editor.tools(), "rosterDone")->accessibleName().startsWith(u"Saved: "_s));
    delete editor.tools();
}

void TestTeamBook::aFileThatCannotBeWrittenIsTold() {
    RosterEditor editor;
    editor.setRows(rowsOf(herons().players));
    editor.tools()->setParent(nullptr);
    showActive(*editor.tools());
    const ChoosingFile choosing(u"/nowhere/to/be/found.csv"_s);
    QTest::mouseClick(childOf<QPushButton>(*editor.tools(), "saveFile"), Qt::LeftButton);
    QVERIFY(childOf<QLabel>(*editor.tools(), "rosterProblems")->text().contains(u"/nowhere"_s));
    delete editor.tools();
}

QTEST_MAIN(TestTeamBook)
#include "tst_teambook.moc"
