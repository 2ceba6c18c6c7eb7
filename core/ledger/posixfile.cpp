// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/posixfile.h"

#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <utility>

#include <fcntl.h>
#include <unistd.h>

namespace setfolio {

Descriptor::Descriptor(Descriptor&& other) noexcept : m_descriptor(std::exchange(other.m_descriptor, -1)) {}

Descriptor& Descriptor::operator=(Descriptor&& other) noexcept {
    std::swap(m_descriptor, other.m_descriptor);
    return *this;
}

Descriptor::~Descriptor() {
    if (isOpen())
        ::close(m_descriptor);
}

bool Descriptor::close() {
    return ::close(std::exchange(m_descriptor, -1)) == 0;
}

Descriptor openFile(const QString& path, int flags) {
    const QByteArray name = QFile::encodeName(path);
    constexpr mode_t lessTheUmask = 0666;
    int descriptor = -1;
    do {
        descriptor = ::open(name.constData(), flags | O_CLOEXEC | O_NOCTTY, lessTheUmask);
    } while (descriptor < 0 && errno == EINTR);
    return Descriptor(descriptor);
}

FileError systemError(FileError::Code code, const QString& path) {
    return {code, path, qt_error_string(errno)};
}

bool writeAll(const FileCalls& calls, const Descriptor& file, const QByteArray& bytes) {
    qsizetype written = 0;
    while (written < bytes.size()) {
        const ssize_t count =
            calls.write(file.get(), bytes.constData() + written, static_cast<size_t>(bytes.size() - written));
        if (count > 0) {
            written += count;
        } else if (count == 0) {
            errno = EIO;
            return false;
        } else if (errno != EINTR) {
            return false;
        }
    }
    return true;
}

bool syncFolderOf(const FileCalls& calls, const QString& path) {
    const Descriptor folder = openFile(QFileInfo(path).absolutePath(), O_RDONLY | O_DIRECTORY);
    // EINVAL: a file system that has no such thing, as some network drives.
    return folder.isOpen() && (calls.sync(folder.get()) == 0 || errno == EINVAL);
}

} // namespace setfolio
