// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/matchfile.h"
#include "tests/support/signoffs.h"
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/copydialog.h"

#include <QJsonDocument>
#include <QLabel>
#include <QPushButton>
#include <QTemporaryDir>

#include <cerrno>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

QByteArray contentOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// A match that is signed and sealed, in a file, and the dialog over it.
class Copying {
public:
    explicit Copying(FileCalls calls = systemCalls()) {
        MatchBuilder match = oneSetSealed();
        match.add(twelve(Team::Home));
        auto file = MatchFile::create(path(u"match.setfolio"));
        for (const Recorded& recorded : match.entries())
            if (!file->record(recorded.entry, recorded.time, recorded.overruled, recorded.placed))
                qFatal("not recorded");
        m_dialog = std::make_unique<CopyDialog>(file->ledger().entries(), m_folder.path(), std::move(calls));
        showActive(*m_dialog);
    }
    [[nodiscard]] CopyDialog& dialog() { return *m_dialog; }
    [[nodiscard]] QString path(QStringView name) const { return m_folder.filePath(name.toString()); }
    [[nodiscard]] QByteArray match() const { return contentOf(path(u"match.setfolio")); }
    [[nodiscard]] QString about() { return childOf<QLabel>(*m_dialog, "about")->accessibleName(); }
    [[nodiscard]] QString said() { return childOf<QLabel>(*m_dialog, "said")->accessibleName(); }
    void click(const char* name) { QTest::mouseClick(childOf<QPushButton>(*m_dialog, name), Qt::LeftButton); }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<CopyDialog> m_dialog;
};

} // namespace

class TestCopyDialog : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aCopyWithNamesIsTheFileAsItIs() {
        Copying copying;
        QCOMPARE(copying.dialog().fileName(), u"SAL-QRL-copy.setfolio"_s);
        QVERIFY(copying.about().contains(u"hold for the copy"_s));
        QVERIFY(copying.about().contains(u"This document names persons."_s));
        QVERIFY(copying.dialog().saveTo(copying.path(u"copy.setfolio")));
        QCOMPARE(contentOf(copying.path(u"copy.setfolio")), copying.match());
        QVERIFY(copying.said().contains(u"copy.setfolio"_s));
    }

    void aCopyWithNumbersOnlyNamesNobody() {
        Copying copying;
        QVERIFY(copying.match().contains("Ada Lund"));
        copying.click("numbersOnly");
        QCOMPARE(copying.dialog().fileName(), u"SAL-QRL-numbers-only.setfolio"_s);
        QVERIFY(copying.about().contains(u"do not hold for it"_s));
        QVERIFY(copying.about().contains(u"Names of persons were left out"_s));
        QVERIFY(copying.dialog().saveTo(copying.path(u"copy.setfolio")));
        const QByteArray copy = contentOf(copying.path(u"copy.setfolio"));
        for (const char* name : {"Ada", "Lund", "Aldous", "Sedge", "strokes"})
            QVERIFY2(!copy.contains(name), name);
        const LedgerContent read = readLedger(copy);
        QVERIFY(!read.damage && !read.torn);
        QCOMPARE(read.entries.size(), readLedger(copying.match()).entries.size());
        QVERIFY(read.lastDigest != readLedger(copying.match()).lastDigest);
    }

    void itIsDoneByKeysAlone() {
        Copying copying;
        pressIn(copying.dialog(), Qt::Key_Right); // the three forms are one stop of Tab
        QVERIFY(tabTo(copying.dialog(), u"numbersOnly"_s));
        pressIn(copying.dialog(), Qt::Key_Space);
        const ChoosingFile choosing(copying.path(u"table.csv"));
        pressIn(copying.dialog(), Qt::Key_Return);
        const QByteArray table = contentOf(copying.path(u"table.csv"));
        QVERIFY(table.startsWith("entry,time,stands,"));
        QVERIFY(!table.contains("Ada Lund"));
    }

    void itIsDoneByFingerAlone() {
        Copying copying;
        tap(*childOf<QPushButton>(copying.dialog(), "json"));
        const ChoosingFile choosing(copying.path(u"data"));
        tap(*childOf<QPushButton>(copying.dialog(), "record"));
        const QByteArray data = contentOf(copying.path(u"data.json")); // the name is completed
        QVERIFY(QJsonDocument::fromJson(data).isObject());
        QVERIFY(data.contains("Ada Lund"));
    }

    void aNameThatIsCompletedOverwritesNothing() {
        Copying copying;
        QFile there(copying.path(u"data.json"));
        QVERIFY(there.open(QIODevice::WriteOnly) && there.write("kept") == 4);
        there.close();
        copying.click("json");
        const ChoosingFile choosing(copying.path(u"data"));
        copying.click("record");
        QCOMPARE(contentOf(copying.path(u"data.json")), QByteArray("kept"));
        QVERIFY(copying.said().contains(u"data.json"_s));
    }

    void aMatchFileIsNeverOverwritten() {
        Copying copying;
        const QByteArray before = copying.match();
        copying.click("numbersOnly");
        QVERIFY(!copying.dialog().saveTo(copying.path(u"match.setfolio")));
        QCOMPARE(copying.match(), before);
        QVERIFY(copying.said().contains(u"match.setfolio"_s));
    }

    void aFullDiskLeavesNothing() {
        FileCalls calls = systemCalls();
        calls.write = [](int, const void*, size_t) -> ssize_t {
            errno = ENOSPC;
            return -1;
        };
        Copying copying(calls);
        QVERIFY(!copying.dialog().saveTo(copying.path(u"copy.setfolio")));
        QVERIFY(!QFile::exists(copying.path(u"copy.setfolio")));
        QVERIFY(!copying.said().isEmpty());
    }

    void aCopyOfACopyHasNumbersOnly() {
        const std::vector<Recorded> nameless = withoutNames(oneSetSealed().entries());
        CopyDialog dialog(nameless, {});
        auto* numbersOnly = childOf<QPushButton>(dialog, "numbersOnly");
        QVERIFY(numbersOnly->isChecked() && !numbersOnly->isEnabled());
    }
};

QTEST_MAIN(TestCopyDialog)
#include "tst_copydialog.moc"
