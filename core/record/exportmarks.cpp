// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entryjson.h"
#include "core/ledger/entrywords.h"
#include "core/record/exportparts.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

QString shapeWord(MarkShape shape) {
    switch (shape) {
    case MarkShape::None:
        return u"none"_s;
    case MarkShape::Ring:
        return u"ring"_s;
    case MarkShape::Triangle:
        return u"triangle"_s;
    case MarkShape::Square:
        return u"square"_s;
    }
    Q_UNREACHABLE();
}

/// What is written, what it means, and its parts one by one.
QJsonObject written(const QString& content, const QString& text) {
    return {{u"content"_s, content}, {u"text"_s, text}};
}

struct ContentWriter {
    QJsonObject operator()(const Awaiting&) const { return written(u"awaiting"_s, {}); }
    QJsonObject operator()(const ServedPoint& point) const { return withTotal(u"point"_s, point.total); }
    QJsonObject operator()(const OpeningPoint& point) const { return withTotal(u"opening-point"_s, point.total); }
    QJsonObject operator()(const RallyLost&) const { return written(u"rally-lost"_s, u"R"_s); }
    QJsonObject operator()(const ServedAgain&) const { return written(u"served-again"_s, u"RS"_s); }
    QJsonObject operator()(const PenaltyLetter&) const { return written(u"penalty"_s, u"P"_s); }
    QJsonObject operator()(const SubstitutionMark& mark) const {
        QJsonObject json =
            written(u"substitution"_s,
                    u"%1 %2/%3"_s.arg(mark.opponents ? u"Sx"_s : u"S"_s).arg(mark.in.value).arg(mark.out.value));
        json.insert(u"opponents"_s, mark.opponents);
        json.insert(u"in"_s, toExport(mark.in));
        json.insert(u"out"_s, toExport(mark.out));
        if (mark.score) {
            json.insert(u"text"_s, json.value(u"text"_s).toString() + scoreText(*mark.score));
            json.insert(u"score"_s, QJsonArray{mark.score->own, mark.score->opponents});
        }
        return json;
    }
    QJsonObject operator()(const TimeOutMark& mark) const {
        QJsonObject json = written(u"time-out"_s, mark.opponents ? u"Tx"_s : u"T"_s);
        json.insert(u"opponents"_s, mark.opponents);
        return json;
    }
    QJsonObject operator()(const ExitScore& exit) const { return withTotal(u"exit-score"_s, exit.total); }

private:
    static QString scoreText(const ScoreAt& score) { return u" %1–%2"_s.arg(score.own).arg(score.opponents); }
    static QJsonObject withTotal(const QString& content, int total) {
        QJsonObject json = written(content, QString::number(total));
        json.insert(u"total"_s, total);
        return json;
    }
};

QJsonObject named(const QString& kind) {
    return {{u"kind"_s, kind}};
}

/// An entry that a note tells of, as it was recorded.
void putEntry(QJsonObject& json, const QString& key, const Recorded& recorded) {
    QJsonObject entry = toJson(recorded.entry);
    entry.insert(u"entry-number"_s, toExport(recorded.number));
    json.insert(key, entry);
}

struct NoteWriter {
    QJsonObject operator()(const StruckNote& note) const {
        QJsonObject json = named(u"struck"_s);
        putEntry(json, u"what"_s, note.struck);
        if (note.team)
            json.insert(u"team"_s, entryWord(*note.team));
        if (note.slot)
            json.insert(u"slot"_s, exportWord(*note.slot));
        if (note.total != 0)
            json.insert(u"total"_s, note.total);
        json.insert(u"rally"_s, note.rally);
        json.insert(u"reason"_s, note.reason);
        return json;
    }
    QJsonObject operator()(const OverruledNote& note) const {
        QJsonObject json = named(u"overruled"_s);
        putEntry(json, u"what"_s, note.recorded);
        json.insert(u"reason"_s, note.recorded.overruled.value_or(QString()));
        json.insert(u"score"_s, toExport(note.score));
        return json;
    }
    QJsonObject operator()(const PenaltyNote& note) const {
        QJsonObject json = named(u"penalty-point"_s);
        json.insert(u"to"_s, entryWord(note.point.to));
        json.insert(u"reason"_s, note.point.reason);
        json.insert(u"score"_s, toExport(note.score));
        return json;
    }
    QJsonObject operator()(const PutInNote& note) const {
        QJsonObject json = named(u"put-in"_s);
        putEntry(json, u"what"_s, note.recorded);
        json.insert(u"rally"_s, note.rally);
        json.insert(u"reason"_s, note.recorded.placed ? note.recorded.placed->reason : QString());
        json.insert(u"score"_s, toExport(note.score));
        return json;
    }
    QJsonObject operator()(const WrongServerNote& note) const {
        QJsonObject json = named(u"wrong-server"_s);
        json.insert(u"team"_s, entryWord(note.ruling.team));
        json.insert(u"served"_s, toExport(note.ruling.served));
        if (note.right.isValid())
            json.insert(u"right"_s, toExport(note.right));
        json.insert(u"taken-back"_s, note.takenBack);
        json.insert(u"score"_s, toExport(note.score));
        return json;
    }
    QJsonObject operator()(const EventNote& note) const {
        QJsonObject json = named(u"event"_s);
        putEntry(json, u"what"_s, note.recorded);
        if (note.takenBack > 0)
            json.insert(u"taken-back"_s, note.takenBack);
        json.insert(u"score"_s, toExport(note.score));
        return json;
    }
    QJsonObject operator()(const ReopenedNote& note) const {
        QJsonObject json = named(u"reopened"_s);
        json.insert(u"name"_s, note.reopened.name);
        json.insert(u"reason"_s, note.reopened.reason);
        json.insert(u"void-seal"_s, note.digest);
        json.insert(u"score"_s, toExport(note.score));
        return json;
    }
    QJsonObject operator()(const WrittenNote& note) const {
        QJsonObject json = named(u"remark"_s);
        json.insert(u"text"_s, note.text);
        json.insert(u"score"_s, toExport(note.score));
        return json;
    }
};

} // namespace

QJsonObject toExport(const Mark& mark) {
    QJsonObject json = std::visit(ContentWriter{}, mark.content);
    json.insert(u"shape"_s, shapeWord(mark.shape));
    json.insert(u"entry"_s, toExport(mark.entry));
    if (mark.struck)
        json.insert(u"struck"_s, true);
    if (mark.takenBack)
        json.insert(u"taken-back"_s, true);
    if (mark.note != 0)
        json.insert(u"note"_s, mark.note);
    return json;
}

QJsonObject toExport(const SanctionLine& line) {
    QJsonObject json{{u"team"_s, entryWord(line.team)},
                     {u"set"_s, line.set},
                     {u"score"_s, toExport(line.score)},
                     {u"reason"_s, line.reason},
                     {u"entry"_s, toExport(line.entry)}};
    if (line.who)
        std::visit(Overloaded{[&](ShirtNumber number) { json.insert(u"number"_s, toExport(number)); },
                              [&](BenchRole role) { json.insert(u"role"_s, entryWord(role)); }},
                   *line.who);
    json.insert(u"kind"_s, !line.level                                       ? u"improper-request"_s
                           : std::holds_alternative<DelayLevel>(*line.level) ? u"delay"_s
                                                                             : u"misconduct"_s);
    if (line.level)
        json.insert(u"level"_s, std::visit([](auto level) { return entryWord(level); }, *line.level));
    if (line.struck)
        json.insert(u"struck"_s, true);
    return json;
}

QJsonObject toExport(const Note& note) {
    QJsonObject json = std::visit(NoteWriter{}, note.content);
    json.insert(u"number"_s, note.number);
    json.insert(u"entry"_s, toExport(note.entry));
    if (note.struck)
        json.insert(u"struck"_s, true);
    return json;
}

} // namespace setfolio
