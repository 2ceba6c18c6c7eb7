// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The calls to the system on which durability rests, as values, so that a test can let a disk fill up or die.
#pragma once

#include <QString>

#include <functional>

#include <sys/types.h>

namespace setfolio {

/// Each as the function of POSIX: -1 and errno on failure.
struct FileCalls {
    std::function<ssize_t(int file, const void* bytes, size_t count)> write;
    std::function<int(int file)> sync;
    std::function<int(int file, off_t length)> truncate;
};

/// The system's own: write, fsync, ftruncate.
[[nodiscard]] const FileCalls& systemCalls();

/// Why a file could not be opened or written, in the system's words.
struct FileError {
    enum class Code {
        CannotOpen,     ///< not there, no right, or not a file
        CannotCreate,   ///< no right, no such folder, or it must not be there and is
        CannotRead,     ///< an error of the device
        CannotWrite,    ///< disk full or gone
        CannotReplace,  ///< written whole beside it, but could not be given its name
        CannotSync,     ///< in its place, but the system does not vouch for it after a power cut
        TooLong,        ///< more bytes than asked for at most
        ChangedOutside, ///< not the length we left it at, or removed
    };
    Code code = Code::CannotOpen;
    QString path;
    QString detail; ///< the system's own words
    bool operator==(const FileError&) const = default;
};

} // namespace setfolio
