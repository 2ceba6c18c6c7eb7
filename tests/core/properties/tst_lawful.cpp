// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/judge.h"
#include "tests/core/properties/manymatches.h"

#include <map>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// Findings of one kind over many matches: how many, and where the least has to be read to see one.
struct Met {
    int count = 0;
    std::uint32_t seed = 0;
    EntryFinding first;
    std::vector<Recorded> entries;
};

QString inWords(const Met& met, FindingKind kind) {
    const Finding& finding = met.first.finding;
    return QStringLiteral(
               "finding %1 (%2), %3 times, least in the match of seed %4 at entry %5: number %6, count %7 of %8")
        .arg(int(kind))
        .arg(finding.setting)
        .arg(met.count)
        .arg(met.seed)
        .arg(met.first.entry.value)
        .arg(finding.number.value)
        .arg(finding.count)
        .arg(finding.limit);
}

/// How many entries before it are shown.
std::uint32_t before() {
    return qEnvironmentVariableIsSet("SETFOLIO_SEED") ? 1000 : 12;
}

} // namespace

/// The judge has nothing to say against a lawful match.
class TestLawful : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aLawfulMatchGivesNoFinding_data() { eachRulebook(); }
    void aLawfulMatchGivesNoFinding() {
        QFETCH(QString, rulebook);
        std::map<FindingKind, Met> all;
        overMatches(rulebookOf(rulebook), seedsToPlay(1000), [&all](const RandomPlay& play, std::uint32_t seed) {
            for (const EntryFinding& found : review(play.entries())) {
                Met& met = all[found.finding.kind];
                if (met.count++ == 0 || found.entry < met.first.entry) {
                    met.seed = seed;
                    met.first = found;
                    met.entries = play.entries();
                }
            }
        });
        for (const auto& [kind, met] : all)
            tell(inWords(met, kind), met.entries, met.first.entry.value, before());
        QVERIFY(all.empty());
    }
};

QTEST_APPLESS_MAIN(TestLawful)
#include "tst_lawful.moc"
