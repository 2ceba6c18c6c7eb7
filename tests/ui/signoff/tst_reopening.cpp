// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/signoff.h"
#include "tests/support/signoffs.h"
#include "tests/ui/table/opentable.h"
#include "ui/signoff/reopendialog.h"
#include "ui/table/sheetview.h"
#include "ui/table/stepcard.h"

#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

const Reopened reopenedSet1{1, u"Orla Vantage"_s, u"a time-out is missing"_s};

/// Two sets, the first of them sealed; the second has begun.
MatchBuilder secondSetBegun() {
    MatchBuilder match = oneSetSealed();
    return match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
}

/// Both sets won, the second one sealed as well; the match is not closed.
MatchBuilder matchWon() {
    MatchBuilder match = oneSetSealed();
    playSet(match, Team::Home);
    return signOff(match, 2);
}

/// A table that counts how often it is asked to reopen what, and answers if it has an answer.
struct SealedTable : OpenTable {
    explicit SealedTable(const MatchBuilder& match) : OpenTable(match) {
        dialogs.reopen = [this](QWidget*, const MatchState&, std::optional<int> set) -> std::optional<Answer> {
            asked.push_back(set);
            if (!answer)
                return std::nullopt;
            return Answer{*answer, std::nullopt};
        };
        dialogs.signOff = [this](QWidget*, Recorder&, std::optional<int> set) { signedOff.push_back(set); };
    }
    std::vector<std::optional<int>> asked;
    std::vector<std::optional<int>> signedOff;
    std::optional<Reopened> answer;
};

QString step(OpenTable& table) {
    return table.find<StepCard>("stepCard")->accessibleName();
}

} // namespace

/// At the window: what is sealed is not changed before somebody has said who reopens it and why, and a sign-off is
/// offered, put off, and offered again.
class TestReopening : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void undoOfASealAsksForReopeningAndRecordsNothingWithout() {
        SealedTable table(oneSetSealed());
        const std::size_t before = table.recorded();
        table.press(Qt::Key_Backspace);
        QCOMPARE(table.asked, std::vector{std::optional(1)});
        QCOMPARE(table.recorded(), before);
        QVERIFY(isSealed(table.state(), 1));
    }

    void reopenedItIsRecordedAndTheSignaturesAreVoid() {
        SealedTable table(oneSetSealed());
        table.answer = reopenedSet1;
        table.press(Qt::Key_Backspace);
        QCOMPARE(table.newest().entry, Entry(reopenedSet1));
        QVERIFY(!isSealed(table.state(), 1));
        QVERIFY(table.window().file().record().signOffs.front().reopened);
        QVERIFY(step(table).contains(u"sign-off of set 1"_s));
    }

    void afterReopeningUndoGoesBackToWhatWasPlayed() {
        SealedTable table(oneSetSealed());
        table.answer = reopenedSet1;
        table.press(Qt::Key_Backspace);
        table.press(Qt::Key_Backspace);
        QCOMPARE(table.asked.size(), std::size_t(1));
        const auto& strike = std::get<Strike>(table.newest().entry);
        const auto entries = table.window().file().ledger().entries();
        QVERIFY(std::holds_alternative<SetEnded>(entries[strike.target.value - 1].entry));
    }

    void aCorrectionOfASealedSetAsksFirst() {
        SealedTable table(secondSetBegun());
        const std::size_t before = table.recorded();
        Q_EMIT table.find<SheetView>("sheetView")->entryClicked(EntryNumber(8));
        QCOMPARE(table.asked, std::vector{std::optional(1)});
        QVERIFY(table.find<QWidget>("repairBar")->isHidden());
        QCOMPARE(table.recorded(), before);
        table.answer = reopenedSet1;
        Q_EMIT table.find<SheetView>("sheetView")->entryClicked(EntryNumber(8));
        QVERIFY(!table.find<QWidget>("repairBar")->isHidden());
        table.press(Qt::Key_Return);
        QCOMPARE(std::get<Strike>(table.newest().entry).target, EntryNumber(8));
    }

    void aCorrectionOfTheSetInPlayAsksNothing() {
        SealedTable table(secondSetBegun());
        table.press(Qt::Key_Left);
        Q_EMIT table.find<SheetView>("sheetView")->entryClicked(table.newest().number);
        QVERIFY(table.asked.empty());
        QVERIFY(!table.find<QWidget>("repairBar")->isHidden());
    }

    void aSealedEntryChosenInTheBarAsksToo() {
        SealedTable table(secondSetBegun());
        table.press(Qt::Key_C);
        auto* list = table.find<QListWidget>("repairList");
        list->setCurrentRow(list->count() - 5); // an entry of the first set
        table.press(Qt::Key_Return);
        QCoreApplication::processEvents();
        QCOMPARE(table.asked, std::vector{std::optional(1)});
    }

    void aCardOrARemarkAfterTheLastSealedSetAsksFirst() {
        SealedTable table(matchWon());
        for (const Qt::Key key : {Qt::Key_G, Qt::Key_M})
            table.press(key);
        QCOMPARE(table.asked, (std::vector{std::optional(2), std::optional(2)}));
        QVERIFY(table.find<QWidget>("cardBar")->isHidden());
        QVERIFY(table.find<QWidget>("askBar")->isHidden());
        table.answer = Reopened{2, u"Orla Vantage"_s, u"a remark"_s};
        table.press(Qt::Key_M);
        QVERIFY(!table.find<QWidget>("askBar")->isHidden());
    }

    void closingTheMatchAsksNothing() {
        SealedTable table(matchWon());
        table.dialogs.closeMatch = [](QWidget*, const MatchState&) { return Answer{MatchClosed{}, std::nullopt}; };
        table.press(Qt::Key_Return);
        QVERIFY(table.asked.empty());
        QVERIFY(table.state().closed);
        QVERIFY(step(table).contains(u"sign-off of the match"_s));
    }

    void theNextSetIsPlayedWhetherTheLastIsSignedOrNot() {
        SealedTable table(oneSetPlayed());
        QVERIFY(step(table).contains(u"sign-off of set 1"_s));
        table.press(Qt::Key_Return);
        QCOMPARE(table.signedOff, std::vector{std::optional(1)});
        QVERIFY(step(table).contains(u"line-up of QRL"_s)); // closed without a signature: put off
        int lineUps = 0;
        table.dialogs.lineUp = [&](QWidget*, const MatchState&, Team) {
            ++lineUps;
            return std::vector<Answer>();
        };
        table.press(Qt::Key_Return);
        QCOMPARE(lineUps, 1);
        table.press(Qt::Key_F3);
        QCOMPARE(table.signedOff.size(), std::size_t(2));
    }

    void whatWasPutOffIsOfferedAgainAfterTheNextSet() {
        MatchBuilder match = oneSetPlayed();
        playSet(match, Team::Visitors);
        SealedTable table(match);
        QVERIFY(step(table).contains(u"sign-off of set 1"_s));
    }

    void reopeningFromTheMenuIsForWhatWasSealedLast() {
        SealedTable table(matchSealed());
        table.window().perform(TableCommand::Reopen);
        QCOMPARE(table.asked, std::vector{std::optional<int>()});
        SealedTable unsealed(oneSetPlayed());
        unsealed.window().perform(TableCommand::Reopen);
        QVERIFY(unsealed.asked.empty());
    }

    void theDialogWantsANameAndAReason() {
        MatchBuilder match = oneSetSealed();
        match.add(Officials{{{Role::FirstReferee, u"Orla Vantage"_s}}});
        ReopenDialog dialog(match.state(), 1);
        dialog.show();
        auto* name = dialog.findChild<QLineEdit*>(u"reopenName"_s);
        auto* reason = dialog.findChild<QLineEdit*>(u"reopenReason"_s);
        auto* record = dialog.findChild<QPushButton*>(u"record"_s);
        QCOMPARE(name->text(), u"Orla Vantage"_s);
        QVERIFY(!record->isEnabled());
        reason->setText(u"  a time-out is missing "_s);
        QVERIFY(record->isEnabled());
        QCOMPARE(dialog.result(), reopenedSet1);
        name->clear();
        QVERIFY(!record->isEnabled());
    }
};

QTEST_MAIN(TestReopening)
#include "tst_reopening.moc"
