// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/errorwords.h"

#include "ui/wording/fill.h"

#include <QCoreApplication>
#include <QDir>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::ErrorWords)
};

// clang-format off

// %1 is the file, %2 the line, %3 the detail in brackets, with a space before it, or nothing.
QString pattern(LedgerError::Code code) {
    using enum LedgerError::Code;
    switch (code) {
    case CannotOpen:    return Say::tr("%1 cannot be opened%3: check that the file is there and that you may read it.");
    case CannotCreate:  return Say::tr("%1 cannot be made%3: choose another name, or a folder that you may write to.");
    case CannotWrite:   return Say::tr("%1 cannot be written%3: the last entry is not recorded, all before it are. Make room on the disk and enter it again.");
    case ReadOnly:      return Say::tr("%1 is open for reading only%3: close the window that holds it, or go on in a copy.");
    case NotALedger:    return Say::tr("%1 is not a match file%3: it does not begin with the opening of a match.");
    case NewerVersion:  return Say::tr("%1 was written by a newer version of Setfolio%3: open it with that version.");
    case BrokenLine:    return Say::tr("Line %2 of %1 is damaged%3: the lines before it are whole, go on in a copy of them.");
    case UnknownKind:   return Say::tr("Line %2 of %1 holds a kind of entry that this version does not know%3: open it with a newer version of Setfolio.");
    case WrongSequence: return Say::tr("Line %2 of %1 is not the one that belongs there%3: a line is missing, doubled or moved. The lines before it are whole, go on in a copy of them.");
    case WrongDigest:   return Say::tr("Line %2 of %1 was altered after it was written%3: the lines before it are whole, go on in a copy of them.");
    case WrongSeal:     return Say::tr("The seal in line %2 of %1 is not over the lines before it%3: they were altered after they were signed. Compare the file with another copy, and with the seal on the paper.");
    case SavedAnew:     return Say::tr("From line %2 on, %1 was saved anew by another program%3, and is no longer what was written: use the file as it was, or another copy of it.");
    case TooLong:       return Say::tr("%1 goes beyond what a match file may hold, in line %2%3: the lines before it are whole, go on in a copy of them.");
    case Unrecordable:  return Say::tr("This entry cannot be recorded in %1%3: correct it and enter it again.");
    case ChangedOutside: return Say::tr("%1 was changed by another program%3, so the entry was not recorded: open the file again and look at its end.");
    }
    Q_UNREACHABLE();
}

/// Likewise where it is the first line, so that there is nothing to go on in; none for most.
QString patternForFirstLine(LedgerError::Code code) {
    using enum LedgerError::Code;
    switch (code) {
    case BrokenLine:    return Say::tr("Line 1 of %1 is damaged%3: look for another copy of the file.");
    case WrongSequence: return Say::tr("Line 1 of %1 is not the one that belongs there%3: look for another copy of the file.");
    case WrongDigest:   return Say::tr("Line 1 of %1 was altered after it was written%3: look for another copy of the file.");
    case TooLong:       return Say::tr("%1 goes beyond what a match file may hold, in its first line%3: look for another copy of the file.");
    default:            return pattern(code);
    }
}

// %1 is the file, %3 the system's own words in brackets, with a space before them, or nothing.
QString pattern(FileError::Code code) {
    using enum FileError::Code;
    switch (code) {
    case CannotOpen:     return Say::tr("%1 cannot be opened%3: check that the file is there and that you may read it.");
    case CannotCreate:   return Say::tr("%1 cannot be made%3: choose another name, or a folder that you may write to.");
    case CannotRead:     return Say::tr("%1 cannot be read to its end%3: copy it to another disk, if that can still be done.");
    case CannotWrite:    return Say::tr("%1 cannot be written%3: make room on the disk, or choose another one, and try again.");
    case CannotReplace:  return Say::tr("%1 cannot be replaced%3, and is as it was: choose another name or folder.");
    case CannotSync:     return Say::tr("%1 is written, but might not outlast a power cut%3: write it once more, or to another disk.");
    case TooLong:        return Say::tr("%1 is too long%3: choose another file.");
    case ChangedOutside: return Say::tr("%1 was changed by another program%3: open it again.");
    }
    Q_UNREACHABLE();
}

// %1 is the member.
QString pattern(EntryJsonError::Code code) {
    using enum EntryJsonError::Code;
    switch (code) {
    case NotJson:       return Say::tr("This is not a JSON object: write one entry to a line, in braces, each member once, as UTF-8.");
    case UnknownKind:   return Say::tr("\"%1\" names no kind of entry that this version knows: check how the kind is spelled.");
    case UnknownMember: return Say::tr("\"%1\" does not belong in this entry: check how it is spelled, or leave it out.");
    case MissingMember: return Say::tr("\"%1\" is missing from this entry: add it.");
    case WrongType:     return Say::tr("\"%1\" is not of the type it must have in this entry: a number, a word, a list or an object.");
    case OutOfRange:    return Say::tr("\"%1\" has a value that it cannot have in this entry: FORMAT.md lists those it can.");
    case NewerVersion:  return Say::tr("\"%1\" is of a newer version of the format: use a newer version of Setfolio.");
    case BadRulebook:   return Say::tr("\"%1\" is no rulebook: name a published one, or correct the setting.");
    }
    Q_UNREACHABLE();
}

// %1 is the setting.
QString pattern(RulebookError::Code code) {
    using enum RulebookError::Code;
    switch (code) {
    case NotJson:        return Say::tr("The rulebook is not a JSON object: choose a rulebook file.");
    case UnknownSetting: return Say::tr("The rulebook has a setting \"%1\" that this version does not know: check how it is spelled.");
    case MissingSetting: return Say::tr("The rulebook has no setting \"%1\": add it, with its source.");
    case WrongType:      return Say::tr("The rulebook's setting \"%1\" is not of the type it must have: compare it with a published rulebook.");
    case OutOfRange:     return Say::tr("The rulebook's setting \"%1\" has a value that it cannot have: compare it with a published rulebook.");
    }
    Q_UNREACHABLE();
}

// clang-format on

QString inBrackets(const QString& detail) {
    return detail.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(detail);
}

} // namespace

QString sentence(const LedgerError& error) {
    return fill(error.line == 1 ? patternForFirstLine(error.code) : pattern(error.code),
                {QDir::toNativeSeparators(error.path), QString::number(error.line), inBrackets(error.detail)});
}

QString sentence(const TornTail& torn, const QString& path) {
    const QString pattern =
        torn.setAsideTo.isEmpty()
            ? Say::tr("Line %2 of %1 was cut short while it was being written: it is left out, and nothing that was "
                      "recorded is lost.")
            : Say::tr("Line %2 of %1 was cut short while it was being written: it was moved to %3, and nothing that "
                      "was recorded is lost.");
    return fill(pattern, {QDir::toNativeSeparators(path), QString::number(torn.line),
                          QDir::toNativeSeparators(torn.setAsideTo)});
}

QString sentence(const FileError& error) {
    return fill(pattern(error.code), {QDir::toNativeSeparators(error.path), QString(), inBrackets(error.detail)});
}

QString sentence(const EntryJsonError& error) {
    if (error.code == EntryJsonError::Code::OutOfRange && error.member.isEmpty())
        return Say::tr("This line is longer than any entry can be: shorten it.");
    return fill(pattern(error.code), {error.member});
}

QString sentence(const RulebookError& error) {
    return fill(pattern(error.code), {error.setting});
}

} // namespace setfolio
