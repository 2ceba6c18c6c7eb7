// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/notice.h"
#include "tests/support/matchbuilder.h"

#include <QtTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

QString kinds(const MatchBuilder& match) {
    static const char* const names[] = {"substitutions", "last-time-out", "set-point", "match-point", "set-won"};
    QStringList words;
    for (const Notice& notice : noticesFor(match.state(), match.entries().back().entry))
        words += QStringLiteral("%1 %2").arg(QLatin1String(names[int(notice.kind)]),
                                             QLatin1String(notice.team == Team::Home ? "home" : "visitors"));
    return words.join(QStringLiteral(", "));
}

} // namespace

class TestNotice : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSecondRefereeIsToldOfSetPointAndMatchPoint_data() {
        QTest::addColumn<int>("home");
        QTest::addColumn<int>("visitors");
        QTest::addColumn<QString>("notices");
        // Scoring & Libero Tracking, EOA Volleyball Officials Clinic: set and match point are announced to the second
        // referee.
        // clang-format off
        QTest::newRow("23-23 nothing yet")          << 23 << 23 << "";
        QTest::newRow("24-23")                      << 24 << 23 << "set-point home";
        QTest::newRow("24-24 not any more")         << 24 << 24 << "";
        QTest::newRow("25-24 again")                << 25 << 24 << "set-point home";
        QTest::newRow("20-24")                      << 20 << 24 << "set-point visitors";
        QTest::newRow("25-20 won: to be confirmed") << 25 << 20 << "set-won home";
        // clang-format on
    }
    void theSecondRefereeIsToldOfSetPointAndMatchPoint() {
        QFETCH(int, home);
        QFETCH(int, visitors);
        MatchBuilder match;
        match.started();
        const int level = std::min(home, visitors);
        for (int i = 0; i < level; ++i)
            match.play("hv");
        match.play(QByteArray(home - level, 'h').constData()).play(QByteArray(visitors - level, 'v').constData());
        QCOMPARE(match.set().score, (PerTeam<int>{home, visitors}));
        QTEST(kinds(match), "notices");
    }

    void matchPointIsTheSetPointOfTheLastSetNeeded() {
        MatchBuilder match;
        match.open(3);
        for (int set = 0; set < 2; ++set) {
            match.toss(Team::Home)
                .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
                .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
                .start()
                .play(QByteArray(24, 'h').constData());
            QCOMPARE(kinds(match), set ? QStringLiteral("match-point home") : QStringLiteral("set-point home"));
            match.play("h").add(SetEnded{});
        }
    }

    void substitutionsFifteenToEighteenAreTold() {
        // Scoring & Libero Tracking, EOA Volleyball Officials Clinic: the 15th, 16th, 17th and 18th.
        MatchBuilder match;
        match.started();
        for (int count = 1; count <= 18; ++count) {
            match.substitute(Team::Home, count % 2 ? 7 : 1, count % 2 ? 1 : 7);
            QCOMPARE(kinds(match), count >= 15 ? QStringLiteral("substitutions home") : QString());
        }
        match.play("h");
        QCOMPARE(kinds(match), QString());
    }

    void theLastTimeOutIsTold() {
        MatchBuilder match; // common practice
        match.started().add(TimeOut{Team::Visitors});
        QCOMPARE(kinds(match), QString());
        match.add(TimeOut{Team::Visitors});
        QCOMPARE(kinds(match), QStringLiteral("last-time-out visitors"));
    }
};

QTEST_APPLESS_MAIN(TestNotice)
#include "tst_notice.moc"
