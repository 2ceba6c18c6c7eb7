// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/codec.h"
#include "core/ledger/limits.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

std::array<ShirtNumber, 6> readPositions(MemberReader& reader) {
    std::array<ShirtNumber, 6> positions;
    const auto numbers = reader.shirts("positions"_L1, 6, 6);
    if (numbers.size() == positions.size())
        std::copy(numbers.begin(), numbers.end(), positions.begin());
    return positions;
}

} // namespace

Toss Codec<Toss>::read(MemberReader& reader) {
    return {reader.word<Team>("serves-first"_L1), reader.word<Team>("left"_L1)};
}

void Codec<Toss>::write(const Toss& toss, MemberWriter& writer) {
    writer.word("serves-first"_L1, toss.servesFirst);
    writer.word("left"_L1, toss.left);
}

LineUp Codec<LineUp>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), readPositions(reader), reader.shirtIfAny("captain"_L1),
            reader.shirts("liberos"_L1, 0, limits::liberos)};
}

void Codec<LineUp>::write(const LineUp& lineUp, MemberWriter& writer) {
    writer.word("team"_L1, lineUp.team);
    writer.shirts("positions"_L1, lineUp.positions);
    if (lineUp.captain)
        writer.shirt("captain"_L1, *lineUp.captain);
    if (!lineUp.liberos.empty())
        writer.shirts("liberos"_L1, lineUp.liberos);
}

SetStarted Codec<SetStarted>::read(MemberReader& reader) {
    return {reader.timeOfDay("at"_L1)};
}

void Codec<SetStarted>::write(const SetStarted& started, MemberWriter& writer) {
    writer.timeOfDay("at"_L1, started.at);
}

SetEnded Codec<SetEnded>::read(MemberReader& reader) {
    return {reader.timeOfDay("at"_L1)};
}

void Codec<SetEnded>::write(const SetEnded& ended, MemberWriter& writer) {
    writer.timeOfDay("at"_L1, ended.at);
}

SidesChanged Codec<SidesChanged>::read(MemberReader&) {
    return {};
}

void Codec<SidesChanged>::write(const SidesChanged&, MemberWriter&) {}

} // namespace setfolio
