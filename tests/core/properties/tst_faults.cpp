// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/judge.h"
#include "tests/core/properties/manymatches.h"
#include "tests/support/randomplayfaults.h"

#include <QFile>
#include <QRegularExpression>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// A match in which much happens that is rare.
constexpr Habits eventful{.substitution = 250, .libero = 500, .card = 25, .hurt = 20, .ownServe = 450};

/// The kinds that the header lists as unlawful, in its order.
QStringList unlawfulKinds() {
    QFile header(QStringLiteral(SETFOLIO_SOURCE_DIR "/core/rules/findingkind.h"));
    if (!header.open(QIODevice::ReadOnly))
        return {};
    const QString text = QString::fromUtf8(header.readAll());
    const qsizetype from = text.indexOf(QLatin1String("// unlawful"));
    const QString part = text.mid(from, text.indexOf(QLatin1String("};"), from) - from);
    static const QRegularExpression enumerator(QStringLiteral("^    ([A-Z][A-Za-z]+),"),
                                               QRegularExpression::MultilineOption);
    QStringList kinds;
    for (auto match = enumerator.globalMatch(part); match.hasNext();)
        kinds += match.next().captured(1);
    return kinds;
}

Rulebook adapted(const Fault& fault, const QString& id) {
    Rulebook rulebook = rulebookOf(id);
    if (fault.adapt)
        fault.adapt(rulebook);
    return rulebook;
}

/// Plays a match to a random moment and on to the first that has a place for the fault; the entries that were put in,
/// or none.
Entries spoil(const Fault& fault, RandomPlay& play, Dice& dice) {
    const Entries entries = playTo(fault, play, dice, 200);
    for (const Entry& entry : entries) {
        if (&entry == &entries.back())
            play.wait(fault.beforeLast);
        play.force(entry);
    }
    return entries;
}

bool isFound(const std::vector<EntryFinding>& findings, FindingKind kind, EntryNumber entry) {
    return std::ranges::any_of(findings, [&](const EntryFinding& found) {
        return found.entry == entry && found.finding.kind == kind && found.finding.gravity == Gravity::Unlawful;
    });
}

} // namespace

/// Whatever is unlawful is found, wherever in a lawful match it is put.
class TestFaults : public QObject {
    Q_OBJECT

    struct Count {
        int put = 0;
        int found = 0;
        int before = 0; ///< findings against the lawful entries before it
    };

    static Count putAndFind(const Fault& fault, const QString& id, int wanted) {
        const Rulebook rulebook = adapted(fault, id);
        Count count;
        for (std::uint32_t seed = 1; count.put < wanted && seed < 400U * static_cast<std::uint32_t>(wanted); ++seed) {
            RandomPlay play(seed, rulebook, eventful);
            Dice dice(seed * 7919U);
            const Entries entries = spoil(fault, play, dice);
            if (entries.empty())
                continue;
            ++count.put;
            const std::vector<EntryFinding> findings = review(play.entries());
            const EntryNumber last = play.entries().back().number;
            if (isFound(findings, fault.kind, last))
                ++count.found;
            else if (count.put - count.found == 1)
                tell(QStringLiteral("%1 is not found, seed %2").arg(QLatin1String(fault.name)).arg(seed),
                     play.entries(), last.value);
            const auto early = std::ranges::find_if(findings, [&](const auto& found) { return found.entry < last; });
            if (early != findings.end() && count.before++ == 0)
                tell(QStringLiteral("finding %1 before %2, seed %3")
                         .arg(int(early->finding.kind))
                         .arg(QLatin1String(fault.name))
                         .arg(seed),
                     play.entries(), early->entry.value);
        }
        return count;
    }

private Q_SLOTS:
    void everyUnlawfulKindHasAWayToBePut() {
        const QStringList kinds = unlawfulKinds();
        QVERIFY(kinds.size() > 10);
        QStringList have;
        for (const Fault& fault : allFaults())
            have += QLatin1String(fault.name);
        for (const QString& kind : kinds)
            QVERIFY2(have.count(kind) == 1, qPrintable(kind));
        QCOMPARE(have.size(), kinds.size());
    }

    void whatIsUnlawfulIsFoundEveryTime_data() {
        QTest::addColumn<QString>("rulebook");
        QTest::addColumn<int>("fault");
        const std::vector<Fault> faults = allFaults();
        for (const QString& id : publishedRulebookIds())
            for (std::size_t i = 0; i < faults.size(); ++i)
                QTest::newRow(qPrintable(id + u' ' + QLatin1String(faults[i].name))) << id << static_cast<int>(i);
    }
    void whatIsUnlawfulIsFoundEveryTime() {
        QFETCH(QString, rulebook);
        QFETCH(int, fault);
        const Seeds seeds = seedsToPlay(10, 2000);
        const auto wanted = static_cast<int>(seeds.last);
        const Count count = putAndFind(allFaults()[static_cast<std::size_t>(fault)], rulebook, wanted);
        qInfo("put %d times, found %d times", count.put, count.found);
        QCOMPARE(count.put, wanted);
        QCOMPARE(count.found, count.put);
        QCOMPARE(count.before, 0);
    }
};

QTEST_APPLESS_MAIN(TestFaults)
#include "tst_faults.moc"
