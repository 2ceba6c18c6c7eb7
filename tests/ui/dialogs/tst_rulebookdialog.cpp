// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebookcompare.h"
#include "core/rules/settingvalue.h"
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/rulebookdialog.h"
#include "ui/dialogs/rulebooktable.h"
#include "ui/dialogs/settingeditor.h"
#include "ui/wording/rulebookwords.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

Rulebook estuary() {
    return copyToAdapt(publishedRulebook(u"high-school"_s).value(), u"High school (NFHS), Estuary League"_s, {});
}

/// The dialog, shown, with a folder for rulebooks.
class Shown {
public:
    explicit Shown(const Rulebook& own = estuary(), const QStringList& taken = {u"High school (NFHS)"_s})
        : shelf(folder.filePath(u"rulebooks"_s)),
          dialog(own, shelf, taken) {
        showActive(dialog);
    }
    [[nodiscard]] RulebookTable& table() { return *childOf<RulebookTable>(dialog, "settings"); }
    [[nodiscard]] int rows() { return table().model()->rowCount(); }
    void choose(const char* key) { QVERIFY2(table().choose(QLatin1String(key)), key); }
    void click(const char* name) { QTest::mouseClick(childOf<QPushButton>(dialog, name), Qt::LeftButton); }
    [[nodiscard]] QString said(const char* name = "problem") {
        const auto* label = childOf<QLabel>(dialog, name);
        return label->isVisible() ? label->text().remove(QChar(0x200b)) : QString();
    }
    [[nodiscard]] bool isKept() const { return dialog.QDialog::result() == QDialog::Accepted; }

    QTemporaryDir folder;
    RulebookShelf shelf;
    RulebookDialog dialog;
};

} // namespace

class RulebookDialogTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everySettingAndStatementIsListedByGroup();
    void everySettingHasAControlThatShowsItsValue_data();
    void everySettingHasAControlThatShowsItsValue();
    void aNumberIsTypedByTheKeyboardAlone();
    void aNumberIsSteppedByKeyAndMouse();
    void everyControlIsWorkedByAFinger_data();
    void everyControlIsWorkedByAFinger();
    void aNumberOutOfRangeIsMarkedAndStopsTheKeeping();
    void aNumberMayBeAbsent();
    void oneOfWordsIsChosen();
    void yesAndNoAreChosen();
    void numbersAreSwitched();
    void aLadderIsChanged();
    void signersAreTakenInTheOrderPressed();
    void whatDiffersIsShownBesideThePublishedValueAndPutBack();
    void onlyWhatDiffersIsShown();
    void onlyOpenPointsAreShownAndLookedUp();
    void aSettingIsFoundByItsWords();
    void whatDoesNotFitIsSaidAndShown();
    void itNeedsANameOfItsOwn_data();
    void itNeedsANameOfItsOwn();
    void aNoteSaysWhereItComesFrom();
    void whatIsKeptLiesInItsFolder();
    void whatCannotBeKeptIsSaid();
    void whatWasChangedIsNotDroppedUnasked();
    void itIsWrittenToAFile();
    void aKeptOneIsRemoved();
};

void RulebookDialogTest::everySettingAndStatementIsListedByGroup() {
    Shown shown;
    const auto words = wordsFor(estuary());
    constexpr int groups = 9;
    QCOMPARE(shown.rows(), static_cast<int>(words.size()) + groups);
    for (const SettingWords& setting : words) {
        shown.choose(setting.key.toLatin1().constData());
        const QModelIndex row = shown.table().currentIndex();
        QCOMPARE(row.data().toString(), setting.label);
        QCOMPARE(row.siblingAtColumn(RulebookRows::Own).data().toString(), setting.value);
        QVERIFY(row.data(RulebookRows::SourceRole).toString().startsWith(setting.source));
        QCOMPARE(row.data(RulebookRows::OpenRole).toBool(), setting.open);
        QCOMPARE(shown.said("settingTitle"), setting.label);
    }
}

void RulebookDialogTest::everySettingHasAControlThatShowsItsValue_data() {
    QTest::addColumn<QString>("key");
    for (const Setting& setting : rulebookSettings())
        QTest::newRow(setting.key) << QString::fromLatin1(setting.key);
}

/// Each button of each control is pressed: what comes is never refused, and the last value is what was heard.
void RulebookDialogTest::everySettingHasAControlThatShowsItsValue() {
    QFETCH(QString, key);
    const Setting& setting = *settingOf(key);
    Rulebook own = estuary();
    const std::unique_ptr<SettingEditor> editor(makeSettingEditor(setting, own));
    int heard = 0;
    connect(editor.get(), &SettingEditor::changed, this, [&](const QJsonValue& value) {
        ++heard;
        QVERIFY2(readValue(own, setting, value), qPrintable(key));
        QCOMPARE(valueOf(own, setting), value);
    });
    editor->show();
    QVERIFY(editor->isGood());
    for (auto* button : editor->findChildren<QPushButton*>())
        QTest::mouseClick(button, Qt::LeftButton);
    QVERIFY(heard > 0);
    QVERIFY(editor->isGood());
}

void RulebookDialogTest::aNumberIsTypedByTheKeyboardAlone() {
    Shown shown;
    QVERIFY(tabTo(shown.dialog, u"settings"_s));
    while (shown.table().key() != u"deciding-set-points"_s)
        pressIn(shown.dialog, Qt::Key_Down);
    QVERIFY(tabTo(shown.dialog, u"number"_s));
    typeInto(shown.dialog, u"25"_s);
    QCOMPARE(shown.dialog.rulebook().decidingSetPoints, 25);
    pressIn(shown.dialog, Qt::Key_Return); // to the next setting, its control with the keyboard
    QCOMPARE(shown.table().key(), u"margin"_s);
    typeInto(shown.dialog, u"1"_s);
    QCOMPARE(shown.dialog.rulebook().margin, 1);
    QVERIFY(shown.dialog.isVisible());
    QVERIFY(tabTo(shown.dialog, u"record"_s));
    pressIn(shown.dialog, Qt::Key_Return);
    QVERIFY(shown.isKept());
}

void RulebookDialogTest::everyControlIsWorkedByAFinger_data() {
    QTest::addColumn<QString>("key");
    QTest::addColumn<QString>("button");
    QTest::newRow("number") << u"time-outs"_s << u"less"_s;
    QTest::newRow("no number") << u"cap"_s << u"absent"_s;
    QTest::newRow("yes or no") << u"exit-scores"_s << u"choice0"_s;
    QTest::newRow("word") << u"second-request"_s << u"choice2"_s;
    QTest::newRow("numbers") << u"substitution-notices"_s << u"number24"_s;
    QTest::newRow("ladder") << u"delay-ladder"_s << u"point1"_s;
    QTest::newRow("signers") << u"signing-order"_s << u"coaches"_s;
}

void RulebookDialogTest::everyControlIsWorkedByAFinger() { // by itself, as the dialog is wider than the made-up screen
    QFETCH(QString, key);
    QFETCH(QString, button);
    Rulebook own = estuary();
    const std::unique_ptr<SettingEditor> editor(makeSettingEditor(*settingOf(key), own));
    QSignalSpy changed(editor.get(), &SettingEditor::changed);
    showActive(*editor);
    tap(*editor->findChild<QPushButton*>(button));
    QTRY_COMPARE(changed.size(), 1);
    QVERIFY(readValue(own, *settingOf(key), changed[0][0].toJsonValue()));
    QVERIFY(valueOf(own, *settingOf(key)) != valueOf(estuary(), *settingOf(key)));
}

void RulebookDialogTest::aNumberIsSteppedByKeyAndMouse() {
    Shown shown;
    shown.choose("substitution-limit");
    shown.click("less");
    shown.click("less");
    QCOMPARE(shown.dialog.rulebook().substitutionLimit, 16);
    QTest::keyClick(childOf<QLineEdit>(shown.dialog, "number"), Qt::Key_Down);
    QCOMPARE(shown.dialog.rulebook().substitutionLimit, 15);
    for (int pressed = 0; pressed < 12; ++pressed)
        shown.click("more");
    QCOMPARE(shown.dialog.rulebook().substitutionLimit, 24); // the largest there can be
}

void RulebookDialogTest::aNumberOutOfRangeIsMarkedAndStopsTheKeeping() {
    Shown shown;
    shown.choose("set-points");
    auto* field = childOf<QLineEdit>(shown.dialog, "number");
    field->selectAll();
    QTest::keyClick(field, Qt::Key_0);
    QVERIFY(field->property("problem").toBool());
    QCOMPARE(shown.dialog.rulebook().setPoints, 25);
    shown.click("record");
    QVERIFY(shown.dialog.isVisible());
    QVERIFY2(shown.said().startsWith(u"Points that win a set: "_s), qPrintable(shown.said()));
    QCOMPARE(shown.dialog.focusWidget(), field);
    QTest::keyClick(field, Qt::Key_Backspace);
    QTest::keyClicks(field, u"21"_s);
    QVERIFY(!field->property("problem").toBool());
    QCOMPARE(shown.said(), QString());
    shown.click("record");
    QVERIFY(shown.isKept());
}

void RulebookDialogTest::aNumberMayBeAbsent() {
    Shown shown;
    shown.choose("cap");
    QVERIFY(!childOf<QLineEdit>(shown.dialog, "number")->isEnabled());
    shown.click("absent");
    QVERIFY(shown.dialog.rulebook().cap.has_value());
    auto* field = childOf<QLineEdit>(shown.dialog, "number");
    field->selectAll();
    QTest::keyClicks(field, u"27"_s);
    QCOMPARE(shown.dialog.rulebook().cap, std::optional(27));
    shown.click("absent");
    QCOMPARE(shown.dialog.rulebook().cap, std::optional<int>());
    shown.click("absent");
    QCOMPARE(shown.dialog.rulebook().cap, std::optional(27)); // it is remembered
}

void RulebookDialogTest::oneOfWordsIsChosen() {
    Shown shown;
    shown.choose("second-request");
    QVERIFY(childOf<QPushButton>(shown.dialog, "choice0")->isChecked());
    shown.click("choice2");
    QCOMPARE(shown.dialog.rulebook().secondRequest, SecondRequest::AfterRallyOrTimeOut);
    QTest::keyClick(childOf<QPushButton>(shown.dialog, "choice1"), Qt::Key_Space);
    QCOMPARE(shown.dialog.rulebook().secondRequest, SecondRequest::AfterRally);
}

void RulebookDialogTest::yesAndNoAreChosen() {
    Shown shown;
    shown.choose("exit-scores");
    QVERIFY(!shown.dialog.rulebook().exitScores);
    shown.click("choice0");
    QVERIFY(shown.dialog.rulebook().exitScores);
    shown.click("choice1");
    QVERIFY(!shown.dialog.rulebook().exitScores);
}

void RulebookDialogTest::numbersAreSwitched() {
    Shown shown;
    shown.choose("substitution-notices");
    shown.click("number15");
    shown.click("number12");
    QCOMPARE(shown.dialog.rulebook().substitutionNotices, (std::vector<int>{12, 16, 17, 18}));
}

void RulebookDialogTest::aLadderIsChanged() {
    Shown shown;
    shown.choose("delay-ladder");
    shown.click("level0");
    QVERIFY(!childOf<QPushButton>(shown.dialog, "level1")->isEnabled()); // the last rung stays
    shown.click("point1");
    auto* cards = childOf<QComboBox>(shown.dialog, "cards1");
    QTest::keyClick(cards, Qt::Key_Home);
    const std::vector<CardStep> expected{{SanctionLevel::Penalty, CardsShown::Yellow, false}};
    QVERIFY(shown.dialog.rulebook().delayLadder == expected);
}

void RulebookDialogTest::signersAreTakenInTheOrderPressed() {
    Shown shown;
    shown.choose("signing-order");
    shown.click("scorer");
    shown.click("captains");
    shown.click("scorer");
    const std::vector<Signer> expected{Signer::SecondReferee, Signer::FirstReferee, Signer::Captains, Signer::Scorer};
    QVERIFY(shown.dialog.rulebook().signingOrder == expected);
    QCOMPARE(childOf<QPushButton>(shown.dialog, "scorer")->text(), u"4. scorer"_s);
}

void RulebookDialogTest::whatDiffersIsShownBesideThePublishedValueAndPutBack() {
    Shown shown;
    shown.choose("time-outs");
    QVERIFY(!childOf<QPushButton>(shown.dialog, "putBack")->isEnabled());
    shown.click("less");
    const QModelIndex row = shown.table().currentIndex();
    QVERIFY(row.data(RulebookRows::DiffersRole).toBool());
    QCOMPARE(row.siblingAtColumn(RulebookRows::Published).data().toString(), u"2"_s);
    QCOMPARE(row.siblingAtColumn(RulebookRows::Own).data().toString(), u"1"_s);
    QCOMPARE(row.data(Qt::AccessibleTextRole).toString(), u"Time-outs, a team in a set, changed"_s);
    QCOMPARE(shown.said("publishedValue"), u"Published: 2"_s);
    QCOMPARE(shown.said("settingSource"), u"Source: adapted"_s);
    shown.click("putBack");
    QVERIFY(shown.dialog.rulebook() == estuary());
    QCOMPARE(childOf<QLineEdit>(shown.dialog, "number")->text(), u"2"_s);
}

void RulebookDialogTest::onlyWhatDiffersIsShown() {
    Shown shown;
    shown.choose("time-outs");
    shown.click("less");
    shown.choose("cap");
    shown.click("absent");
    shown.click("show1");
    QCOMPARE(childOf<QPushButton>(shown.dialog, "show1")->text(), u"Only what differs (2)"_s);
    QCOMPARE(shown.rows(), 4); // two groups with one each
    QCOMPARE(shown.table().key(), u"cap"_s);
    shown.click("putBack");
    QCOMPARE(shown.rows(), 4); // it is still there to be seen
    shown.click("show1");
    QCOMPARE(shown.rows(), 2);
    shown.click("show0");
    QVERIFY(shown.rows() > 96);
}

void RulebookDialogTest::onlyOpenPointsAreShownAndLookedUp() {
    Shown shown;
    shown.click("show2");
    const std::size_t open = openPoints(estuary()).size();
    for (int row = 0; row < shown.rows(); ++row) {
        const QModelIndex index = shown.table().model()->index(row, 0);
        QVERIFY(!(index.flags() & Qt::ItemIsEnabled) || index.data(RulebookRows::OpenRole).toBool());
    }
    shown.choose("protest");
    shown.click("lookedUp");
    QCOMPARE(openPoints(shown.dialog.rulebook()).size(), open - 1);
    QCOMPARE(childOf<QPushButton>(shown.dialog, "show2")->text(), u"Only open points (%1)"_s.arg(open - 1));
    QCOMPARE(shown.said("settingSource"), u"Source: looked up"_s);
}

void RulebookDialogTest::aSettingIsFoundByItsWords() {
    Shown shown;
    QVERIFY(tabTo(shown.dialog, u"find"_s));
    typeInto(shown.dialog, u"injured"_s);
    QVERIFY(shown.rows() > 0 && shown.rows() < 10);
    QVERIFY(shown.table().choose(u"injury-seconds"_s));
    typeInto(shown.dialog, u" nowhere to be found"_s);
    QCOMPARE(shown.rows(), 0);
}

void RulebookDialogTest::whatDoesNotFitIsSaidAndShown() {
    Shown shown;
    shown.choose("best-of");
    shown.click("number3");
    shown.click("number5");
    shown.choose("time-outs");
    shown.click("record");
    QVERIFY(shown.dialog.isVisible());
    QCOMPARE(shown.said(), u"Best of: choose at least one number."_s);
    QCOMPARE(shown.table().key(), u"best-of"_s);
    shown.click("number5");
    shown.click("record");
    QVERIFY(shown.isKept());
}

void RulebookDialogTest::itNeedsANameOfItsOwn_data() {
    QTest::addColumn<QString>("name");
    QTest::newRow("none") << u"  "_s;
    QTest::newRow("another's") << u"high School (NFHS)"_s;
}

void RulebookDialogTest::itNeedsANameOfItsOwn() {
    QFETCH(QString, name);
    Shown shown;
    typeInto(shown.dialog, name); // the name has the keyboard, and is selected
    shown.click("record");
    QVERIFY(shown.dialog.isVisible());
    QVERIFY(shown.said().contains(u"a name of its own"_s));
    QCOMPARE(shown.dialog.focusWidget()->objectName(), u"name"_s);
    typeInto(shown.dialog, u" East"_s);
    QCOMPARE(shown.said(), QString());
    shown.click("record");
    QVERIFY(shown.isKept());
}

void RulebookDialogTest::aNoteSaysWhereItComesFrom() {
    Shown shown;
    shown.choose("time-outs");
    QVERIFY(!childOf<QLineEdit>(shown.dialog, "note")->isVisible());
    shown.click("less");
    QVERIFY(tabTo(shown.dialog, u"note"_s));
    typeInto(shown.dialog, u"handbook, p. 4"_s);
    QCOMPARE(childOf<QLineEdit>(shown.dialog, "note")->text(), u"handbook, p. 4"_s);
    QCOMPARE(shown.dialog.rulebook().sources.value(u"time-outs"_s).text, u"adapted (handbook, p. 4)"_s);
    shown.choose("cap");
    shown.choose("time-outs");
    QCOMPARE(childOf<QLineEdit>(shown.dialog, "note")->text(), u"handbook, p. 4"_s);
}

void RulebookDialogTest::whatIsKeptLiesInItsFolder() {
    Shown shown;
    shown.choose("time-outs");
    shown.click("less");
    shown.click("record");
    const RulebookShelf::Content content = shown.shelf.content();
    QCOMPARE(content.rulebooks.size(), 1U);
    QVERIFY(content.rulebooks[0] == shown.dialog.rulebook());
    QCOMPARE(content.rulebooks[0].timeOuts, 1);
}

void RulebookDialogTest::whatCannotBeKeptIsSaid() {
    Shown shown;
    write(shown.folder.filePath(u"rulebooks"_s), "a file where the folder should be");
    shown.click("record");
    QVERIFY(shown.dialog.isVisible());
    QVERIFY2(shown.said().contains(u"rulebooks cannot be made"_s), qPrintable(shown.said()));
}

void RulebookDialogTest::whatWasChangedIsNotDroppedUnasked() {
    Shown shown;
    shown.choose("time-outs");
    shown.click("less");
    pressIn(shown.dialog, Qt::Key_Escape);
    QVERIFY(shown.dialog.isVisible());
    QVERIFY(shown.said().contains(u"not kept yet"_s));
    shown.click("more"); // goes on after all: asked again next time
    shown.click("more");
    pressIn(shown.dialog, Qt::Key_Escape);
    QVERIFY(shown.dialog.isVisible());
    shown.click("cancel");
    QVERIFY(!shown.dialog.isVisible() && !shown.isKept());
    QVERIFY(shown.shelf.content().rulebooks.empty());
    Shown untouched;
    pressIn(untouched.dialog, Qt::Key_Escape);
    QVERIFY(!untouched.dialog.isVisible());
}

void RulebookDialogTest::itIsWrittenToAFile() {
    Shown shown;
    shown.choose("time-outs");
    shown.click("less");
    const QString path = shown.folder.filePath(u"estuary.json"_s);
    const ChoosingFile choosing(path);
    shown.click("writeFile");
    QVERIFY(choosing.hasChosen());
    QVERIFY(choosing.proposed().endsWith(u".json"_s));
    QVERIFY(readRulebook(path).value() == shown.dialog.rulebook());
}

void RulebookDialogTest::aKeptOneIsRemoved() {
    const QTemporaryDir folder;
    const RulebookShelf shelf(folder.path());
    QVERIFY(shelf.keep(estuary()));
    RulebookDialog dialog(estuary(), shelf, {});
    showActive(dialog);
    QTest::mouseClick(childOf<QPushButton>(dialog, "remove"), Qt::LeftButton);
    QCOMPARE(dialog.QDialog::result(), int(RulebookDialog::Removed));
    QVERIFY(shelf.content().rulebooks.empty());
    Shown fresh;
    QVERIFY(!fresh.dialog.findChild<QPushButton*>(u"remove"_s)); // not kept, it cannot be removed
}

} // namespace setfolio

QTEST_MAIN(setfolio::RulebookDialogTest)
#include "tst_rulebookdialog.moc"
