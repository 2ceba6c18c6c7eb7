// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What can go wrong with a ledger.
#pragma once

#include <QString>

namespace setfolio {

/// What is wrong with a ledger file, where, and what the system said.
struct LedgerError {
    enum class Code {
        CannotOpen,     ///< not there, or no right to read it
        CannotCreate,   ///< the folder is read-only, or a file of that name is there
        CannotWrite,    ///< the disk is full or gone: the entry was not recorded, everything before it was
        ReadOnly,       ///< opened read-only
        NotALedger,     ///< the first line is not the opening of a match
        NewerVersion,   ///< written by a newer version of the format
        BrokenLine,     ///< not JSON, not an entry of the schema, or bytes that are not UTF-8
        UnknownKind,    ///< an entry kind, or a member of one, that this version does not know
        WrongSequence,  ///< a line is missing, doubled or moved
        WrongDigest,    ///< the line was altered after it was written
        WrongSeal,      ///< the lines before a seal are not those that were sealed
        SavedAnew,      ///< another program has put in line ends, blanks or a byte-order mark of its own
        TooLong,        ///< beyond a limit of FORMAT.md: a line, the number of lines or the whole file
        Unrecordable,   ///< an entry with a value outside FORMAT.md, or out of place: it was not recorded
        ChangedOutside, ///< another program has lengthened, cut or removed the file: the entry was not recorded
    };
    Code code = Code::CannotOpen;
    int line = 0; ///< from 1; 0 when it is not about a line
    QString path;
    QString detail; ///< a member's name, or the system's own words; for people only in brackets
    bool operator==(const LedgerError&) const = default;
};

} // namespace setfolio
