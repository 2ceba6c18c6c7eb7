// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/codec.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// A player by "number", someone of the bench by "role".
Member readMember(MemberReader& reader) {
    const std::optional<ShirtNumber> number = reader.shirtIfAny("number"_L1);
    return number ? Member(*number) : Member(reader.word<BenchRole>("role"_L1));
}

void writeMember(const Member& who, MemberWriter& writer) {
    std::visit(Overloaded{[&writer](ShirtNumber number) { writer.shirt("number"_L1, number); },
                          [&writer](BenchRole role) { writer.word("role"_L1, role); }},
               who);
}

} // namespace

Sanction Codec<Sanction>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), readMember(reader), reader.word<SanctionLevel>("level"_L1),
            reader.text("reason"_L1)};
}

void Codec<Sanction>::write(const Sanction& sanction, MemberWriter& writer) {
    writer.word("team"_L1, sanction.team);
    writeMember(sanction.who, writer);
    writer.word("level"_L1, sanction.level);
    writer.text("reason"_L1, sanction.reason);
}

DelaySanction Codec<DelaySanction>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.word<DelayLevel>("level"_L1), reader.text("reason"_L1)};
}

void Codec<DelaySanction>::write(const DelaySanction& sanction, MemberWriter& writer) {
    writer.word("team"_L1, sanction.team);
    writer.word("level"_L1, sanction.level);
    writer.text("reason"_L1, sanction.reason);
}

ImproperRequest Codec<ImproperRequest>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.text("what"_L1)};
}

void Codec<ImproperRequest>::write(const ImproperRequest& request, MemberWriter& writer) {
    writer.word("team"_L1, request.team);
    writer.text("what"_L1, request.what);
}

PenaltyPoint Codec<PenaltyPoint>::read(MemberReader& reader) {
    return {reader.word<Team>("to"_L1), reader.text("reason"_L1)};
}

void Codec<PenaltyPoint>::write(const PenaltyPoint& point, MemberWriter& writer) {
    writer.word("to"_L1, point.to);
    writer.text("reason"_L1, point.reason);
}

} // namespace setfolio
