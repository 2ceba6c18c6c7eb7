// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/ledger.h"
#include "tests/core/ledger/everykind.h"
#include "tests/core/ledger/ondisk.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <fcntl.h>
#include <sys/stat.h>

using namespace setfolio;
using namespace setfolio::testing;

Q_DECLARE_METATYPE(setfolio::Entry)

using Code = LedgerError::Code;
using Access = Ledger::Access;

class TestLedger : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void aNewLedgerIsAnEmptyFile();
    void aFileThatIsThereIsNotMadeAnew();
    void anEntryStandsInTheFileWhenItsNumberIsGiven();
    void theFileIsByteForByteWhatTheEntriesGive();
    void aLedgerOpenedAgainGoesOnWhereItEnded();
    void whatIsHeldInMemoryIsWhatTheFileSays();
    void anEmptyFileCanBeOpened();
    void onlyALedgerOpenedForWritingTakesEntries();
    void whatIsNoPlainFileCannotBeOpened();
    void aFileThatMayNotBeWrittenIsOpenedForReading();
    void aTornTailIsMovedAsideAndTheLedgerGoesOn();
    void everyTornTailIsKept();
    void aTornTailIsLeftAloneByAReader();
    void aDamagedLedgerIsNotOpenedAndLeftAsItIs();
    void theGoodPartOfADamagedLedgerCanBeSavedAsACopy();
    void aCopyOfTheGoodPartReplacesNoFile();
    void whatCouldNotBeReadBackIsNotRecorded_data();
    void whatCouldNotBeReadBackIsNotRecorded();
    void theFirstEntryOpensTheMatchAndNoOtherDoes();
    void aFileChangedByAnotherProgramTakesNoMoreEntries_data();
    void aFileChangedByAnotherProgramTakesNoMoreEntries();
    void aFileTooLargeIsNotRead();

private:
    [[nodiscard]] QString inFolder(const char* name) const { return m_folder->filePath(QString::fromLatin1(name)); }
    /// A ledger with the first entries of every kind, closed again.
    QString written(std::size_t entries = 3);

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_path;
};

void TestLedger::init() {
    m_folder = std::make_unique<QTemporaryDir>();
    QVERIFY(m_folder->isValid());
    m_path = inFolder("match.setfolio");
}

QString TestLedger::written(std::size_t entries) {
    const auto lines = linesOf(recorded(everyKind()));
    setContent(m_path, joined({lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(entries)}));
    return m_path;
}

void TestLedger::aNewLedgerIsAnEmptyFile() {
    const auto ledger = Ledger::create(m_path);
    QVERIFY(ledger.has_value());
    QVERIFY(QFile::exists(m_path));
    QCOMPARE(contentOf(m_path), QByteArray());
    QVERIFY(ledger->entries().empty());
    QVERIFY(!ledger->isReadOnly());
    QCOMPARE(ledger->path(), m_path);
    QCOMPARE(ledger->lastDigest(), firstDigest());
}

void TestLedger::aFileThatIsThereIsNotMadeAnew() {
    const QByteArray before = contentOf(written());
    const auto ledger = Ledger::create(m_path);
    QCOMPARE(ledger.error().code, Code::CannotCreate);
    QCOMPARE(ledger.error().path, m_path);
    QCOMPARE(contentOf(m_path), before);
    QCOMPARE(Ledger::create(inFolder("no/such/folder.setfolio")).error().code, Code::CannotCreate);
}

void TestLedger::anEntryStandsInTheFileWhenItsNumberIsGiven() {
    auto ledger = Ledger::create(m_path);
    std::uint32_t expected = 0;
    for (const Entry& given : everyKind()) {
        const Entry entry = withSeal(given, ledger->lastDigest());
        QCOMPARE(ledger->append(given, noon()).value(), EntryNumber(++expected));
        const auto content = readLedgerFile(m_path);
        QVERIFY(!content->damage && !content->torn);
        QCOMPARE(content->entries.size(), std::size_t{expected});
        QVERIFY(content->entries.back().entry == entry);
        QCOMPARE(ledger->lastDigest(), content->lastDigest);
    }
}

void TestLedger::theFileIsByteForByteWhatTheEntriesGive() {
    auto ledger = Ledger::create(m_path);
    for (const Recorded& entry : recorded(everyKind()))
        QVERIFY(ledger->append(entry.entry, entry.time, entry.overruled, entry.placed).has_value());
    QCOMPARE(contentOf(m_path), everyKindBytes());
}

void TestLedger::aLedgerOpenedAgainGoesOnWhereItEnded() {
    const auto all = recorded(everyKind());
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto ledger = i == 0 ? Ledger::create(m_path) : Ledger::open(m_path, Access::ReadWrite);
        QVERIFY(ledger.has_value());
        QVERIFY(!ledger->isReadOnly());
        QCOMPARE(ledger->entries().size(), i);
        QVERIFY(ledger->append(all[i].entry, all[i].time, all[i].overruled, all[i].placed).has_value());
    }
    QCOMPARE(contentOf(m_path), everyKindBytes());
}

void TestLedger::whatIsHeldInMemoryIsWhatTheFileSays() {
    auto ledger = Ledger::open(written(1), Access::ReadWrite);
    const QDateTime local(QDate(2026, 10, 10), QTime(18, 42, 3, 120), Qt::OffsetFromUTC, 7200);
    QVERIFY(ledger->append(SetStarted{QTime(18, 42, 59, 999)}, local, QString()).has_value());
    const auto content = readLedgerFile(m_path);
    QVERIFY(std::equal(content->entries.begin(), content->entries.end(), ledger->entries().begin()));
    const Recorded& started = ledger->entries().back();
    QCOMPARE(started.time, QDateTime(QDate(2026, 10, 10), QTime(16, 42, 3, 120), Qt::UTC));
    QCOMPARE(std::get<SetStarted>(started.entry).at, QTime(18, 42));
    QCOMPARE(started.overruled, std::optional(QString()));
}

void TestLedger::anEmptyFileCanBeOpened() {
    setContent(m_path, {});
    auto ledger = Ledger::open(m_path, Access::ReadWrite);
    QVERIFY(ledger.has_value());
    QVERIFY(ledger->append(everyKind().front(), noon()).has_value());
}

void TestLedger::onlyALedgerOpenedForWritingTakesEntries() {
    const QByteArray before = contentOf(written());
    auto ledger = Ledger::open(m_path, Access::ReadOnly);
    QVERIFY(ledger->isReadOnly());
    QVERIFY2(ledger->heldBy().isEmpty(), "a reader holds nothing up");
    QCOMPARE(ledger->append(NoServe{}, noon()).error().code, Code::ReadOnly);
    QCOMPARE(contentOf(m_path), before);
    QVERIFY(!Ledger::open(m_path, Access::ReadWrite)->isReadOnly());
}

void TestLedger::whatIsNoPlainFileCannotBeOpened() {
    QCOMPARE(mkfifo(QFile::encodeName(inFolder("pipe")).constData(), 0600), 0);
    for (const QString& path : {inFolder("missing"), m_folder->path(), inFolder("pipe"), QString()}) {
        for (const auto access : {Access::ReadOnly, Access::ReadWrite})
            QCOMPARE(Ledger::open(path, access).error().code, Code::CannotOpen);
        QCOMPARE(readLedgerFile(path).error().code, Code::CannotOpen);
    }
    QVERIFY2(!Ledger::open(inFolder("missing"), Access::ReadOnly).error().detail.isEmpty(), "with the system's words");
}

void TestLedger::aFileThatMayNotBeWrittenIsOpenedForReading() {
    written();
    QVERIFY(QFile::setPermissions(m_folder->path(), QFileDevice::Permissions(0x7755)));
    QVERIFY(QFile::setPermissions(m_path, QFileDevice::Permissions(0x4444)));
    QVERIFY(asPlainUser([&] {
        const auto ledger = Ledger::open(m_path, Access::ReadWrite);
        return ledger && ledger->isReadOnly() && ledger->heldBy().isEmpty() && ledger->entries().size() == 3;
    }));
    QVERIFY(QFile::setPermissions(m_path, QFileDevice::Permissions(0x6000)));
    QVERIFY(asPlainUser([&] {
                const auto ledger = Ledger::open(m_path, Access::ReadOnly);
                return !ledger && ledger.error().code == Code::CannotOpen;
            }) ||
            ::getuid() != 0); // only root has made a file that is another's
}

void TestLedger::aTornTailIsMovedAsideAndTheLedgerGoesOn() {
    const auto lines = linesOf(recorded(everyKind()));
    const QByteArray tail = lines[3].chopped(5);
    setContent(m_path, lines[0] + lines[1] + lines[2] + tail);
    {
        auto ledger = Ledger::open(m_path, Access::ReadWrite);
        QVERIFY(ledger.has_value());
        QVERIFY((ledger->torn() == TornTail{4, tail, m_path + u".torn-1"_qs}));
        QCOMPARE(contentOf(m_path + u".torn-1"_qs), tail);
        QCOMPARE(contentOf(m_path), lines[0] + lines[1] + lines[2]);
        const auto all = recorded(everyKind());
        for (std::size_t i = 3; i < all.size(); ++i)
            QVERIFY(ledger->append(all[i].entry, all[i].time, all[i].overruled, all[i].placed).has_value());
    }
    QCOMPARE(contentOf(m_path), everyKindBytes());
    QVERIFY(!Ledger::open(m_path, Access::ReadWrite)->torn().has_value());
}

void TestLedger::everyTornTailIsKept() {
    const QByteArray whole = contentOf(written());
    const QByteArray start = "{\"seq\":4,\"time\":\"";
    for (const char digit : {'1', '2', '3'}) {
        setContent(m_path, whole + start + digit);
        QCOMPARE(Ledger::open(m_path, Access::ReadWrite)->torn()->setAsideTo,
                 m_path + u".torn-"_qs + QLatin1Char(digit));
    }
    for (const char digit : {'1', '2', '3'})
        QCOMPARE(contentOf(m_path + u".torn-"_qs + QLatin1Char(digit)), start + digit);
}

void TestLedger::aTornTailIsLeftAloneByAReader() {
    const QByteArray torn = contentOf(written()) + "{\"seq\":4";
    setContent(m_path, torn);
    const auto ledger = Ledger::open(m_path, Access::ReadOnly);
    QVERIFY((ledger->torn() == TornTail{4, "{\"seq\":4", {}}));
    QCOMPARE(ledger->entries().size(), std::size_t{3});
    QCOMPARE(contentOf(m_path), torn);
    QCOMPARE(QDir(m_folder->path()).entryList(QDir::Files), {u"match.setfolio"_qs});
}

void TestLedger::aDamagedLedgerIsNotOpenedAndLeftAsItIs() {
    QByteArray damaged = contentOf(written());
    damaged.replace("Ida", "Ada");
    setContent(m_path, damaged);
    for (const auto access : {Access::ReadOnly, Access::ReadWrite})
        QVERIFY((Ledger::open(m_path, access).error() == LedgerError{Code::WrongDigest, 2, m_path, {}}));
    QCOMPARE(contentOf(m_path), damaged);
    const auto content = readLedgerFile(m_path);
    QCOMPARE(content->entries.size(), std::size_t{1});
    QVERIFY((content->damage == LedgerError{Code::WrongDigest, 2, m_path, {}}));
}

void TestLedger::theGoodPartOfADamagedLedgerCanBeSavedAsACopy() {
    const auto lines = linesOf(recorded(everyKind()));
    QByteArray damaged = everyKindBytes();
    damaged.replace("ball was out", "ball was in ");
    setContent(m_path, damaged);
    const QString copy = inFolder("copy.setfolio");
    QCOMPARE(saveGoodPart(m_path, copy).value(), 33);
    QCOMPARE(contentOf(m_path), damaged);
    QCOMPARE(contentOf(copy), joined({lines.begin(), lines.begin() + 33}));
    QVERIFY(Ledger::open(copy, Access::ReadWrite)->append(NoServe{}, noon()).has_value());
}

void TestLedger::aCopyOfTheGoodPartReplacesNoFile() {
    const QByteArray before = contentOf(written());
    QCOMPARE(saveGoodPart(m_path, m_path).error().code, Code::CannotCreate);
    QCOMPARE(contentOf(m_path), before);
    QCOMPARE(saveGoodPart(inFolder("missing"), inFolder("copy")).error().code, Code::CannotOpen);
    QVERIFY(!QFile::exists(inFolder("copy")));
}

void TestLedger::whatCouldNotBeReadBackIsNotRecorded_data() {
    QTest::addColumn<Entry>("entry");
    QTest::addColumn<QDateTime>("time");
    QTest::addColumn<QString>("overruled");
    QTest::addColumn<QString>("detail");
    const auto row = [](const char* name, const Entry& entry, const QDateTime& time, const QString& overruled,
                        const char* detail) {
        QTest::newRow(name) << entry << time << overruled << QString::fromLatin1(detail);
    };
    const auto n = [](int number) { return ShirtNumber(number); };
    const QString lone = QChar(0xD800);
    const QDateTime far(QDate(10000, 1, 1), QTime(0, 0), Qt::UTC);
    // clang-format off
    row("a shirt number too high",  Substitution{Team::Home, n(100), n(1)},               noon(),      {},   "in");
    row("no shirt number",          LineUp{},                                             noon(),      {},   "positions.0");
    row("a lone surrogate",         Remark{lone},                                         noon(),      {},   "");
    row("a control character",      Remark{u"\a"_qs},                                     noon(),      {},   "text");
    row("a text too long",          Remark{QString(1001, u'x')},                          noon(),      {},   "text");
    row("a name on two lines",      Roster{Team::Home, {}, u"a\nb"_qs},                   noon(),      {},   "coach");
    row("too many players",         Roster{Team::Home, std::vector<RosterPlayer>(101, {n(1), {}, false, false}), {}}, noon(), {}, "players");
    row("a strike of nothing",      Strike{},                                             noon(),      {},   "entry");
    row("a strike of itself",       Strike{EntryNumber(2), {}},                           noon(),      {},   "entry");
    row("a strike of what follows", Strike{EntryNumber(3), {}},                           noon(),      {},   "entry");
    row("no time",                  NoServe{},                                            QDateTime(), {},   "time");
    row("a year of five digits",    NoServe{},                                            far,         {},   "time");
    row("a reason too long",        NoServe{},                                            noon(),      QString(1001, u'x'), "overruled");
    row("another opening",          everyKind().front(),                                  noon(),      {},   "kind");
    // clang-format on
}

void TestLedger::whatCouldNotBeReadBackIsNotRecorded() {
    QFETCH(Entry, entry);
    QFETCH(QDateTime, time);
    QFETCH(QString, overruled);
    QFETCH(QString, detail);
    const QByteArray before = contentOf(written(1));
    auto ledger = Ledger::open(m_path, Access::ReadWrite);
    const auto reason = overruled.isNull() ? std::nullopt : std::optional(overruled);
    const auto refused = ledger->append(entry, time, reason);
    QVERIFY(!refused.has_value());
    QCOMPARE(refused.error().detail, detail);
    QVERIFY((refused.error() == LedgerError{Code::Unrecordable, 2, m_path, detail}));
    QCOMPARE(contentOf(m_path), before);
    QCOMPARE(ledger->entries().size(), std::size_t{1});
    QCOMPARE(ledger->append(NoServe{}, noon()).value(), EntryNumber(2));
}

void TestLedger::theFirstEntryOpensTheMatchAndNoOtherDoes() {
    auto ledger = Ledger::create(m_path);
    QCOMPARE(ledger->append(NoServe{}, noon()).error().code, Code::Unrecordable);
    QVERIFY(ledger->append(everyKind().front(), noon()).has_value());
    QCOMPARE(ledger->append(everyKind().front(), noon()).error().code, Code::Unrecordable);
}

void TestLedger::aFileChangedByAnotherProgramTakesNoMoreEntries_data() {
    QTest::addColumn<QString>("command");
    QTest::newRow("lengthened") << u"echo >> match.setfolio"_qs;
    QTest::newRow("cut") << u"truncate -s -1 match.setfolio"_qs;
    QTest::newRow("removed") << u"rm match.setfolio"_qs;
    QTest::newRow("replaced") << u"cp match.setfolio other && mv other match.setfolio"_qs;
}

void TestLedger::aFileChangedByAnotherProgramTakesNoMoreEntries() {
    QFETCH(QString, command);
    auto ledger = Ledger::open(written(), Access::ReadWrite);
    QCOMPARE(::system(qPrintable(u"cd '%1' && %2"_qs.arg(m_folder->path(), command))), 0);
    const QByteArray before = contentOf(m_path);
    QCOMPARE(ledger->append(NoServe{}, noon()).error().code, Code::ChangedOutside);
    QCOMPARE(contentOf(m_path), before);
    QCOMPARE(ledger->entries().size(), std::size_t{3});
}

void TestLedger::aFileTooLargeIsNotRead() {
    written();
    QCOMPARE(::truncate(QFile::encodeName(m_path).constData(), 67'108'865), 0);
    QCOMPARE(Ledger::open(m_path, Access::ReadWrite).error().code, Code::TooLong);
}

QTEST_GUILESS_MAIN(TestLedger)
#include "tst_ledger.moc"
