// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/codec.h"
#include "core/ledger/limits.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

ServeContacted Codec<ServeContacted>::read(MemberReader&) {
    return {};
}

void Codec<ServeContacted>::write(const ServeContacted&, MemberWriter&) {}

RallyWon Codec<RallyWon>::read(MemberReader& reader) {
    return {reader.word<Team>("by"_L1)};
}

void Codec<RallyWon>::write(const RallyWon& rally, MemberWriter& writer) {
    writer.word("by"_L1, rally.by);
}

Replay Codec<Replay>::read(MemberReader& reader) {
    return {reader.word<Again>("again"_L1, Again::Replay)};
}

void Codec<Replay>::write(const Replay& replay, MemberWriter& writer) {
    writer.wordUnless(Again::Replay, "again"_L1, replay.again);
}

NoServe Codec<NoServe>::read(MemberReader&) {
    return {};
}

void Codec<NoServe>::write(const NoServe&, MemberWriter&) {}

Substitution Codec<Substitution>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("in"_L1), reader.shirt("out"_L1)};
}

void Codec<Substitution>::write(const Substitution& substitution, MemberWriter& writer) {
    writer.word("team"_L1, substitution.team);
    writer.shirt("in"_L1, substitution.in);
    writer.shirt("out"_L1, substitution.out);
}

TimeOut Codec<TimeOut>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1)};
}

void Codec<TimeOut>::write(const TimeOut& timeOut, MemberWriter& writer) {
    writer.word("team"_L1, timeOut.team);
}

LiberoServe Codec<LiberoServe>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("libero"_L1),
            reader.word<LiberoServing>("serving"_L1, LiberoServing::Begins)};
}

void Codec<LiberoServe>::write(const LiberoServe& serve, MemberWriter& writer) {
    writer.word("team"_L1, serve.team);
    writer.shirt("libero"_L1, serve.libero);
    writer.wordUnless(LiberoServing::Begins, "serving"_L1, serve.serving);
}

PenaltyPoint Codec<PenaltyPoint>::read(MemberReader& reader) {
    return {reader.word<Team>("to"_L1), reader.text("reason"_L1)};
}

void Codec<PenaltyPoint>::write(const PenaltyPoint& point, MemberWriter& writer) {
    writer.word("to"_L1, point.to);
    writer.text("reason"_L1, point.reason);
}

Remark Codec<Remark>::read(MemberReader& reader) {
    return {reader.requiredText("text"_L1)};
}

void Codec<Remark>::write(const Remark& remark, MemberWriter& writer) {
    writer.put("text"_L1, remark.text);
}

Strike Codec<Strike>::read(MemberReader& reader) {
    const int target = reader.integer("entry"_L1, 1, static_cast<int>(limits::entries));
    return {EntryNumber(static_cast<std::uint32_t>(target)), reader.text("reason"_L1)};
}

void Codec<Strike>::write(const Strike& strike, MemberWriter& writer) {
    writer.put("entry"_L1, static_cast<qint64>(strike.target.value));
    writer.text("reason"_L1, strike.reason);
}

} // namespace setfolio
