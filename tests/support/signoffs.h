// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Signatures and seals for tests.
#pragma once

#include "core/match/signoff.h"

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

} // namespace setfolio::testing
