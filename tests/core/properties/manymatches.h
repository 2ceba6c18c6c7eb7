// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Runs a property over many random matches of each published rulebook, and prints how many there were. SETFOLIO_LONG
/// asks for a hundred thousand a rulebook; SETFOLIO_SEED=n plays match n alone.
#pragma once

#include "core/ledger/entryjson.h"
#include "core/ledger/jsonline.h"
#include "tests/support/randomplay.h"

#include <QElapsedTimer>
#include <QtTest>

namespace setfolio::testing {

/// A long run may take hours: Qt would stop a test function after five minutes.
inline const bool patient =
    qEnvironmentVariableIsSet("SETFOLIO_LONG") && qputenv("QTEST_FUNCTION_TIMEOUT", QByteArray("86400000"));

struct Seeds {
    std::uint32_t first = 1;
    std::uint32_t last = 1;
};

inline Seeds seedsToPlay(int normally, int longRun = 100000) {
    if (qEnvironmentVariableIsSet("SETFOLIO_SEED")) {
        const auto seed = qEnvironmentVariable("SETFOLIO_SEED").toUInt();
        return {seed, seed};
    }
    return {1, static_cast<std::uint32_t>(qEnvironmentVariableIsSet("SETFOLIO_LONG") ? longRun : normally)};
}

/// The rows of a test that is run for each published rulebook; the column is "rulebook", the id.
inline void eachRulebook() {
    QTest::addColumn<QString>("rulebook");
    for (const QString& id : publishedRulebookIds())
        QTest::newRow(qPrintable(id)) << id;
}

inline Rulebook rulebookOf(const QString& id) {
    const auto rulebook = publishedRulebook(id);
    Q_ASSERT(rulebook);
    return *rulebook;
}

/// Prints an entry that fails, with those before it.
inline void tell(const QString& what, const std::vector<Recorded>& entries, std::uint32_t number,
                 std::uint32_t before = 8) {
    QString text = what;
    for (std::uint32_t n = number > before ? number - before : 1; n <= number && n <= entries.size(); ++n)
        if (!std::holds_alternative<MatchOpened>(entries[n - 1].entry))
            text +=
                QStringLiteral("\n    %1 %2").arg(n).arg(QString::fromUtf8(compactJson(toJson(entries[n - 1].entry))));
    qWarning().noquote() << text;
}

/// Plays the matches of the row's rulebook and gives each to `check(play, seed)`; stops at the first that fails.
template <typename Check>
void overMatches(const Rulebook& rulebook, Seeds seeds, Check&& check) {
    QElapsedTimer clock;
    clock.start();
    std::size_t entries = 0;
    for (std::uint32_t seed = seeds.first; seed <= seeds.last; ++seed) {
        RandomPlay play(seed, rulebook);
        play.playMatch();
        entries += play.entries().size();
        check(play, seed);
        if (QTest::currentTestFailed())
            return qWarning("%s: the match of seed %u fails", qPrintable(rulebook.id), seed);
    }
    qInfo("%s: %u matches, seeds %u to %u, %zu entries, %.1f s", qPrintable(rulebook.id), seeds.last - seeds.first + 1,
          seeds.first, seeds.last, entries, static_cast<double>(clock.elapsed()) / 1000.0);
}

} // namespace setfolio::testing
