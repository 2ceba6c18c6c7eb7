// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/commands.h"

#include <QSet>
#include <QTest>

using namespace setfolio;

class TestCommands : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachHasANameOfItsOwn();
    void noKeyBelongsToTwo();
    void aSideHasTheSameFingerOnTheOtherHand_data();
    void aSideHasTheSameFingerOnTheOtherHand();
    void keysAreShownAsOnTheKeyboard();
    void theyAreEnabledByPhase_data();
    void theyAreEnabledByPhase();
    void nothingIsRecordedWhenTheFileIsReadOnly();
    void undoAndRedoNeedSomethingToUndo();
};

void TestCommands::eachHasANameOfItsOwn() {
    QSet<QString> ids;
    for (const CommandInfo& info : allCommands()) {
        QVERIFY(!info.id.isEmpty());
        QVERIFY(!nameOf(info.command).isEmpty());
        QVERIFY2(!ids.contains(info.id), qPrintable(info.id));
        ids.insert(info.id);
        QCOMPARE(infoOf(info.command).id, info.id);
    }
}

void TestCommands::noKeyBelongsToTwo() {
    QMap<QString, QString> owners;
    for (const CommandInfo& info : allCommands())
        for (const QKeySequence& key : info.keys) {
            const QString words = key.toString(QKeySequence::PortableText);
            QVERIFY2(!owners.contains(words), qPrintable(words));
            owners.insert(words, info.id);
        }
    QCOMPARE(owners.value(QStringLiteral("Space")), QStringLiteral("serveContacted"));
    QCOMPARE(owners.value(QStringLiteral("Backspace")), QStringLiteral("undo"));
    QCOMPARE(owners.value(QStringLiteral("Ctrl+Z")), QStringLiteral("undo"));
}

// clang-format off
void TestCommands::aSideHasTheSameFingerOnTheOtherHand_data() {
    QTest::addColumn<TableCommand>("left");
    QTest::addColumn<TableCommand>("right");
    QTest::addColumn<QString>("keys");
    QTest::newRow("rally")        << TableCommand::LeftWins         << TableCommand::RightWins         << "← →";
    QTest::newRow("substitution") << TableCommand::LeftSubstitution << TableCommand::RightSubstitution << "S L";
    QTest::newRow("time-out")     << TableCommand::LeftTimeOut      << TableCommand::RightTimeOut      << "D K";
    QTest::newRow("libero")       << TableCommand::LeftLibero       << TableCommand::RightLibero       << "F J";
    QTest::newRow("illegal")      << TableCommand::LeftIllegalPlayer << TableCommand::RightIllegalPlayer << "Shift+S Shift+L";
    QTest::newRow("card")         << TableCommand::LeftCard         << TableCommand::RightCard         << "G H";
}
// clang-format on

void TestCommands::aSideHasTheSameFingerOnTheOtherHand() {
    QFETCH(TableCommand, left);
    QFETCH(TableCommand, right);
    QTEST(keyCapOf(left) + u' ' + keyCapOf(right), "keys");
    QCOMPARE(infoOf(left).side, Side::Left);
    QCOMPARE(infoOf(right).side, Side::Right);
}

void TestCommands::keysAreShownAsOnTheKeyboard() {
    QCOMPARE(keyCapOf(TableCommand::NextStep), QStringLiteral("Enter"));
    QCOMPARE(keyCapOf(TableCommand::ServeContacted), QStringLiteral("Space"));
    QCOMPARE(keyCapOf(TableCommand::ReServe), QStringLiteral("Shift+Y"));
    QCOMPARE(keyCapOf(TableCommand::Toss), QString());
}

// In the order of Phase: not opened, before the set, ready to serve, rally, set won, match won, closed.
// clang-format off
void TestCommands::theyAreEnabledByPhase_data() {
    QTest::addColumn<TableCommand>("command");
    QTest::addColumn<QString>("phases");
    QTest::newRow("next step")     << TableCommand::NextStep         << "-x--xxx";
    QTest::newRow("rally")         << TableCommand::LeftWins         << "--xx---";
    QTest::newRow("serve")         << TableCommand::ServeContacted   << "--xx---";
    QTest::newRow("replay")        << TableCommand::Replay           << "--xx---";
    QTest::newRow("no serve")      << TableCommand::NoServe          << "--xx---";
    QTest::newRow("substitution")  << TableCommand::LeftSubstitution << "-xxx---";
    QTest::newRow("time-out")      << TableCommand::RightTimeOut     << "--xx---";
    QTest::newRow("libero")        << TableCommand::RightLibero      << "-xxx---";
    QTest::newRow("cause")         << TableCommand::ReplayBecause    << "--xx---";
    QTest::newRow("illegal")       << TableCommand::LeftIllegalPlayer << "--xxx--";
    QTest::newRow("new libero")    << TableCommand::LeftRedesignation << "-xxx---";
    QTest::newRow("officials")     << TableCommand::Officials        << "-xxxxx-";
    QTest::newRow("penalty point") << TableCommand::LeftPenalty      << "-xxxx--";
    QTest::newRow("at the line")   << TableCommand::WhoServes        << "--xxx--";
    QTest::newRow("card")          << TableCommand::LeftCard         << "-xxxxx-";
    QTest::newRow("captain")       << TableCommand::LeftCaptain      << "--xx---";
    QTest::newRow("sides changed") << TableCommand::SidesChanged     << "--xx---";
    QTest::newRow("suspend")       << TableCommand::Suspend          << "-xxxx--";
    QTest::newRow("forfeit")       << TableCommand::Forfeit          << "-xxxxx-";
    QTest::newRow("correct")       << TableCommand::Correct          << "-xxxxx-";
    QTest::newRow("remark")        << TableCommand::Remark           << "-xxxxx-";
    QTest::newRow("toss")          << TableCommand::Toss             << "-x-----";
    QTest::newRow("line-up")       << TableCommand::LeftLineUp       << "-x-----";
    QTest::newRow("roster")        << TableCommand::LeftRoster       << "-xxxxx-";
    QTest::newRow("print")         << TableCommand::Print            << "-xxxxxx";
    QTest::newRow("save a copy")   << TableCommand::SaveCopy         << "-xxxxxx";
    QTest::newRow("page width")    << TableCommand::PageWidth        << "-xxxxxx";
    QTest::newRow("larger")        << TableCommand::Larger           << "-xxxxxx";
    QTest::newRow("whole page")    << TableCommand::WholePage        << "-xxxxxx";
    QTest::newRow("new match")     << TableCommand::NewMatch         << "xxxxxxx";
    QTest::newRow("undo")          << TableCommand::Undo             << "xxxxxxx";
}
// clang-format on

void TestCommands::theyAreEnabledByPhase() {
    QFETCH(TableCommand, command);
    QString phases;
    for (const Phase phase : {Phase::NotOpened, Phase::BeforeSet, Phase::ReadyToServe, Phase::Rally, Phase::SetWon,
                              Phase::MatchWon, Phase::MatchClosed})
        phases += mayBeAsked(command, {phase, false, true, true}) ? u'x' : u'-';
    QTEST(phases, "phases");
}

void TestCommands::nothingIsRecordedWhenTheFileIsReadOnly() {
    for (const CommandInfo& info : allCommands())
        for (const Phase phase : {Phase::BeforeSet, Phase::ReadyToServe, Phase::Rally, Phase::SetWon, Phase::MatchWon})
            if (info.records)
                QVERIFY2(!mayBeAsked(info.command, {phase, true, true, true}), qPrintable(info.id));
    QVERIFY(mayBeAsked(TableCommand::Print, {Phase::Rally, true, true, true}));
}

void TestCommands::undoAndRedoNeedSomethingToUndo() {
    QVERIFY(!mayBeAsked(TableCommand::Undo, {Phase::Rally, false, false, true}));
    QVERIFY(!mayBeAsked(TableCommand::Redo, {Phase::Rally, false, true, false}));
}

QTEST_MAIN(TestCommands)
#include "tst_commands.moc"
