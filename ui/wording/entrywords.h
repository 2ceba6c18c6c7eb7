// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// An entry in a few words, as the list of last entries shows it.
#pragma once

#include "core/match/state.h"

#include <QString>

#include <optional>

namespace setfolio {

struct EntryWords {
    int rally = 0;            ///< the rally it belongs to, or comes before; 0 outside a set
    std::optional<Team> team; ///< whose plate stands before the words
    QString words;            ///< "point 11, own serve"
    bool operator==(const EntryWords&) const = default;
};

/// The words for an entry recorded in the state `before` that made it `after`. A correction is worded by the caller,
/// who knows what it struck: strikeWords.
[[nodiscard]] EntryWords wordsFor(const Entry& entry, const MatchState& before, const MatchState& after);

/// "injury": what a rally is played over for.
[[nodiscard]] QString causeWords(ReplayCause cause);

/// "struck: point 11, own serve", and "stands again: ..." when a correction was itself struck.
[[nodiscard]] QString strikeWords(const QString& struck, bool standsAgain);

} // namespace setfolio
