// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/exportjson.h"
#include "core/rules/rulebooksettings.h"
#include "core/rules/settingwords.h"
#include "tests/support/randommatch.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QProcess>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

QJsonObject setOf(const MatchBuilder& match) {
    return exportOf(match.entries()).value(u"sets").toArray().last().toObject();
}

/// The marks of a team's term, counted from 0, as the sheet would be read aloud.
QString marksOf(const QJsonObject& set, const QString& team, int term) {
    const QJsonArray terms = set.value(u"teams")[team][u"terms"].toArray();
    QStringList marks;
    for (const QJsonValue mark : terms.at(term)[u"marks"].toArray())
        marks += u"%1:%2"_s.arg(mark[u"shape"].toString(), mark[u"text"].toString());
    return marks.join(u' ');
}

/// The validator's judgement of some documents: empty when all of them are allowed.
QByteArray faultsIn(const QByteArray& lines, const QString& schema) {
    QProcess validator;
    validator.start(u"/usr/bin/python3"_s, {u"-B"_s, QStringLiteral(SETFOLIO_SOURCE_DIR "/tests/support/validate.py"),
                                            QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/schema"), schema});
    validator.write(lines);
    validator.closeWriteChannel();
    if (!validator.waitForFinished(120'000))
        return "the validator did not finish";
    const QByteArray said = validator.readAllStandardOutput() + validator.readAllStandardError();
    return validator.exitStatus() == QProcess::NormalExit && validator.exitCode() == 0 ? QByteArray() : said;
}

QByteArray line(const QJsonObject& json) {
    return QJsonDocument(json).toJson(QJsonDocument::Compact) + '\n';
}

/// Everything a sheet can show, refused and overruled entries among it.
MatchBuilder fullSet() {
    MatchBuilder match;
    match.started().play("shsv").add(TimeOut{Team::Home}).substitute(Team::Home, 7, 2);
    match.add(LiberoServe{Team::Visitors, ShirtNumber(19), LiberoServing::Begins}).play("sversn");
    match.add(PenaltyPoint{Team::Home, u"a second unnecessary delay"_s}).play("hh").undo().play("s");
    match.play("r").add(Remark{u"shoe \"lost\"\nand found"_s});
    match.substitute(Team::Visitors, 17, 16)
        .add(Substitution{Team::Visitors, ShirtNumber(17), ShirtNumber(11)}, u"the first referee's word"_s);
    return match.play("s");
}

} // namespace

class TestExportJson : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theHeadingIsThatOfTheMatch();
    void marksAreGivenAsTheyAreWritten();
    void theRunningScoreIsInTheOrderOfPlay();
    void slotsNameAllWhoHaveStoodThere();
    void whatIsStruckSaysSoAndTheRemarkTellsOfIt();
    void findingsNameEntrySetAndSource();
    void theSchemaAllowsEverySheet();
    void theSchemaAllowsRandomMatches();
    void theSchemaRefusesWhatIsNotAnExport_data();
    void theSchemaRefusesWhatIsNotAnExport();
    void theRunningScoreOfRandomSetsRebuildsTheScore();
    void theRulebookSchemaHasTheSettingsOfTheProgram();
    void theRulebookSchemaAllowsThePublishedOnes();
    void theRulebookSchemaRefuses_data();
    void theRulebookSchemaRefuses();
};

void TestExportJson::theHeadingIsThatOfTheMatch() {
    const MatchBuilder match = MatchBuilder().open(3);
    const QJsonObject json = exportOf(match.entries());
    QCOMPARE(json.value(u"setfolio-export").toInt(), 1);
    QCOMPARE(json.value(u"match")[u"best-of"].toInt(), 3);
    QCOMPARE(json.value(u"match")[u"teams"][u"visitors"][u"code"].toString(), u"QRL"_s);
    QCOMPARE(json.value(u"match")[u"rulebook"][u"id"].toString(), u"high-school"_s);
    QCOMPARE(json.value(u"match")[u"closed"].toBool(true), false);
    QCOMPARE(json.value(u"sets").toArray().size(), 0);
}

void TestExportJson::marksAreGivenAsTheyAreWritten() {
    const QJsonObject set = setOf(MatchBuilder().started().play("shsh").substitute(Team::Visitors, 17, 16).play("sv"));
    QCOMPARE(marksOf(set, u"home"_s, 0), u"ring:1 ring:2 none:Sx 17/16 ring:R"_s);
    QCOMPARE(marksOf(set, u"visitors"_s, 0), u"none:1"_s);
    const QJsonValue substitution = set.value(u"teams")[u"home"][u"terms"][0][u"marks"][2];
    QCOMPARE(substitution[u"content"].toString(), u"substitution"_s);
    QCOMPARE(substitution[u"opponents"].toBool(), true);
    QCOMPARE(substitution[u"in"].toInt(), 17);
    QCOMPARE(substitution[u"out"].toInt(), 16);
}

void TestExportJson::theRunningScoreIsInTheOrderOfPlay() {
    const QJsonArray running = setOf(MatchBuilder().started().play("hhvvh")).value(u"running").toArray();
    QStringList points;
    for (const QJsonValue point : running)
        points += u"%1 %2-%3 %4"_s.arg(point[u"team"].toString(), QString::number(point[u"total"].toInt()),
                                       QString::number(point[u"opponents"].toInt()), point[u"mark"].toString());
    QCOMPARE(points, (QStringList{u"home 1-0 ring"_s, u"home 2-0 ring"_s, u"visitors 1-2 slash"_s,
                                  u"visitors 2-2 ring"_s, u"home 3-2 slash"_s}));
}

void TestExportJson::slotsNameAllWhoHaveStoodThere() {
    const QJsonObject set = setOf(MatchBuilder().started().substitute(Team::Home, 7, 2).substitute(Team::Home, 2, 7));
    const QJsonValue row = set.value(u"teams")[u"home"][u"slots"][1];
    QCOMPARE(row[u"slot"].toString(), u"II"_s);
    QList<int> numbers;
    for (const QJsonValue standing : row[u"numbers"].toArray())
        numbers += standing[u"number"].toInt();
    QCOMPARE(numbers, (QList<int>{2, 7, 2}));
    QCOMPARE(set.value(u"teams")[u"home"][u"substitutions"].toArray().size(), 2);
}

void TestExportJson::whatIsStruckSaysSoAndTheRemarkTellsOfIt() {
    const QJsonObject set = setOf(MatchBuilder().started().play("h").undo());
    const QJsonValue mark = set.value(u"teams")[u"home"][u"terms"][0][u"marks"][0];
    QCOMPARE(mark[u"struck"].toBool(), true);
    QCOMPARE(mark[u"note"].toInt(), 1);
    const QJsonValue note = set.value(u"notes")[0];
    QCOMPARE(note[u"kind"].toString(), u"struck"_s);
    QCOMPARE(note[u"what"][u"kind"].toString(), u"rally-won"_s);
    QCOMPARE(note[u"what"][u"entry-number"], mark[u"entry"]);
}

void TestExportJson::findingsNameEntrySetAndSource() {
    MatchBuilder match = MatchBuilder().started().add(TimeOut{Team::Home}).add(TimeOut{Team::Home});
    match.add(TimeOut{Team::Home}, u"a mistake of the table"_s);
    const QJsonArray findings = exportOf(match.entries()).value(u"findings").toArray();
    QCOMPARE(findings.size(), 1);
    const QJsonObject expected{{u"entry"_s, static_cast<int>(match.last().value)},
                               {u"set"_s, 1},
                               {u"kind"_s, u"time-out-limit"_s},
                               {u"gravity"_s, u"unlawful"_s},
                               {u"setting"_s, u"time-outs"_s},
                               {u"source"_s, highSchool().sources.value(u"time-outs"_s).text},
                               {u"team"_s, u"home"_s},
                               {u"count"_s, 3},
                               {u"limit"_s, 2},
                               {u"overruled"_s, u"a mistake of the table"_s}};
    QCOMPARE(findings.at(0).toObject(), expected);
}

void TestExportJson::theSchemaAllowsEverySheet() {
    MatchBuilder floorOrder;
    Rulebook rulebook = highSchool();
    rulebook.writtenOrder = WrittenOrder::Floor;
    floorOrder.open(5, rulebook).toss(Team::Home).lineUp(Team::Home, {1, 2, 3, 4, 5, 6});
    floorOrder.lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start().play("hvh");
    QByteArray lines;
    for (const MatchBuilder& match : {MatchBuilder().open(), MatchBuilder().open().toss(Team::Home),
                                      MatchBuilder().started(), fullSet(), floorOrder})
        lines += line(exportOf(match.entries()));
    QCOMPARE(faultsIn(lines, u"urn:setfolio:schema:export"_s), QByteArray());
}

void TestExportJson::theSchemaAllowsRandomMatches() {
    const int count = qEnvironmentVariableIsSet("SETFOLIO_LONG") ? 200 : 12;
    QByteArray lines;
    for (int seed = 1; seed <= count; ++seed)
        lines += line(exportOf(RandomMatch(static_cast<std::uint32_t>(seed)).playMatch().match().entries()));
    QCOMPARE(faultsIn(lines, u"urn:setfolio:schema:export"_s), QByteArray());
}

// clang-format off
void TestExportJson::theSchemaRefusesWhatIsNotAnExport_data() {
    QTest::addColumn<QByteArray>("from");
    QTest::addColumn<QByteArray>("to");
    QTest::newRow("a shape that is none")       << QByteArray(R"("shape":"ring")")        << QByteArray(R"("shape":"oval")");
    QTest::newRow("a content that is none")     << QByteArray(R"("content":"point")")     << QByteArray(R"("content":"goal")");
    QTest::newRow("a mark without its total")   << QByteArray(R"("content":"rally-lost")") << QByteArray(R"("content":"point")");
    QTest::newRow("a slot that is none")        << QByteArray(R"("slot":"III")")          << QByteArray(R"("slot":"VII")");
    QTest::newRow("an unknown member")          << QByteArray(R"("penalty":true)")        << QByteArray(R"("penalties":true)");
    QTest::newRow("a note of no kind")          << QByteArray(R"("kind":"remark")")       << QByteArray(R"("kind":"gossip")");
    QTest::newRow("a struck entry that is none") << QByteArray(R"("kind":"rally-won")")   << QByteArray(R"("kind":"rally-lost")");
    QTest::newRow("another format")             << QByteArray(R"("setfolio-export":1)")   << QByteArray(R"("setfolio-export":2)");
}
// clang-format on

void TestExportJson::theSchemaRefusesWhatIsNotAnExport() {
    QFETCH(QByteArray, from);
    QFETCH(QByteArray, to);
    QByteArray document = line(exportOf(fullSet().entries()));
    QVERIFY(document.contains(from));
    const QByteArray faults = faultsIn(document.replace(from, to), u"urn:setfolio:schema:export"_s);
    QVERIFY2(faults.contains("\n1 lines, "), faults.constData());
}

void TestExportJson::theRunningScoreOfRandomSetsRebuildsTheScore() {
    for (std::uint32_t seed = 100; seed < 140; ++seed) {
        const QJsonObject set = setOf(RandomMatch(seed).playSet().match());
        QJsonObject score{{u"home"_s, 0}, {u"visitors"_s, 0}};
        for (const QJsonValue point : set.value(u"running").toArray()) {
            const QString team = point[u"team"].toString();
            const QString others = team == u"home" ? u"visitors"_s : u"home"_s;
            QCOMPARE(point[u"total"].toInt(), score.value(team).toInt() + 1);
            QCOMPARE(point[u"opponents"].toInt(), score.value(others).toInt());
            score.insert(team, point[u"total"]);
        }
        QCOMPARE(score, set.value(u"score").toObject());
    }
}

void TestExportJson::theRulebookSchemaHasTheSettingsOfTheProgram() {
    QFile file(QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/schema/rulebook.schema.json"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QJsonObject schema = QJsonDocument::fromJson(file.readAll()).object();
    const QJsonObject known = schema.value(u"properties")[u"settings"][u"properties"].toObject();
    QCOMPARE(static_cast<std::size_t>(known.size()), rulebookSettings().size());
    const QJsonValue any = schema.value(u"$defs");
    const auto rangeIs = [](const QJsonValue& value, const auto& setting) {
        return value[u"minimum"].toInt(-1) == setting.lowest && value[u"maximum"].toInt(-1) == setting.highest;
    };
    const auto wordsAre = [](const QJsonValue& value, std::span<const char* const> words) {
        QJsonArray all;
        for (const char* word : words)
            all.append(QLatin1String(word));
        return value[u"enum"].toArray() == all;
    };
    QVERIFY(wordsAre(any[u"signers"][u"items"], wordsOf<Signer>));
    QVERIFY(wordsAre(any[u"ladder"][u"items"][u"properties"][u"level"], wordsOf<SanctionLevel>));
    QVERIFY(wordsAre(any[u"ladder"][u"items"][u"properties"][u"cards"], wordsOf<CardsShown>));
    for (const Setting& setting : rulebookSettings()) {
        const QJsonValue value = known.value(QLatin1String(setting.key))[u"properties"][u"value"];
        const bool same =
            std::visit(Overloaded{[&](const NumberSetting& number) { return rangeIs(value, number); },
                                  [&](const OptionalSetting& number) { return rangeIs(value, number); },
                                  [&](const ListSetting& list) { return rangeIs(value[u"items"], list); },
                                  [&](const FlagSetting&) { return value[u"type"] == u"boolean"_s; },
                                  [&](const WordSetting& word) { return wordsAre(value, word.words); },
                                  [&](const LadderSetting&) { return value[u"$ref"] == u"#/$defs/ladder"_s; },
                                  [&](const SignersSetting&) { return value[u"$ref"] == u"#/$defs/signers"_s; }},
                       setting.how);
        QVERIFY2(same, setting.key);
    }
}

void TestExportJson::theRulebookSchemaAllowsThePublishedOnes() {
    QByteArray published;
    for (const QString& id : publishedRulebookIds())
        published += line(toJson(publishedRulebook(id).value()));
    QCOMPARE(published.count('\n'), 4);
    QCOMPARE(faultsIn(published, u"urn:setfolio:schema:rulebook"_s), QByteArray());
}

// clang-format off
void TestExportJson::theRulebookSchemaRefuses_data() {
    QTest::addColumn<QByteArray>("from");
    QTest::addColumn<QByteArray>("to");
    QTest::newRow("a word that is none")        << QByteArray(R"("value":"no-protest")") << QByteArray(R"("value":"never-mind")");
    QTest::newRow("a number for yes")           << QByteArray(R"("value":true)")         << QByteArray(R"("value":1)");
    QTest::newRow("a level that is none")       << QByteArray(R"("level":"penalty")")    << QByteArray(R"("level":"scolding")");
    QTest::newRow("a step without a point")     << QByteArray(R"("point":true)")         << QByteArray(R"("points":true)");
    QTest::newRow("a signer twice")             << QByteArray(R"("first-referee")")      << QByteArray(R"("second-referee")");
    QTest::newRow("a grade too low")            << QByteArray(R"("grade":"B")")          << QByteArray(R"("grade":"C")");
    QTest::newRow("open in words")              << QByteArray(R"("open":true)")          << QByteArray(R"("open":"yes")");
    QTest::newRow("a setting missing")          << QByteArray(R"("fewer-than-six":)")    << QByteArray(R"("fewer":)");
}
// clang-format on

void TestExportJson::theRulebookSchemaRefuses() {
    QFETCH(QByteArray, from);
    QFETCH(QByteArray, to);
    QByteArray document = line(toJson(highSchool()));
    QVERIFY(document.contains(from));
    const QByteArray faults = faultsIn(document.replace(from, to), u"urn:setfolio:schema:rulebook"_s);
    QVERIFY2(faults.contains("\n1 lines, "), faults.constData());
}

QTEST_GUILESS_MAIN(TestExportJson)
#include "tst_exportjson.moc"
