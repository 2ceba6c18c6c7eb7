// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// An open file of the system and the few things durable writing does with it. Used by AppendFile and writeWholeFile.
#pragma once

#include "core/ledger/filecalls.h"

#include <QByteArray>

#include <tl/expected.hpp>

namespace setfolio {

/// Closes what it holds.
class Descriptor {
public:
    Descriptor() = default;
    explicit Descriptor(int descriptor) : m_descriptor(descriptor) {}
    Descriptor(Descriptor&& other) noexcept;
    Descriptor& operator=(Descriptor&& other) noexcept;
    ~Descriptor();

    [[nodiscard]] bool isOpen() const { return m_descriptor >= 0; }
    [[nodiscard]] int get() const { return m_descriptor; }
    /// Closes now; false if the system reports an error only then, as a network drive may.
    [[nodiscard]] bool close();

private:
    int m_descriptor = -1;
};

/// open(2), again if a signal came between; never inherited by a program that is started.
[[nodiscard]] Descriptor openFile(const QString& path, int flags);
/// An error with the words for errno as it is now.
[[nodiscard]] FileError systemError(FileError::Code code, const QString& path);

/// Writes every byte, however many calls it takes; false with errno set if one fails.
[[nodiscard]] bool writeAll(const FileCalls& calls, const Descriptor& file, const QByteArray& bytes);
/// Makes the name of a new or renamed file durable, by a sync of its folder.
[[nodiscard]] bool syncFolderOf(const FileCalls& calls, const QString& path);

} // namespace setfolio
