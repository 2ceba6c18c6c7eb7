// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Signatures and seals for tests.
#pragma once

#include "core/match/signoff.h"
#include "tests/support/matchbuilder.h"

namespace setfolio::testing {

/// A scrawl of two strokes, another one for each `seed`.
inline std::vector<PenStroke> scrawl(int seed = 1) {
    PenStroke first, second;
    for (int i = 0; i < 24; ++i)
        first.push_back({i * 40, 300 + (i * (seed + 3) * 97) % 400 - i % 2 * 180, i * 16});
    for (int i = 0; i < 6; ++i)
        second.push_back({500 + i * 60, 700 - i * seed % 5 * 30, 600 + i * 16});
    return {first, second};
}

/// A name for each role; nobody real.
inline QString signerName(const Signatory& who) {
    static const QStringList names{QStringLiteral("Wim Sedge"),     QStringLiteral("Una Reed"),
                                   QStringLiteral("Ida Bream"),     QStringLiteral("Mo Teal"),
                                   QStringLiteral("Tobias Dunlin"), QStringLiteral("Orla Vantage")};
    return names.at(static_cast<int>(who.role)) + (who.team == Team::Visitors ? QStringLiteral(" jr") : QString());
}

/// What signs off all that the rulebook asks for, in its order, and seals it.
inline std::vector<Entry> signOffEntries(const Rulebook& rulebook, std::optional<int> set) {
    std::vector<Entry> entries;
    for (const Signatory& who : signatoriesOf(rulebook))
        entries.push_back(Signed{set, who, signerName(who), scrawl(static_cast<int>(who.role) + 1), std::nullopt});
    entries.push_back(Sealed{set, {}, SealOf::ThisFile});
    return entries;
}

/// High school, signed by the scorer and both referees after each set, so that a test need not know who signs there.
inline Rulebook signedBySet() {
    Rulebook rulebook = highSchool();
    rulebook.signingOrder = {Signer::Scorer, Signer::SecondReferee, Signer::FirstReferee};
    rulebook.signedFor = Scope::Set;
    return rulebook;
}

inline MatchBuilder& playSet(MatchBuilder& match, Team winner) {
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    for (int i = 0; i < 25; ++i)
        match.add(RallyWon{winner});
    return match.add(SetEnded{});
}

inline MatchBuilder& signOff(MatchBuilder& match, std::optional<int> set) {
    for (const Entry& entry : signOffEntries(signedBySet(), set))
        match.add(entry);
    return match;
}

/// One set played and ended; best of three.
inline MatchBuilder oneSetPlayed() {
    MatchBuilder match;
    match.open(3, signedBySet()).toss(Team::Home);
    return playSet(match, Team::Home);
}

inline MatchBuilder oneSetSealed() {
    MatchBuilder match = oneSetPlayed();
    return signOff(match, 1);
}

/// Two sets won, both sealed, the match closed and sealed.
inline MatchBuilder matchSealed() {
    MatchBuilder match = oneSetSealed();
    playSet(match, Team::Home);
    signOff(match, 2);
    match.add(MatchClosed{});
    return signOff(match, std::nullopt);
}

} // namespace setfolio::testing
