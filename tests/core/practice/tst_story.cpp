// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/fold.h"
#include "core/practice/story.h"
#include "core/rules/judge.h"

#include <QTest>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

class StoryTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyStoryIsAWholeSetWithoutAFinding_data() { stories(); }
    void everyStoryIsAWholeSetWithoutAFinding();
    void whatIsGivenEndsWithTheLineUps_data() { stories(); }
    void whatIsGivenEndsWithTheLineUps();
    void theClockInTheHallGoesWithTheStory_data() { stories(); }
    void theClockInTheHallGoesWithTheStory();
    void theServerToldIsWhoseTurnItIsExceptInTheStoryOfAWrongServer_data() { stories(); }
    void theServerToldIsWhoseTurnItIsExceptInTheStoryOfAWrongServer();
    void theWrongServerIsToldFromTheFirstServeThatIsTakenBack();
    void theRightSheetHoldsWhatHasBeenTold();
    void aListThatIsNoStoryIsRefused();

private:
    static void stories() {
        QTest::addColumn<QString>("id");
        for (const QString& id : storyIds())
            QTest::newRow(qPrintable(id)) << id;
    }
};

void StoryTest::everyStoryIsAWholeSetWithoutAFinding() {
    QFETCH(QString, id);
    const Story story = practiceStory(id);
    QCOMPARE(review(story.right).size(), std::size_t(0));
    const MatchState state = fold(story.right);
    QVERIFY(state.sets.front().ended);
    QVERIFY(state.sets.front().winner);
    QVERIFY(story.steps.size() > 80);
}

void StoryTest::whatIsGivenEndsWithTheLineUps() {
    QFETCH(QString, id);
    const Story story = practiceStory(id);
    QVERIFY(std::holds_alternative<LineUp>(story.given.back().entry));
    QVERIFY(std::holds_alternative<SetStarted>(story.steps.front().told.entry));
    QVERIFY(std::holds_alternative<SetEnded>(story.steps.back().told.entry));
}

void StoryTest::theClockInTheHallGoesWithTheStory() {
    QFETCH(QString, id);
    const Story story = practiceStory(id);
    QCOMPARE(timeOfDayAfter(story, 0), QTime(18, 31));
    QTime before(18, 31);
    for (std::size_t told = 1; told <= story.steps.size(); ++told) {
        const QTime now = timeOfDayAfter(story, told);
        QVERIFY(now >= before);
        before = now;
    }
    QCOMPARE(timeOfDayAfter(story, 1), std::get<SetStarted>(story.steps.front().told.entry).at);
    QCOMPARE(before, std::get<SetEnded>(story.steps.back().told.entry).at);
}

void StoryTest::theServerToldIsWhoseTurnItIsExceptInTheStoryOfAWrongServer() {
    QFETCH(QString, id);
    int wrong = 0;
    for (const StoryStep& step : practiceStory(id).steps)
        if (std::holds_alternative<ServeContacted>(step.told.entry))
            wrong += step.server != serverOf(step.before.set());
    QCOMPARE(wrong, id == u"4-wrong-server"_s ? 3 : 0);
}

void StoryTest::theWrongServerIsToldFromTheFirstServeThatIsTakenBack() {
    const Story story = practiceStory(u"4-wrong-server"_s);
    const auto found = std::find_if(story.steps.begin(), story.steps.end(), [](const StoryStep& step) {
        return std::holds_alternative<WrongServer>(step.told.entry);
    });
    QVERIFY(found != story.steps.end());
    const auto& ruling = std::get<WrongServer>(found->told.entry);
    QVERIFY(ruling.takenBackFrom);
    // Serve, rally, serve, rally, serve, ruling: all three serves are hers.
    for (int back = 1; back <= 5; ++back)
        QCOMPARE((found - back)->server, ruling.served);
    QVERIFY(std::holds_alternative<ServeContacted>((found - 5)->told.entry));
    QVERIFY((found - 6)->server != ruling.served);
}

void StoryTest::theRightSheetHoldsWhatHasBeenTold() {
    const Story story = practiceStory(storyIds().front());
    QCOMPARE(rightAfter(story, 0), story.given);
    QCOMPARE(rightAfter(story, 1).back(), story.steps[0].told);
    QCOMPARE(rightAfter(story, 7).back(), story.steps[6].told);
    QCOMPARE(rightAfter(story, story.steps.size()), story.right);
}

void StoryTest::aListThatIsNoStoryIsRefused() {
    QVERIFY(!storyOf(u"x"_s, "not json\n"));
    QVERIFY(!storyOf(u"x"_s, R"({"kind":"toss","serves-first":"home","left":"home"})"));
}

} // namespace setfolio

QTEST_GUILESS_MAIN(setfolio::StoryTest)
#include "tst_story.moc"
