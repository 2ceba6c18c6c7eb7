// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entrylist.h"
#include "core/ledger/jsonline.h"
#include "tests/core/ledger/everykind.h"
#include "tests/core/ledger/ondisk.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

using Code = EntryJsonError::Code;

Q_DECLARE_METATYPE(setfolio::EntryJsonError::Code)

class TestEntryList : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aListHoldsWhatItsLinesSay();
    void everyKindCanStandInAList();
    void emptyLinesAndAMissingLastLineFeedDoNotMatter_data();
    void emptyLinesAndAMissingLastLineFeedDoNotMatter();
    void aLineThatIsNoEntryIsNamed_data();
    void aLineThatIsNoEntryIsNamed();
    void theListInTheDescriptionOfTheFormatIsOne();
    void theLinesInTheDescriptionOfTheFormatAreThoseOfTheFileBeside();
};

namespace {

const QString description = QStringLiteral(SETFOLIO_SOURCE_DIR "/core/ledger/FORMAT.md");

/// The objects written as indented lines under a heading of FORMAT.md.
QByteArray linesUnder(const QByteArray& heading) {
    const QByteArray text = contentOf(description);
    const QByteArray section = text.mid(text.indexOf("\n## " + heading + "\n"));
    QByteArray lines;
    for (const QByteArray& line : section.first(section.indexOf("\n## ", 1)).split('\n'))
        if (line.startsWith("    {"))
            lines += line.trimmed() + '\n';
    return lines;
}

} // namespace

void TestEntryList::aListHoldsWhatItsLinesSay() {
    const auto list = readEntryList(R"({"kind":"serve-contacted"}
{ "by": "visitors", "kind": "rally-won", "time": "2026-10-10T12:00:00.000Z", "overruled": "seen by R2" }
)");
    QVERIFY(list.has_value());
    QCOMPARE(list->size(), std::size_t{2});
    QVERIFY((list->at(0) == RecordMembers{std::nullopt, std::nullopt, std::nullopt, ServeContacted{}}));
    QVERIFY((list->at(1) == RecordMembers{noon(), u"seen by R2"_qs, std::nullopt, RallyWon{Team::Visitors}}));
}

void TestEntryList::everyKindCanStandInAList() {
    QByteArray bytes;
    for (const Entry& entry : everyKind())
        bytes += compactJson(toJson(entry)) + '\n';
    const auto list = readEntryList(bytes);
    QVERIFY(list.has_value());
    QCOMPARE(list->size(), everyKind().size());
    for (std::size_t i = 0; i < list->size(); ++i)
        QVERIFY(list->at(i).entry == everyKind()[i]);
}

void TestEntryList::emptyLinesAndAMissingLastLineFeedDoNotMatter_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<int>("entries");
    QTest::newRow("nothing") << QByteArray() << 0;
    QTest::newRow("a line feed") << QByteArray("\n") << 0;
    QTest::newRow("no line feed") << QByteArray(R"({"kind":"no-serve"})") << 1;
    QTest::newRow("empty lines") << QByteArray("\n\n{\"kind\":\"no-serve\"}\n \t\n{\"kind\":\"replay\"}\n\n") << 2;
    QTest::newRow("carriage returns") << QByteArray("{\"kind\":\"no-serve\"}\r\n{\"kind\":\"replay\"}\r\n") << 2;
    QTest::newRow("a byte-order mark") << QByteArray("\xEF\xBB\xBF{\"kind\":\"no-serve\"}\n") << 1;
}

void TestEntryList::emptyLinesAndAMissingLastLineFeedDoNotMatter() {
    QFETCH(QByteArray, bytes);
    QFETCH(int, entries);
    const auto list = readEntryList(bytes);
    QVERIFY(list.has_value());
    QCOMPARE(list->size(), static_cast<std::size_t>(entries));
}

void TestEntryList::aLineThatIsNoEntryIsNamed_data() {
    QTest::addColumn<QByteArray>("line");
    QTest::addColumn<Code>("code");
    QTest::addColumn<QString>("member");
    const auto row = [](const QByteArray& line, Code code, const char* member) {
        QTest::addRow("%s", line.left(60).constData()) << line << code << QString::fromLatin1(member);
    };
    // clang-format off
    row("rally-won home",                                                  Code::NotJson,       "");
    row("[]",                                                              Code::NotJson,       "");
    row(R"({"kind":"no-serve"} {"kind":"no-serve"})",                      Code::NotJson,       "");
    row(R"({"kind":"time-out","team":"home","team":"visitors"})",          Code::NotJson,       "");
    row("{\"kind\":\"remark\",\"text\":\"\xC3\x28\"}",                     Code::NotJson,       "");
    row(R"({"kind":"remark","text":"\udfff"})",                            Code::NotJson,       "");
    row("\xEF\xBB\xBF{\"kind\":\"no-serve\"}",                             Code::NotJson,       "");
    row(R"({"kind":"ace"})",                                               Code::UnknownKind,   "ace");
    row(R"({"kind":"no-serve","seq":2})",                                  Code::UnknownMember, "seq");
    row(R"({"kind":"no-serve","digest":""})",                              Code::UnknownMember, "digest");
    row(R"({"kind":"no-serve","time":"18:40"})",                           Code::OutOfRange,    "time");
    row(R"({"kind":"no-serve","time":5})",                                 Code::WrongType,     "time");
    row(R"({"kind":"no-serve","overruled":true})",                         Code::WrongType,     "overruled");
    row(QByteArray(R"({"kind":"no-serve"})").leftJustified(65'536, ' '),   Code::OutOfRange,    "");
    // clang-format on
}

void TestEntryList::aLineThatIsNoEntryIsNamed() {
    QFETCH(QByteArray, line);
    QFETCH(Code, code);
    QFETCH(QString, member);
    const auto list = readEntryList("{\"kind\":\"replay\"}\n\n" + line + "\n{\"kind\":\"replay\"}\n");
    QVERIFY(!list.has_value());
    QVERIFY((list.error() == EntryListError{3, {code, member}}));
}

void TestEntryList::theListInTheDescriptionOfTheFormatIsOne() {
    const auto list = readEntryList(linesUnder("A plain list"));
    QVERIFY(list.has_value());
    QCOMPARE(list->size(), std::size_t{8});
}

void TestEntryList::theLinesInTheDescriptionOfTheFormatAreThoseOfTheFileBeside() {
    const QByteArray lines = linesUnder("An example");
    QVERIFY(lines.count('\n') >= 4);
    QVERIFY(contentOf(QStringLiteral(SETFOLIO_SOURCE_DIR "/tests/data/ledger/every-kind.setfolio")).contains(lines));
}

QTEST_GUILESS_MAIN(TestEntryList)
#include "tst_entrylist.moc"
