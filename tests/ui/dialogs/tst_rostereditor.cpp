// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/rostereditor.h"
#include "ui/dialogs/rostertable.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTemporaryDir>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

/// The editor with its tools in a window of its own.
class EditorWindow : public QWidget {
public:
    EditorWindow() : m_editor(new RosterEditor) {
        auto* row = new QHBoxLayout(this);
        row->addWidget(m_editor, 3);
        row->addWidget(m_editor->tools(), 2);
        resize(980, 620);
        m_editor->setRulebook(highSchool());
        showActive(*this);
        m_editor->setFocus();
    }
    [[nodiscard]] RosterEditor& editor() { return *m_editor; }
    [[nodiscard]] RosterTable& table() { return *childOf<RosterTable>(*this, "roster"); }
    [[nodiscard]] QString said() { return childOf<QLabel>(*this, "rosterProblems")->text(); }
    [[nodiscard]] QPoint cell(int row, int column) {
        return table().visualRect(table().model()->index(row, column)).center();
    }

private:
    RosterEditor* m_editor;
};

QStringList numbersOf(const RosterEditor& editor) {
    QStringList numbers;
    for (const RosterRow& row : editor.rows())
        numbers << row.number;
    return numbers;
}

/// Each with Enter.
void typeNumbers(EditorWindow& window, const QStringList& numbers) {
    for (const QString& number : numbers) {
        const int below = window.table().currentIndex().row() + 1;
        typeInto(window, number);
        pressIn(window, Qt::Key_Return);
        QTRY_COMPARE(window.table().currentIndex().row(), below);
    }
}

} // namespace

class RosterEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aRosterIsTypedWithTabAndEnter();
    void enterGoesDownAColumnOfNumbers();
    void aDoubledNumberIsToldWithItsLine();
    void aRosterIsPastedByKeyAndByButton_data();
    void aRosterIsPastedByKeyAndByButton();
    void aRosterPastedIntoACellIsTheWholeRoster();
    void whatAPasteTookAwayCanBeBroughtBack();
    void aTextWithoutPlayersLeavesTheRosterAlone();
    void aCsvFileIsReadFromItsPlace();
    void aFileThatIsNoRosterIsSaid();
    void aTapMarksTheCaptainAndTheLibero();
    void theCaptainsMarkMoves();
    void deleteTakesALineOut();
};

void RosterEditorTest::aRosterIsTypedWithTabAndEnter() {
    EditorWindow window;
    typeInto(window, u"7"_s);
    pressIn(window, Qt::Key_Tab);
    typeInto(window, u"Ada Lund"_s);
    pressIn(window, Qt::Key_Return);
    QTRY_COMPARE(window.table().currentIndex(), window.table().model()->index(1, 0));
    typeInto(window, u"12"_s);
    pressIn(window, Qt::Key_Tab);
    typeInto(window, u"Bea Moss"_s);
    pressIn(window, Qt::Key_Return);
    QTRY_COMPARE(window.editor().rows(), (std::vector<RosterRow>{{u"7"_s, u"Ada Lund"_s, false, false},
                                                                 {u"12"_s, u"Bea Moss"_s, false, false}}));
    QVERIFY(window.said().isEmpty());
}

void RosterEditorTest::enterGoesDownAColumnOfNumbers() {
    EditorWindow window;
    typeNumbers(window, {u"4"_s, u"8"_s, u"15"_s});
    QCOMPARE(numbersOf(window.editor()), (QStringList{u"4"_s, u"8"_s, u"15"_s}));
}

void RosterEditorTest::aDoubledNumberIsToldWithItsLine() {
    EditorWindow window;
    typeNumbers(window, {u"4"_s, u"8"_s, u"4"_s});
    QCOMPARE(window.said(), u"Line 3: number 4 stands in line 1 too: change one of them."_s);
}

void RosterEditorTest::aRosterIsPastedByKeyAndByButton_data() {
    QTest::addColumn<bool>("byKey");
    QTest::newRow("Ctrl+V") << true;
    QTest::newRow("the button") << false;
}

void RosterEditorTest::aRosterIsPastedByKeyAndByButton() {
    QFETCH(bool, byKey);
    EditorWindow window;
    putOnClipboard(u"Number\tName\tCaptain\tLibero\n7\tAda Lund\tx\t\n2\tBea Moss\t\tx\n"_s);
    if (byKey)
        pressIn(window, Qt::Key_V, Qt::ControlModifier);
    else
        QTest::mouseClick(childOf<QPushButton>(window, "paste"), Qt::LeftButton);
    QCOMPARE(window.editor().rows(),
             (std::vector<RosterRow>{{u"7"_s, u"Ada Lund"_s, true, false}, {u"2"_s, u"Bea Moss"_s, false, true}}));
}

void RosterEditorTest::aRosterPastedIntoACellIsTheWholeRoster() {
    EditorWindow window;
    putOnClipboard(u"7\tAda Lund\n2\tBea Moss\n7\tCyra Roe\n"_s);
    typeInto(window, u"1"_s); // a cell is being typed in
    pressIn(window, Qt::Key_V, Qt::ControlModifier);
    QTRY_COMPARE(numbersOf(window.editor()), (QStringList{u"7"_s, u"2"_s, u"7"_s}));
    QCOMPARE(window.said(), u"Line 3: number 7 stands in line 1 too: change one of them."_s);
}

void RosterEditorTest::whatAPasteTookAwayCanBeBroughtBack() {
    EditorWindow window;
    window.editor().setRows({{u"1"_s, u"Hope Marl"_s, false, false}});
    auto* back = childOf<QPushButton>(window, "bringBack");
    QVERIFY(!back->isVisible());
    putOnClipboard(u"7\n2\n"_s);
    pressIn(window, Qt::Key_V, Qt::ControlModifier);
    QCOMPARE(numbersOf(window.editor()), (QStringList{u"7"_s, u"2"_s}));
    tap(*back);
    QTRY_COMPARE(window.editor().rows(), (std::vector<RosterRow>{{u"1"_s, u"Hope Marl"_s, false, false}}));
    QVERIFY(!back->isVisible());
}

void RosterEditorTest::aTextWithoutPlayersLeavesTheRosterAlone() {
    EditorWindow window;
    window.editor().setRows({{u"1"_s, u"Hope Marl"_s, false, false}});
    putOnClipboard(u"\n \n"_s);
    pressIn(window, Qt::Key_V, Qt::ControlModifier);
    QCOMPARE(numbersOf(window.editor()), QStringList{u"1"_s});
    QCOMPARE(window.said(), u"There is no player in that text."_s);
}

void RosterEditorTest::aCsvFileIsReadFromItsPlace() {
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"roster.csv"_s);
    write(path, "name;number\r\n\"Lund; Ada\";7\r\nBea Moss;12\r\nCyra Roe;12\r\n");
    EditorWindow window;
    const ChoosingFile choosing(path);
    QTest::mouseClick(childOf<QPushButton>(window, "readFile"), Qt::LeftButton);
    QVERIFY(choosing.hasChosen());
    QCOMPARE(numbersOf(window.editor()), (QStringList{u"7"_s, u"12"_s, u"12"_s}));
    QCOMPARE(window.editor().rows().front().name, u"Lund; Ada"_s);
    QCOMPARE(window.said(), u"Line 3: number 12 stands in line 2 too: change one of them."_s);
}

void RosterEditorTest::aFileThatIsNoRosterIsSaid() {
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"roster.csv"_s);
    write(path, QByteArray(1'000'001, '7'));
    EditorWindow window;
    window.editor().setRows({{u"1"_s, u"Hope Marl"_s, false, false}});
    const ChoosingFile choosing(path);
    QTest::mouseClick(childOf<QPushButton>(window, "readFile"), Qt::LeftButton);
    QVERIFY(choosing.hasChosen());
    QVERIFY(window.said().endsWith(u"roster.csv is too large to be a roster."_s));
    QCOMPARE(numbersOf(window.editor()), QStringList{u"1"_s});
}

void RosterEditorTest::aTapMarksTheCaptainAndTheLibero() {
    EditorWindow window;
    window.editor().setRows({{u"7"_s, u"Ada Lund"_s, false, false}, {u"2"_s, {}, false, false}});
    tap(*window.table().viewport(), window.cell(0, 2));
    tap(*window.table().viewport(), window.cell(1, 3));
    QTRY_COMPARE(window.editor().rows(),
                 (std::vector<RosterRow>{{u"7"_s, u"Ada Lund"_s, true, false}, {u"2"_s, {}, false, true}}));
    tap(*window.table().viewport(), window.cell(1, 3));
    QTRY_VERIFY(!window.editor().rows().back().libero);
}

void RosterEditorTest::theCaptainsMarkMoves() {
    EditorWindow window;
    window.editor().setRows({{u"7"_s, {}, true, false}, {u"2"_s, {}, false, false}});
    QTest::mouseClick(window.table().viewport(), Qt::LeftButton, {}, window.cell(1, 2));
    QVERIFY(!window.editor().rows().front().captain);
    QVERIFY(window.editor().rows().back().captain);
    pressIn(window, Qt::Key_Space); // and by the keyboard
    QVERIFY(!window.editor().rows().back().captain);
}

void RosterEditorTest::deleteTakesALineOut() {
    EditorWindow window;
    window.editor().setRows({{u"7"_s, {}, false, false}, {u"2"_s, {}, false, false}, {u"9"_s, {}, false, false}});
    pressIn(window, Qt::Key_Down);
    pressIn(window, Qt::Key_Delete);
    QCOMPARE(numbersOf(window.editor()), (QStringList{u"7"_s, u"9"_s}));
}

} // namespace setfolio

QTEST_MAIN(setfolio::RosterEditorTest)
#include "tst_rostereditor.moc"
