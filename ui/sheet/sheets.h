// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// All sheets of a match, one kind after another.
#pragma once

#include "core/record/nameless.h"
#include "ui/sheet/compose.h"

#include <set>
#include <span>

namespace setfolio {

/// The kinds of sheets, in the order in which they are printed.
enum class SheetKind : std::uint8_t {
    Match,      ///< the page of the match
    Set,        ///< the sheet of a set, as it stands
    HandOver,   ///< what goes with the sheet of a set in play
    Libero,     ///< the libero tracking sheet of a set
    Coach,      ///< figures
    Entries,    ///< the list of entries
    Slips,      ///< line-up slips for the benches
    BlankSlips, ///< the same with nothing filled in
    BlankSet,   ///< the empty sheet of a set, to be written by pen
};
inline constexpr std::array<SheetKind, 9> allSheetKinds{SheetKind::Match,  SheetKind::Set,        SheetKind::HandOver,
                                                        SheetKind::Libero, SheetKind::Coach,      SheetKind::Entries,
                                                        SheetKind::Slips,  SheetKind::BlankSlips, SheetKind::BlankSet};

/// The name of a kind where sheets are chosen by name: "match", "blank-set".
[[nodiscard]] QString nameOf(SheetKind kind);
[[nodiscard]] std::optional<SheetKind> sheetKindNamed(const QString& name);
/// Whether there is such a sheet of each set.
[[nodiscard]] bool isOfASet(SheetKind kind);

/// A match to be printed: what stands on its sheets, and the entries it was written up from.
struct PrintedMatch {
    const MatchRecord& record;
    std::span<const Recorded> entries;
};

/// What is printed when nobody chooses: the sheets of the sets, and the page of the match once the match is decided.
[[nodiscard]] std::set<SheetKind> usualSheets(const MatchRecord& record);

struct SheetChoice {
    std::set<SheetKind> kinds;
    std::set<int> sets; ///< of sheets that belong to a set; all that are begun when empty
    Names names = Names::Given;
};

/// The pages of the kinds chosen, kind by kind. Of a match in which no set has begun, the sheets of a set are those of
/// set 1, to be filled by pen.
[[nodiscard]] std::vector<Page> composeSheets(const PrintedMatch& match, const SheetChoice& choice,
                                              const SheetOptions& options);

} // namespace setfolio
