// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/noticeband.h"
#include "ui/table/recorder.h"
#include "ui/table/topbar.h"

#include <QFile>

#include <csignal>
#include <sys/resource.h>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// While it lives, no file of this process grows beyond a size: as on a full disk, writing fails.
class FullDisk {
public:
    explicit FullDisk(qint64 bytes) {
        std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        rlimit limit = m_before;
        limit.rlim_cur = static_cast<rlim_t>(bytes);
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FullDisk() { setrlimit(RLIMIT_FSIZE, &m_before); }

private:
    rlimit m_before{};
};

QString band(OpenTable& table, BandKind kind) {
    return table.find<NoticeBand>("noticeBand")->sentenceOf(kind);
}

} // namespace

class TestRecorder : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aFullDiskIsSaidAndNothingChanges();
    void theBandStaysUntilItIsUnderstood();
    void aFullDiskUnderAnOpenBarIsSaidToo();
    void aFileHeldElsewhereIsReadOnly();
    void aTornTailIsToldOnce();
    void anEntryKeepsTheClocksTime();
};

void TestRecorder::aFullDiskIsSaidAndNothingChanges() {
    OpenTable table(MatchBuilder().started().play("hv"));
    const MatchState before = table.state();
    const std::size_t recorded = table.recorded();
    {
        const FullDisk full(QFileInfo(table.path()).size() + 10);
        table.press(Qt::Key_Left);
    }
    QCOMPARE(table.recorded(), recorded);
    QVERIFY(table.state() == before);
    QVERIFY(band(table, BandKind::NotRecorded).startsWith(u"Not recorded."));
    QCOMPARE(table.find<TopBar>("topBar")->savedWords(), QStringLiteral("Not saved"));
    const auto again = MatchFile::open(table.path(), Ledger::Access::ReadOnly);
    QVERIFY(again.has_value());
    QCOMPARE(again->ledger().entries().size(), recorded);
}

void TestRecorder::theBandStaysUntilItIsUnderstood() {
    OpenTable table(MatchBuilder().started());
    {
        const FullDisk full(QFileInfo(table.path()).size());
        table.press(Qt::Key_Left);
    }
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home, 1);
    QVERIFY(table.find<TopBar>("topBar")->savedWords().startsWith(u"Saved "));
    QVERIFY(!band(table, BandKind::NotRecorded).isEmpty());
    table.click("bandNotRecordedClose");
    QVERIFY(band(table, BandKind::NotRecorded).isEmpty());
    QVERIFY(!table.find<NoticeBand>("noticeBand")->isVisible());
}

void TestRecorder::aFullDiskUnderAnOpenBarIsSaidToo() {
    OpenTable table(MatchBuilder().started());
    const std::size_t recorded = table.recorded();
    table.press(Qt::Key_M);
    table.type("wet floor");
    {
        const FullDisk full(QFileInfo(table.path()).size());
        table.press(Qt::Key_Return);
    }
    QCOMPARE(table.recorded(), recorded);
    QVERIFY(band(table, BandKind::NotRecorded).startsWith(u"Not recorded."));
    QVERIFY(table.find<NoticeBand>("noticeBand")->isVisible());
    QCOMPARE(table.find<QLineEdit>("askLine")->text(), QStringLiteral("wet floor")); // nothing typed is lost
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<Remark>(table.newest().entry).text, QStringLiteral("wet floor"));
}

void TestRecorder::aFileHeldElsewhereIsReadOnly() {
    OpenTable table(MatchBuilder().started());
    auto second = MatchFile::open(table.path(), Ledger::Access::ReadWrite);
    QVERIFY(second.has_value());
    QVERIFY(second->ledger().isReadOnly());
    const auto fonts = SheetFonts::load();
    QVERIFY(fonts.has_value());
    TableWindow window(std::move(*second), {[] { return QDateTime(); }, [] { return QTime(12, 0); }}, *fonts, {});
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    auto* told = window.findChild<NoticeBand*>(QStringLiteral("noticeBand"));
    QVERIFY(told->sentenceOf(BandKind::ReadOnly).startsWith(u"Another window holds this match"));
    QVERIFY(!window.findChild<QAbstractButton*>(QStringLiteral("teamAreaLeft"))->isEnabled());
    auto* area = window.findChild<QAbstractButton*>(QStringLiteral("teamAreaLeft"));
    const std::size_t before = window.file().ledger().entries().size();
    QTest::keyClick(&window, Qt::Key_Left);
    QTest::keyClick(&window, Qt::Key_Backspace);
    QTest::mouseClick(area, Qt::LeftButton);
    tap(*area);
    QCOMPARE(window.file().ledger().entries().size(), before);
    QCOMPARE(window.findChild<TopBar*>()->savedWords(), QStringLiteral("Read only"));
    table.window().activateWindow(); // the first window goes on
    QVERIFY(QTest::qWaitForWindowActive(&table.window()));
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home, 1);
}

void TestRecorder::aTornTailIsToldOnce() {
    OpenTable table(MatchBuilder().started());
    table.reopen([](const QString& path) {
        QFile file(path);
        QVERIFY(file.open(QIODevice::Append));
        file.write("{\"seq\":6,\"ti"); // the next line, as far as it came
    });
    QVERIFY(!band(table, BandKind::TailSetAside).isEmpty());
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home, 1);
    table.reopen([](const QString&) {});
    QVERIFY(!table.window().findChild<QWidget*>(QStringLiteral("bandTailSetAside")));
}

void TestRecorder::anEntryKeepsTheClocksTime() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_Left);
    QCOMPARE(table.newest().time, table.now);
}

QTEST_MAIN(TestRecorder)
#include "tst_recorder.moc"
