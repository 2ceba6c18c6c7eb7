// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/help/keyfield.h"
#include "ui/help/keysdialog.h"
#include "ui/table/keybutton.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

using namespace Qt::Literals::StringLiterals;
using namespace setfolio;
using namespace setfolio::testing;

namespace {

using C = TableCommand;

int rowOf(TableCommand command) {
    const auto commands = allCommands();
    return static_cast<int>(std::ranges::find(commands, command, &CommandInfo::command) - commands.begin());
}

class Shown {
public:
    explicit Shown(const ChangedKeys& changed = {}) : dialog(changed) { showActive(dialog); }
    [[nodiscard]] QTableWidget& table() { return *childOf<QTableWidget>(dialog, "commands"); }
    [[nodiscard]] QString said() { return childOf<QLabel>(dialog, "said")->text(); }
    [[nodiscard]] QString keyShown(TableCommand command) { return table().item(rowOf(command), 1)->text(); }
    void click(const char* name) { QTest::mouseClick(childOf<QPushButton>(dialog, name), Qt::LeftButton); }
    /// A click on the command, another on the field, then the key.
    void give(TableCommand command, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        const QTableWidgetItem* item = table().item(rowOf(command), 0);
        table().scrollToItem(item);
        QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, table().visualItemRect(item).center());
        auto* field = childOf<KeyField>(dialog, "newKey");
        QTest::mouseClick(field, Qt::LeftButton);
        QTest::keyClick(field, key, modifiers);
    }

    KeysDialog dialog;
};

} // namespace

class TestKeysDialog : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() { setChangedKeys({}); }
    void aKeyIsChangedByMouse();
    void aKeyIsChangedByTheKeyboardAlone();
    void aKeyInUseIsExplained_data();
    void aKeyInUseIsExplained();
    void aKeyThatWasGivenAwayIsFree();
    void theBuiltInKeysComeBack();
    void aCommandMayHaveNoKey();
    void aSignIsTakenWithoutShift();
    void theTableActsByItsNewKeysAndShowsThem();
    void writtenKeysAreReadBack();
    void whatSettingsHoldWrongIsPassedOver();
};

void TestKeysDialog::aKeyIsChangedByMouse() {
    Shown shown;
    shown.give(C::Remark, Qt::Key_R);
    QCOMPARE(shown.dialog.result(), (ChangedKeys{{C::Remark, QKeySequence(Qt::Key_R)}}));
    QCOMPARE(shown.keyShown(C::Remark), u"R"_s);
    QCOMPARE(shown.said(), u"Its key is R now."_s);
    shown.click("record");
    QCOMPARE(shown.dialog.QDialog::result(), int(QDialog::Accepted));
}

void TestKeysDialog::aKeyIsChangedByTheKeyboardAlone() {
    Shown shown;
    for (int row = 0; row < rowOf(C::NoServe); ++row)
        pressIn(shown.dialog, Qt::Key_Down);
    QVERIFY(tabTo(shown.dialog, u"newKey"_s));
    pressIn(shown.dialog, Qt::Key_B, Qt::ControlModifier);
    QCOMPARE(shown.dialog.result(), (ChangedKeys{{C::NoServe, QKeySequence(Qt::CTRL | Qt::Key_B)}}));
    pressIn(shown.dialog, Qt::Key_Tab); // it leaves the field, as everywhere
    QVERIFY(shown.dialog.focusWidget()->objectName() != u"newKey"_s);
    QCOMPARE(shown.dialog.result().size(), std::size_t(1));
}

// clang-format off
void TestKeysDialog::aKeyInUseIsExplained_data() {
    QTest::addColumn<int>("key");
    QTest::addColumn<QString>("sentence");
    QTest::newRow("another command's") << int(Qt::Key_Y)  << u"Y is the key of “Replay”: choose another one, or change that one first."_s;
    QTest::newRow("its second key")    << int(Qt::Key_Enter) << u"Enter is the key of “Next step”: choose another one, or change that one first."_s;
    QTest::newRow("a digit")           << int(Qt::Key_4)  << u"Shirt numbers are typed with 4: choose another key."_s;
    QTest::newRow("an arrow of lists") << int(Qt::Key_Up) << u"The window needs ↑ to find one’s way in it: choose another key."_s;
    QTest::newRow("of practice")       << int(Qt::Key_F4) << u"The window needs F4 to find one’s way in it: choose another key."_s;
}
// clang-format on

void TestKeysDialog::aKeyInUseIsExplained() {
    QFETCH(int, key);
    Shown shown;
    shown.give(C::Remark, static_cast<Qt::Key>(key));
    QTEST(shown.said(), "sentence");
    QVERIFY(shown.dialog.result().empty());
    QCOMPARE(shown.keyShown(C::Remark), u"M"_s);
}

void TestKeysDialog::aKeyThatWasGivenAwayIsFree() {
    Shown shown;
    shown.give(C::Replay, Qt::Key_P);
    shown.give(C::Remark, Qt::Key_Y);
    QCOMPARE(shown.keyShown(C::Remark), u"Y"_s);
    QCOMPARE(shown.keyShown(C::Replay), u"P"_s);
    shown.give(C::Replay, Qt::Key_Y);
    QVERIFY(shown.said().contains(u"“Remark”"_s));
}

void TestKeysDialog::theBuiltInKeysComeBack() {
    Shown shown({{C::Remark, QKeySequence(Qt::Key_R)}, {C::Replay, QKeySequence(Qt::Key_P)}});
    QCOMPARE(shown.keyShown(C::Remark), u"R"_s);
    const QTableWidgetItem* item = shown.table().item(rowOf(C::Remark), 0);
    shown.table().setCurrentCell(item->row(), 0);
    shown.click("builtIn");
    QCOMPARE(shown.keyShown(C::Remark), u"M"_s);
    QCOMPARE(shown.dialog.result().size(), std::size_t(1));
    for (const CommandInfo& info : allCommands()) // whatever they are, they may come back
        if (!info.keys.isEmpty())
            QVERIFY2(!conflictOf(info.command, info.keys.first(), {}), qPrintable(info.id));
    shown.click("allBuiltIn");
    QVERIFY(shown.dialog.result().empty());
    QCOMPARE(shown.keyShown(C::Replay), u"Y"_s);
}

void TestKeysDialog::aCommandMayHaveNoKey() {
    Shown shown;
    shown.table().setCurrentCell(rowOf(C::NoServe), 0);
    shown.click("noKey");
    QCOMPARE(shown.keyShown(C::NoServe), QString());
    QVERIFY(keysOf(C::NoServe, shown.dialog.result()).isEmpty());
}

void TestKeysDialog::aSignIsTakenWithoutShift() {
    Shown shown;
    shown.give(C::Remark, Qt::Key_Question, Qt::ShiftModifier);
    QCOMPARE(shown.keyShown(C::Remark), u"?"_s);
    shown.give(C::Correct, Qt::Key_X, Qt::ShiftModifier); // of a letter, it is another key
    QCOMPARE(shown.keyShown(C::Correct), u"Shift+X"_s);
}

void TestKeysDialog::theTableActsByItsNewKeysAndShowsThem() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home + table.score().visitors, 1);
    setChangedKeys({{C::LeftWins, QKeySequence(Qt::Key_A)}, {C::LeftSubstitution, QKeySequence(Qt::Key_Q)}});
    table.window().rebuild();
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home + table.score().visitors, 1); // the old key is nobody's now
    table.press(Qt::Key_A);
    QCOMPARE(table.score().home + table.score().visitors, 2);
    QTRY_COMPARE(table.find<KeyButton>("subLeft")->accessibleDescription(), u"Q"_s);
    QCOMPARE(table.window().findChild<QAction*>(u"leftWins"_s)->shortcut(), QKeySequence(Qt::Key_A));
}

void TestKeysDialog::writtenKeysAreReadBack() {
    const ChangedKeys changed{{C::Remark, QKeySequence(Qt::CTRL | Qt::Key_M)},
                              {C::Undo, QKeySequence(Qt::Key_F11)},
                              {C::NoServe, QKeySequence()}};
    QCOMPARE(readKeys(writtenKeys(changed)), changed);
    QCOMPARE(writtenKeys(changed).value(u"remark"_s), u"Ctrl+M"_s);
}

void TestKeysDialog::whatSettingsHoldWrongIsPassedOver() {
    QVERIFY(readKeys({{u"nothing"_s, u"A"_s}, {u"remark"_s, u"Y"_s}, {u"noServe"_s, u"4"_s}}).empty());
}

QTEST_MAIN(TestKeysDialog)
#include "tst_keysdialog.moc"
