// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/wholefile.h"
#include "tests/core/ledger/ondisk.h"

#include <QDir>
#include <QFileInfo>
#include <QScopeGuard>
#include <QTemporaryDir>
#include <QTest>

#include <csignal>

#include <sys/resource.h>

using namespace setfolio;
using namespace setfolio::testing;

using Code = FileError::Code;

class TestWholeFile : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void aNewFileHoldsTheBytes_data();
    void aNewFileHoldsTheBytes();
    void aFileThatIsThereIsReplaced();
    void theFileReplacedKeepsItsPermissions();
    void aSymbolicLinkStaysOne();
    void aDiskThatIsFullAfterAnyByteLeavesTheOldFile();
    void aFileThatIsNotSyncedDoesNotReplaceTheOldOne();
    void aNameThatIsNotSyncedIsAnErrorButTheFileIsThere();
    void aLimitOfTheSystemIsAFullDisk();
    void aFolderInItsPlaceIsNotReplaced();
    void aFolderThatIsNotThereIsAnError();
    void aFolderThatMayNotBeWrittenLeavesTheOldFile();
    void aNewNameIsGivenToAWholeFile();
    void aNewNameIsNeverTakenFromAnother();
    void aDiskThatFailsLeavesNothingOfANewFile();
    void aProcessThatIsKilledWhileItWritesLeavesTheNameFree();

private:
    /// The old file stands, and nothing else is in the folder.
    [[nodiscard]] bool isUntouched() const;

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
    const QByteArray m_old = "the old bytes";
    const QByteArray m_new = "new bytes, more of them than before";
};

void TestWholeFile::init() {
    m_folder = std::make_unique<QTemporaryDir>();
    m_path = m_folder->filePath(u"sheet.pdf"_qs);
    setContent(m_path, m_old);
}

bool TestWholeFile::isUntouched() const {
    const QStringList files = QDir(m_folder->path()).entryList(QDir::Files | QDir::Hidden);
    return files == QStringList{u"sheet.pdf"_qs} && contentOf(m_path) == m_old;
}

void TestWholeFile::aNewFileHoldsTheBytes_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::newRow("none") << QByteArray();
    QTest::newRow("some") << QByteArray("a\0b\n", 4);
    QTest::newRow("many") << QByteArray(3'000'000, 'x');
}

void TestWholeFile::aNewFileHoldsTheBytes() {
    QFETCH(QByteArray, bytes);
    const QString path = m_folder->filePath(u"Übersicht 1.csv"_qs);
    QVERIFY(writeWholeFile(path, bytes).has_value());
    QVERIFY(QFile::exists(path));
    QVERIFY(contentOf(path) == bytes);
    QCOMPARE(QDir(m_folder->path()).entryList(QDir::Files | QDir::Hidden).size(), 2);
}

void TestWholeFile::aFileThatIsThereIsReplaced() {
    QVERIFY(writeWholeFile(m_path, m_new).has_value());
    QCOMPARE(contentOf(m_path), m_new);
}

void TestWholeFile::theFileReplacedKeepsItsPermissions() {
    const auto permissions = QFileDevice::Permissions(0x6640);
    QVERIFY(QFile::setPermissions(m_path, permissions));
    QVERIFY(writeWholeFile(m_path, m_new).has_value());
    QCOMPARE(QFile::permissions(m_path) & QFileDevice::Permissions(0x7077),
             permissions & QFileDevice::Permissions(0x7077));
}

void TestWholeFile::aSymbolicLinkStaysOne() {
    const QString link = m_folder->filePath(u"link.pdf"_qs);
    QVERIFY(QFile::link(m_path, link));
    QVERIFY(writeWholeFile(link, m_new).has_value());
    QVERIFY(QFileInfo(link).isSymLink());
    QCOMPARE(contentOf(m_path), m_new);
}

void TestWholeFile::aDiskThatIsFullAfterAnyByteLeavesTheOldFile() {
    for (qsizetype room = 0; room < m_new.size(); ++room) {
        FailingDisk disk{.room = room};
        const auto written = writeWholeFile(m_path, m_new, disk.calls());
        QCOMPARE(written.error().code, Code::CannotWrite);
        QCOMPARE(written.error().path, m_path);
        QVERIFY(!written.error().detail.isEmpty());
        QVERIFY(isUntouched());
    }
    FailingDisk disk{.room = m_new.size(), .bytesAtOnce = 3};
    QVERIFY(writeWholeFile(m_path, m_new, disk.calls()).has_value());
    QCOMPARE(contentOf(m_path), m_new);
}

void TestWholeFile::aFileThatIsNotSyncedDoesNotReplaceTheOldOne() {
    FailingDisk disk{.syncsUntilFailure = 0};
    QCOMPARE(writeWholeFile(m_path, m_new, disk.calls()).error().code, Code::CannotWrite);
    QVERIFY(isUntouched());
}

void TestWholeFile::aNameThatIsNotSyncedIsAnErrorButTheFileIsThere() {
    FailingDisk disk{.syncsUntilFailure = 1};
    QCOMPARE(writeWholeFile(m_path, m_new, disk.calls()).error().code, Code::CannotSync);
    QCOMPARE(contentOf(m_path), m_new);
}

void TestWholeFile::aLimitOfTheSystemIsAFullDisk() {
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    QCOMPARE(getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto restore = qScopeGuard([&] { setrlimit(RLIMIT_FSIZE, &before); });
    const rlimit full{10'000, before.rlim_max};
    QCOMPARE(setrlimit(RLIMIT_FSIZE, &full), 0);
    QCOMPARE(writeWholeFile(m_path, QByteArray(10'001, 'x')).error().code, Code::CannotWrite);
    QVERIFY(isUntouched());
    QVERIFY(writeWholeFile(m_path, QByteArray(10'000, 'x')).has_value());
}

void TestWholeFile::aFolderInItsPlaceIsNotReplaced() {
    QVERIFY(QDir(m_folder->path()).mkdir(u"folder"_qs));
    QCOMPARE(writeWholeFile(m_folder->filePath(u"folder"_qs), m_new).error().code, Code::CannotReplace);
    QVERIFY(isUntouched());
}

void TestWholeFile::aFolderThatIsNotThereIsAnError() {
    QCOMPARE(writeWholeFile(m_folder->filePath(u"no/such/sheet.pdf"_qs), m_new).error().code, Code::CannotCreate);
    QCOMPARE(writeWholeFile(m_path + u"/sheet.pdf"_qs, m_new).error().code, Code::CannotCreate);
    QVERIFY(isUntouched());
}

void TestWholeFile::aFolderThatMayNotBeWrittenLeavesTheOldFile() {
    QVERIFY(QFile::setPermissions(m_path, QFileDevice::Permissions(0x6666)));
    QVERIFY(QFile::setPermissions(m_folder->path(), QFileDevice::Permissions(0x5555)));
    const auto restore =
        qScopeGuard([&] { QFile::setPermissions(m_folder->path(), QFileDevice::Permissions(0x7700)); });
    QVERIFY(asPlainUser([&] {
        const auto written = writeWholeFile(m_path, m_new);
        return !written && written.error().code == Code::CannotCreate;
    }));
    QVERIFY(isUntouched());
}

void TestWholeFile::aNewNameIsGivenToAWholeFile() {
    const QString path = m_folder->filePath(u"new.setfolio"_qs);
    FailingDisk disk{.bytesAtOnce = 3};
    FileCalls calls = disk.calls();
    int seen = 0;
    calls.write = [&, write = calls.write](int file, const void* bytes, size_t count) {
        seen += QFile::exists(path) ? 1 : 0;
        return write(file, bytes, count);
    };
    QVERIFY(writeNewFile(path, m_new, calls).has_value());
    QCOMPARE(seen, 0);
    QCOMPARE(contentOf(path), m_new);
    QCOMPARE(QDir(m_folder->path()).entryList(QDir::Files | QDir::Hidden).size(), 2);
}

void TestWholeFile::aNewNameIsNeverTakenFromAnother() {
    QCOMPARE(writeNewFile(m_path, m_new).error().code, Code::CannotCreate);
    QVERIFY(isUntouched());
    // Not even from one that came while the bytes were written.
    const QString path = m_folder->filePath(u"new.setfolio"_qs);
    FailingDisk disk;
    FileCalls calls = disk.calls();
    calls.sync = [&](int) {
        setContent(path, m_old);
        return 0;
    };
    QCOMPARE(writeNewFile(path, m_new, calls).error().code, Code::CannotCreate);
    QCOMPARE(contentOf(path), m_old);
}

void TestWholeFile::aDiskThatFailsLeavesNothingOfANewFile() {
    const QString path = m_folder->filePath(u"new.setfolio"_qs);
    for (qsizetype room = 0; room < m_new.size(); ++room) {
        FailingDisk disk{.room = room};
        QCOMPARE(writeNewFile(path, m_new, disk.calls()).error().code, Code::CannotWrite);
        QVERIFY(isUntouched());
    }
    for (const int syncs : {0, 1}) {
        FailingDisk disk{.syncsUntilFailure = syncs};
        QCOMPARE(writeNewFile(path, m_new, disk.calls()).error().code, Code::CannotWrite);
        QVERIFY(isUntouched());
    }
}

void TestWholeFile::aProcessThatIsKilledWhileItWritesLeavesTheNameFree() {
    const QString path = m_folder->filePath(u"new.setfolio"_qs);
    for (qsizetype room = 0; room <= m_new.size(); ++room) {
        const pid_t child = ::fork();
        if (child == 0) {
            FailingDisk disk{.room = room};
            FileCalls calls = disk.calls();
            calls.write = [write = calls.write](int file, const void* bytes, size_t count) {
                const ssize_t written = write(file, bytes, count);
                return written < 0 ? ::raise(SIGKILL) : written;
            };
            calls.sync = [](int) { return ::raise(SIGKILL); };
            std::ignore = writeNewFile(path, m_new, calls);
            ::_exit(0);
        }
        int status = 0;
        QVERIFY(::waitpid(child, &status, 0) == child && WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL);
        QVERIFY(!QFile::exists(path));
    }
    QVERIFY(writeNewFile(path, m_new).has_value());
    QCOMPARE(contentOf(path), m_new);
}

QTEST_GUILESS_MAIN(TestWholeFile)
#include "tst_wholefile.moc"
