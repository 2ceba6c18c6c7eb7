// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/appendfile.h"

#include <QFile>

#include <algorithm>
#include <cerrno>
#include <utility>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace setfolio {

namespace {

int flagsFor(AppendFile::Mode mode) {
    switch (mode) {
    case AppendFile::Mode::Read:
        // Opening a pipe would wait for a writer.
        return O_RDONLY | O_NONBLOCK;
    case AppendFile::Mode::Append:
        return O_RDWR | O_APPEND | O_NONBLOCK;
    case AppendFile::Mode::New:
        return O_RDWR | O_APPEND | O_CREAT | O_EXCL;
    }
    Q_UNREACHABLE();
}

bool isPlainFile(const Descriptor& file) {
    struct stat status {};
    return fstat(file.get(), &status) == 0 && S_ISREG(status.st_mode);
}

/// 0 when the system does not say.
qsizetype lengthOf(const Descriptor& file) {
    struct stat status {};
    return fstat(file.get(), &status) == 0 ? static_cast<qsizetype>(status.st_size) : 0;
}

} // namespace

AppendFile::AppendFile(QString path, Descriptor file, const FileCalls& calls)
    : m_path(std::move(path)),
      m_file(std::move(file)),
      m_calls(calls) {}

tl::expected<AppendFile, FileError> AppendFile::open(const QString& path, Mode mode, const FileCalls& calls) {
    const auto failed = mode == Mode::New ? FileError::Code::CannotCreate : FileError::Code::CannotOpen;
    Descriptor file = openFile(path, flagsFor(mode));
    if (!file.isOpen())
        return tl::unexpected(systemError(failed, path));
    if (!isPlainFile(file))
        return tl::unexpected(FileError{failed, path, {}});
    if (mode == Mode::New && !(calls.sync(file.get()) == 0 && syncFolderOf(calls, path))) {
        const FileError error = systemError(failed, path);
        ::unlink(QFile::encodeName(path).constData());
        return tl::unexpected(error);
    }
    return AppendFile(path, std::move(file), calls);
}

tl::expected<QByteArray, FileError> AppendFile::readAll(qsizetype atMost) {
    constexpr qsizetype atOnce = 65'536;
    QByteArray bytes(std::min(lengthOf(m_file), atMost) + 1, Qt::Uninitialized); // one more, to see the end
    qsizetype filled = 0;
    while (true) {
        if (filled == bytes.size())
            bytes.resize(filled + atOnce);
        const ssize_t count = ::pread(m_file.get(), bytes.data() + filled, static_cast<size_t>(bytes.size() - filled),
                                      static_cast<off_t>(filled));
        if (count == 0)
            break;
        if (count < 0 && errno != EINTR)
            return tl::unexpected(systemError(FileError::Code::CannotRead, m_path));
        filled += std::max<ssize_t>(count, 0);
        if (filled > atMost)
            return tl::unexpected(FileError{FileError::Code::TooLong, m_path, {}});
    }
    bytes.truncate(filled);
    m_length = filled;
    return bytes;
}

tl::expected<void, FileError> AppendFile::append(const QByteArray& bytes) {
    if (m_toCutBack && !cutBack())
        return tl::unexpected(systemError(FileError::Code::CannotWrite, m_path));
    if (!isAsWeLeftIt())
        return tl::unexpected(FileError{FileError::Code::ChangedOutside, m_path, {}});
    if (writeAll(m_calls, m_file, bytes) && m_calls.sync(m_file.get()) == 0) {
        m_length += bytes.size();
        return {};
    }
    const FileError error = systemError(FileError::Code::CannotWrite, m_path);
    m_toCutBack = true;
    std::ignore = cutBack();
    return tl::unexpected(error);
}

tl::expected<void, FileError> AppendFile::cutTo(qsizetype length) {
    m_length = length;
    m_toCutBack = true;
    if (cutBack())
        return {};
    return tl::unexpected(systemError(FileError::Code::CannotWrite, m_path));
}

bool AppendFile::isAsWeLeftIt() const {
    struct stat status {};
    return fstat(m_file.get(), &status) == 0 && status.st_size == m_length && status.st_nlink > 0;
}

bool AppendFile::cutBack() {
    m_toCutBack =
        !(m_calls.truncate(m_file.get(), static_cast<off_t>(m_length)) == 0 && m_calls.sync(m_file.get()) == 0);
    return !m_toCutBack;
}

} // namespace setfolio
