// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/signoff.h"
#include "core/record/exportparts.h"
#include "tests/support/matchbuilder.h"
#include "tests/support/signoffs.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

const Signatory scorer{Signer::Scorer, {}};
const Signatory second{Signer::SecondReferee, {}};
const Signatory first{Signer::FirstReferee, {}};

QString words(const Findings& findings) {
    QStringList list;
    for (const Finding& finding : findings)
        list += finding.gravity == Gravity::Refused ? exportWord(finding.kind)
                                                    : exportWord(finding.kind) + QStringLiteral(" (unlawful)");
    return list.join(u' ');
}

QString judged(const MatchBuilder& match, const Entry& entry, const std::optional<Placed>& placed = std::nullopt) {
    return words(judgeNext(match.entries(), match.state(), entry, placed));
}

Signed signedBy(const Signatory& who, std::optional<int> set) {
    return {set, who, signerName(who), scrawl(), std::nullopt};
}

/// The number of the first rally won.
EntryNumber firstPoint(const MatchBuilder& match) {
    const auto found = std::ranges::find_if(
        match.entries(), [](const Recorded& recorded) { return std::holds_alternative<RallyWon>(recorded.entry); });
    return found->number;
}

} // namespace

class TestSealCases : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whoSignsIsTheRulebooks_data();
    void whoSignsIsTheRulebooks();
    void captainsSignInEitherOrder();
    void aSetIsSignedInOrderOnceItHasEnded();
    void aPlaceLeftUnsignedNeedsAReason();
    void whoSignsAgainTakesTheFirstSignatureBack();
    void nothingChangesWhatIsSealed();
    void whatFollowsASealedSetGoesOn();
    void aCorrectionThatWouldChangeASealedSetFromAfarIsRefused();
    void aSealedSetIsReopenedBeforeItIsForfeited();
    void reopeningNeedsAReasonAndANameAndVoidsTheSignatures();
    void aReopenedSetReopensTheMatch();
    void theMatchIsSignedWhenItIsClosed();
    void nothingButReopeningFollowsTheMatchsSeal();
    void aSignatureMayBeStruckBeforeTheSealOnly();
    void aReviewFindsWhatWasChangedUnderASeal();
};

void TestSealCases::whoSignsIsTheRulebooks_data() {
    QTest::addColumn<std::vector<Signer>>("order");
    QTest::addColumn<int>("signatures");
    using enum Signer;
    QTest::newRow("three officials") << std::vector{Scorer, SecondReferee, FirstReferee} << 3;
    QTest::newRow("captains count for both teams") << std::vector{Scorer, Captains, SecondReferee} << 4;
    QTest::newRow("coaches too") << std::vector{Captains, Coaches} << 4;
    QTest::newRow("nobody") << std::vector<Signer>{} << 0;
}

void TestSealCases::whoSignsIsTheRulebooks() {
    QFETCH(std::vector<Signer>, order);
    Rulebook rulebook = signedBySet();
    rulebook.signingOrder = order;
    const auto signatories = signatoriesOf(rulebook);
    QTEST(static_cast<int>(signatories.size()), "signatures");
    for (std::size_t i = 0; i + 1 < signatories.size(); ++i)
        if (signatories[i].team && signatories[i].role == signatories[i + 1].role)
            QCOMPARE(signatories[i].team, std::optional(Team::Home));
}

/// Source: FIVB Official Volleyball Rules 2025-2028, 27.2.3: the scorer, then the captains.
void TestSealCases::captainsSignInEitherOrder() {
    MatchBuilder match;
    Rulebook rulebook = signedBySet();
    rulebook.signingOrder = {Signer::Scorer, Signer::Captains, Signer::FirstReferee};
    match.open(3, rulebook).toss(Team::Home);
    playSet(match, Team::Home);
    const Signatory visitors{Signer::Captains, Team::Visitors};
    QCOMPARE(judged(match, signedBy(visitors, 1)), u"signed-out-of-order (unlawful)");
    match.add(signedBy(scorer, 1));
    QCOMPARE(judged(match, signedBy(visitors, 1)), QString());
    match.add(signedBy(visitors, 1));
    QCOMPARE(judged(match, signedBy(first, 1)), u"signed-out-of-order (unlawful)");
    QCOMPARE(judged(match, signedBy({Signer::Captains, Team::Home}, 1)), QString());
}

void TestSealCases::aSetIsSignedInOrderOnceItHasEnded() {
    MatchBuilder match;
    match.open(3, signedBySet()).toss(Team::Home);
    QCOMPARE(judged(match, signedBy(scorer, 1)), u"signed-too-early");
    playSet(match, Team::Home);
    QVERIFY(isSignOffDue(match.state(), 1));
    QCOMPARE(judged(match, signedBy(scorer, 2)), u"signed-too-early");
    QCOMPARE(judged(match, signedBy(scorer, std::nullopt)), u"signed-too-early");
    QCOMPARE(judged(match, signedBy(first, 1)), u"signed-out-of-order (unlawful)");
    QCOMPARE(judged(match, signedBy(scorer, 1)), QString());
    QCOMPARE(judged(match, Sealed{1, {}, SealOf::ThisFile}), u"signatures-missing");
    match.add(signedBy(scorer, 1)).add(signedBy(second, 1));
    QCOMPARE(signaturesDue(match.state(), 1), std::vector{first});
    match.add(signedBy(first, 1));
    QCOMPARE(judged(match, Sealed{1, {}, SealOf::ThisFile}), QString());
    QVERIFY(!isSealed(match.state(), 1));
    match.add(Sealed{1, {}, SealOf::ThisFile});
    QVERIFY(isSealed(match.state(), 1));
    QVERIFY(!isSignOffDue(match.state(), 1));
    QVERIFY(review(match.entries()).empty());
}

void TestSealCases::aPlaceLeftUnsignedNeedsAReason() {
    MatchBuilder match = oneSetPlayed();
    QCOMPARE(judged(match, LeftUnsigned{1, scorer, u"  "_qs}), u"reason-missing");
    QCOMPARE(judged(match, LeftUnsigned{1, scorer, u"called away"_qs}), QString());
    match.add(LeftUnsigned{1, scorer, u"called away"_qs}).add(signedBy(second, 1)).add(signedBy(first, 1));
    QCOMPARE(judged(match, Sealed{1, {}, SealOf::ThisFile}), QString());
}

void TestSealCases::whoSignsAgainTakesTheFirstSignatureBack() {
    MatchBuilder match = oneSetPlayed();
    match.add(signedBy(scorer, 1)).add(signedBy(scorer, 1));
    const MatchState state = match.state();
    QCOMPARE(signOffOf(state, 1)->signatures.size(), std::size_t(1));
    QCOMPARE(signOffOf(state, 1)->signatures.front().entry, match.last());
    QCOMPARE(match.record().signOffs.front().signatures.size(), std::size_t(1));
}

void TestSealCases::nothingChangesWhatIsSealed() {
    const MatchBuilder match = oneSetSealed();
    const EntryNumber point = firstPoint(match);
    QCOMPARE(judged(match, Strike{point, {}}), u"is-sealed");
    QCOMPARE(judged(match, Remark{u"late"_qs}, Placed{Placed::How::Before, point, {}}), u"is-sealed");
    QCOMPARE(judged(match, RallyWon{Team::Visitors}, Placed{Placed::How::InsteadOf, point, {}}), u"is-sealed");
    QCOMPARE(judged(match, Strike{match.last(), {}}), u"is-sealed");
    QCOMPARE(judged(match, signedBy(scorer, 1)), u"is-sealed");
    QCOMPARE(judged(match, Strike{EntryNumber(match.last().value + 7), {}}), u"no-such-entry");
}

void TestSealCases::whatFollowsASealedSetGoesOn() {
    MatchBuilder match = oneSetSealed();
    QCOMPARE(judged(match, LineUp{Team::Home, six({1, 2, 3, 4, 5, 6}), {}, {}}), QString());
    QCOMPARE(judged(match, Remark{u"warm-up"_qs}), QString());
    match.add(Remark{u"warm-up"_qs});
    QCOMPARE(judged(match, Strike{match.last(), {}}), QString());
    playSet(match, Team::Home); // the last set: what comes after its seal would stand on its sheet
    QCOMPARE(judged(match, Remark{u"after"_qs}), QString());
    signOff(match, 2);
    QCOMPARE(judged(match, Remark{u"after"_qs}), u"is-sealed");
    QCOMPARE(judged(match, MatchClosed{}), QString());
}

/// The first set's end is reopened, and what would change the second one's first serve is not recorded while that one
/// stands sealed.
void TestSealCases::aCorrectionThatWouldChangeASealedSetFromAfarIsRefused() {
    MatchBuilder match = oneSetSealed();
    playSet(match, Team::Visitors);
    signOff(match, 2);
    match.add(Reopened{1, u"Orla Vantage"_qs, u"toss"_qs});
    const auto toss = std::ranges::find_if(
        match.entries(), [](const Recorded& recorded) { return std::holds_alternative<Toss>(recorded.entry); });
    const Placed instead{Placed::How::InsteadOf, toss->number, {}};
    QCOMPARE(judged(match, Toss{Team::Visitors, Team::Home}, instead), u"is-sealed");
    QCOMPARE(judged(match, Toss{Team::Home, Team::Home}, instead), QString());
}

void TestSealCases::aSealedSetIsReopenedBeforeItIsForfeited() {
    MatchBuilder match = oneSetSealed();
    playSet(match, Team::Visitors);
    const auto ofSet = [](int number) {
        return Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Set, {}, EarlierSet{number, 0}};
    };
    QCOMPARE(judged(match, ofSet(1)), u"is-sealed");
    QCOMPARE(judged(match, ofSet(2)), QString());
    QCOMPARE(judged(match, ofSet(3)), u"set-not-ended");
    playSet(match.toss(Team::Home), Team::Home); // it would be of no account
    signOff(match, 3).add(Reopened{1, u"Orla Vantage"_qs, u"number 4 is not registered"_qs});
    QCOMPARE(judged(match, ofSet(1)), u"is-sealed");
    match.add(Reopened{3, u"Orla Vantage"_qs, u"number 4 is not registered"_qs});
    QCOMPARE(judged(match, ofSet(1)), QString());
    match.add(ofSet(1));
    const EntryNumber forfeit = match.last();
    QCOMPARE(std::ranges::count(review(match.entries()), forfeit, &EntryFinding::entry), 0);
    signOff(match, 1);
    QCOMPARE(setfolio::judgeNext(match.entries(), match.state(), Strike{forfeit, {}}, std::nullopt, {}).front().kind,
             FindingKind::IsSealed);
}

void TestSealCases::reopeningNeedsAReasonAndANameAndVoidsTheSignatures() {
    MatchBuilder match = oneSetPlayed();
    QCOMPARE(judged(match, Reopened{1, u"Orla Vantage"_qs, u"score"_qs}), u"not-sealed");
    signOff(match, 1);
    QCOMPARE(judged(match, Reopened{1, {}, u"score"_qs}), u"reason-missing");
    QCOMPARE(judged(match, Reopened{1, u"Orla Vantage"_qs, u" "_qs}), u"reason-missing");
    const EntryNumber seal = match.last();
    match.add(Reopened{1, u"Orla Vantage"_qs, u"score"_qs});
    QCOMPARE(match.state().signOffs.front().reopened, std::optional(match.last()));
    QVERIFY(!isSealed(match.state(), 1));
    QCOMPARE(signaturesDue(match.state(), 1).size(), std::size_t(3));
    QCOMPARE(judged(match, Strike{match.last(), {}}), u"is-sealed");
    QCOMPARE(judged(match, Strike{seal, {}}), u"is-sealed");
    match.add(Strike{firstPoint(match), u"net"_qs});
    match.add(Strike{match.last(), {}});
    signOff(match, 1);
    QCOMPARE(match.state().signOffs.size(), std::size_t(2));
}

void TestSealCases::aReopenedSetReopensTheMatch() {
    MatchBuilder match = matchSealed();
    QVERIFY(match.state().closed);
    match.add(Reopened{1, u"Orla Vantage"_qs, u"score"_qs});
    QVERIFY(!match.state().closed);
    QVERIFY(!isSealed(match.state(), std::nullopt));
    QVERIFY(!isSealed(match.state(), 1));
    QVERIFY(isSealed(match.state(), 2));
}

void TestSealCases::theMatchIsSignedWhenItIsClosed() {
    MatchBuilder match = oneSetSealed();
    playSet(match, Team::Home);
    QCOMPARE(judged(match, signedBy(scorer, std::nullopt)), u"signed-too-early");
    match.add(MatchClosed{});
    QCOMPARE(judged(match, signedBy(scorer, 2)), QString());
    QCOMPARE(judged(match, signedBy(scorer, std::nullopt)), QString());
}

void TestSealCases::nothingButReopeningFollowsTheMatchsSeal() {
    const MatchBuilder match = matchSealed();
    QVERIFY(review(match.entries()).empty());
    QCOMPARE(judged(match, Remark{u"late"_qs}), u"is-sealed");
    QCOMPARE(judged(match, Officials{}), u"is-sealed");
    QCOMPARE(judged(match, signedBy(scorer, 1)), u"is-sealed");
    QCOMPARE(judged(match, Strike{firstPoint(match), {}}), u"is-sealed");
    QCOMPARE(judged(match, Reopened{std::nullopt, u"Orla Vantage"_qs, u"remark forgotten"_qs}), QString());
    QCOMPARE(judged(match, Reopened{2, u"Orla Vantage"_qs, u"score"_qs}), QString());
}

void TestSealCases::aSignatureMayBeStruckBeforeTheSealOnly() {
    MatchBuilder match = oneSetPlayed();
    match.add(signedBy(scorer, 1));
    const EntryNumber signature = match.last();
    QCOMPARE(judged(match, Strike{signature, {}}), QString());
    match.add(signedBy(second, 1)).add(signedBy(first, 1)).add(Sealed{1, {}, SealOf::ThisFile});
    QCOMPARE(judged(match, Strike{signature, {}}), u"is-sealed");
}

void TestSealCases::aReviewFindsWhatWasChangedUnderASeal() {
    MatchBuilder match = oneSetSealed();
    match.add(Strike{firstPoint(match), {}});
    const std::vector<EntryFinding> findings = review(match.entries());
    QVERIFY(std::ranges::any_of(findings, [&](const EntryFinding& found) {
        return found.entry == match.last() && found.finding.kind == FindingKind::IsSealed;
    }));
}

QTEST_APPLESS_MAIN(TestSealCases)
#include "tst_sealcases.moc"
