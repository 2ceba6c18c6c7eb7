// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Runs setfolio as a person at a command line without a screen would. Header only, so that every test may use it.
#pragma once

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

namespace setfolio::testing {

/// How a run ended and what it said.
struct Ran {
    int code = -1; ///< -1: it did not end by itself
    QString out;
    QString err;
};

/// The folder of the demo match.
inline QString demo(const QString& name) {
    return QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/demo/") + name;
}
inline QString demoMatch() {
    return demo(QStringLiteral("herons-larks.setfolio"));
}
inline QString demoList() {
    return demo(QStringLiteral("herons-larks.list.jsonl"));
}

inline QByteArray contentOf(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("%s cannot be read", qPrintable(path));
    return file.readAll();
}
inline QString put(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.flush())
        qFatal("%s cannot be written", qPrintable(path));
    return path;
}

/// A test's own folder, in which the program is started.
class Folder {
public:
    /// setfolio with these words; `input` is its standard input.
    [[nodiscard]] Ran run(const QStringList& words, const QByteArray& input = {}) const {
        return start(QStringLiteral(SETFOLIO_PROGRAM), words, input);
    }
    /// The same through a shell, for what only a shell can set: "$0" is the program, "$@" its words.
    [[nodiscard]] Ran runIn(const QString& script, const QStringList& words) const {
        return start(QStringLiteral("/bin/bash"),
                     QStringList{QStringLiteral("-c"), script, QStringLiteral(SETFOLIO_PROGRAM)} + words, {});
    }
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] QStringList names() const {
        return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
    }

private:
    [[nodiscard]] Ran start(const QString& program, const QStringList& words, const QByteArray& input) const {
        QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
        for (const char* screen : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
            surroundings.remove(QLatin1String(screen));
        QProcess process;
        process.setProcessEnvironment(surroundings);
        process.setWorkingDirectory(m_folder.path());
        process.start(program, words);
        process.write(input);
        process.closeWriteChannel();
        Ran ran;
        if (process.waitForFinished(60'000) && process.exitStatus() == QProcess::NormalExit)
            ran.code = process.exitCode();
        ran.out = QString::fromUtf8(process.readAllStandardOutput());
        ran.err = QString::fromUtf8(process.readAllStandardError());
        return ran;
    }

    QTemporaryDir m_folder;
};

/// A shell script that lets the program write files of at most some kilobytes, as on a disk that is full.
inline QString withRoomFor(int kilobytes) {
    return QStringLiteral("trap '' XFSZ; ulimit -f %1; exec \"$0\" \"$@\"").arg(kilobytes);
}

/// A path in a folder where nobody, not even root, can make a file.
inline QString unwritable(const QString& name) {
    return QStringLiteral("/proc/") + name;
}

} // namespace setfolio::testing
