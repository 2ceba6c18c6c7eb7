// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What tests with files have in common.
#pragma once

#include "core/ledger/filecalls.h"

#include <QByteArray>
#include <QFile>
#include <QString>

#include <algorithm>
#include <cerrno>
#include <functional>

#include <sys/wait.h>
#include <unistd.h>

namespace setfolio::testing {

inline QByteArray contentOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

inline void setContent(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        qFatal("the test cannot write its own file");
}

/// A disk that takes so many bytes and then says it is full, and that can refuse to sync or to cut.
struct FailingDisk {
    qsizetype room = 1'000'000;
    int syncsUntilFailure = 1'000'000;
    bool cuts = true;
    qsizetype bytesAtOnce = 1'000'000;

    /// Refers to this disk, so that what happens to it is seen at once.
    [[nodiscard]] FileCalls calls() {
        return {[this](int file, const void* bytes, size_t count) { return write(file, bytes, count); },
                [this](int file) { return syncsUntilFailure-- > 0 ? ::fsync(file) : failed(EIO); },
                [this](int file, off_t length) { return cuts ? ::ftruncate(file, length) : failed(EIO); }};
    }

private:
    static int failed(int error) {
        errno = error;
        return -1;
    }
    ssize_t write(int file, const void* bytes, size_t count) {
        const qsizetype taken = std::min({static_cast<qsizetype>(count), room, bytesAtOnce});
        if (taken == 0)
            return failed(ENOSPC);
        room -= taken;
        return ::write(file, bytes, static_cast<size_t>(taken));
    }
};

/// Runs it in a process of its own, without the rights of root, for whom permissions mean nothing; true if it says
/// true.
inline bool asPlainUser(const std::function<bool()>& check) {
    const pid_t child = ::fork();
    if (child == 0) {
        constexpr uid_t nobody = 65534;
        const bool plain =
            ::getuid() != 0 || (setresgid(nobody, nobody, nobody) == 0 && setresuid(nobody, nobody, nobody) == 0);
        ::_exit(plain && check() ? 0 : 1);
    }
    int status = 0;
    return ::waitpid(child, &status, 0) == child && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

} // namespace setfolio::testing
