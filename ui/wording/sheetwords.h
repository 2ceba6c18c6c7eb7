// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The words printed on the sheet beside what the scorer writes.
#pragma once

#include "core/record/record.h"

#include <QLocale>
#include <QString>

#include <optional>

namespace setfolio {

/// Heads, labels and explanations that are always the same.
enum class SheetLabel : std::uint8_t {
    // header
    Set,
    Venue,
    Date,
    Scheduled,
    Started,
    Finished,
    Format,
    FirstServe,
    Court,
    // blocks
    Captain,
    Libero,
    TimeOuts,
    Slot,
    Starter,
    Then,
    // ladder
    Opponents,
    Points,
    // foot
    Sanctions,
    Card,
    TeamHead,
    Who,
    SetHead,
    Score,
    Remarks,
    RemarkNumber,
    RemarkText,
    RemarksContinued,
    Officials,
    Signature,
    LineJudges,
    Result,
    Winner,
    WinnerToConfirm,
    Cancelled,
    InVain,
    Loser,
    Duration,
    // legend
    OpeningPoint,
    PointOnServe,
    RallyLost,
    ServedAgain,
    LiberoServes,
    NoServe,
    PenaltyPoint,
    Struck,
    TakenBack,
    Substitution,
    OpponentsSubstitution,
    TimeOut,
    OpponentsTimeOut,
    ScoredSubstitution,
    LossOfServe,
    CaptainRinged,
    WonOnOpponentsServe,
    Won,
    EndOfSet,
    Passed,
};
[[nodiscard]] QString words(SheetLabel label);

// header

/// Which rounds an ink is for, of so many taken in turn, and how its lines look: "rounds 1, 4, 7: fine".
[[nodiscard]] QString inkWords(Ink ink, int inks);
[[nodiscard]] QString dateWords(QDate date, const QLocale& locale); ///< "Sat 10 Oct 2026"
[[nodiscard]] QString timeWords(QTime time,
                                const QLocale& locale);      ///< the locale's time of day; empty if there is none
[[nodiscard]] QString formatWords(int bestOf);               ///< "Best of 5", "One set"
[[nodiscard]] QString matchWords(const MatchOpened& opened); ///< "Girls varsity · Match 17"
[[nodiscard]] QString pageWords(int number, int of);         ///< "page 1 of 2"

// blocks

/// "Home · serves first · green".
[[nodiscard]] QString teamWords(Team team, const std::optional<Team>& servesFirst, const QString& colour);
[[nodiscard]] QString roundWords(int round, bool continued);   ///< "Round 2"
[[nodiscard]] QString timeOutBox(int number);                  ///< "T1"
[[nodiscard]] QString scoreWords(int first, int second);       ///< "6–15"
[[nodiscard]] QString substitutionsWords(int used, int limit); ///< "Substitutions · 11 of 18"

// foot

/// "Line judge 1"; `number` 0 where there is only one of the role.
[[nodiscard]] QString roleWords(Role role, int number);
[[nodiscard]] QString minutesWords(int minutes); ///< "31 min"
[[nodiscard]] QString continuedWords(int page);  ///< "continued on page 2"
[[nodiscard]] QString moreOfficials(int count);  ///< "and 2 more"

/// The language of all these words, as BCP 47 has it: "en".
[[nodiscard]] QString sheetLanguage();

} // namespace setfolio
