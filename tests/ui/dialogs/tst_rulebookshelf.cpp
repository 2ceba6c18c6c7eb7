// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebookshelf.h"

#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/rulebookdraft.h"
#include "ui/wording/rulebookwords.h"

#include <QJsonDocument>
#include <QTemporaryDir>
#include <QTest>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

Rulebook copy(const QString& name = u"Estuary League"_s) {
    return copyToAdapt(publishedRulebook(u"high-school"_s).value(), name, {});
}

QByteArray bytesOf(const QJsonObject& json) {
    return QJsonDocument(json).toJson();
}

/// The file of a rulebook with one setting changed by `change`.
QByteArray fileWith(const std::function<void(QJsonObject& settings)>& change) {
    QJsonObject json = toJson(copy());
    QJsonObject settings = json.value(u"settings").toObject();
    change(settings);
    json.insert(u"settings", settings);
    return bytesOf(json);
}

} // namespace

class RulebookShelfTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsKeptIsFoundWhole();
    void aRulebookKeptAgainReplacesItself();
    void whatIsRemovedIsGone();
    void withoutAFolderNothingIsKept();
    void aFolderThatCannotBeMadeIsAnError();
    void aBadFileIsNamedAndTheOthersAreRead();
    void aBadFileIsSaidWithItsSettingAndTheWayOut_data();
    void aBadFileIsSaidWithItsSettingAndTheWayOut();
    void aFileThatIsNotThereIsAnError();
    void aFileOfAnyLengthIsNotReadWhole();
    void anIdFromAFileNamesNoOtherPlace();
};

void RulebookShelfTest::whatIsKeptIsFoundWhole() {
    const QTemporaryDir folder;
    const RulebookShelf shelf(folder.filePath(u"not there yet/rulebooks"_s));
    QVERIFY(shelf.content().rulebooks.empty());
    RulebookDraft draft(publishedBaseOf(copy()), copy());
    QVERIFY(draft.setValue(u"cap"_s, 27));
    draft.setNote(u"cap"_s, u"handbook, p. 4 – “cap”"_s);
    QVERIFY(shelf.keep(draft.own()));
    QVERIFY(shelf.keep(copy(u"Another"_s)));
    QVERIFY(shelf.has(draft.own()));
    const RulebookShelf::Content content = shelf.content();
    QVERIFY(content.unread.empty());
    QCOMPARE(content.rulebooks.size(), 2U);
    QVERIFY(content.rulebooks[0] == copy(u"Another"_s)); // by name
    QVERIFY(content.rulebooks[1] == draft.own());
}

void RulebookShelfTest::aRulebookKeptAgainReplacesItself() {
    const QTemporaryDir folder;
    const RulebookShelf shelf(folder.path());
    Rulebook own = copy();
    QVERIFY(shelf.keep(own));
    own.name = u"Renamed"_s;
    QVERIFY(shelf.keep(own));
    QCOMPARE(shelf.content().rulebooks.size(), 1U);
    QCOMPARE(shelf.content().rulebooks[0].name, u"Renamed"_s);
}

void RulebookShelfTest::whatIsRemovedIsGone() {
    const QTemporaryDir folder;
    const RulebookShelf shelf(folder.path());
    QVERIFY(shelf.keep(copy()));
    QVERIFY(shelf.remove(copy()));
    QVERIFY(!shelf.has(copy()) && shelf.content().rulebooks.empty());
    QVERIFY(shelf.remove(copy())); // gone already
}

void RulebookShelfTest::withoutAFolderNothingIsKept() {
    const RulebookShelf shelf;
    QVERIFY(!shelf.keep(copy()));
    QVERIFY(!shelf.has(copy()) && shelf.content().rulebooks.empty());
}

void RulebookShelfTest::aFolderThatCannotBeMadeIsAnError() {
    const QTemporaryDir folder;
    write(folder.filePath(u"rulebooks"_s), "a file");
    const auto kept = RulebookShelf(folder.filePath(u"rulebooks"_s)).keep(copy());
    QVERIFY(!kept);
    QCOMPARE(kept.error().code, FileError::Code::CannotCreate);
}

void RulebookShelfTest::aBadFileIsNamedAndTheOthersAreRead() {
    const QTemporaryDir folder;
    const RulebookShelf shelf(folder.path());
    QVERIFY(shelf.keep(copy()));
    write(folder.filePath(u"a.json"_s), "{");
    const RulebookShelf::Content content = shelf.content();
    QCOMPARE(content.rulebooks.size(), 1U);
    QCOMPARE(content.unread.size(), 1U);
    QCOMPARE(content.unread[0].path, folder.filePath(u"a.json"_s));
}

void RulebookShelfTest::aBadFileIsSaidWithItsSettingAndTheWayOut_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("said");
    // clang-format off
    QTest::newRow("no JSON")   << QByteArray("set points: 25")
        << u"a.json is not a rulebook: choose a file that was written as one."_s;
    QTest::newRow("a list")    << QByteArray("[]")
        << u"a.json is not a rulebook: choose a file that was written as one."_s;
    QTest::newRow("unknown")   << fileWith([](QJsonObject& s) { s.insert(u"shoes", QJsonObject{{u"value"_s, 2}, {u"source"_s, u"x"_s}}); })
        << u"a.json cannot be used: this version does not know “shoes”. Take it out of the file, or have the file written anew."_s;
    QTest::newRow("missing")   << fileWith([](QJsonObject& s) { s.remove(u"time-outs"); })
        << u"a.json cannot be used: “Time-outs, a team in a set” (time-outs) is missing. Put it into the file, or adapt a published rulebook instead."_s;
    QTest::newRow("a word")    << fileWith([](QJsonObject& s) { s.insert(u"time-outs", QJsonObject{{u"value"_s, u"two"_s}, {u"source"_s, u"x"_s}}); })
        << u"a.json cannot be used: “Time-outs, a team in a set” (time-outs) has a value that it cannot have. Put it right in the file, or adapt a published rulebook instead."_s;
    QTest::newRow("too many")  << fileWith([](QJsonObject& s) { s.insert(u"time-outs", QJsonObject{{u"value"_s, 5}, {u"source"_s, u"x"_s}}); })
        << u"a.json cannot be used: “Time-outs, a team in a set” (time-outs) has a value that it cannot have. Put it right in the file, or adapt a published rulebook instead."_s;
    // clang-format on
}

void RulebookShelfTest::aBadFileIsSaidWithItsSettingAndTheWayOut() {
    QFETCH(QByteArray, bytes);
    QFETCH(QString, said);
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"a.json"_s);
    write(path, bytes);
    const auto read = readRulebook(path);
    QVERIFY(!read);
    QCOMPARE(read.error().path, path);
    QCOMPARE(rulebookFileProblem(u"a.json"_s, std::get<RulebookError>(read.error().what)), said);
}

void RulebookShelfTest::aFileThatIsNotThereIsAnError() {
    const QTemporaryDir folder;
    const auto read = readRulebook(folder.filePath(u"nowhere.json"_s));
    QVERIFY(!read);
    QCOMPARE(std::get<FileError>(read.error().what).code, FileError::Code::CannotOpen);
}

void RulebookShelfTest::aFileOfAnyLengthIsNotReadWhole() {
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"long.json"_s);
    write(path, bytesOf(toJson(copy())) + QByteArray(1024 * 1024, ' '));
    const auto read = readRulebook(path);
    QVERIFY(!read);
    QCOMPARE(std::get<FileError>(read.error().what).code, FileError::Code::TooLong);
}

void RulebookShelfTest::anIdFromAFileNamesNoOtherPlace() {
    Rulebook rulebook = copy();
    rulebook.id = u"../../elsewhere/a"_s;
    QCOMPARE(rulebookFileName(rulebook), u"elsewhere-a.json"_s);
    rulebook.id.clear();
    QCOMPARE(rulebookFileName(rulebook), u"rulebook.json"_s);
    QCOMPARE(rulebookFileName(copy()), u"high-school-estuary-league.json"_s);
}

} // namespace setfolio

QTEST_APPLESS_MAIN(setfolio::RulebookShelfTest)
#include "tst_rulebookshelf.moc"
