// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A roster while it is being typed: text that need not be right yet, and what is wrong with it, line by line.
#pragma once

#include "core/match/entry.h"

#include <QString>

#include <span>
#include <vector>

namespace setfolio {

/// A line of a roster as typed or pasted.
struct RosterRow {
    QString number;
    QString name;
    bool captain = false;
    bool libero = false;
    [[nodiscard]] bool isEmpty() const { return number.isEmpty() && name.isEmpty() && !captain && !libero; }
    bool operator==(const RosterRow&) const = default;
};

/// What is wrong with a line. `line` counts from 1.
struct RosterProblem {
    enum class Code : std::uint8_t {
        NumberMissing,    ///< a name, a captain or a libero without a number
        NotANumber,       ///< text
        DoubleZero,       ///< text: 00 is not 0 and may not be worn
        NumberNotAllowed, ///< text, and the rulebook's lowest and highest number
        Doubled,          ///< text, other: the line with the same number
        SecondCaptain,    ///< other: the line of the first one
        NameTooLong,      ///< highest: how many characters a name may have
        // about the text that was read, not about a player
        TooManyLines,  ///< highest: how many were taken
        QuoteNotClosed ///< the line of the quotation mark
    };
    Code code = Code::NumberMissing;
    int line = 0;
    QString text{};
    int other = 0;
    int lowest = 0;
    int highest = 0;
    bool operator==(const RosterProblem&) const = default;
};

inline constexpr int mostRosterLines = 60;

/// A text as it may stand in an entry on one line: blanks in a row made one, without control characters, halves of
/// surrogate pairs, and what turns the order of words round.
[[nodiscard]] QString plainLine(const QString& text);

/// The number on a shirt as typed ("7", "07", "#7"); invalid for anything else and for "00".
[[nodiscard]] ShirtNumber numberFromText(const QString& text);

/// Everything wrong with the rows, in their order; empty rows are passed over. Source of the numbers: the
/// rulebook's settings. 00 beside 0: common practice.
[[nodiscard]] std::vector<RosterProblem> problemsOf(std::span<const RosterRow> rows, const Rulebook& rulebook);

/// The players of the rows that have a number, in their order.
[[nodiscard]] std::vector<RosterPlayer> playersOf(std::span<const RosterRow> rows);
/// The rows that show these players.
[[nodiscard]] std::vector<RosterRow> rowsOf(std::span<const RosterPlayer> players);

} // namespace setfolio
