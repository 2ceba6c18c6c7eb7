// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

// A disk that fills up, dies or lies while a match is recorded.
#include "core/ledger/ledger.h"
#include "tests/core/ledger/everykind.h"
#include "tests/core/ledger/ondisk.h"

#include <QDir>
#include <QScopeGuard>
#include <QTemporaryDir>
#include <QTest>

#include <csignal>

#include <sys/resource.h>

using namespace setfolio;
using namespace setfolio::testing;

using Code = LedgerError::Code;
using Access = Ledger::Access;

class TestFailingDisk : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void aDiskThatIsFullAfterAnyByteLeavesTheLedgerAsItWas();
    void aDiskThatTakesAByteAtATimeIsGoodEnough();
    void anEntryThatIsNotSyncedIsNotRecorded();
    void whatCouldNotBeCutBackAtOnceIsCutBeforeTheNextEntry();
    void untilItIsCutBackNothingIsRecorded();
    void aLimitOfTheSystemIsAFullDisk();
    void aTornTailThatCannotBeSavedStaysInTheLedger();
    void aTornTailThatCannotBeCutOffIsSavedAllTheSame();
    void aLedgerWhoseNameIsNotDurableIsNotMade();
    void aFolderThatMayNotBeWrittenHoldsNoNewLedger();

private:
    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
    QByteArray m_before; ///< three entries
};

void TestFailingDisk::init() {
    m_folder = std::make_unique<QTemporaryDir>();
    m_path = m_folder->filePath(u"match.setfolio"_qs);
    const auto lines = linesOf(recorded(everyKind()));
    m_before = lines[0] + lines[1] + lines[2];
    setContent(m_path, m_before);
}

void TestFailingDisk::aDiskThatIsFullAfterAnyByteLeavesTheLedgerAsItWas() {
    FailingDisk disk;
    auto ledger = Ledger::open(m_path, Access::ReadWrite, disk.calls());
    const Recorded next{EntryNumber(4), noon(), TimeOut{Team::Home}, std::nullopt};
    const QByteArray line = ledgerLine(next, ledger->lastDigest());
    for (qsizetype room = 0; room < line.size(); ++room) {
        disk.room = room;
        const auto failed = ledger->append(next.entry, next.time);
        QCOMPARE(failed.error().code, Code::CannotWrite);
        QCOMPARE(failed.error().path, m_path);
        QVERIFY(!failed.error().detail.isEmpty());
        QCOMPARE(disk.room, 0);
        QCOMPARE(contentOf(m_path), m_before);
        QCOMPARE(ledger->entries().size(), std::size_t{3});
    }
    disk.room = line.size();
    QCOMPARE(ledger->append(next.entry, next.time).value(), EntryNumber(4));
    QCOMPARE(contentOf(m_path), m_before + line);
}

void TestFailingDisk::aDiskThatTakesAByteAtATimeIsGoodEnough() {
    FailingDisk disk{.bytesAtOnce = 1};
    auto ledger = Ledger::open(m_path, Access::ReadWrite, disk.calls());
    QVERIFY(ledger->append(TimeOut{Team::Home}, noon()).has_value());
    QCOMPARE(readLedger(contentOf(m_path)).entries.size(), std::size_t{4});
}

void TestFailingDisk::anEntryThatIsNotSyncedIsNotRecorded() {
    FailingDisk disk{.syncsUntilFailure = 0};
    auto ledger = Ledger::open(m_path, Access::ReadWrite, disk.calls());
    QCOMPARE(ledger->append(TimeOut{Team::Home}, noon()).error().code, Code::CannotWrite);
    QCOMPARE(contentOf(m_path), m_before);
    QCOMPARE(ledger->entries().size(), std::size_t{3});
    disk.syncsUntilFailure = 100;
    QCOMPARE(ledger->append(TimeOut{Team::Home}, noon()).value(), EntryNumber(4));
    QCOMPARE(readLedger(contentOf(m_path)).entries.size(), std::size_t{4});
}

void TestFailingDisk::whatCouldNotBeCutBackAtOnceIsCutBeforeTheNextEntry() {
    FailingDisk disk{.room = 50, .cuts = false};
    auto ledger = Ledger::open(m_path, Access::ReadWrite, disk.calls());
    QCOMPARE(ledger->append(TimeOut{Team::Home}, noon()).error().code, Code::CannotWrite);
    QCOMPARE(contentOf(m_path).size(), m_before.size() + 50);
    disk = {};
    QCOMPARE(ledger->append(NoServe{}, noon()).value(), EntryNumber(4));
    const LedgerContent content = readLedger(contentOf(m_path));
    QVERIFY(!content.damage && !content.torn);
    QVERIFY(content.entries.back().entry == Entry(NoServe{}));
}

void TestFailingDisk::untilItIsCutBackNothingIsRecorded() {
    FailingDisk disk{.room = 50, .cuts = false};
    auto ledger = Ledger::open(m_path, Access::ReadWrite, disk.calls());
    for (int attempt = 0; attempt < 3; ++attempt) {
        QCOMPARE(ledger->append(TimeOut{Team::Home}, noon()).error().code, Code::CannotWrite);
        disk.room = 1000;
        QCOMPARE(contentOf(m_path).size(), m_before.size() + 50);
    }
    disk.cuts = true;
    disk.syncsUntilFailure = 0;
    QCOMPARE(ledger->append(TimeOut{Team::Home}, noon()).error().code, Code::CannotWrite);
    QCOMPARE(contentOf(m_path), m_before);
    QVERIFY(readLedger(contentOf(m_path)).entries.size() == 3);
}

// The kernel's own error, not one of ours: a limit on the size of files acts as a full disk does.
void TestFailingDisk::aLimitOfTheSystemIsAFullDisk() {
    auto ledger = Ledger::open(m_path, Access::ReadWrite);
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit before{};
    QCOMPARE(getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto restore = qScopeGuard([&] { setrlimit(RLIMIT_FSIZE, &before); });
    for (const rlim_t room : {0u, 1u, 77u}) {
        const rlimit full{static_cast<rlim_t>(m_before.size()) + room, before.rlim_max};
        QCOMPARE(setrlimit(RLIMIT_FSIZE, &full), 0);
        QCOMPARE(ledger->append(TimeOut{Team::Home}, noon()).error().code, Code::CannotWrite);
        QCOMPARE(contentOf(m_path), m_before);
    }
    QCOMPARE(setrlimit(RLIMIT_FSIZE, &before), 0);
    QCOMPARE(ledger->append(TimeOut{Team::Home}, noon()).value(), EntryNumber(4));
}

void TestFailingDisk::aTornTailThatCannotBeSavedStaysInTheLedger() {
    const QByteArray torn = m_before + "{\"seq\":4,\"time\":\"2026-10";
    setContent(m_path, torn);
    FailingDisk full{.room = 7};
    FailingDisk unsynced{.syncsUntilFailure = 0};
    FailingDisk folderUnsynced{.syncsUntilFailure = 1};
    for (FailingDisk* disk : {&full, &unsynced, &folderUnsynced}) {
        const auto ledger = Ledger::open(m_path, Access::ReadWrite, disk->calls());
        QCOMPARE(ledger.error().code, Code::CannotWrite);
        QCOMPARE(ledger.error().path, m_path + u".torn-1"_qs);
        QCOMPARE(contentOf(m_path), torn);
        QCOMPARE(QDir(m_folder->path()).entryList(QDir::Files), {u"match.setfolio"_qs});
    }
    QVERIFY(Ledger::open(m_path, Access::ReadWrite)->torn().has_value());
}

void TestFailingDisk::aTornTailThatCannotBeCutOffIsSavedAllTheSame() {
    setContent(m_path, m_before + "{\"seq\":4");
    FailingDisk disk{.cuts = false};
    QCOMPARE(Ledger::open(m_path, Access::ReadWrite, disk.calls()).error().path, m_path);
    QCOMPARE(contentOf(m_path), m_before + "{\"seq\":4");
    QCOMPARE(contentOf(m_path + u".torn-1"_qs), QByteArray("{\"seq\":4"));
}

void TestFailingDisk::aLedgerWhoseNameIsNotDurableIsNotMade() {
    const QString path = m_folder->filePath(u"new.setfolio"_qs);
    for (const int syncs : {0, 1}) {
        FailingDisk disk{.syncsUntilFailure = syncs};
        QCOMPARE(Ledger::create(path, disk.calls()).error().code, Code::CannotCreate);
        QVERIFY(!QFile::exists(path));
    }
    FailingDisk disk{.syncsUntilFailure = 2};
    QVERIFY(Ledger::create(path, disk.calls()).has_value());
}

void TestFailingDisk::aFolderThatMayNotBeWrittenHoldsNoNewLedger() {
    setContent(m_path, m_before + "{\"seq\":4");
    QVERIFY(QFile::setPermissions(m_path, QFileDevice::Permissions(0x6666)));
    QVERIFY(QFile::setPermissions(m_folder->path(), QFileDevice::Permissions(0x5555)));
    const auto restore =
        qScopeGuard([&] { QFile::setPermissions(m_folder->path(), QFileDevice::Permissions(0x7700)); });
    QVERIFY(asPlainUser([&] {
        const auto made = Ledger::create(m_folder->filePath(u"new.setfolio"_qs));
        const auto torn = Ledger::open(m_path, Access::ReadWrite);
        return !made && made.error().code == Code::CannotCreate && !torn && torn.error().code == Code::CannotCreate &&
               torn.error().path == m_path + u".torn-1"_qs;
    }));
    QCOMPARE(contentOf(m_path), m_before + "{\"seq\":4");
}

QTEST_GUILESS_MAIN(TestFailingDisk)
#include "tst_failingdisk.moc"
