// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The words printed on the sheets that are not a set's.
#pragma once

#include "core/record/record.h"

#include <QString>

namespace setfolio {

/// Heads, labels and explanations that are always the same.
enum class PageLabel : std::uint8_t {
    // names of the sheets
    LiberoSheet,
    MatchPage,
    EntryPage,
    LineUpSlip,
    HandOver,
    CoachPage,
    // match
    Match,
    Rulebook,
    Coach,
    Captain,
    Liberos,
    Number,
    Player,
    ResultBySet,
    Total,
    Role,
    Name,
    What,
    Reason,
    RemarksOfSets,
    SignaturesAndSeal,
    Seal,
    // libero tracking sheet
    Serves,
    Replacements,
    LiberoNotKept,
    LiberoHowTitle,
    LiberoHow,
    LiberoHowOut,
    LiberoHowScore,
    LiberoServesHere,
    // list of entries
    Time,
    Rally,
    EntryHead,
    // line-up slip
    SeenOnCourt,
    Net,
    CoachSignature,
    SlipNote,
    Team,
    TeamRoster,
    // hand-over
    StandsAt,
    NextServer,
    IfLost,
    OnCourtNow,
    HaveStood,
    SubstitutionsLeft,
    TimeOutsLeft,
    SetsWon,
    // coach’s page
    Rotation,
    SideOut,
    NoRally,
    Difference,
    Servers,
    Terms,
    Won,
    Lost,
    LongestRun,
    LongestRuns,
    PointsInARow,
    FromTo,
    Course,
    CourseSigns,
    Changes,
};
[[nodiscard]] QString words(PageLabel label);

[[nodiscard]] QString continuedTitle(const QString& title); ///< "Remarks, continued"

// match

/// Who signs; the code of the team stands after captain and coach: "Captain SAL".
[[nodiscard]] QString signerWords(Signer signer, const QString& code);
/// "QRL forfeits the match: bus broke down."
[[nodiscard]] QString forfeitWords(const Forfeit& forfeit, const QString& code);

// list of entries, under the words of an entry

[[nodiscard]] QString placedWords(const Placed& placed);     ///< "put in before no. 35"
[[nodiscard]] QString reasonWords(const QString& reason);    ///< "reason: wrong side"
[[nodiscard]] QString overruledWords(const QString& reason); ///< "stands on the referee’s word: ..."
[[nodiscard]] QString struckByWords(EntryNumber correction); ///< "struck by no. 37"

// hand-over

[[nodiscard]] QString asItStands(const QString& time, const QString& score);    ///< "as it stands at 14:32, 17–15"
[[nodiscard]] QString standsAtWords(const QString& time, const QString& score); ///< "14:32, 17–15"; without the time
[[nodiscard]] QString leftWords(int limit, int used);                           ///< "7 of 18"
[[nodiscard]] QString slotOfTeam(const QString& code, const QString& slot);     ///< "SAL, slot III"
[[nodiscard]] QString orderTitle(const QString& code); ///< "Order of service, SAL: who serves next comes first"

// coach’s page

[[nodiscard]] QString wonOnServe();    ///< "serve +"
[[nodiscard]] QString lostOnServe();   ///< "serve −"
[[nodiscard]] QString wonOnReceive();  ///< "receive +"
[[nodiscard]] QString lostOnReceive(); ///< "receive −"
[[nodiscard]] QString percentWords(int percent);
[[nodiscard]] QString setWithScore(int set, int own, int opponents);       ///< "2: 25–23"
[[nodiscard]] QString fromToWords(const QString& from, const QString& to); ///< "3–4 to 9–4"
[[nodiscard]] QString substitutionWords(const Substitution& substitution); ///< "10 in for 7"

} // namespace setfolio
