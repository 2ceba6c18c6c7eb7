// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/fold.h"
#include "tests/ui/table/opentable.h"
#include "ui/practice/practicedialog.h"
#include "ui/practice/practicesession.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTimeEdit>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

/// A table with a practice match, and a learner who enters what she is told by keys.
class Learner {
public:
    explicit Learner(const QString& id, Pace pace = Pace::StepByStep)
        : story(practiceStory(id)),
          table(std::span<const Recorded>(story.given), QSize(1366, 768)) {
        table.dialogs.setEnd = [](QWidget*, const MatchState&, QTime now) { return Answer{SetEnded{now}, {}}; };
        session = new PracticeSession(
            table.window(), story, pace,
            [this](QWidget*, const Compared& seen, const std::vector<Recorded>&) { compared = seen; });
    }

    /// Asks for the next thing, and enters it.
    void follow() {
        const std::size_t before = session->reader().told();
        table.press(Qt::Key_F4);
        if (session->reader().told() != before + 1)
            qFatal("nothing was told");
        enter(session->reader().story().steps[session->reader().told() - 1].told.entry);
    }
    void enter(const Entry& entry) {
        if (std::holds_alternative<SetStarted>(entry) || std::holds_alternative<SetEnded>(entry))
            table.press(Qt::Key_Return);
        else if (std::holds_alternative<ServeContacted>(entry))
            table.press(Qt::Key_Space);
        else if (const auto* rally = std::get_if<RallyWon>(&entry))
            table.press(isLeft(rally->by) ? Qt::Key_Left : Qt::Key_Right);
        else if (const auto* timeOut = std::get_if<TimeOut>(&entry))
            table.press(isLeft(timeOut->team) ? Qt::Key_D : Qt::Key_K);
        else
            QFAIL("this learner knows no key for it");
    }
    [[nodiscard]] bool isLeft(Team team) const { return table.set().left == team; }
    [[nodiscard]] QString now() { return table.find<QLabel>("storyNow")->text(); }

    Story story;
    OpenTable table;
    PracticeSession* session = nullptr;
    std::optional<Compared> compared;
};

} // namespace

class PracticeTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aWholeSetEnteredByKeysAsItIsToldIsRight();
    void theTimesOfDayAreThoseOfTheStory();
    void aMissedRallyIsShownWhereTheSheetsPart();
    void theStoryNeverTakesTheKeyboard();
    void thePaceTellsByItself();
    void holdingStopsTheStoryAndGoingOnContinuesIt();
    void theButtonsDoAsTheKeysDo();
    void theSheetsAreComparedAsFarAsTheStoryHasBeenTold();
    void aStoryAndAPaceAreChosenByKeyAndMouse();
    void theComparisonSaysWhatDiffersInWords();
    void theComparisonOfARightSheetHasNoTable();
};

void PracticeTest::aWholeSetEnteredByKeysAsItIsToldIsRight() {
    Learner learner(u"1-plain-set"_s);
    for (std::size_t step = 0; step < learner.story.steps.size(); ++step)
        learner.follow();
    QVERIFY(learner.session->reader().isOver());
    QVERIFY(learner.table.find("storyCompare")->property("due").toBool());
    learner.table.press(Qt::Key_F9);
    QVERIFY(learner.compared);
    QCOMPARE(differencesOf(learner.compared->right, learner.compared->hers).size(), std::size_t(0));
    QVERIFY(learner.compared->hers.result && learner.compared->hers.result->confirmed);
}

void PracticeTest::theTimesOfDayAreThoseOfTheStory() {
    Learner learner(u"1-plain-set"_s);
    auto* time = learner.table.find<QTimeEdit>("stepTime");
    QVERIFY(learner.table.find("storyNext")->property("due").toBool());
    QCOMPARE(time->time(), QTime(18, 31)); // of the last line-up; the machine's clock says 15:01
    for (std::size_t step = 0; step < learner.story.steps.size(); ++step) {
        learner.follow();
        if (const auto* ended = std::get_if<SetEnded>(&learner.story.steps[step].told.entry))
            QCOMPARE(std::get<SetEnded>(learner.table.newest().entry).at, ended->at);
        if (const auto* started = std::get_if<SetStarted>(&learner.story.steps[step].told.entry))
            QCOMPARE(std::get<SetStarted>(learner.table.newest().entry).at, started->at);
    }
    QVERIFY(learner.session->reader().isOver());
    QVERIFY(!learner.table.find("storyNext")->property("due").toBool());
}

void PracticeTest::aMissedRallyIsShownWhereTheSheetsPart() {
    Learner learner(u"1-plain-set"_s);
    const std::vector<StoryStep>& steps = learner.story.steps;
    std::size_t next = 20;
    while (!std::holds_alternative<RallyWon>(steps[next + 1].told.entry))
        ++next;
    while (learner.session->reader().told() < next)
        learner.follow();
    learner.table.press(Qt::Key_F4); // a serve, and who wins the rally: she looks away
    learner.table.press(Qt::Key_F4);
    const Compared differs = learner.session->compared();
    const std::vector<Difference> found = differencesOf(differs.right, differs.hers);
    QVERIFY(!found.empty());
    const auto& first = std::get<MarkDiffers>(found.front());
    QCOMPARE(first.right->entry, steps[next + 1].told.number);
}

void PracticeTest::theStoryNeverTakesTheKeyboard() {
    Learner learner(u"1-plain-set"_s);
    QWidget* before = learner.table.window().focusWidget();
    learner.follow();
    learner.table.press(Qt::Key_F4);
    QCOMPARE(learner.table.window().focusWidget(), before);
}

void PracticeTest::thePaceTellsByItself() {
    Story story = practiceStory(u"1-plain-set"_s);
    StoryReader reader(std::move(story), Pace::AsPlayed);
    QCOMPARE(between(Pace::AsPlayed), 4000);
    reader.setRunning(true);
    QVERIFY(reader.isRunning());
    QSignalSpy changed(&reader, &StoryReader::changed);
    QVERIFY(changed.wait(5000));
    QCOMPARE(reader.told(), std::size_t(1));
    reader.setRunning(false);
    QVERIFY(!reader.isRunning());
}

void PracticeTest::holdingStopsTheStoryAndGoingOnContinuesIt() {
    Learner learner(u"1-plain-set"_s, Pace::Slow);
    learner.table.press(Qt::Key_F5);
    QCOMPARE(learner.session->reader().told(), std::size_t(1)); // it begins at once
    QVERIFY(learner.session->reader().isRunning());
    learner.table.press(Qt::Key_F5);
    QVERIFY(!learner.session->reader().isRunning());
    learner.table.press(Qt::Key_F5);
    QCOMPARE(learner.session->reader().told(), std::size_t(1));
    QVERIFY(learner.session->reader().isRunning());
}

void PracticeTest::theButtonsDoAsTheKeysDo() {
    Learner learner(u"1-plain-set"_s, Pace::Steady);
    learner.table.click("storyNext");
    QCOMPARE(learner.session->reader().told(), std::size_t(1));
    QVERIFY(learner.now().startsWith(u"18:3"));
    learner.table.click("storyHold");
    QVERIFY(learner.session->reader().isRunning());
    learner.table.click("storyCompare");
    QVERIFY(learner.compared);
    QVERIFY(!learner.session->reader().isRunning()); // nobody is told anything while she reads
}

void PracticeTest::theSheetsAreComparedAsFarAsTheStoryHasBeenTold() {
    Learner learner(u"1-plain-set"_s);
    for (int step = 0; step < 11; ++step)
        learner.follow();
    const Compared compared = learner.session->compared();
    QCOMPARE(differencesOf(compared.right, compared.hers).size(), std::size_t(0));
    QCOMPARE(compared.right.score.home + compared.right.score.visitors, 5);
}

void PracticeTest::aStoryAndAPaceAreChosenByKeyAndMouse() {
    PracticeDialog dialog;
    dialog.show();
    QVERIFY(QTest::qWaitForWindowActive(&dialog));
    QCOMPARE(dialog.storyId(), storyIds().front());
    QCOMPARE(dialog.pace(), Pace::StepByStep);
    QTest::mouseClick(dialog.findChild<QPushButton*>(u"story4"_s), Qt::LeftButton);
    QTest::mouseClick(dialog.findChild<QPushButton*>(u"pace2"_s), Qt::LeftButton);
    QCOMPARE(dialog.storyId(), u"4-wrong-server"_s);
    QCOMPARE(dialog.pace(), Pace::Steady);
    dialog.findChild<QPushButton*>(u"story4"_s)->setFocus();
    QTest::keyClick(dialog.findChild<QPushButton*>(u"story4"_s), Qt::Key_Down);
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Space);
    QCOMPARE(dialog.storyId(), u"5-corrected-call"_s);
    QSignalSpy accepted(&dialog, &QDialog::accepted);
    QSignalSpy print(&dialog, &PracticeDialog::printAsked);
    QTest::mouseClick(dialog.findChild<QPushButton*>(u"printStory"_s), Qt::LeftButton);
    QCOMPARE(print.size(), 1);
    QCOMPARE(print.front().front().toString(), u"5-corrected-call"_s);
    QTest::keyClick(&dialog, Qt::Key_Return);
    QCOMPARE(accepted.size(), 1);
}

void PracticeTest::theComparisonSaysWhatDiffersInWords() {
    Learner learner(u"1-plain-set"_s);
    for (int step = 0; step < 3; ++step)
        learner.follow();
    learner.table.press(Qt::Key_Space);
    learner.table.press(Qt::Key_Left); // a rally that nobody told of
    ComparisonDialog dialog(learner.session->compared());
    dialog.show();
    QVERIFY(dialog.findChild<QLabel*>(u"result"_s)->text().contains(u"marks are right"));
    auto* table = dialog.findChild<QTableWidget*>(u"differences"_s);
    QVERIFY(table && table->rowCount() >= 2);
    QCOMPARE(table->item(0, 1)->text(), u"nothing"_s);
    QVERIFY(table->item(0, 0)->text().contains(u"round 1"));
}

void PracticeTest::theComparisonOfARightSheetHasNoTable() {
    Learner learner(u"1-plain-set"_s);
    for (int step = 0; step < 9; ++step)
        learner.follow();
    ComparisonDialog dialog(learner.session->compared());
    QVERIFY(!dialog.findChild<QTableWidget*>(u"differences"_s));
    QVERIFY(dialog.findChild<QLabel*>(u"result"_s)->text().startsWith(u"Your sheet is as it should be"));
    QSignalSpy print(&dialog, &ComparisonDialog::printAsked);
    QTest::mouseClick(dialog.findChild<QPushButton*>(u"printHers"_s), Qt::LeftButton);
    QCOMPARE(print.size(), 1);
}

} // namespace setfolio

QTEST_MAIN(setfolio::PracticeTest)
#include "tst_practice.moc"
