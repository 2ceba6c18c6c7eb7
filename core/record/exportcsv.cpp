// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/exportcsv.h"

#include "core/ledger/entryjson.h"
#include "core/ledger/entrywords.h"
#include "core/ledger/textforms.h"
#include "core/match/consequences.h"
#include "core/record/shown.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// Members that have a column of their own, are sentences, or say nothing in a table.
constexpr QLatin1StringView ofOtherColumns[]{"kind"_L1,   "team"_L1,     "reason"_L1,  "text"_L1,
                                             "what"_L1,   "differs"_L1,  "protest"_L1, "name"_L1,
                                             "format"_L1, "rulebook"_L1, "strokes"_L1};
constexpr QLatin1StringView sentences[]{"name"_L1, "reason"_L1, "text"_L1, "what"_L1, "differs"_L1, "protest"_L1};

QString detailsOf(QJsonObject json) {
    for (const QLatin1StringView member : ofOtherColumns)
        json.remove(member);
    return json.isEmpty() ? QString() : QString::fromUtf8(QJsonDocument(json).toJson(QJsonDocument::Compact));
}

QString sentencesOf(const QJsonObject& json) {
    QStringList found;
    for (const QLatin1StringView member : sentences)
        if (const QString text = json.value(member).toString(); !text.isEmpty())
            found += text;
    return found.join(u"; "_s);
}

QString lineOf(const QStringList& texts) {
    QStringList cells;
    for (const QString& text : texts)
        cells += csvCell(text);
    return cells.join(u',') + u"\r\n"_s;
}

/// "14", or nothing before the match is opened.
QString points(const MatchState& state, Team team) {
    return state.sets.empty() ? QString() : QString::number(state.set().teams[team].points);
}

} // namespace

QString quotedCell(QString text) {
    static const QString quoted = u",;\"\t\r\n"_s;
    if (std::none_of(text.cbegin(), text.cend(), [](QChar c) { return quoted.contains(c); }))
        return text;
    return u'"' + text.replace(u'"', u"\"\""_s) + u'"';
}

QString csvCell(const QString& text) {
    return quotedCell(harmless(asShown(text)));
}

bool runsInASpreadsheet(QChar first) {
    static const QString runs = u"=+-@\t\r\uFF1D\uFF0B\uFF0D\uFF20"_s;
    return runs.contains(first);
}

QString harmless(const QString& text) {
    static const QString separators = u",;\t\r\n"_s;
    QString cell;
    bool begins = true; // where a spreadsheet may begin a cell, whatever separator it goes by
    for (const QChar character : text) {
        if (begins && runsInASpreadsheet(character))
            cell += u'\'';
        cell += character;
        begins = separators.contains(character);
    }
    return cell;
}

QByteArray csvOf(std::span<const Recorded> entries) {
    QString csv = lineOf({u"entry"_s, u"time"_s, u"stands"_s, u"set"_s, u"kind"_s, u"team"_s, u"home"_s, u"visitors"_s,
                          u"details"_s, u"sentence"_s, u"overruled"_s, u"names"_s});
    MatchState state;
    for (const TimelineItem& item : timelineOf(entries)) {
        const Recorded& recorded = *item.recorded;
        const QString set = state.sets.empty() ? QString() : QString::number(setOfEntry(state, recorded.entry));
        if (item.stands())
            state = apply(std::move(state), recorded);
        const bool left = state.opened && state.opened->namesLeftOut;
        const QJsonObject json = toJson(recorded.entry);
        csv +=
            lineOf({QString::number(recorded.number.value), instantText(recorded.time),
                    item.stands() ? u"yes"_s : u"no"_s, set, kindOf(recorded.entry), json.value("team"_L1).toString(),
                    points(state, Team::Home), points(state, Team::Visitors), detailsOf(json), sentencesOf(json),
                    recorded.overruled.value_or(QString()), left ? u"left out"_s : u"given"_s});
    }
    return csv.toUtf8();
}

} // namespace setfolio
