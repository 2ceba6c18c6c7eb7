// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Entries that sign a set or the match off: signatures, the seal over them, and its reopening. In each, `set` is the
/// number of the set, none for the match.
#pragma once

#include "core/match/ids.h"
#include "core/rules/tablerules.h"

#include <QString>

#include <optional>
#include <vector>

namespace setfolio {

/// Who signs: one of the rulebook's signers, and for captains and coaches of which team.
struct Signatory {
    Signer role = Signer::Scorer;
    std::optional<Team> team;
    bool operator==(const Signatory&) const = default;
};

/// Where the pen was, in a unit that only compares: y runs down, both from 0; `at` in milliseconds since the first
/// touch.
struct PenPoint {
    int x = 0;
    int y = 0;
    int at = 0;
    bool operator==(const PenPoint&) const = default;
};

/// What was drawn from touching to leaving.
using PenStroke = std::vector<PenPoint>;

/// Somebody has signed. Who signs again before the seal takes back what was signed before.
struct Signed {
    std::optional<int> set;
    Signatory who;
    QString name;                   ///< printed
    std::vector<PenStroke> strokes; ///< none: left out of a copy of the match
    std::optional<QString> protest; ///< signed under protest: the remark, may be empty
    bool operator==(const Signed&) const = default;
};

/// Somebody who should sign does not, for a reason.
struct LeftUnsigned {
    std::optional<int> set;
    Signatory who;
    QString reason;
    bool operator==(const LeftUnsigned&) const = default;
};

/// Which file the digest of a seal belongs to.
enum class SealOf : std::uint8_t {
    ThisFile,
    Original, ///< a copy without names has a chain of its own; the seal tells which file it was made from
};

/// All that was recorded up to here is sealed, with the digest of the newest entry before this one.
struct Sealed {
    std::optional<int> set;
    QString digest; ///< 64 hexadecimal digits, lower-case; the ledger writes it
    SealOf of = SealOf::ThisFile;
    bool operator==(const Sealed&) const = default;
};

/// The seal is broken, so that what it covers can be corrected: its signatures are void. With a set the match is
/// reopened too.
struct Reopened {
    std::optional<int> set;
    QString name; ///< who says so
    QString reason;
    bool operator==(const Reopened&) const = default;
};

} // namespace setfolio
