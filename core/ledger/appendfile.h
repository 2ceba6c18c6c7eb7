// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A file that only grows, durably, or stays as it was.
#pragma once

#include "core/ledger/filecalls.h"
#include "core/ledger/filelock.h"
#include "core/ledger/posixfile.h"

#include <QByteArray>

#include <tl/expected.hpp>

namespace setfolio {

class AppendFile {
public:
    enum class Mode { Read, Append, New };

    /// Opens a plain file. Append needs the right to write; New makes it, durably, and fails if it is there.
    [[nodiscard]] static tl::expected<AppendFile, FileError> open(const QString& path, Mode mode,
                                                                  const FileCalls& calls);

    [[nodiscard]] QString path() const { return m_path; }
    [[nodiscard]] LockOutcome lock() const { return takeLock(m_file.get()); }
    [[nodiscard]] QString heldBy() const { return lockHolder(m_file.get()); }

    /// Everything in it. From then on it is expected to be of that length.
    [[nodiscard]] tl::expected<QByteArray, FileError> readAll(qsizetype atMost);
    /// Writes and syncs. On an error the file is cut back to where it ended; if that fails too, before the next append.
    [[nodiscard]] tl::expected<void, FileError> append(const QByteArray& bytes);
    /// Cuts the end off, and syncs.
    [[nodiscard]] tl::expected<void, FileError> cutTo(qsizetype length);

private:
    AppendFile(QString path, Descriptor file, const FileCalls& calls);
    [[nodiscard]] bool isAsWeLeftIt() const;
    [[nodiscard]] bool cutBack();

    QString m_path;
    Descriptor m_file;
    FileCalls m_calls;
    qsizetype m_length = 0;   ///< up to here it is ours and on disk
    bool m_toCutBack = false; ///< bytes of a failed append may stand behind that
};

} // namespace setfolio
