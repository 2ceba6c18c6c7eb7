// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/countdown.h"

#include "tests/core/rules/caseplay.h"

using namespace setfolio;
using namespace setfolio::testing;
using namespace setfolio::testing::families;
using namespace std::chrono_literals;

/// Seconds from the start of a warm-up or the end of a set.
class TestCountdown : public QObject {
    Q_OBJECT

    /// "due 120, play 195".
    static QString inWords(const std::optional<Deadlines>& deadlines, const QDateTime& from) {
        if (!deadlines)
            return QStringLiteral("none");
        return QStringLiteral("due %1, ends %2, play %3")
            .arg(from.secsTo(deadlines->lineUpsDue))
            .arg(from.secsTo(deadlines->ends))
            .arg(from.secsTo(deadlines->play));
    }

private Q_SLOTS:
    void intervalsAreTheRulebooks_data();
    void intervalsAreTheRulebooks();
    void aWarmUpEndsWithTheLineUpsInPlace();
    void thereIsNoIntervalWhileASetIsPlayedOrAfterTheMatch();
};

// clang-format off
void TestCountdown::intervalsAreTheRulebooks_data() {
    QTest::addColumn<QString>("rulebook");
    QTest::addColumn<QString>("play");
    QTest::addColumn<bool>("isLong");
    QTest::addColumn<QString>("expected");
    const auto row = [](const char* rulebook, const char* play, bool isLong, const char* expected, const char* source) {
        QTest::addRow("%s: %s (%s)", rulebook, play, source) << QString::fromLatin1(rulebook) << QString::fromLatin1(play)
                                                             << isLong << QString::fromLatin1(expected);
    };
    row(hs, "end h",             false, "due 120, ends 180, play 195", "NFHS Comments on the Rules 2026-27, 5-5-3b(21); NFHS Rules Interpretations 2016-17");
    row(hs, "end h",             true,  "due 240, ends 300, play 315", "NFHS Comments on the Rules 2026-27, 5-5-3b(21)");
    row(cw, "end h",             false, "due 150, ends 180, play 180", "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.1");
    row(cw, "win h; end h",      true,  "due 270, ends 300, play 300", "NCAA change report 2018");
    row(cw, "end h",             true,  "due 150, ends 180, play 180", "NCAA change report 2018: only after set 2");
    row(cl, "end h",             false, "due 150, ends 180, play 180", "GEVA Region scorekeeper outline 2006-07");
    row(in, "end h",             false, "due 180, ends 180, play 180", "FIVB Rules 2025-2028, 18.1, 27.2.1.2");
    row(in, "win h; end h",      true,  "due 600, ends 600, play 600", "FIVB Rules 2025-2028, 18.1");
    row(in, "end h",             true,  "due 180, ends 180, play 180", "FIVB Rules 2025-2028, 18.1: only after set 2");
}
// clang-format on

void TestCountdown::intervalsAreTheRulebooks() {
    QFETCH(QString, rulebook);
    QFETCH(QString, play);
    QFETCH(bool, isLong);
    const CasePlay done(rulebook, play);
    const auto deadlines = interval(done.state(), isLong ? IntervalLength::Long : IntervalLength::Usual);
    QTEST(inWords(deadlines, done.match().entries().back().time), "expected");
}

void TestCountdown::aWarmUpEndsWithTheLineUpsInPlace() {
    const QDateTime began(QDate(2026, 10, 10), QTime(18, 0), Qt::UTC);
    const auto lineUps = [&](const char* id) {
        const Deadlines deadlines = warmUp(publishedRulebook(QString::fromLatin1(id)).value(), began, 15min);
        return QStringLiteral("due %1, fixed %2")
            .arg(deadlines.lineUpsDue.secsTo(deadlines.ends))
            .arg(deadlines.lineUpsFixed.secsTo(deadlines.ends));
    };
    QCOMPARE(lineUps(hs), QStringLiteral("due 120, fixed 120")); // 2021-22 NFHS Volleyball Rules PowerPoint, 7-1-4
    QCOMPARE(lineUps(cw), QStringLiteral("due 180, fixed 60"));  // NCAA 2012 and 2013 Rules, 10.1.1.1, 10.1.1.7
    QCOMPARE(lineUps(cl), QStringLiteral("due 120, fixed 120")); // Referee magazine 09/2023
    QCOMPARE(lineUps(in), QStringLiteral("due 0, fixed 0"));     // FIVB Rules 2025-2028, 27.2.1.2
    QCOMPARE(warmUp(highSchool(), began, 15min).ends, began.addSecs(900));
}

void TestCountdown::thereIsNoIntervalWhileASetIsPlayedOrAfterTheMatch() {
    const auto after = [](const char* play) {
        return interval(CasePlay(QString::fromLatin1(hs), QString::fromLatin1(play)).state());
    };
    QVERIFY(!interval(MatchState()));
    QVERIFY(!after(""));
    QVERIFY(!after("win h"));
    QVERIFY(after("win h; end h"));
    QVERIFY(!after("win h; win h; end h"));
}

QTEST_APPLESS_MAIN(TestCountdown)
#include "tst_countdown.moc"
