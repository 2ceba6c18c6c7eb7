// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebookcompare.h"

#include "core/rules/rulebooksettings.h"

#include <QtTest>

#include <algorithm>

using namespace setfolio;

namespace {

Rulebook published(const char* id) {
    return publishedRulebook(QString::fromLatin1(id)).value();
}

} // namespace

class TestRulebookCompare : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aRulebookDoesNotDifferFromItself() {
        for (const QString& id : publishedRulebookIds()) {
            const Rulebook book = publishedRulebook(id).value();
            QVERIFY(rulebookDifferences(book, book).empty());
        }
    }

    void aLeaguesOwnValuesAreListedInTheOrderOfTheSettings() {
        const Rulebook book = published("high-school");
        Rulebook own = book;
        own.id = QStringLiteral("estuary");
        own.name = QStringLiteral("Estuary League");
        own.inks = 2;
        own.substitutionLimit = 12;
        own.cap = 28;
        own.delayScope = Scope::Match;
        own.sources.insert(QStringLiteral("margin"), {QStringLiteral("the league's letter"), {}});
        const std::vector<RulebookDifference> expected{
            {QStringLiteral("cap"), QJsonValue(QJsonValue::Null), 28},
            {QStringLiteral("substitution-limit"), 18, 12},
            {QStringLiteral("delay-scope"), QStringLiteral("set"), QStringLiteral("match")},
            {QStringLiteral("inks"), 3, 2}};
        QCOMPARE(rulebookDifferences(book, own), expected);
    }

    void theOtherWayRoundTheValuesChangePlaces() {
        const Rulebook school = published("high-school");
        const Rulebook club = published("club");
        const auto there = rulebookDifferences(school, club);
        const auto back = rulebookDifferences(club, school);
        QCOMPARE(there.size(), back.size());
        QVERIFY(there.size() > 20);
        for (std::size_t at = 0; at < there.size(); ++at)
            QCOMPARE(back[at], (RulebookDifference{there[at].key, there[at].own, there[at].published}));
    }

    void aLadderDiffersAsAWhole() {
        const auto differences = rulebookDifferences(published("college-women"), published("international"));
        const auto ladder = std::ranges::find(differences, QStringLiteral("conduct-ladder"), &RulebookDifference::key);
        QVERIFY(ladder != differences.end());
        QCOMPARE(ladder->published[2][u"point"].toBool(), true);
        QCOMPARE(ladder->own[2][u"point"].toBool(), false);
    }

    void openPointsAreThoseWhoseSourceSaysSo() {
        Rulebook book = published("high-school");
        for (Source& source : book.sources)
            source.open = false;
        QVERIFY(openPoints(book).empty());
        book.sources[QStringLiteral("roster-numbers")].open = true;
        book.sources[QStringLiteral("serve-seconds")].open = true;
        const auto points = openPoints(book);
        QCOMPARE(points.size(), 2U);
        QCOMPARE(points[0].key, QStringLiteral("serve-seconds"));
        QCOMPARE(points[0].value, QJsonValue(5));
        QCOMPARE(points[0].source, book.sources.value(QStringLiteral("serve-seconds")));
        QCOMPARE(points[1].key, QStringLiteral("roster-numbers"));
        QVERIFY(points[1].value.isUndefined());
    }

    void whereSourcesDisagreeTheValueIsOpen_data() {
        QTest::addColumn<QString>("id");
        QTest::addColumn<QString>("key");
        const auto row = [](const char* id, const char* key) {
            QTest::addRow("%s: %s", id, key) << QString::fromLatin1(id) << QString::fromLatin1(key);
        };
        row("high-school", "written-order");              // two conventions, each with its source
        row("high-school", "wrong-server-requests");      // interpreters and referees disagree
        row("high-school", "line-up-number-charged");     // sources disagree
        row("college-women", "deciding-set-side-change"); // a change was proposed for 2026
        row("club", "libero-named-late");                 // sources disagree
        row("club", "lowest-number");                     // 0 or 1
        row("international", "highest-number");           // 20 or 99
    }
    void whereSourcesDisagreeTheValueIsOpen() {
        QFETCH(QString, id);
        QFETCH(QString, key);
        const auto points = openPoints(publishedRulebook(id).value());
        QVERIFY(std::ranges::find(points, key, &OpenPoint::key) != points.end());
    }
};

QTEST_APPLESS_MAIN(TestRulebookCompare)
#include "tst_rulebookcompare.moc"
