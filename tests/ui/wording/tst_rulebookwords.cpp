// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/rulebookwords.h"

#include <QTest>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

class RulebookWordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everySettingOfAPublishedRulebookIsInWords();
    void valuesAreSaidAsTheyAreMeant_data();
    void valuesAreSaidAsTheyAreMeant();
    void anUnknownRuleIsShownByItsKey();
    void theTitleNamesTheSeason();
};

void RulebookWordsTest::everySettingOfAPublishedRulebookIsInWords() {
    for (const QString& id : publishedRulebookIds()) {
        const auto rulebook = publishedRulebook(id);
        QVERIFY(rulebook.has_value());
        const auto words = wordsFor(*rulebook);
        for (const SettingWords& setting : words) {
            QVERIFY2(setting.label != setting.key, qPrintable(setting.key));
            QVERIFY2(!setting.source.isEmpty(), qPrintable(setting.key));
        }
    }
}

void RulebookWordsTest::valuesAreSaidAsTheyAreMeant_data() {
    QTest::addColumn<QString>("key");
    QTest::addColumn<QString>("value");
    // clang-format off
    QTest::newRow("a number")          << u"set-points"_s               << u"25"_s;
    QTest::newRow("no cap")            << u"cap"_s                      << u"none"_s;
    QTest::newRow("a list")            << u"best-of"_s                  << u"3, 5"_s;
    QTest::newRow("an empty list")     << u"substitution-notices"_s     << u"none"_s;
    QTest::newRow("seconds")           << u"time-out-seconds"_s         << u"60 s"_s;
    QTest::newRow("minutes")           << u"interval-seconds"_s         << u"3 min"_s;
    QTest::newRow("minutes, seconds")  << u"first-line-up-seconds"_s    << u"2 min 30 s"_s;
    QTest::newRow("written order")     << u"written-order"_s            << u"position 2"_s;
    QTest::newRow("libero")            << u"libero-serve"_s             << u"never"_s;
    // clang-format on
}

void RulebookWordsTest::valuesAreSaidAsTheyAreMeant() {
    QFETCH(QString, key);
    QFETCH(QString, value);
    Rulebook rulebook;
    rulebook.substitutionNotices.clear();
    rulebook.firstLineUpSeconds = 150;
    rulebook.liberoServe = LiberoServeRule::Never;
    const auto words = wordsFor(rulebook);
    const auto found = std::ranges::find(words, key, &SettingWords::key);
    QVERIFY(found != words.end());
    QCOMPARE(found->value, value);
}

void RulebookWordsTest::anUnknownRuleIsShownByItsKey() {
    Rulebook rulebook;
    rulebook.sources.insert(u"league-rule"_s, {u"the league's letter"_s, {}});
    QCOMPARE(wordsFor(rulebook).back(),
             (SettingWords{u"league-rule"_s, u"league-rule"_s, {}, u"the league's letter"_s}));
}

void RulebookWordsTest::theTitleNamesTheSeason() {
    Rulebook rulebook;
    rulebook.name = u"High school (NFHS)"_s;
    QCOMPARE(titleOf(rulebook), u"High school (NFHS)"_s);
    rulebook.season = u"2026-27"_s;
    QCOMPARE(titleOf(rulebook), u"High school (NFHS), 2026-27"_s);
}

} // namespace setfolio

QTEST_APPLESS_MAIN(setfolio::RulebookWordsTest)
#include "tst_rulebookwords.moc"
