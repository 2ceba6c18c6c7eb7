// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Whether a file is what was signed: a seal from paper against the bytes of a ledger.
#pragma once

#include "core/ledger/chain.h"
#include "core/record/record.h"

namespace setfolio {

/// What a file says to a seal.
struct SealCheck {
    int line = 0; ///< all up to this line is what was signed; 0: no whole line has this digest
    /// The seal that stands in the file after that line; none if it was never recorded here.
    std::optional<Recorded> seal;
    /// The entries after it that reach back: that reopen what was sealed, correct it, or seal it anew, in order.
    std::vector<Recorded> reachBack;
    int after = 0;                     ///< how many other entries came after the seal
    std::vector<Recorded> otherSeals;  ///< the seals that stand in the file, if it has no such line
    std::optional<LedgerError> damage; ///< the first line that is not as it was written
    std::optional<TornTail> torn;
};

/// `digits` are those of digitsOfSeal. Pure.
[[nodiscard]] SealCheck checkSeal(const QByteArray& bytes, const QString& digits);

} // namespace setfolio
