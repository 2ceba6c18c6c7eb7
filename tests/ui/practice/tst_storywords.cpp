// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/storywords.h"

#include <QRegularExpression>
#include <QTest>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

class StoryWordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyStepIsToldInASentence_data() { stories(); }
    void everyStepIsToldInASentence();
    void theScoreIsNeverTold();
    void everyStoryHasATitleAndSaysWhatItIsAbout_data() { stories(); }
    void everyStoryHasATitleAndSaysWhatItIsAbout();
    void theServerIsToldByTheNumberOnHerShirt();
    void theSixOfBothTeamsAreGiven();

private:
    static void stories() {
        QTest::addColumn<QString>("id");
        for (const QString& id : storyIds())
            QTest::newRow(qPrintable(id)) << id;
    }
};

void StoryWordsTest::everyStepIsToldInASentence() {
    QFETCH(QString, id);
    for (const StoryStep& step : practiceStory(id).steps) {
        const QString sentence = storySentence(step);
        QVERIFY2(sentence.endsWith(u'.'), qPrintable(sentence));
        QVERIFY2(!sentence.contains(u'%'), qPrintable(sentence));
    }
}

void StoryWordsTest::theScoreIsNeverTold() {
    const QRegularExpression score(u"\\d+\\s*[-\\u2013]\\s*\\d+"_s);
    for (const QString& id : storyIds())
        for (const StoryStep& step : practiceStory(id).steps)
            QVERIFY2(!score.match(storySentence(step)).hasMatch(), qPrintable(storySentence(step)));
}

void StoryWordsTest::everyStoryHasATitleAndSaysWhatItIsAbout() {
    QFETCH(QString, id);
    QVERIFY(storyTitle(id) != id);
    QVERIFY(!storyAbout(id).isEmpty());
}

void StoryWordsTest::theServerIsToldByTheNumberOnHerShirt() {
    const Story story = practiceStory(storyIds().front());
    QCOMPARE(storySentence(story.steps[1]), u"Number 8 of QRL serves."_s);
}

void StoryWordsTest::theSixOfBothTeamsAreGiven() {
    const StoryText text = storyTextOf(practiceStory(storyIds().front()));
    QCOMPARE(text.teams, u"Saltmarsh Herons (SAL) – Quarry Ridge Larks (QRL)"_s);
    QCOMPARE(text.given, (QStringList{u"QRL serves first. SAL stands on the left of the table."_s,
                                      u"SAL by court position: 1: 7, 2: 12, 3: 10, 4: 4, 5: 15, 6: 9."_s,
                                      u"QRL by court position: 1: 8, 2: 16, 3: 20, 4: 1, 5: 13, 6: 22."_s}));
    QCOMPARE(text.told.size(), static_cast<qsizetype>(practiceStory(storyIds().front()).steps.size()));
}

} // namespace setfolio

QTEST_GUILESS_MAIN(setfolio::StoryWordsTest)
#include "tst_storywords.moc"
