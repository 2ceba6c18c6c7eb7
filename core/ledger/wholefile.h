// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Writes a whole file so that after any failure, a power cut included, the old one or the new one is there, never half
/// of one. For everything that is rendered in memory first: the printed sheet, exports, settings.
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

} // namespace setfolio
