// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Writes a whole file so that after any failure, a power cut included, the old one or the new one is there, never half
/// of one. For everything that is made in memory first: the printed sheet, exports, settings, a match entered at once.
#pragma once

#include "core/ledger/filecalls.h"

#include <QByteArray>

#include <tl/expected.hpp>

namespace setfolio {

/// Writes beside the file, syncs, renames over it, syncs the folder. On an error the old file stands as it was, save
/// for CannotSync: then the new one is in its place, but a power cut might bring back the old. Keeps the permissions of
/// a file that it replaces, and follows a symbolic link to it.
[[nodiscard]] tl::expected<void, FileError> writeWholeFile(const QString& path, const QByteArray& bytes,
                                                           const FileCalls& calls = systemCalls());
/// The same for a file that must not be there yet: it gets its name when it is whole, and never takes the name of
/// another. On an error there is no file of that name, save one that was there before.
[[nodiscard]] tl::expected<void, FileError> writeNewFile(const QString& path, const QByteArray& bytes,
                                                         const FileCalls& calls = systemCalls());

} // namespace setfolio
