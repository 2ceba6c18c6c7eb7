// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/sheetscenes.h"

#include "core/ledger/entryjson.h"
#include "core/ledger/ledger.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>

#include <functional>
#include <map>

namespace setfolio::testing {

namespace {

using namespace Qt::Literals::StringLiterals;

Team teamOf(QChar letter) {
    return letter.toLower() == u'h' ? Team::Home : Team::Visitors;
}

void playSubstitution(MatchBuilder& match, QStringView word) {
    const qsizetype slash = word.indexOf(u'/');
    match.substitute(teamOf(word.at(0)), word.mid(1, slash - 1).toInt(), word.mid(slash + 1).toInt());
}

void playWord(MatchBuilder& match, QStringView word) {
    const QChar first = word.at(0);
    if (word.size() == 1 && first == u'u')
        match.undo();
    else if (word.size() == 1 && first == u'c')
        match.add(Strike{newestStanding(match.entries()).value(), u"replay"_s});
    else if (word.size() == 1)
        match.play(word.toLatin1().constData());
    else if (first == u'H' || first == u'V')
        playSubstitution(match, word);
    else if (first == u't')
        match.add(TimeOut{teamOf(word.at(1))});
    else if (first == u'p')
        match.add(PenaltyPoint{teamOf(word.at(1)), u"unnecessary delay"_s});
    else if (first == u'l')
        match.add(LiberoServe{teamOf(word.at(1)), ShirtNumber(word.at(1) == u'h' ? 2 : 6), LiberoServing::Begins});
    else
        qFatal("playWords: unknown word %s", qPrintable(word.toString()));
}

Entry entryOf(const QString& json) {
    const auto entry = entryFromJson(QJsonDocument::fromJson(json.toUtf8()).object());
    if (!entry)
        qFatal("sheetScene: no entry: %s", qPrintable(json));
    return *entry;
}

/// "3 {...}": that entry, put in before the third from the end, or in its place.
void placeEntry(MatchBuilder& match, const QString& words, Placed::How how) {
    const EntryNumber target(match.last().value + 1 - words.section(u' ', 0, 0).toUInt());
    match.place(entryOf(words.section(u' ', 1)), how, target, u"seen late"_s);
}

/// "home 15 3": the ruling on number 15, who has served wrongly, with the team's last three points taken back.
void ruleOnServer(MatchBuilder& match, const QString& words) {
    const Team team = teamOf(words.at(0));
    int left = words.section(u' ', 2).toInt();
    std::optional<EntryNumber> from;
    const std::vector<Point> points = match.state().set().points;
    for (auto point = points.rbegin(); point != points.rend() && left > 0; ++point)
        if (point->team == team) {
            from = point->entry;
            --left;
        }
    match.add(WrongServer{team, ShirtNumber(words.section(u' ', 1, 1).toInt()), from});
}

/// A scene as its file tells it.
struct Script {
    MatchOpened opened;
    Officials officials;
    int set = 2;
    Team servesFirst = Team::Home;
    bool lineUps = true;
    bool screen = false;
    bool a4 = false;
    bool demo = false;
    std::set<SheetKind> sheets;
    std::vector<std::function<void(MatchBuilder&)>> course;
};

Script usual() {
    Script script;
    MatchOpened& match = script.opened;
    match.competition = u"Estuary and Uplands Schools League"_s;
    match.division = u"Girls varsity · Pool B"_s;
    match.matchNumber = u"17"_s;
    match.venue = u"Tidewater Hall, Court 2"_s;
    match.date = QDate(2026, 10, 10);
    match.scheduled = QTime(18, 30);
    match.bestOf = 5;
    match.teams.home = {u"Saltmarsh Herons"_s, u"SAL"_s, {}};
    match.teams.visitors = {u"Quarry Ridge Larks"_s, u"QRL"_s, {}};
    match.rulebook = highSchool();
    script.officials = {{{Role::FirstReferee, u"Orla Vantongeren"_s},
                         {Role::SecondReferee, u"Tobias Ekeme"_s},
                         {Role::Scorer, u"Marisol Quill"_s},
                         {Role::AssistantScorer, u"Dev Hartnoll"_s},
                         {Role::Timer, u"Junia Pell"_s},
                         {Role::LineJudge, u"Caspian Roe"_s},
                         {Role::LineJudge, u"Ines Thackaberry"_s}}};
    return script;
}

Official officialFrom(const QString& words) {
    static const std::map<QString, Role> roles{{u"first-referee"_s, Role::FirstReferee},
                                               {u"second-referee"_s, Role::SecondReferee},
                                               {u"scorer"_s, Role::Scorer},
                                               {u"assistant-scorer"_s, Role::AssistantScorer},
                                               {u"timer"_s, Role::Timer},
                                               {u"line-judge"_s, Role::LineJudge}};
    return {roles.at(words.section(u' ', 0, 0)), words.section(u' ', 1)};
}

std::set<SheetKind> kindsFrom(const QString& words) {
    std::set<SheetKind> kinds;
    for (const QString& name : words.split(u','))
        kinds.insert(sheetKindNamed(name).value());
    return kinds;
}

std::vector<Recorded> demoEntries() {
    const auto content = readLedgerFile(QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/demo/herons-larks.setfolio"));
    if (!content || content->damage)
        qFatal("sheetScene: the demo match cannot be read");
    return content->entries;
}

void changeRulebook(Rulebook& rulebook, const QString& words) {
    const QString key = words.section(u' ', 0, 0);
    const int value = words.section(u' ', 1).toInt();
    if (key == u"floor-order"_s)
        rulebook.writtenOrder = WrittenOrder::Floor;
    else if (key == u"substitutions"_s)
        rulebook.substitutionLimit = value;
    else if (key == u"of"_s)
        rulebook = publishedRulebook(words.section(u' ', 1)).value();
    else if (key == u"time-outs"_s)
        rulebook.timeOuts = value;
    else
        qFatal("sheetScene: no setting %s", qPrintable(key));
}

using Reader = std::function<void(Script&, const QString&)>;

std::map<QString, Reader> namesReaders() {
    return {
        {u"competition"_s, [](Script& s, const QString& words) { s.opened.competition = words; }},
        {u"division"_s, [](Script& s, const QString& words) { s.opened.division = words; }},
        {u"match"_s, [](Script& s, const QString& words) { s.opened.matchNumber = words; }},
        {u"venue"_s, [](Script& s, const QString& words) { s.opened.venue = words; }},
        {u"home"_s, [](Script& s, const QString& words) { s.opened.teams.home.name = words; }},
        {u"home-code"_s, [](Script& s, const QString& words) { s.opened.teams.home.code = words; }},
        {u"home-colour"_s, [](Script& s, const QString& words) { s.opened.teams.home.colour = words; }},
        {u"visitors"_s, [](Script& s, const QString& words) { s.opened.teams.visitors.name = words; }},
        {u"visitors-code"_s, [](Script& s, const QString& words) { s.opened.teams.visitors.code = words; }},
        {u"visitors-colour"_s, [](Script& s, const QString& words) { s.opened.teams.visitors.colour = words; }},
        {u"best-of"_s, [](Script& s, const QString& words) { s.opened.bestOf = words.toInt(); }},
        {u"no-officials"_s, [](Script& s, const QString&) { s.officials.officials.clear(); }},
        {u"official"_s, [](Script& s, const QString& words) { s.officials.officials.push_back(officialFrom(words)); }},
        {u"rulebook"_s, [](Script& s, const QString& words) { changeRulebook(s.opened.rulebook, words); }},
    };
}

std::map<QString, Reader> courseReaders() {
    const auto then = [](auto step) {
        return [step](Script& script, const QString& words) {
            script.course.emplace_back([step, words](MatchBuilder& match) { step(match, words); });
        };
    };
    return {
        {u"set"_s, [](Script& s, const QString& words) { s.set = words.toInt(); }},
        {u"serves-first"_s, [](Script& s, const QString& words) { s.servesFirst = teamOf(words.at(0)); }},
        {u"no-line-ups"_s, [](Script& s, const QString&) { s.lineUps = false; }},
        {u"screen"_s, [](Script& s, const QString&) { s.screen = true; }},
        {u"a4"_s, [](Script& s, const QString&) { s.a4 = true; }},
        {u"demo"_s, [](Script& s, const QString&) { s.demo = true; }},
        {u"sheets"_s, [](Script& s, const QString& words) { s.sheets = kindsFrom(words); }},
        {u"play"_s, then([](MatchBuilder& match, const QString& words) { playWords(match, words); })},
        {u"remark"_s, then([](MatchBuilder& match, const QString& words) { match.add(Remark{words}); })},
        {u"entry"_s, then([](MatchBuilder& match, const QString& words) { match.add(entryOf(words)); })},
        {u"put-in"_s,
         then([](MatchBuilder& match, const QString& words) { placeEntry(match, words, Placed::How::Before); })},
        {u"instead"_s,
         then([](MatchBuilder& match, const QString& words) { placeEntry(match, words, Placed::How::InsteadOf); })},
        {u"wrong-server"_s, then(ruleOnServer)},
        {u"end"_s, then([](MatchBuilder& match, const QString& words) {
             match.add(SetEnded{QTime::fromString(words, u"HH:mm"_s)});
         })},
    };
}

Script read(const QString& name) {
    QFile file(goldenFolder() + u'/' + name + u"/scene"_s);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("sheetScene: no scene %s", qPrintable(name));
    static const std::map<QString, Reader> readers = [] {
        std::map<QString, Reader> all = namesReaders();
        all.merge(courseReaders());
        return all;
    }();
    Script script = usual();
    for (const QString& line : QString::fromUtf8(file.readAll()).split(u'\n')) {
        if (line.isEmpty() || line.startsWith(u'#'))
            continue;
        const auto reader = readers.find(line.section(u' ', 0, 0));
        if (reader == readers.end())
            qFatal("sheetScene: %s has an unknown line: %s", qPrintable(name), qPrintable(line));
        reader->second(script, line.section(u' ', 1));
    }
    return script;
}

/// Line-ups so that slot I is 4 for the home team when it serves first, 12 for the visitors when they receive.
void addLineUps(MatchBuilder& match) {
    match.add(LineUp{Team::Home, six({4, 7, 12, 9, 15, 3}), ShirtNumber(9), {ShirtNumber(2)}});
    match.add(LineUp{Team::Visitors, six({17, 12, 5, 21, 8, 1}), ShirtNumber(5), {ShirtNumber(6), ShirtNumber(24)}});
}

void playFirstSet(MatchBuilder& match) {
    addLineUps(match);
    match.add(SetStarted{QTime(18, 5)});
    playWords(match, u"h*25");
    match.add(SetEnded{QTime(18, 38)});
}

std::vector<Recorded> played(const Script& script) {
    MatchBuilder match;
    match.add(script.opened).add(script.officials);
    if (script.set == 2) {
        match.toss(opponentsOf(script.servesFirst), Team::Visitors); // serve and sides change for set 2
        playFirstSet(match);
    } else {
        match.toss(script.servesFirst);
    }
    if (script.lineUps) {
        addLineUps(match);
        match.add(SetStarted{QTime(18, 42)});
    }
    for (const auto& step : script.course)
        step(match);
    return match.entries();
}

} // namespace

QString goldenFolder() {
    return QStringLiteral(SETFOLIO_SOURCE_DIR "/tests/golden");
}

QStringList sheetSceneNames() {
    return QDir(goldenFolder()).entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name);
}

SheetScene sheetScene(const QString& name) {
    const Script script = read(name);
    const std::vector<Recorded> entries = script.demo ? demoEntries() : played(script);
    const MatchRecord record = writeUp(entries);
    const auto begun = [](const SetRecord& set) { return set.started; };
    const auto newest = std::find_if(record.sets.rbegin(), record.sets.rend(), begun); // one to be played again waits
    const SetRecord set = newest != record.sets.rend() ? *newest
                          : record.sets.empty()        ? SetRecord()
                                                       : record.sets.back();
    return {name, record.heading, set, script.screen, script.a4, script.sheets, record, entries};
}

std::vector<Page> composeScene(const SheetScene& scene, const SheetFonts& fonts, std::optional<PaperSize> paper) {
    const SheetOptions options{.fonts = fonts,
                               .paper = paper.value_or(scene.a4 ? PaperSize::A4 : PaperSize::Letter),
                               .screen = scene.screen,
                               .locale = QLocale(QStringLiteral("en_GB")),
                               .former = {}};
    if (scene.sheets.empty())
        return composeSet(scene.heading, scene.set, options);
    return composeSheets({scene.record, scene.entries}, {scene.sheets, {}}, options);
}

void playWords(MatchBuilder& match, QStringView words) {
    for (const QStringView word : words.split(u' ', Qt::SkipEmptyParts)) {
        const qsizetype star = word.indexOf(u'*');
        const int times = star < 0 ? 1 : word.mid(star + 1).toInt();
        for (int i = 0; i < times; ++i)
            playWord(match, star < 0 ? word : word.left(star));
    }
}

} // namespace setfolio::testing
