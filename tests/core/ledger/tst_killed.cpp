// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

// Processes that are killed while they record, and processes that want the same ledger.
#include "core/ledger/ledger.h"
#include "tests/core/ledger/ondisk.h"
#include "tests/core/ledger/recorder.h"

#include <QDir>
#include <QProcess>
#include <QSysInfo>
#include <QTemporaryDir>
#include <QTest>

#include <random>

using namespace setfolio;
using namespace setfolio::testing;

using Access = Ledger::Access;

class TestKilled : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void noAcknowledgedEntryIsLostWhenTheProcessIsKilled();
    void aSecondProcessReadsAndIsToldWhoWrites();
    void theLockEndsWithTheProcess_data();
    void theLockEndsWithTheProcess();
    void aSecondWindowOfTheSameProcessReadsToo();
    void aReaderHoldsNobodyUp();
    void aTornTailThatAnotherProcessMayBeWritingIsLeftAlone();
    void nothingIsLeftBesideTheLedger();

private:
    void start(QProcess& process, const QString& what) const { process.start(u"" RECORDER ""_qs, {what, m_path}); }
    /// A process that holds the ledger and has said so.
    void startHolding(QProcess& process, const QByteArray& says) const;
    [[nodiscard]] QString held(const QProcess& by) const {
        return u"%1, process %2"_qs.arg(QSysInfo::machineHostName()).arg(by.processId());
    }

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
};

namespace {

/// The last number in what the recorder printed; a last line that was cut short does not count.
std::uint32_t lastAcknowledged(const QByteArray& printed) {
    const QByteArray whole = printed.first(printed.lastIndexOf('\n') + 1).trimmed();
    return whole.isEmpty() ? 0 : whole.mid(whole.lastIndexOf('\n') + 1).toUInt();
}

bool areAsRecorded(const std::vector<Recorded>& entries) {
    return std::all_of(entries.begin(), entries.end(),
                       [](const Recorded& entry) { return entry.entry == recordedEntry(entry.number.value); });
}

} // namespace

void TestKilled::init() {
    m_folder = std::make_unique<QTemporaryDir>();
    m_path = m_folder->filePath(u"match.setfolio"_qs);
}

void TestKilled::startHolding(QProcess& process, const QByteArray& says) const {
    start(process, u"hold"_qs);
    QVERIFY(process.waitForReadyRead());
    QCOMPARE(process.readAllStandardOutput(), says + '\n');
}

void TestKilled::noAcknowledgedEntryIsLostWhenTheProcessIsKilled() {
    const auto seed = std::random_device()();
    std::mt19937 random(seed);
    std::uniform_int_distribution<unsigned long> microseconds(0, 12'000);
    int torn = 0;
    int unacknowledged = 0;
    std::uint32_t recordedInAll = 0;
    for (int kill = 0; kill < 200; ++kill) {
        if (kill % 10 == 0)
            init();
        QProcess recorder;
        start(recorder, u"record"_qs);
        // A new file may be killed before its first entry, even before it is there.
        QVERIFY(kill % 10 == 0 ? recorder.waitForStarted() : recorder.waitForReadyRead());
        ::usleep(static_cast<useconds_t>(microseconds(random)));
        recorder.kill();
        QVERIFY(recorder.waitForFinished());
        const std::uint32_t last = lastAcknowledged(recorder.readAllStandardOutput());
        if (last == 0 && !QFile::exists(m_path))
            continue;

        const auto content = readLedgerFile(m_path);
        QVERIFY(content.has_value());
        const auto there = static_cast<std::uint32_t>(content->entries.size());
        QVERIFY2(!content->damage, qPrintable(u"seed %1, kill %2"_qs.arg(seed).arg(kill)));
        QVERIFY2(there == last || there == last + 1,
                 qPrintable(u"seed %1, kill %2: %3 of %4"_qs.arg(seed).arg(kill).arg(there).arg(last)));
        QVERIFY(areAsRecorded(content->entries));
        torn += content->torn ? 1 : 0;
        unacknowledged += there > last ? 1 : 0;
        recordedInAll += kill % 10 == 9 ? there : 0;
    }
    qInfo("seed %u: 200 kills, %u entries, none lost; %d torn tails, %d entries there but not yet acknowledged", seed,
          recordedInAll, torn, unacknowledged);
    QVERIFY2(torn > 0, "the kills never came in the middle of a line");
}

void TestKilled::aSecondProcessReadsAndIsToldWhoWrites() {
    const auto ledger = Ledger::create(m_path);
    QVERIFY(!ledger->isReadOnly());
    QProcess second;
    startHolding(second, "reading, held by " + QSysInfo::machineHostName().toUtf8() + ", process " +
                             QByteArray::number(QCoreApplication::applicationPid()));
    second.closeWriteChannel();
    QVERIFY(second.waitForFinished());
}

void TestKilled::theLockEndsWithTheProcess_data() {
    QTest::addColumn<bool>("killed");
    QTest::newRow("that is killed") << true;
    QTest::newRow("that ends") << false;
}

void TestKilled::theLockEndsWithTheProcess() {
    QFETCH(bool, killed);
    setContent(m_path, everyKindBytes());
    QProcess first;
    startHolding(first, "writing");
    {
        const auto second = Ledger::open(m_path, Access::ReadWrite);
        QVERIFY(second->isReadOnly());
        QCOMPARE(second->heldBy(), held(first));
        QCOMPARE(second->entries().size(), everyKind().size());
    }
    killed ? first.kill() : first.closeWriteChannel();
    QVERIFY(first.waitForFinished());
    auto second = Ledger::open(m_path, Access::ReadWrite);
    QVERIFY(!second->isReadOnly());
    QVERIFY(second->heldBy().isEmpty());
    QVERIFY(second->append(NoServe{}, noon()).has_value());
}

void TestKilled::aSecondWindowOfTheSameProcessReadsToo() {
    setContent(m_path, everyKindBytes());
    auto first = std::make_unique<tl::expected<Ledger, LedgerError>>(Ledger::open(m_path, Access::ReadWrite));
    const auto second = Ledger::open(m_path, Access::ReadWrite);
    QVERIFY(second->isReadOnly());
    QVERIFY(second->heldBy().endsWith(u"process %1"_qs.arg(QCoreApplication::applicationPid())));
    // Reading the file meanwhile must not let go of the lock.
    QVERIFY(readLedgerFile(m_path).has_value());
    QVERIFY(Ledger::open(m_path, Access::ReadWrite)->isReadOnly());
    first.reset();
    QVERIFY(second->heldBy().isEmpty());
    QVERIFY(!Ledger::open(m_path, Access::ReadWrite)->isReadOnly());
}

void TestKilled::aReaderHoldsNobodyUp() {
    setContent(m_path, everyKindBytes());
    const auto reader = Ledger::open(m_path, Access::ReadOnly);
    QVERIFY(reader->isReadOnly());
    QProcess writer;
    startHolding(writer, "writing");
    QCOMPARE(reader->heldBy(), held(writer));
    writer.closeWriteChannel();
    QVERIFY(writer.waitForFinished());
}

void TestKilled::aTornTailThatAnotherProcessMayBeWritingIsLeftAlone() {
    setContent(m_path, everyKindBytes());
    QProcess writer;
    startHolding(writer, "writing");
    const QByteArray halfWritten =
        everyKindBytes() + "{\"seq\":" + QByteArray::number(qsizetype(everyKind().size()) + 1);
    setContent(m_path, halfWritten);
    const auto second = Ledger::open(m_path, Access::ReadWrite);
    QVERIFY(second.has_value());
    QVERIFY(second->torn().has_value());
    QVERIFY(second->torn()->setAsideTo.isEmpty());
    QCOMPARE(contentOf(m_path), halfWritten);
    writer.kill();
    QVERIFY(writer.waitForFinished());
}

void TestKilled::nothingIsLeftBesideTheLedger() {
    QProcess recorder;
    start(recorder, u"record"_qs);
    QVERIFY(recorder.waitForReadyRead());
    recorder.kill();
    QVERIFY(recorder.waitForFinished());
    QCOMPARE(QDir(m_folder->path()).entryList(QDir::Files | QDir::Hidden), {u"match.setfolio"_qs});
}

QTEST_GUILESS_MAIN(TestKilled)
#include "tst_killed.moc"
