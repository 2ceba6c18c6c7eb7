// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/app/program.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

class TestExport : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theDemoIsExportedToStandardOutput();
    void theSameIsWrittenToAFile();
    void theSchemaAllowsTheDemo();
    void aFileThatIsThereIsReplacedWholeOrNotAtAll();
    void whatIsNotAMatchIsNotExported_data();
    void whatIsNotAMatchIsNotExported();
    void aTornTailIsSaidAndLeftOut();
    void whereNoFileCanBeMadeItSaysSo();
    void aFullStandardOutputIsNoticed();
    void namesCannotSteerTheTerminal();
    void withoutNamesNobodyIsNamed_data();
    void withoutNamesNobodyIsNamed();
    void aCopyWithoutNamesIsAMatchFileOfItsOwn();
};

namespace {

/// Everybody in the rosters and among the officials of the demo match.
QStringList namesOfDemo() {
    QStringList names;
    for (const QByteArray& line : contentOf(demoMatch()).split('\n')) {
        const QJsonObject json = QJsonDocument::fromJson(line).object();
        const QString kind = json.value(u"kind").toString();
        if (kind != u"roster"_s && kind != u"officials"_s)
            continue;
        for (const char* list : {"players", "officials"})
            for (const QJsonValueConstRef person : json.value(QLatin1String(list)).toArray())
                names += person.toObject().value(u"name").toString();
        names += json.value(u"coach").toString();
    }
    names.removeAll(QString());
    return names;
}

const QStringList exportDemo{u"export"_s, demoMatch(), u"--as"_s, u"json"_s};

} // namespace

void TestExport::theDemoIsExportedToStandardOutput() {
    const Ran ran = Folder().run(exportDemo);
    QCOMPARE(ran.err, QString());
    QCOMPARE(ran.code, 0);
    QCOMPARE(ran.out.count(u'\n') > 1000, true);
    const QJsonObject json = QJsonDocument::fromJson(ran.out.toUtf8()).object();
    QCOMPARE(json.value(u"match")[u"venue"].toString(), u"Tidewater Hall, Court 2"_s);
    const QJsonArray sets = json.value(u"sets").toArray();
    QCOMPARE(sets.size(), 3);
    QCOMPARE(sets.at(0)[u"score"].toObject(), (QJsonObject{{u"home"_s, 25}, {u"visitors"_s, 21}}));
    QCOMPARE(sets.at(1)[u"score"].toObject(), (QJsonObject{{u"home"_s, 21}, {u"visitors"_s, 25}}));
    QCOMPARE(sets.at(2)[u"score"].toObject(), (QJsonObject{{u"home"_s, 21}, {u"visitors"_s, 22}}));
    QCOMPARE(sets.at(2)[u"live"][u"round"].toInt(), 3);
    QCOMPARE(json.value(u"findings").toArray().size(), 0);
}

void TestExport::theSameIsWrittenToAFile() {
    const Folder folder;
    const Ran ran = folder.run(exportDemo + QStringList{u"--to"_s, u"a.json"_s});
    QCOMPARE(ran.out + ran.err, QString());
    QCOMPARE(ran.code, 0);
    QCOMPARE(folder.names(), QStringList{u"a.json"_s});
    QCOMPARE(QString::fromUtf8(contentOf(folder.path(u"a.json"_s))), folder.run(exportDemo).out);
}

void TestExport::theSchemaAllowsTheDemo() {
    const QByteArray json = Folder().run(exportDemo).out.toUtf8();
    QProcess validator;
    validator.start(u"/usr/bin/python3"_s,
                    {u"-B"_s, QStringLiteral(SETFOLIO_SOURCE_DIR "/tests/support/validate.py"),
                     QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/schema"), u"urn:setfolio:schema:export"_s});
    validator.write(QJsonDocument::fromJson(json).toJson(QJsonDocument::Compact) + '\n');
    validator.closeWriteChannel();
    QVERIFY(validator.waitForFinished(60'000));
    QCOMPARE(validator.readAllStandardOutput(), "1 lines, 0 faults\n"_ba);
    QCOMPARE(validator.exitCode(), 0);
}

void TestExport::aFileThatIsThereIsReplacedWholeOrNotAtAll() {
    const Folder folder;
    put(folder.path(u"a.json"_s), "old");
    const QStringList words = exportDemo + QStringList{u"--to"_s, u"a.json"_s};
    const Ran full = folder.runIn(withRoomFor(16), words);
    QVERIFY2(full.err.contains(u"a.json cannot be written ("_s), qPrintable(full.err));
    QCOMPARE(full.code, 74);
    QCOMPARE(contentOf(folder.path(u"a.json"_s)), "old"_ba);
    QCOMPARE(folder.names(), QStringList{u"a.json"_s});
    QCOMPARE(folder.run(words).code, 0);
    QVERIFY(contentOf(folder.path(u"a.json"_s)).startsWith('{'));
}

void TestExport::whatIsNotAMatchIsNotExported_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<int>("code");
    QTest::newRow("empty") << QByteArray() << 1;
    QTest::newRow("a text") << "25-21\n"_ba << 2;
    QTest::newRow("altered") << contentOf(demoMatch()).replace("Tidewater Hall", "Tidewater Mall") << 2;
}

void TestExport::whatIsNotAMatchIsNotExported() {
    QFETCH(QByteArray, bytes);
    QFETCH(int, code);
    const Folder folder;
    put(folder.path(u"a.setfolio"_s), bytes);
    const Ran ran = folder.run({u"export"_s, u"a.setfolio"_s, u"--as"_s, u"json"_s, u"--to"_s, u"a.json"_s});
    QVERIFY2(ran.err.contains(u"a.setfolio"_s), qPrintable(ran.err));
    QCOMPARE(ran.out, QString());
    QCOMPARE(ran.code, code);
    QCOMPARE(folder.names(), QStringList{u"a.setfolio"_s});
}

void TestExport::aTornTailIsSaidAndLeftOut() {
    const Folder folder;
    put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()) + R"({"seq":381,"ti)");
    const Ran ran = folder.run({u"export"_s, u"a.setfolio"_s, u"--as"_s, u"json"_s});
    QVERIFY2(ran.err.startsWith(u"setfolio: Line 381 of a.setfolio was cut short"_s), qPrintable(ran.err));
    QCOMPARE(ran.out, folder.run(exportDemo).out);
    QCOMPARE(ran.code, 0);
}

void TestExport::whereNoFileCanBeMadeItSaysSo() {
    for (const QString& to : {unwritable(u"a.json"_s), u"nowhere/a.json"_s}) {
        const Ran ran = Folder().run(exportDemo + QStringList{u"--to"_s, to});
        QVERIFY2(ran.err.startsWith(u"setfolio: "_s + to + u" cannot be made ("_s), qPrintable(ran.err));
        QCOMPARE(ran.code, 73);
    }
}

void TestExport::aFullStandardOutputIsNoticed() {
    const Ran ran = Folder().runIn(u"exec \"$0\" \"$@\" > /dev/full"_s, exportDemo);
    QVERIFY2(ran.err.startsWith(u"setfolio: Standard output cannot be written"_s), qPrintable(ran.err));
    QCOMPARE(ran.code, 74);
}

void TestExport::namesCannotSteerTheTerminal() {
    const Folder folder;
    const QByteArray list =
        R"({"kind":"match-opened","best-of":5,"rulebook":"high-school","teams":{"home":{"name":"<b>)"
        "\u202e\u2028"
        R"("},"visitors":{}}})";
    QCOMPARE(folder.run({u"enter"_s, u"-"_s, u"--to"_s, u"a"_s}, list).code, 0);
    const QString out = folder.run({u"export"_s, u"a"_s, u"--as"_s, u"json"_s}).out;
    QVERIFY2(out.contains(uR"("name": "<b>\u202e\u2028")"_s), qPrintable(out));
    const QJsonObject json = QJsonDocument::fromJson(out.toUtf8()).object();
    QCOMPARE(json.value(u"match")[u"teams"][u"home"][u"name"].toString(), u"<b>\u202e\u2028"_s);
}

void TestExport::withoutNamesNobodyIsNamed_data() {
    QTest::addColumn<QString>("form");
    QTest::addColumn<QString>("told");
    QTest::newRow("json") << u"json"_s << uR"("names": "left-out")"_s;
    QTest::newRow("csv") << u"csv"_s << u",left out"_s;
}

void TestExport::withoutNamesNobodyIsNamed() {
    QFETCH(QString, form);
    QFETCH(QString, told);
    const QString with = Folder().run({u"export"_s, demoMatch(), u"--as"_s, form}).out;
    const Ran without = Folder().run({u"export"_s, demoMatch(), u"--as"_s, form, u"--numbers-only"_s});
    QCOMPARE(without.code, 0);
    QVERIFY(without.out.contains(told));
    QVERIFY(!with.contains(told));
    const QStringList names = namesOfDemo();
    QVERIFY(names.size() > 20);
    for (const QString& name : names)
        QVERIFY2(!without.out.contains(name), qPrintable(name));
    if (form == u"json"_s)
        for (const QString& name : names)
            QVERIFY2(with.contains(name), qPrintable(name));
}

void TestExport::aCopyWithoutNamesIsAMatchFileOfItsOwn() {
    const Folder folder;
    const QStringList words{u"export"_s,         demoMatch(), u"--as"_s, u"match-file"_s,
                            u"--numbers-only"_s, u"--to"_s,   u"b"_s};
    const Ran ran = folder.run(words);
    QVERIFY2(ran.out.startsWith(u"b: written without names."_s), qPrintable(ran.out));
    QCOMPARE(ran.code, 0);
    const QByteArray copy = contentOf(folder.path(u"b"_s));
    QVERIFY(copy.left(copy.indexOf('\n')).contains(R"("names-left-out":true)"));
    for (const QString& name : namesOfDemo())
        QVERIFY2(!copy.contains(name.toUtf8()), qPrintable(name));
    QCOMPARE(folder.run({u"check"_s, u"b"_s}).code, 0);
    QCOMPARE(folder.run(words).code, 73); // what is there is not written over
}

QTEST_GUILESS_MAIN(TestExport)
#include "tst_export.moc"
