// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/signoff.h"
#include "core/record/sealtext.h"
#include "tests/support/signoffs.h"
#include "tests/ui/signoff/strokes.h"
#include "ui/signoff/reviewpage.h"
#include "ui/signoff/sealpage.h"
#include "ui/signoff/sheetpane.h"
#include "ui/signoff/signerpage.h"
#include "ui/signoff/signoffdialog.h"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTemporaryDir>

#include <functional>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

using Draw = std::function<void(SignaturePad&, const std::vector<QPoint>&)>;

/// A sign-off over a match file of its own.
class Table {
public:
    explicit Table(const MatchBuilder& match, std::optional<int> set = 1) : m_set(set) {
        auto file = MatchFile::create(m_folder.filePath(u"match.setfolio"_s));
        for (const Recorded& recorded : match.entries())
            if (!file->record(recorded.entry, recorded.time, recorded.overruled, recorded.placed))
                qFatal("not recorded");
        const Clock clock{[] { return QDateTime(QDate(2026, 10, 10), QTime(20, 0), Qt::UTC); }, [] { return QTime(); }};
        recorder = std::make_unique<Recorder>(std::move(*file), clock);
        open();
    }
    void open() {
        dialog = std::make_unique<SignOffDialog>(*recorder, m_set, SheetFonts::load().value());
        dialog->show();
        if (!QTest::qWaitForWindowActive(dialog.get()))
            qFatal("the sign-off does not come up");
    }

    template <typename Widget = QPushButton>
    [[nodiscard]] Widget& find(const char* name) const {
        auto* found = dialog->findChild<Widget*>(QLatin1String(name));
        if (!found)
            qFatal("no control named %s", name);
        return *found;
    }
    void click(const char* name) const { QTest::mouseClick(&find<>(name), Qt::LeftButton); }
    [[nodiscard]] SignaturePad& pad() const { return find<SignaturePad>("signaturePad"); }
    [[nodiscard]] const MatchState& state() const { return recorder->state(); }
    [[nodiscard]] const Entry& newest() const { return recorder->file().ledger().entries().back().entry; }
    [[nodiscard]] std::size_t recorded() const { return recorder->file().ledger().entries().size(); }
    void sign() const {
        drawByMouse(pad(), wave(pad()));
        click("next");
    }

    std::unique_ptr<Recorder> recorder;
    std::unique_ptr<SignOffDialog> dialog;

private:
    QTemporaryDir m_folder;
    std::optional<int> m_set;
};

MatchBuilder withOfficials() {
    MatchBuilder match;
    match.open(3, signedBySet())
        .add(Officials{{{Role::FirstReferee, u"Orla Vantage"_s},
                        {Role::SecondReferee, u"Tobias Dunlin"_s},
                        {Role::Scorer, u"Wim Sedge"_s}}});
    match.toss(Team::Home);
    return playSet(match, Team::Home);
}

} // namespace

Q_DECLARE_METATYPE(Draw)

/// From the review to the seal, as the referee and the crew go through it.
class TestSignOffDialog : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theReviewHasTheResultInLargeFigures() {
        const Table table(oneSetPlayed());
        QCOMPARE(table.find<QLabel>("score").text(), u"25 – 0"_s);
        QCOMPARE(table.find<QLabel>("winner").text(), u"SAL wins set 1"_s);
        QVERIFY(table.find<QLabel>("score").font().pixelSize() >= 40);
    }

    void aPressOnALineShowsItsMark() {
        MatchBuilder match = oneSetPlayed();
        match.place(TimeOut{Team::Home}, Placed::How::Before,
                    EntryNumber(8)); // a correction, whose mark is shown first
        match.place(TimeOut{Team::Visitors}, Placed::How::Before, EntryNumber(12));
        const Table table(match);
        auto& list = table.find<QListWidget>("reviewLines");
        const auto& sheet = table.find<SheetPane>("sheetPane");
        const QRectF before = sheet.marked();
        const QList<QListWidgetItem*> lines = list.findItems(u"QRL: at "_s, Qt::MatchStartsWith);
        QCOMPARE(lines.size(), 1);
        list.scrollToItem(lines.front());
        QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualItemRect(lines.front()).center());
        QVERIFY(!sheet.marked().isEmpty());
        QVERIFY(sheet.marked() != before);
        QVERIFY(QRectF(sheet.rect()).contains(sheet.marked()));
    }

    void everyPointerSigns_data() {
        QTest::addColumn<Draw>("draw");
        QTest::newRow("mouse") << Draw(drawByMouse);
        QTest::newRow("finger") << Draw(drawByFinger);
        QTest::newRow("pen") << Draw(drawByPen);
    }
    void everyPointerSigns() {
        QFETCH(Draw, draw);
        const Table table(withOfficials());
        table.click("next");
        const std::vector<Signatory> order = signatoriesOf(table.state().rulebook());
        for (const Signatory& who : order) {
            QVERIFY(!table.find<>("next").isEnabled());
            draw(table.pad(), wave(table.pad()));
            table.click("next");
            const auto* given = std::get_if<Signed>(&table.newest());
            QVERIFY(given);
            QCOMPARE(given->who, who);
            QCOMPARE(given->set, std::optional(1));
            QCOMPARE(given->strokes.front().size(), std::size_t(30));
            QVERIFY(!given->protest);
        }
        QVERIFY(!isSealed(table.state(), 1));
        table.click("next");
        QVERIFY(isSealed(table.state(), 1));
        QVERIFY(review(table.recorder->file().ledger().entries()).empty());
    }

    void theNamesAreThoseOfTheOfficials() {
        const Table table(withOfficials());
        table.click("next");
        for (const QString& name : {u"Wim Sedge"_s, u"Tobias Dunlin"_s, u"Orla Vantage"_s}) {
            QCOMPARE(table.find<QLineEdit>("printedName").text(), name);
            table.sign();
            QCOMPARE(std::get<Signed>(table.newest()).name, name);
        }
    }

    void thePageUnderTheSealHasItsCode() {
        const Table table(withOfficials());
        table.click("next");
        for (int i = 0; i < 3; ++i)
            table.sign();
        QVERIFY(table.find<QLabel>("sealCode").isHidden());
        table.click("next");
        const QString digest = std::get<Sealed>(table.newest()).digest;
        QCOMPARE(digest.size(), 64);
        QCOMPARE(table.find<QLabel>("sealCode").text(), sealCode(digest));
        QVERIFY(table.find<QrView>("sealQr").accessibleName().contains(digest));
        table.click("next");
        QVERIFY(!table.dialog->isVisible());
    }

    void whoProtestsSignsWithARemark() {
        const Table table(withOfficials());
        table.click("next");
        table.click("underProtest");
        QTest::keyClicks(&table.find<QLineEdit>("signerLine"), u"the last point"_s);
        table.sign();
        QCOMPARE(std::get<Signed>(table.newest()).protest, std::optional(u"the last point"_s));
        QCOMPARE(table.find<QListWidget>("signers").item(0)->text(), u"Scorer: signed under protest"_s);
    }

    void whoCannotDrawIsLeftUnsignedByKeysAlone() {
        const Table table(withOfficials());
        QTest::keyClick(table.dialog->focusWidget(), Qt::Key_Return);
        auto& left = table.find<>("leftUnsigned");
        left.setFocus(Qt::TabFocusReason);
        QTest::keyClick(&left, Qt::Key_Space);
        QVERIFY(!table.pad().isEnabled());
        QVERIFY(!table.find<>("next").isEnabled()); // the reason is missing
        QTest::keyClicks(table.dialog->focusWidget(), u"confirmed by word"_s);
        QTest::keyClick(table.dialog->focusWidget(), Qt::Key_Return);
        QCOMPARE(std::get<LeftUnsigned>(table.newest()).reason, u"confirmed by word"_s);
    }

    void outOfOrderIsTheRefereesWord() {
        const Table table(withOfficials());
        table.click("next");
        table.find<QListWidget>("signers").setCurrentRow(2);
        drawByMouse(table.pad(), wave(table.pad()));
        QVERIFY(!table.find<>("next").isEnabled());
        table.click("letStand");
        QTest::keyClicks(table.dialog->focusWidget(), u"has to leave"_s);
        table.click("next");
        QCOMPARE(table.recorder->file().ledger().entries().back().overruled, std::optional(u"has to leave"_s));
        QCOMPARE(std::get<Signed>(table.newest()).who.role, Signer::FirstReferee);
        QCOMPARE(table.find<QListWidget>("signers").currentRow(), 0); // the scorer is still to sign
    }

    void closedInTheMiddleItGoesOnWhereItWas() {
        Table table(withOfficials());
        table.click("next");
        table.sign();
        table.click("later");
        QVERIFY(!table.dialog->isVisible());
        table.open();
        table.click("next");
        QCOMPARE(table.find<QListWidget>("signers").currentRow(), 1);
    }

    void escapeRecordsNothing() {
        const Table table(withOfficials());
        const std::size_t before = table.recorded();
        table.click("next");
        drawByMouse(table.pad(), wave(table.pad()));
        QTest::keyClick(table.dialog->focusWidget(), Qt::Key_Escape);
        QVERIFY(!table.dialog->isVisible());
        QCOMPARE(table.recorded(), before);
    }

    void whatIsSealedIsShownWithItsSeal() {
        const Table table(oneSetSealed());
        table.click("next");
        QVERIFY(!table.find<QLabel>("sealCode").isHidden());
        const std::size_t before = table.recorded();
        table.click("next");
        QCOMPARE(table.recorded(), before);
    }

    void theMatchIsReviewedSetBySet() {
        MatchBuilder match = oneSetSealed();
        playSet(match, Team::Home);
        signOff(match, 2);
        match.add(MatchClosed{});
        const Table table(match, std::nullopt);
        QCOMPARE(table.find<QLabel>("score").text(), u"2 – 0"_s);
        QCOMPARE(table.find<QLabel>("winner").text(), u"SAL wins the match"_s);
        for (const QString& set : {u"Set 1: 25–0, won by SAL"_s, u"Set 2: 25–0, won by SAL"_s})
            QCOMPARE(table.find<QListWidget>("reviewLines").findItems(set, Qt::MatchExactly).size(), 1);
    }
};

QTEST_MAIN(TestSignOffDialog)
#include "tst_signoffdialog.moc"
