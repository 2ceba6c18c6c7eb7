// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

// Plain lines are read without Qt's parser: what that makes of them must be what Qt's parser makes of them.
#include "core/ledger/entryjson.h"
#include "core/ledger/jsonline.h"
#include "tests/core/ledger/everykind.h"
#include "tests/support/arbitraryentries.h"

#include <QJsonDocument>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

class TestJsonLine : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void shortEntriesArePlainLines();
    void whatIsNotPlainIsLeftToTheParser_data();
    void whatIsNotPlainIsLeftToTheParser();
    void noChangedByteMakesThePlainReaderAndTheParserDiffer();
    void noLineMakesThePlainReaderAndTheParserDiffer();
    void aMemberWithoutANameIsNotOverlooked();
};

namespace {

/// Whether the plain reader leaves the line alone, or finds in it what the parser finds.
bool agree(const QByteArray& line) {
    auto plain = membersOfPlainLine(line);
    if (!plain)
        return true;
    const auto any = membersOfAnyLine(line);
    if (!any)
        return false;
    const QJsonObject object = QJsonDocument::fromJson(line).object();
    for (const QString& name : object.keys()) {
        const QByteArray key = name.toLatin1();
        const MemberValue left = plain->take(QLatin1StringView(key));
        const MemberValue right = any->value(QLatin1StringView(key));
        if (left.type() != right.type() || left.toString() != right.toString() ||
            left.toInteger(-1) != right.toInteger(-1))
            return false;
    }
    return !plain->firstUntaken();
}

} // namespace

void TestJsonLine::shortEntriesArePlainLines() {
    for (const Entry& entry : {Entry(ServeContacted{}), Entry(RallyWon{Team::Home}), Entry(TimeOut{Team::Visitors}),
                               Entry(Substitution{Team::Home, ShirtNumber(7), ShirtNumber(11)})}) {
        const QByteArray line = compactJson(toJson(entry));
        QVERIFY2(membersOfPlainLine(line).has_value(), line.constData());
        QVERIFY2(agree(line), line.constData());
    }
}

// clang-format off
void TestJsonLine::whatIsNotPlainIsLeftToTheParser_data() {
    QTest::addColumn<QByteArray>("line");
    QTest::addColumn<bool>("isALine");
    QTest::newRow("nothing")              << ""_ba                     << false;
    QTest::newRow("no members")           << "{}"_ba                   << true;
    QTest::newRow("a space")              << R"({"a": 1})"_ba          << true;
    QTest::newRow("a space behind")       << R"({"a":1} )"_ba          << true;
    QTest::newRow("two objects")          << R"({"a":1}{"a":1})"_ba    << false;
    QTest::newRow("an end too few")       << R"({"a":1)"_ba            << false;
    QTest::newRow("a comma too many")     << R"({"a":1,})"_ba          << false;
    QTest::newRow("a member twice")       << R"({"a":1,"a":1})"_ba     << false;
    QTest::newRow("a member without name") << R"({"":1})"_ba           << true;
    QTest::newRow("an escape")            << R"({"a":"\n"})"_ba        << true;
    QTest::newRow("an escaped name")      << R"({"\u0061":1,"a":1})"_ba << false;
    QTest::newRow("a lone surrogate")     << R"({"a":"\ud800"})"_ba    << false;
    QTest::newRow("a control character")  << "{\"a\":\"\x01\"}"_ba     << true; // Qt's parser lets it pass; no member may hold one
    QTest::newRow("no ASCII")             << "{\"a\":\"\xc3\xa9\"}"_ba << true;
    QTest::newRow("no UTF-8")             << "{\"a\":\"\xe9\"}"_ba     << false;
    QTest::newRow("less than nothing")    << R"({"a":-1})"_ba          << true;
    QTest::newRow("a nought before")      << R"({"a":01})"_ba          << false;
    QTest::newRow("a fraction")           << R"({"a":1.5})"_ba         << true;
    QTest::newRow("an exponent")          << R"({"a":1e3})"_ba         << true;
    QTest::newRow("a long number")        << R"({"a":1000000000})"_ba  << true;
    QTest::newRow("true")                 << R"({"a":true})"_ba        << true;
    QTest::newRow("null")                 << R"({"a":null})"_ba        << true;
    QTest::newRow("a list")               << R"({"a":[1]})"_ba         << true;
    QTest::newRow("an object")            << R"({"a":{"b":1}})"_ba     << true;
}
// clang-format on

void TestJsonLine::whatIsNotPlainIsLeftToTheParser() {
    QFETCH(QByteArray, line);
    QFETCH(bool, isALine);
    QVERIFY(!membersOfPlainLine(line).has_value() || agree(line));
    QCOMPARE(membersOfLine(line).has_value(), isALine);
}

void TestJsonLine::noChangedByteMakesThePlainReaderAndTheParserDiffer() {
    auto lines = linesOf(recorded(everyKind()));
    lines.push_back(R"({"a":10,"bc":"d","e":0,"f":999999999})"_ba);
    for (const QByteArray& whole : lines) {
        const QByteArray line = whole.trimmed();
        if (!membersOfPlainLine(line))
            continue;
        for (qsizetype at = 0; at < line.size(); ++at) {
            for (int byte = 0; byte < 256; ++byte) {
                const char c = static_cast<char>(byte);
                QByteArray changed = line;
                changed[at] = c;
                QVERIFY2(agree(changed), changed.constData());
                QByteArray longer = line;
                longer.insert(at, c);
                QVERIFY2(agree(longer), longer.constData());
            }
            QVERIFY(agree(QByteArray(line).remove(at, 1)));
            QVERIFY(agree(line.first(at)));
        }
    }
}

void TestJsonLine::noLineMakesThePlainReaderAndTheParserDiffer() {
    QVERIFY(rc::check("the plain reader and the parser agree on any entry",
                      [](const Entry& entry) { RC_ASSERT(agree(compactJson(toJson(entry)))); }));
    QVERIFY(rc::check("and on any string of JSON's own characters", [] {
        const auto text = *rc::gen::container<std::string>(rc::gen::elementOf(std::string("{}\":,ab01 9\\-.")));
        const QByteArray line = QByteArray::fromStdString("{\"" + text + "}");
        RC_ASSERT(agree(line));
    }));
}

void TestJsonLine::aMemberWithoutANameIsNotOverlooked() {
    for (const QByteArray& line : {R"({"":1})"_ba, R"({"":"\n"})"_ba}) {
        const auto members = membersOfLine(line);
        QVERIFY(members.has_value());
        QCOMPARE(members->firstUntaken(), std::optional<QString>(u""_s));
    }
}

QTEST_GUILESS_MAIN(TestJsonLine)
#include "tst_jsonline.moc"
