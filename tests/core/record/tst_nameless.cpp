// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/chain.h"
#include "core/ledger/entryjson.h"
#include "core/record/nameless.h"
#include "core/record/sealcheck.h"
#include "core/rules/judge.h"
#include "tests/core/ledger/everykind.h"
#include "tests/support/signoffs.h"

#include <QJsonDocument>
#include <QtTest>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

MatchBuilder named() {
    MatchBuilder match = oneSetPlayed();
    match.add(Roster{Team::Home, {{ShirtNumber(4), u"Ida Bream"_s}, {ShirtNumber(9), u"Ruta Fell"_s}}, u"Mo Teal"_s});
    match.add(Officials{{{Role::FirstReferee, u"Orla Vantage"_s}, {Role::Scorer, u"Wim Sedge"_s}}});
    match.add(Remark{u"Bream hurt; Ida Bream out, her breams too. Ruta Fell fell."_s});
    return signOff(match, 1).add(Reopened{1, u"Orla Vantage"_s, u"Wim forgot a remark"_s});
}

QByteArray ledgerOf(const std::vector<Recorded>& entries) {
    QByteArray bytes, digest = firstDigest();
    for (Recorded recorded : entries) {
        recorded.entry = withSeal(recorded.entry, digest);
        const QByteArray line = ledgerLine(recorded, digest);
        digest = digestOfLine(line);
        bytes += line;
    }
    return bytes;
}

QByteArray text(const std::vector<Recorded>& entries) {
    QByteArray all;
    for (const Recorded& recorded : entries)
        all += QJsonDocument(toJson(recorded.entry)).toJson() + recorded.overruled.value_or(QString()).toUtf8();
    return all;
}

} // namespace

/// A match for whoever needs the play and not the people.
class TestNameless : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nobodyIsNamedAnywhere() {
        const MatchBuilder match = named();
        const QByteArray before = text(match.entries()), after = text(withoutNames(match.entries()));
        for (const char* name : {"Ida", "Bream", "Ruta", "Mo Teal", "Teal", "Orla", "Vantage", "Wim", "Sedge"}) {
            QVERIFY2(before.contains(name), name);
            QVERIFY2(!after.contains(name), name);
        }
    }

    void ofEveryKindNoPlaceForANameIsLeft() {
        std::vector<Recorded> entries;
        for (const Entry& entry : everyKind())
            entries.push_back({EntryNumber(static_cast<std::uint32_t>(entries.size() + 1)), {}, entry, {}, {}});
        QVERIFY(holdNames(entries));
        const std::vector<Recorded> nameless = withoutNames(entries);
        QVERIFY(!holdNames(nameless));
        QCOMPARE(nameless.size(), entries.size());
        QCOMPARE(withoutNames(nameless), nameless);
    }

    void whatElseIsWrittenInASentenceStays() {
        const std::vector<Recorded> nameless = withoutNames(named().entries());
        for (const Recorded& recorded : nameless)
            if (const auto* remark = std::get_if<Remark>(&recorded.entry))
                QCOMPARE(remark->text, u"… hurt; … out, her breams too. … fell."_s);
    }

    void thePlayIsTheSame() {
        const MatchBuilder match = named();
        const MatchState before = match.state(), after = fold(withoutNames(match.entries()));
        QCOMPARE(after.sets, before.sets);
        QCOMPARE(after.signOffs, before.signOffs);
        QVERIFY(after.opened->namesLeftOut);
        QVERIFY(review(withoutNames(match.entries())).empty());
    }

    void theCopyHasAChainOfItsOwnAndTheSealOfTheOriginal() {
        const MatchBuilder match = oneSetSealed();
        const QByteArray original = ledgerOf(match.entries());
        const std::vector<Recorded> sealed = readLedger(original).entries;
        const QByteArray copy = ledgerOf(withoutNames(sealed));
        const LedgerContent read = readLedger(copy);
        QVERIFY(!read.damage);
        const auto& seal = std::get<Sealed>(read.entries.back().entry);
        QCOMPARE(seal.of, SealOf::Original);
        QVERIFY(checkSeal(original, seal.digest).line > 0);
        QCOMPARE(checkSeal(copy, seal.digest).line, 0);
    }
};

QTEST_APPLESS_MAIN(TestNameless)
#include "tst_nameless.moc"
