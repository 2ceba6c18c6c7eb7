// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/filelock.h"

#include <QFile>
#include <QSysInfo>

#include <cerrno>

#include <sys/file.h>
#include <sys/stat.h>
#include <sys/sysmacros.h>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// "08:01:131" as /proc/locks names a file.
QByteArray placeInLocks(const struct stat& status) {
    return QByteArray::number(major(status.st_dev), 16).rightJustified(2, '0') + ':' +
           QByteArray::number(minor(status.st_dev), 16).rightJustified(2, '0') + ':' +
           QByteArray::number(static_cast<quint64>(status.st_ino));
}

/// The process that holds the lock, 0 if /proc/locks does not name it.
qint64 holdingProcess(int descriptor) {
    struct stat status {};
    QFile locks(u"/proc/locks"_s);
    if (fstat(descriptor, &status) != 0 || !locks.open(QIODevice::ReadOnly))
        return 0;
    const QByteArray place = placeInLocks(status);
    // "1: FLOCK  ADVISORY  WRITE 4711 08:01:131 0 EOF"
    for (const QByteArray& line : locks.readAll().split('\n')) {
        const QList<QByteArray> words = line.simplified().split(' ');
        if (words.size() > 5 && words[1] == "FLOCK" && words[5] == place)
            return words[4].toLongLong();
    }
    return 0;
}

} // namespace

LockOutcome takeLock(int descriptor) {
    int outcome = 0;
    do {
        outcome = flock(descriptor, LOCK_EX | LOCK_NB);
    } while (outcome != 0 && errno == EINTR);
    if (outcome == 0)
        return LockOutcome::Taken;
    return errno == EWOULDBLOCK ? LockOutcome::Held : LockOutcome::Unsupported;
}

QString lockHolder(int descriptor) {
    if (const qint64 process = holdingProcess(descriptor); process > 0)
        return u"%1, process %2"_s.arg(QSysInfo::machineHostName()).arg(process);
    // A shared lock that can be had at once says that nobody writes.
    if (flock(descriptor, LOCK_SH | LOCK_NB) == 0) {
        flock(descriptor, LOCK_UN);
        return {};
    }
    return errno == EWOULDBLOCK ? u"another process"_s : QString();
}

} // namespace setfolio
