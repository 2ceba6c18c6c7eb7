// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Sets whose sheets the tests look at, played with invented teams. Each is a folder of tests/golden: its file `scene`
/// says how it is played, its files page-1.txt ... what stands on its pages.
#pragma once

#include "core/record/record.h"
#include "tests/support/matchbuilder.h"
#include "ui/sheet/sheets.h"

#include <QStringList>
#include <QStringView>

namespace setfolio::testing {

struct SheetScene {
    QString name; ///< of its folder
    MatchHeading heading;
    SetRecord set;
    bool screen = false; ///< composed as the table window shows it
    bool a4 = false;
    std::set<SheetKind> sheets; ///< other sheets of the match instead of the set's own; none
    MatchRecord record;         ///< of the whole match
    std::vector<Recorded> entries;
};

[[nodiscard]] QString goldenFolder();
/// The names of all scenes, in the order of the alphabet.
[[nodiscard]] QStringList sheetSceneNames();

/// Reads and plays a scene; a scene that cannot be read stops the test. Lines of the file, # for comments:
/// - competition, division, match, venue, home, home-code, home-colour, visitors, visitors-code, visitors-colour: the
///   words that follow; "best-of 3";
/// - "official first-referee Orla Vantongeren": one more; "no-officials" before it;
/// - "rulebook of international", "rulebook floor-order", "rulebook substitutions 6", "rulebook time-outs 3";
/// - "set 1": the set on the sheet, 1 or 2 (2, with set 1 played); "serves-first visitors"; "no-line-ups";
/// - "entry {...}": any entry, as FORMAT.md has it; "put-in 3 {...}", "instead 3 {...}": put in before the third entry
///   from the end, or in its place; "wrong-server home 15 3": the ruling on 15, with three points taken back;
/// - "sheets match,libero": other sheets than the set's; "demo": the demo match, whatever else the file says;
/// - "play ..." (see playWords), "remark ...", "end 19:13", in the order of play; "screen"; "a4".
[[nodiscard]] SheetScene sheetScene(const QString& name);

/// The pages of a scene, as its file chooses them; on the paper it names unless another is given.
[[nodiscard]] std::vector<Page> composeScene(const SheetScene& scene, const SheetFonts& fonts,
                                             std::optional<PaperSize> paper = std::nullopt);

/// Plays on from a list of words: h and v for the team that wins the rally, r replay, e re-serve, n no serve, s serve
/// contacted; H10/7 and V10/7 substitutions of 10 for 7; th, tv time-outs; lh, lv the libero begins to serve; ph, pv
/// penalty points; u strikes the newest entry, c does so with a reason. "v*3" is "v v v".
void playWords(MatchBuilder& match, QStringView words);

} // namespace setfolio::testing
