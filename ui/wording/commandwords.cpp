// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/commandwords.h"

#include "ui/wording/fill.h"
#include "ui/wording/findingwords.h"
#include "ui/wording/rulebooklabels.h"
#include "ui/wording/rulebookwords.h"

#include <QCoreApplication>
#include <QDir>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::CommandWords)
};

// clang-format off
QString pattern(UsageError::Code code) {
    using enum UsageError::Code;
    switch (code) {
    case UnknownOption:  return Say::tr("There is no option %1 here. A file of that name is written ./%1.");
    case RepeatedOption: return Say::tr("The option %1 is given twice: give it once.");
    case MissingValue:   return Say::tr("The option %1 needs a value after it.");
    case UnknownPaper:   return Say::tr("There is no paper %1: choose letter or a4.");
    case UnknownInks:    return Say::tr("There are no inks %1: choose among cobalt-and-rust, heather-and-gorse, greys and black-only.");
    case UnknownSheet:   return Say::tr("There is no sheet %1: choose among match, set, hand-over, libero, coach, entries, slips, blank-slips and blank-set.");
    case UnknownFormat:  return Say::tr("A match cannot be exported as %1: choose json, csv or match-file.");
    case UnknownSeal:    return Say::tr("%1 is no seal: type the 24 signs of the code from the paper, without I, O, 0 or 1, or all 64 digits.");
    case UnknownPdfForm: return Say::tr("A PDF cannot be made as %1: choose archive or plain.");
    case MissingOption:  return Say::tr("The option %1 is missing.");
    case MissingFile:    return Say::tr("%1 needs to be told which file.");
    case TooManyFiles:   return Say::tr("%1 is one file too many here.");
    }
    Q_UNREACHABLE();
}
// clang-format on

QString shown(const QString& path) {
    return QDir::toNativeSeparators(path);
}

/// The counts without a plural of their own: "Entries: 312, findings: 3."
QString counts(int entries, int findings) {
    return findings == 0
               ? fill(Say::tr("Entries: %1."), {QString::number(entries)})
               : fill(Say::tr("Entries: %1, findings: %2."), {QString::number(entries), QString::number(findings)});
}

/// The setting that a finding rests on, its value, and where it comes from: "Time-outs, a team in a set: 2; NFHS 2003".
QString ruleWords(const Finding& finding, const MatchState& state) {
    if (!state.opened || finding.setting.isEmpty())
        return {};
    const QString value = valueWords(finding.setting, state.rulebook());
    const QString label = settingLabel(finding.setting);
    QString words = value.isEmpty() ? label : fill(Say::tr("%1: %2"), {label, value});
    const QString source = sourceOf(finding, state.rulebook());
    if (!source.isEmpty())
        words += QStringLiteral("; ") + source;
    return words;
}

} // namespace

QString sentence(const UsageError& error) {
    return fill(pattern(error.code), {error.word});
}

QString seeHelp() {
    return Say::tr("setfolio --help lists the commands.");
}

QString helpText() {
    return Say::tr(
        "Setfolio keeps the score sheet of a volleyball match.\n"
        "\n"
        "setfolio [FILE]                          open the window, at the match in FILE\n"
        "setfolio print FILE... --to PDF          print the sheets of all sets of all FILEs into one PDF\n"
        "               [--paper letter|a4]       on this paper; your country's own if none is named\n"
        "               [--sheets NAME,NAME...]   these: match, set, hand-over, libero, coach, entries, slips,\n"
        "                                         blank-slips, blank-set; those of the sets, and of the match once\n"
        "                                         it is decided, if none is named\n"
        "               [--inks NAME]             in cobalt-and-rust, heather-and-gorse, greys or black-only\n"
        "               [--as archive|plain]      as PDF/A-1b for the archive, or plain; archive if not named\n"
        "               [--numbers-only]          without anybody's name\n"
        "setfolio check FILE...                   say whether each FILE is whole and lawful\n"
        "               [--seal CODE]             whether it is what was signed under the CODE from the paper\n"
        "setfolio enter LIST --to FILE            judge a list of entries and write it as a new match file\n"
        "setfolio export FILE --as json|csv       write what stands on the sheets as JSON, or the entries as CSV,\n"
        "               [--to PATH]               to PATH, or else to standard output\n"
        "               [--numbers-only]          without anybody's name\n"
        "setfolio export FILE --as match-file --numbers-only --to COPY\n"
        "                                         write a match file without names, with a chain of its own\n"
        "setfolio --help                          this text\n"
        "setfolio --version                       name and version\n"
        "\n"
        "A LIST holds one entry a line, each a JSON object; - is standard input. An existing match file is never\n"
        "overwritten. Words after -- are files, even if they begin with -. Only the window needs a screen.\n"
        "A CSV cell that a spreadsheet would run as a formula begins with an apostrophe. Names that the match knows\n"
        "are taken out of remarks and reasons too; what else is written there stays.\n"
        "\n"
        "It ends with one of these codes; of several, with the highest:\n"
        "  0   done; the file is whole and lawful, and what was signed\n"
        "  1   done, and something was found against the rulebook, or the seal was reopened; or there is no match in\n"
        "      the file yet\n"
        "  2   the file is damaged, altered, cut short or not what was signed; or a line of the list cannot be "
        "recorded\n"
        "  64  the command was not understood\n"
        "  66  a file cannot be opened\n"
        "  69  there is no screen for the window, or the sheet's typeface is not installed\n"
        "  73  a file cannot be made\n"
        "  74  a file cannot be written to its end\n"
        "\n"
        "Rules differ by state and league, and the referee is right.\n");
}

QString findingLine(const QString& path, int line, const EntryFinding& finding, const MatchState& state) {
    QString text =
        fill(Say::tr("%1, line %2: %3"), {shown(path), QString::number(line), sentence(finding.finding, state)});
    if (const QString rule = ruleWords(finding.finding, state); !rule.isEmpty())
        text += QStringLiteral(" [%1]").arg(rule);
    if (finding.overruled)
        text +=
            u' ' + (finding.overruled->isEmpty() ? Say::tr("The referee let it stand.")
                                                 : fill(Say::tr("The referee let it stand: %1"), {*finding.overruled}));
    return text;
}

QString wholeFile(const QString& path, int entries, int findings) {
    const QString pattern = findings == 0 ? Say::tr("%1: whole and lawful. %2") : Say::tr("%1: whole. %2");
    return fill(pattern, {shown(path), counts(entries, findings)});
}

QString damagedFile(const QString& path, const QString& why) {
    return fill(Say::tr("%1: damaged or altered. %2"), {shown(path), why});
}

QString tornFile(const QString& path, const QString& why) {
    return fill(Say::tr("%1: cut short. %2"), {shown(path), why});
}

QString written(const QString& path, int entries, int findings) {
    return fill(Say::tr("%1: written. %2"), {shown(path), counts(entries, findings)});
}

QString listFault(const QString& path, int line, const QString& why) {
    return line == 0 ? fill(Say::tr("%1: %2"), {shown(path), why})
                     : fill(Say::tr("%1, line %2: %3"), {shown(path), QString::number(line), why});
}

QString standardInput() {
    return Say::tr("standard input");
}

QString holdsNoMatch(const QString& path) {
    return fill(Say::tr("%1 holds no match yet: open one in it first."), {shown(path)});
}

QString sheetsNotDrawn(const QString& path) {
    return fill(Say::tr("%1 is not written: the sheets could not be drawn. Print each match by itself."),
                {shown(path)});
}

QString pagesWritten(const QString& path, int pages) {
    return fill(Say::tr("%1: written. Pages: %2."), {shown(path), QString::number(pages)});
}

QString namesLeftOut(const QString& path) {
    return fill(
        Say::tr("%1: written without names. It is a match file of its own: the seals of the original do not hold "
                "for it, and free text holds no name that the match knows, but read it before you pass it on."),
        {shown(path)});
}

QString standardOutputFailed() {
    return Say::tr("Standard output cannot be written to its end: what was said there is not whole.");
}

QString noScreen() {
    return Say::tr("There is no screen to open the window on. The commands print, check, enter and export need none: "
                   "setfolio --help lists them.");
}

QString typefaceMissing(const QString& family, const QString& package) {
    return fill(Say::tr("The sheet's typeface %1 is not installed in all its weights: install the package %2."),
                {family, package});
}

} // namespace setfolio
