// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entryjson.h"
#include "core/ledger/jsonline.h"
#include "tests/support/arbitraryentries.h"
#include "tests/support/tryoften.h"

#include <QJsonDocument>
#include <QTest>

using namespace setfolio;

class TestEntryJson : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { testing::tryOften(500, 20'000); }
    void anyEntryReadsBackAsItWasWritten();
    void anEntryIsWrittenAsTheFormatSays_data();
    void anEntryIsWrittenAsTheFormatSays();
    void whatMayBeLeftOutIsTakenAsItsAbsenceSays_data();
    void whatMayBeLeftOutIsTakenAsItsAbsenceSays();
    void aMemberThatIsAmissIsNamed_data();
    void aMemberThatIsAmissIsNamed();
    void aListThatIsAmissIsNamedToTheElement_data();
    void aListThatIsAmissIsNamedToTheElement();
    void aStringThatIsAmissIsNamed_data();
    void aStringThatIsAmissIsNamed();
    void anOpeningThatIsAmissIsNamed_data();
    void anOpeningThatIsAmissIsNamed();
    void stringsMayBeAsLongAsTheLimitAndNoLonger_data();
    void stringsMayBeAsLongAsTheLimitAndNoLonger();
    void aRulebookMayBeNamedByItsId();
    void aBrokenSettingOfTheRulebookIsNamed();
};

namespace {

QJsonObject parse(const QByteArray& text) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(text, &error);
    if (error.error != QJsonParseError::NoError)
        qFatal("the test's own JSON is wrong: %s", text.constData());
    return document.object();
}

const QByteArray opened =
    R"({"kind":"match-opened","best-of":5,"teams":{"home":{},"visitors":{}},"rulebook":"high-school"})";

QByteArray openedWith(const QByteArray& members) {
    return opened.chopped(1) + ',' + members + '}';
}

void refusals() {
    QTest::addColumn<QByteArray>("json");
    QTest::addColumn<EntryJsonError::Code>("code");
    QTest::addColumn<QString>("member");
}

void row(const QByteArray& json, EntryJsonError::Code code, const char* member) {
    QTest::addRow("%s", json.constData()) << json << code << QString::fromUtf8(member);
}

void isRefused() {
    QFETCH(QByteArray, json);
    QFETCH(EntryJsonError::Code, code);
    QFETCH(QString, member);
    const auto read = entryFromJson(parse(json));
    QVERIFY(!read.has_value());
    QCOMPARE(read.error().member, member);
    QCOMPARE(read.error().code, code);
}

} // namespace

void TestEntryJson::anyEntryReadsBackAsItWasWritten() {
    QVERIFY(rc::check("any entry reads back as it was written", [](const Entry& entry) {
        RC_TAG(kindOf(entry).toStdString());
        const auto read = entryFromJson(toJson(entry));
        RC_ASSERT(read.has_value());
        RC_ASSERT(*read == entry);
    }));
}

void TestEntryJson::anEntryIsWrittenAsTheFormatSays_data() {
    QTest::addColumn<Entry>("entry");
    QTest::addColumn<QByteArray>("json");
    const auto row = [](const Entry& entry, const char* json) { QTest::newRow(json) << entry << QByteArray(json); };
    using enum Team;
    const auto n = [](int number) { return ShirtNumber(number); };
    // clang-format off
    row(Roster{Home, {{n(0), {}, true, false}, {n(9), u"Ada Finch"_qs, false, true}, {n(31), {}, false, false}}, u"M. Teal"_qs},
        R"({"coach":"M. Teal","kind":"roster","players":[{"captain":true,"number":0},{"libero":true,"name":"Ada Finch","number":9},{"number":31}],"team":"home"})");
    row(Roster{Visitors, {}, {}},                     R"({"kind":"roster","players":[],"team":"visitors"})");
    row(Officials{{{Role::FirstReferee, u"R. Dunlin"_qs}, {Role::SecondReferee, {}}, {Role::Scorer, {}},
                   {Role::AssistantScorer, {}}, {Role::Timer, {}}, {Role::LineJudge, {}}}},
        R"({"kind":"officials","officials":[{"name":"R. Dunlin","role":"first-referee"},{"role":"second-referee"},{"role":"scorer"},{"role":"assistant-scorer"},{"role":"timer"},{"role":"line-judge"}]})");
    row(MatchClosed{},                                R"({"kind":"match-closed"})");
    row(Toss{Visitors, Home},                         R"({"kind":"toss","left":"home","serves-first":"visitors"})");
    row(LineUp{Home, {n(4), n(9), n(1), n(12), n(7), n(15)}, {}, {}},
        R"({"kind":"line-up","positions":[4,9,1,12,7,15],"team":"home"})");
    row(LineUp{Visitors, {n(2), n(5), n(8), n(10), n(14), n(21)}, n(8), {n(3), n(6)}},
        R"({"captain":8,"kind":"line-up","liberos":[3,6],"positions":[2,5,8,10,14,21],"team":"visitors"})");
    row(SetStarted{QTime(8, 5)},                      R"({"at":"08:05","kind":"set-started"})");
    row(SetStarted{},                                 R"({"kind":"set-started"})");
    row(SetEnded{QTime(23, 59)},                      R"({"at":"23:59","kind":"set-ended"})");
    row(SetEnded{},                                   R"({"kind":"set-ended"})");
    row(ServeContacted{},                             R"({"kind":"serve-contacted"})");
    row(RallyWon{Home},                               R"({"by":"home","kind":"rally-won"})");
    row(Replay{},                                     R"({"kind":"replay"})");
    row(Replay{Again::ReServe},                       R"({"again":"re-serve","kind":"replay"})");
    row(Replay{Again::Replay, ReplayCause::Injury},       R"({"cause":"injury","kind":"replay"})");
    row(Replay{Again::Replay, ReplayCause::Interference}, R"({"cause":"interference","kind":"replay"})");
    row(Replay{Again::Replay, ReplayCause::DoubleFault},  R"({"cause":"double-fault","kind":"replay"})");
    row(Replay{Again::Replay, ReplayCause::Whistle},      R"({"cause":"whistle","kind":"replay"})");
    row(Replay{Again::Replay, ReplayCause::EarlyServe},   R"({"cause":"early-serve","kind":"replay"})");
    row(LateReplacement{Team::Visitors},              R"({"kind":"late-replacement","team":"visitors"})");
    row(IllegalPlayer{Team::Home, ShirtNumber(7), IllegalBy::Substitution, std::nullopt},
        R"({"kind":"illegal-player","number":7,"team":"home"})");
    row(IllegalPlayer{Team::Home, ShirtNumber(7), IllegalBy::LiberoReplacement, EntryNumber(19)},
        R"({"by":"libero-replacement","kind":"illegal-player","number":7,"taken-back-from":19,"team":"home"})");
    row(NoServe{},                                    R"({"kind":"no-serve"})");
    row(Substitution{Home, n(11), n(0)},              R"({"in":11,"kind":"substitution","out":0,"team":"home"})");
    row(TimeOut{Visitors},                            R"({"kind":"time-out","team":"visitors"})");
    row(LiberoServe{Home, n(3)},                      R"({"kind":"libero-serve","libero":3,"team":"home"})");
    row(LiberoServe{Home, n(3), LiberoServing::Ends}, R"({"kind":"libero-serve","libero":3,"serving":"ends","team":"home"})");
    row(PenaltyPoint{Visitors, {}},                   R"({"kind":"penalty-point","to":"visitors"})");
    row(PenaltyPoint{Home, u"delay"_qs},              R"({"kind":"penalty-point","reason":"delay","to":"home"})");
    row(Remark{},                                     R"({"kind":"remark","text":""})");
    row(Remark{u"net\tlowered\nby 2 cm: \"ok\" \\o/"_qs}, R"({"kind":"remark","text":"net\tlowered\nby 2 cm: \"ok\" \\o/"})");
    row(Remark{QChar(QChar::ByteOrderMark) + u"\u00e9\u2028𝄞"_qs}, "{\"kind\":\"remark\",\"text\":\"\\ufeff\u00e9\u2028𝄞\"}");
    row(Strike{EntryNumber(7), {}},                   R"({"entry":7,"kind":"strike"})");
    row(Strike{EntryNumber(100'000), u"ball was out"_qs}, R"({"entry":100000,"kind":"strike","reason":"ball was out"})");
    // clang-format on
}

void TestEntryJson::anEntryIsWrittenAsTheFormatSays() {
    QFETCH(Entry, entry);
    QFETCH(QByteArray, json);
    QCOMPARE(compactJson(toJson(entry)), json);
    QVERIFY(entryFromJson(parse(json)) == entry);
}

void TestEntryJson::whatMayBeLeftOutIsTakenAsItsAbsenceSays_data() {
    QTest::addColumn<QByteArray>("with");
    QTest::addColumn<QByteArray>("without");
    const auto row = [](const char* name, const QByteArray& with, const QByteArray& without) {
        QTest::newRow(name) << with << without;
    };
    // clang-format off
    row("replay",      R"({"kind":"replay","again":"replay"})",                                      R"({"kind":"replay"})");
    row("begins",      R"({"kind":"libero-serve","team":"home","libero":3,"serving":"begins"})",     R"({"kind":"libero-serve","team":"home","libero":3})");
    row("no reason",   R"({"kind":"strike","entry":1,"reason":""})",                                 R"({"kind":"strike","entry":1})");
    row("no liberos",  R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5,6],"liberos":[]})", R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5,6]})");
    row("not captain", R"({"kind":"roster","team":"home","players":[{"number":1,"captain":false}]})", R"({"kind":"roster","team":"home","players":[{"number":1}]})");
    row("format",      openedWith(R"("format":1)"),                                                  opened);
    row("no venue",    openedWith(R"("venue":"")"),                                                  opened);
    row("1.0 is 1",    R"({"kind":"strike","entry":1.0})",                                           R"({"kind":"strike","entry":1})");
    // clang-format on
}

void TestEntryJson::whatMayBeLeftOutIsTakenAsItsAbsenceSays() {
    QFETCH(QByteArray, with);
    QFETCH(QByteArray, without);
    const auto full = entryFromJson(parse(with));
    QVERIFY(full.has_value());
    QVERIFY(full == entryFromJson(parse(without)));
}

void TestEntryJson::aMemberThatIsAmissIsNamed_data() {
    refusals();
    using enum EntryJsonError::Code;
    // clang-format off
    row(R"({})",                                                         MissingMember, "kind");
    row(R"({"kind":5})",                                                 WrongType,     "kind");
    row(R"({"kind":"serve"})",                                           UnknownKind,   "serve");
    row(R"({"kind":"rally-won"})",                                       MissingMember, "by");
    row(R"({"kind":"rally-won","by":"away"})",                           OutOfRange,    "by");
    row(R"({"kind":"rally-won","by":"Home"})",                           OutOfRange,    "by");
    row(R"({"kind":"rally-won","by":1})",                                WrongType,     "by");
    row(R"({"kind":"rally-won","by":null})",                             WrongType,     "by");
    row(R"({"kind":"rally-won","by":"home","at":"18:40"})",              UnknownMember, "at");
    row(R"({"kind":"serve-contacted","seq":4})",                         UnknownMember, "seq");
    row(R"({"kind":"replay","again":"again"})",                          OutOfRange,    "again");
    row(R"({"kind":"replay","cause":"rain"})",                           OutOfRange,    "cause");
    row(R"({"kind":"replay","cause":7})",                                WrongType,     "cause");
    row(R"({"kind":"illegal-player","team":"home"})",                    MissingMember, "number");
    row(R"({"kind":"substitution","team":"home","in":100,"out":1})",     OutOfRange,    "in");
    row(R"({"kind":"substitution","team":"home","in":-1,"out":1})",      OutOfRange,    "in");
    row(R"({"kind":"substitution","team":"home","in":1.5,"out":1})",     WrongType,     "in");
    row(R"({"kind":"substitution","team":"home","in":"1","out":1})",     WrongType,     "in");
    row(R"({"kind":"substitution","team":"home","in":1e99,"out":1})",    WrongType,     "in");
    row(R"({"kind":"substitution","team":"home","in":4294967297,"out":1})", OutOfRange, "in");
    row(R"({"kind":"substitution","team":"home","in":1})",               MissingMember, "out");
    row(R"({"kind":"strike","entry":0})",                                OutOfRange,    "entry");
    row(R"({"kind":"strike","entry":100001})",                           OutOfRange,    "entry");
    row(R"({"kind":"strike"})",                                          MissingMember, "entry");
    // clang-format on
}

void TestEntryJson::aMemberThatIsAmissIsNamed() {
    isRefused();
}

void TestEntryJson::aListThatIsAmissIsNamedToTheElement_data() {
    refusals();
    using enum EntryJsonError::Code;
    // clang-format off
    row(R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5]})",   OutOfRange,    "positions");
    row(R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5,6,7]})", OutOfRange,  "positions");
    row(R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5,"6"]})", WrongType,   "positions.5");
    row(R"({"kind":"line-up","team":"home","positions":[1,2,300,4,5,6]})", OutOfRange,  "positions.2");
    row(R"({"kind":"line-up","team":"home"})",                           MissingMember, "positions");
    row(R"({"kind":"line-up","team":"home","positions":{}})",            WrongType,     "positions");
    row(R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5,6],"captain":null})", WrongType, "captain");
    row(R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5,6],"liberos":[1,2,3,4,5,6,7,8,9,10,11]})", OutOfRange, "liberos");
    row(R"({"kind":"roster","team":"home","players":[{"number":1},7]})", WrongType,     "players.1");
    row(R"({"kind":"roster","team":"home","players":[{"number":1},{"name":"A"}]})", MissingMember, "players.1.number");
    row(R"({"kind":"roster","team":"home","players":[{"number":1,"age":16}]})", UnknownMember, "players.0.age");
    row(R"({"kind":"roster","team":"home","players":[{"number":1,"captain":1}]})", WrongType, "players.0.captain");
    row(R"({"kind":"roster","team":"home"})",                            MissingMember, "players");
    row(R"({"kind":"officials","officials":[{"role":"umpire"}]})",       OutOfRange,    "officials.0.role");
    row(R"({"kind":"officials","officials":[{"name":"A"}]})",            MissingMember, "officials.0.role");
    row(R"({"kind":"roster","team":"home","players":[],"coach":"a\nb"})", OutOfRange,   "coach");
    // clang-format on
}

void TestEntryJson::aListThatIsAmissIsNamedToTheElement() {
    isRefused();
}

void TestEntryJson::aStringThatIsAmissIsNamed_data() {
    refusals();
    using enum EntryJsonError::Code;
    // clang-format off
    row(R"({"kind":"set-started","at":"24:00"})",                        OutOfRange,    "at");
    row(R"({"kind":"set-started","at":"8:05"})",                         OutOfRange,    "at");
    row(R"({"kind":"set-started","at":"08:05:00"})",                     OutOfRange,    "at");
    row(R"({"kind":"set-started","at":""})",                             OutOfRange,    "at");
    row(R"({"kind":"set-started","at":805})",                            WrongType,     "at");
    row(R"({"kind":"remark"})",                                          MissingMember, "text");
    row(R"({"kind":"remark","text":"\u0007"})",                          OutOfRange,    "text");
    row(R"({"kind":"remark","text":"\u0000"})",                          OutOfRange,    "text");
    row(R"({"kind":"remark","text":"\r\n"})",                            OutOfRange,    "text");
    row(R"({"kind":"remark","text":"\u007f"})",                          OutOfRange,    "text");
    row(R"({"kind":"remark","text":"\u0085"})",                          OutOfRange,    "text");
    row(R"({"kind":"remark","text":"\ud800"})",                          OutOfRange,    "text");
    row(R"({"kind":"remark","text":"\udc00\ud800"})",                    OutOfRange,    "text");
    // clang-format on
}

void TestEntryJson::aStringThatIsAmissIsNamed() {
    isRefused();
}

void TestEntryJson::anOpeningThatIsAmissIsNamed_data() {
    refusals();
    using enum EntryJsonError::Code;
    // clang-format off
    row(R"({"kind":"match-opened","best-of":5,"rulebook":"high-school"})", MissingMember, "teams");
    row(R"({"kind":"match-opened","best-of":5,"rulebook":"high-school","teams":{"home":{}}})", MissingMember, "teams.visitors");
    row(R"({"kind":"match-opened","best-of":5,"rulebook":"high-school","teams":{"home":{"code":"NINELONGS"},"visitors":{}}})", OutOfRange, "teams.home.code");
    row(R"({"kind":"match-opened","best-of":5,"rulebook":"high-school","teams":{"home":{"nick":"A"},"visitors":{}}})", UnknownMember, "teams.home.nick");
    row(R"({"kind":"match-opened","best-of":4,"rulebook":"high-school","teams":{"home":{},"visitors":{}}})", OutOfRange, "best-of");
    row(R"({"kind":"match-opened","rulebook":"high-school","teams":{"home":{},"visitors":{}}})", MissingMember, "best-of");
    row(R"({"kind":"match-opened","best-of":5,"teams":{"home":{},"visitors":{}}})", MissingMember, "rulebook");
    row(R"({"kind":"match-opened","best-of":5,"rulebook":7,"teams":{"home":{},"visitors":{}}})", WrongType, "rulebook");
    row(R"({"kind":"match-opened","best-of":5,"rulebook":"nowhere","teams":{"home":{},"visitors":{}}})", BadRulebook, "rulebook");
    row(R"({"kind":"match-opened","best-of":5,"rulebook":"../high-school","teams":{"home":{},"visitors":{}}})", BadRulebook, "rulebook");
    row(openedWith(R"("format":2)"),                                     NewerVersion,  "format");
    row(openedWith(R"("format":0)"),                                     OutOfRange,    "format");
    row(openedWith(R"("format":"1")"),                                   WrongType,     "format");
    row(openedWith(R"("date":"2026-02-29")"),                            OutOfRange,    "date");
    row(openedWith(R"("date":"10.10.2026")"),                            OutOfRange,    "date");
    row(openedWith(R"("date":"0000-01-01")"),                            OutOfRange,    "date");
    // clang-format on
}

void TestEntryJson::anOpeningThatIsAmissIsNamed() {
    isRefused();
}

void TestEntryJson::stringsMayBeAsLongAsTheLimitAndNoLonger_data() {
    QTest::addColumn<QByteArray>("json"); // with the string in place of @
    QTest::addColumn<int>("limit");
    QTest::newRow("name") << openedWith(R"("venue":"@")") << 120;
    QTest::newRow("text") << QByteArray(R"({"kind":"remark","text":"@"})") << 1000;
    QTest::newRow("code") << QByteArray(opened).replace(R"("home":{})", R"("home":{"code":"@"})") << 8;
}

void TestEntryJson::stringsMayBeAsLongAsTheLimitAndNoLonger() {
    QFETCH(QByteArray, json);
    QFETCH(int, limit);
    for (const QString& character : {u"x"_qs, u"é"_qs, u"𝄞"_qs}) {
        const auto read = [&](int length) {
            return entryFromJson(parse(QByteArray(json).replace('@', character.repeated(length).toUtf8())));
        };
        QVERIFY(read(limit).has_value());
        QVERIFY(!read(limit + 1).has_value());
        QCOMPARE(read(limit + 1).error().code, EntryJsonError::Code::OutOfRange);
    }
}

void TestEntryJson::aRulebookMayBeNamedByItsId() {
    const auto read = entryFromJson(parse(opened));
    QVERIFY(read.has_value());
    QVERIFY(std::get<MatchOpened>(*read).rulebook == *publishedRulebook(u"high-school"_qs));
    QVERIFY2(toJson(*read).value(u"rulebook").isObject(), "but it is written whole");
}

void TestEntryJson::aBrokenSettingOfTheRulebookIsNamed() {
    QJsonObject rulebook = toJson(*publishedRulebook(u"high-school"_qs));
    rulebook.remove(u"season");
    QJsonObject json = parse(opened);
    json.insert(u"rulebook", rulebook);
    const auto read = entryFromJson(json);
    QVERIFY(!read.has_value());
    QCOMPARE(read.error().code, EntryJsonError::Code::BadRulebook);
    QCOMPARE(read.error().member, u"rulebook.season"_qs);
}

QTEST_GUILESS_MAIN(TestEntryJson)
#include "tst_entryjson.moc"
