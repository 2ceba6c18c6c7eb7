// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/rulebookwords.h"

#include "core/rules/rulebooksettings.h"
#include "core/rules/settingwords.h"
#include "ui/wording/rulebooklabels.h"

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
    void everyWordOfASettingHasItsPhrase();
    void whatIsOpenSaysSo();
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
    QTest::newRow("minutes, or none")  << u"long-interval-seconds"_s    << u"5 min"_s;
    QTest::newRow("no deadline")       << u"first-line-up-fixed-seconds"_s << u"none"_s;
    QTest::newRow("no limit")          << u"resume-within-hours"_s      << u"no limit"_s;
    QTest::newRow("after any set")     << u"long-interval-after-set"_s  << u"any"_s;
    QTest::newRow("yes")               << u"re-serve-written"_s         << u"yes"_s;
    QTest::newRow("no")                << u"exit-scores"_s              << u"no"_s;
    QTest::newRow("a word")            << u"second-request"_s           << u"is allowed in the same dead ball"_s;
    QTest::newRow("who signs")         << u"signing-order"_s            << u"scorer, second referee, first referee"_s;
    QTest::newRow("cards")             << u"delay-ladder"_s             << u"warning (yellow), penalty (red, point)"_s;
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

void RulebookWordsTest::everyWordOfASettingHasItsPhrase() {
    QList<std::span<const char* const>> lists{wordsOf<SanctionLevel>, wordsOf<CardsShown>, wordsOf<Signer>};
    for (const Setting& setting : rulebookSettings())
        if (const auto* word = std::get_if<WordSetting>(&setting.how))
            lists += word->words;
    // said as they are
    const QStringList plain{u"never"_s,  u"warning"_s, u"penalty"_s, u"expulsion"_s, u"disqualification"_s,
                            u"red"_s,    u"yellow"_s,  u"scorer"_s,  u"captains"_s,  u"coaches"_s,
                            u"ringed"_s, u"slashed"_s};
    for (const auto& words : lists)
        for (const char* word : words)
            QVERIFY2(settingPhrase(QLatin1String(word)) != QLatin1String(word) || plain.contains(QLatin1String(word)),
                     word);
}

void RulebookWordsTest::whatIsOpenSaysSo() {
    const auto words = wordsFor(publishedRulebook(u"high-school"_s).value());
    const auto isOpen = [&words](const QString& key) {
        return std::ranges::find(words, key, &SettingWords::key)->open;
    };
    QVERIFY(isOpen(u"serve-seconds"_s)); // from memory
    QVERIFY(!isOpen(u"set-points"_s));   // NFHS 2003 rule changes
    QCOMPARE(sourceWords({{}, {}, {}, u"from memory"_s, true}), u"from memory. Look it up before the season."_s);
    QCOMPARE(sourceWords({{}, {}, {}, u"a handbook, 5-6"_s, false}), u"a handbook, 5-6"_s);
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
