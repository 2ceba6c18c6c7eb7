// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What setfolio says to a person at a command line.
#pragma once

#include "core/rules/judge.h"

#include <QString>

namespace setfolio {

/// What is wrong with a command line, and the word it is about.
struct UsageError {
    enum class Code {
        UnknownOption,
        RepeatedOption,
        MissingValue,   ///< an option without its value
        UnknownPaper,   ///< the value of --paper
        UnknownInks,    ///< the value of --inks
        UnknownSheet,   ///< a name in the value of --sheets
        UnknownFormat,  ///< the value of --as for an export
        UnknownPdfForm, ///< the value of --as for printing
        UnknownSeal,    ///< the value of --seal
        MissingOption,  ///< an option that the command cannot do without
        MissingFile,    ///< a command without a file; the command
        TooManyFiles,   ///< the first word that is too many
    };
    Code code = Code::UnknownOption;
    QString word;
    bool operator==(const UsageError&) const = default;
};

[[nodiscard]] QString sentence(const UsageError& error);
[[nodiscard]] QString seeHelp();

/// All of `setfolio --help`.
[[nodiscard]] QString helpText();

/// "a.setfolio, line 45: This is substitution 19 of SAL, ... [rule: value; source] The referee let it stand: reason."
[[nodiscard]] QString findingLine(const QString& path, int line, const EntryFinding& finding, const MatchState& state);
/// The verdict on a file that is whole: how many entries, and whether anything was found.
[[nodiscard]] QString wholeFile(const QString& path, int entries, int findings);
/// The verdict on one that is not, before the sentence on its damage or its torn line.
[[nodiscard]] QString damagedFile(const QString& path, const QString& why);
[[nodiscard]] QString tornFile(const QString& path, const QString& why);
/// A list has been entered.
[[nodiscard]] QString written(const QString& path, int entries, int findings);
/// A fault in a line of a list, or of the file as a whole when `line` is 0.
[[nodiscard]] QString listFault(const QString& path, int line, const QString& why);
/// Standard input, where a path is expected in a sentence.
[[nodiscard]] QString standardInput();
[[nodiscard]] QString holdsNoMatch(const QString& path);
[[nodiscard]] QString sheetsNotDrawn(const QString& path);
[[nodiscard]] QString pagesWritten(const QString& path, int pages);
/// A copy of a match without names has been written.
[[nodiscard]] QString namesLeftOut(const QString& path);
[[nodiscard]] QString standardOutputFailed();
[[nodiscard]] QString noScreen();
[[nodiscard]] QString typefaceMissing(const QString& family, const QString& package);

} // namespace setfolio
