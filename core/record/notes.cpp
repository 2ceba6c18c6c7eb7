// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/notes.h"

namespace setfolio {
namespace {

QString reasonOf(const Recorded& correction) {
    if (const auto* strike = std::get_if<Strike>(&correction.entry))
        return strike->reason;
    return correction.placed ? correction.placed->reason : QString();
}

/// Where a struck entry's mark stands, and which number it holds.
StruckNote struckNoteOf(const Recorded& struck, const Recorded& correction, const Moment& before) {
    StruckNote note{struck, before.serving, before.nextServer[before.serving], 0, before.rally, reasonOf(correction)};
    if (const auto* rally = std::get_if<RallyWon>(&struck.entry)) {
        note.team = rally->by;
        note.slot = before.nextServer[rally->by];
        note.total = before.points[rally->by] + 1;
    }
    return note;
}

/// Whether striking this kind of entry is worth a line among the remarks: what was set down before the set, and what
/// has a line of its own that is struck, is not.
struct StruckIsTold {
    bool operator()(const ServeContacted&) const { return true; }
    bool operator()(const RallyWon&) const { return true; }
    bool operator()(const Replay&) const { return true; }
    bool operator()(const NoServe&) const { return true; }
    bool operator()(const WrongServer&) const { return true; }
    bool operator()(const IllegalPlayer&) const { return true; }
    bool operator()(const Substitution&) const { return true; }
    bool operator()(const PlaceVacated&) const { return true; }
    bool operator()(const TimeOut&) const { return true; }
    bool operator()(const LiberoServe&) const { return true; }
    bool operator()(const LiberoIn&) const { return true; }
    bool operator()(const LiberoOut&) const { return true; }
    bool operator()(const LiberoExchange&) const { return true; }
    bool operator()(const LiberoRedesignated&) const { return true; }
    bool operator()(const LateReplacement&) const { return true; }
    bool operator()(const CaptainNamed&) const { return true; }
    bool operator()(const PenaltyPoint&) const { return true; }
    bool operator()(const Forfeit&) const { return true; }
    bool operator()(const SidesChanged&) const { return true; }
    bool operator()(const SetEnded&) const { return true; }
    bool operator()(const Suspended&) const { return true; }
    bool operator()(const Resumed&) const { return true; }
    bool operator()(const Sanction&) const { return false; }
    bool operator()(const DelaySanction&) const { return false; }
    bool operator()(const ImproperRequest&) const { return false; }
    bool operator()(const ServerSeen&) const { return false; }
    bool operator()(const SheetCompared&) const { return false; }
    bool operator()(const Remark&) const { return false; }
    bool operator()(const MatchOpened&) const { return false; }
    bool operator()(const Roster&) const { return false; }
    bool operator()(const Officials&) const { return false; }
    bool operator()(const MatchClosed&) const { return false; }
    bool operator()(const Toss&) const { return false; }
    bool operator()(const LineUp&) const { return false; }
    bool operator()(const SetStarted&) const { return false; }
    bool operator()(const Strike&) const { return false; }
    bool operator()(const Signed&) const { return false; }
    bool operator()(const LeftUnsigned&) const { return false; }
    bool operator()(const Sealed&) const { return false; }
    bool operator()(const Reopened&) const { return false; }
};

/// Whether a standing entry is told among the remarks by itself. Those with words of their own have notes of their own.
bool isEvent(const Entry& entry) {
    if (const auto* forfeit = std::get_if<Forfeit>(&entry))
        return !forfeit->earlier;
    if (const auto* compared = std::get_if<SheetCompared>(&entry))
        return !compared->differs.isEmpty();
    return std::holds_alternative<PlaceVacated>(entry) || std::holds_alternative<LiberoRedesignated>(entry) ||
           std::holds_alternative<LateReplacement>(entry) || std::holds_alternative<CaptainNamed>(entry) ||
           std::holds_alternative<SidesChanged>(entry) || std::holds_alternative<Suspended>(entry) ||
           std::holds_alternative<Resumed>(entry);
}

/// Whether the mark of a standing entry needs words.
bool hasNoteOfItsMark(const Entry& entry) {
    if (const auto* replay = std::get_if<Replay>(&entry))
        return replay->cause.has_value();
    if (const auto* forfeit = std::get_if<Forfeit>(&entry))
        return forfeit->earlier.has_value(); // the points that are crossed
    const auto* substitution = std::get_if<Substitution>(&entry);
    return std::holds_alternative<IllegalPlayer>(entry) ||
           (substitution && substitution->kind == SubstitutionKind::Exceptional);
}

/// The note of a struck contact whose result is struck as well: one line tells of both.
Note* noteOfSameServe(SetRecord& record, const Recorded& struck) {
    if (record.notes.empty() || !std::holds_alternative<RallyWon>(struck.entry))
        return nullptr;
    auto* note = std::get_if<StruckNote>(&record.notes.back().content);
    const bool contact = note && std::holds_alternative<ServeContacted>(note->struck.entry);
    return contact && note->struck.number.value + 1 == struck.number.value ? &record.notes.back() : nullptr;
}

} // namespace

int addNote(SetRecord& record, NoteContent content, EntryNumber entry) {
    const int number = static_cast<int>(record.notes.size()) + 1;
    record.notes.push_back({number, std::move(content), entry, false});
    return number;
}

int addNoteOfMark(SetRecord& record, const Recorded& recorded, const Moment& before) {
    if (recorded.overruled)
        return addNote(record, OverruledNote{recorded, before.points}, recorded.number);
    if (const auto* ruling = std::get_if<WrongServer>(&recorded.entry)) {
        const ShirtNumber right = before.serving == ruling->team ? before.server : ShirtNumber();
        return addNote(record, WrongServerNote{*ruling, right, 0, record.score}, recorded.number);
    }
    if (recorded.placed && recorded.placed->how == Placed::How::Before)
        return addNote(record, PutInNote{recorded, before.points, before.rally}, recorded.number);
    if (hasNoteOfItsMark(recorded.entry)) {
        const bool ruling = std::holds_alternative<IllegalPlayer>(recorded.entry);
        return addNote(record, EventNote{recorded, ruling ? record.score : before.points, 0}, recorded.number);
    }
    return 0;
}

void addNoteOfEvent(SetRecord& record, const Recorded& recorded, const Moment& before) {
    if (const auto* remark = std::get_if<Remark>(&recorded.entry))
        addNote(record, WrittenNote{remark->text, before.points}, recorded.number);
    else if (const auto* penalty = std::get_if<PenaltyPoint>(&recorded.entry))
        addNote(record, PenaltyNote{*penalty, record.score}, recorded.number);
    else if (isEvent(recorded.entry))
        addNote(record, EventNote{recorded, before.points, 0}, recorded.number);
}

int addNoteOfStruck(SetRecord& record, const Recorded& recorded, const Recorded& correction, const Moment& before) {
    if (const auto* remark = std::get_if<Remark>(&recorded.entry)) {
        addNote(record, WrittenNote{remark->text, before.points}, recorded.number);
        record.notes.back().struck = true;
        return 0;
    }
    if (!std::visit(StruckIsTold{}, recorded.entry))
        return 0;
    const StruckNote content = struckNoteOf(recorded, correction, before);
    Note* same = noteOfSameServe(record, recorded);
    if (!same)
        return addNote(record, content, recorded.number);
    same->content = content;
    same->entry = recorded.number;
    return same->number;
}

} // namespace setfolio
