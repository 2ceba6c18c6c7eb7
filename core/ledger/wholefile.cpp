// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/wholefile.h"

#include "core/ledger/posixfile.h"

#include <QFile>
#include <QFileInfo>

#include <cerrno>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// The name to write under first: hidden, in the same folder, of this process alone.
QString nameBeside(const QString& path) {
    const QFileInfo file(path);
    return u"%1/.%2.%3.part"_s.arg(file.absolutePath(), file.fileName(), QString::number(getpid()));
}

/// Gives the new file the permissions of the one it will replace, if there is one.
bool keepPermissions(const Descriptor& file, const QString& replaced) {
    struct stat status {};
    if (::stat(QFile::encodeName(replaced).constData(), &status) != 0)
        return errno == ENOENT;
    constexpr mode_t permissions = 07777;
    return fchmod(file.get(), status.st_mode & permissions) == 0;
}

tl::expected<void, FileError> writeBeside(const QString& beside, const QString& path, const QByteArray& bytes,
                                          const FileCalls& calls) {
    Descriptor file = openFile(beside, O_WRONLY | O_CREAT | O_TRUNC | O_NOFOLLOW);
    if (!file.isOpen())
        return tl::unexpected(systemError(FileError::Code::CannotCreate, path));
    if (keepPermissions(file, path) && writeAll(calls, file, bytes) && calls.sync(file.get()) == 0 && file.close())
        return {};
    return tl::unexpected(systemError(FileError::Code::CannotWrite, path));
}

tl::expected<void, FileError> putInPlace(const QString& beside, const QString& path) {
    if (::rename(QFile::encodeName(beside).constData(), QFile::encodeName(path).constData()) == 0)
        return {};
    return tl::unexpected(systemError(FileError::Code::CannotReplace, path));
}

/// Renames to a name that must not be taken; false with errno set if it is, or if it cannot be done.
bool renameToFree(const QByteArray& from, const QByteArray& to) {
    if (::renameat2(AT_FDCWD, from.constData(), AT_FDCWD, to.constData(), RENAME_NOREPLACE) == 0)
        return true;
    // A file system that has no such call has a second name for a file.
    return (errno == EINVAL || errno == ENOSYS) && ::link(from.constData(), to.constData()) == 0 &&
           ::unlink(from.constData()) == 0;
}

tl::expected<void, FileError> giveName(const QString& beside, const QString& path) {
    if (renameToFree(QFile::encodeName(beside), QFile::encodeName(path)))
        return {};
    return tl::unexpected(systemError(FileError::Code::CannotCreate, path));
}

} // namespace

tl::expected<void, FileError> writeWholeFile(const QString& path, const QByteArray& bytes, const FileCalls& calls) {
    const QString behindLinks = QFileInfo(path).canonicalFilePath();
    const QString target = behindLinks.isEmpty() ? path : behindLinks;
    const QString beside = nameBeside(target);
    const auto written = writeBeside(beside, target, bytes, calls).and_then([&] { return putInPlace(beside, target); });
    if (!written) {
        ::unlink(QFile::encodeName(beside).constData());
        return written;
    }
    if (!syncFolderOf(calls, target))
        return tl::unexpected(systemError(FileError::Code::CannotSync, target));
    return {};
}

tl::expected<void, FileError> writeNewFile(const QString& path, const QByteArray& bytes, const FileCalls& calls) {
    const QString beside = nameBeside(path);
    const auto written = writeBeside(beside, path, bytes, calls).and_then([&] { return giveName(beside, path); });
    if (!written) {
        ::unlink(QFile::encodeName(beside).constData());
        return written;
    }
    if (syncFolderOf(calls, path))
        return {};
    const FileError error = systemError(FileError::Code::CannotWrite, path);
    ::unlink(QFile::encodeName(path).constData());
    return tl::unexpected(error);
}

} // namespace setfolio
