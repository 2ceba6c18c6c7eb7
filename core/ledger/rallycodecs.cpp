// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/codec.h"

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
    return {reader.word<Again>("again"_L1, Again::Replay), reader.wordIfAny<ReplayCause>("cause"_L1)};
}

void Codec<Replay>::write(const Replay& replay, MemberWriter& writer) {
    writer.wordUnless(Again::Replay, "again"_L1, replay.again);
    if (replay.cause)
        writer.word("cause"_L1, *replay.cause);
}

NoServe Codec<NoServe>::read(MemberReader&) {
    return {};
}

void Codec<NoServe>::write(const NoServe&, MemberWriter&) {}

ServerSeen Codec<ServerSeen>::read(MemberReader& reader) {
    return {reader.shirt("number"_L1)};
}

void Codec<ServerSeen>::write(const ServerSeen& seen, MemberWriter& writer) {
    writer.shirt("number"_L1, seen.number);
}

WrongServer Codec<WrongServer>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("served"_L1), reader.entryIfAny("taken-back-from"_L1)};
}

void Codec<WrongServer>::write(const WrongServer& ruling, MemberWriter& writer) {
    writer.word("team"_L1, ruling.team);
    writer.shirt("served"_L1, ruling.served);
    if (ruling.takenBackFrom)
        writer.entry("taken-back-from"_L1, *ruling.takenBackFrom);
}

IllegalPlayer Codec<IllegalPlayer>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("number"_L1),
            reader.word<IllegalBy>("by"_L1, IllegalBy::Substitution), reader.entryIfAny("taken-back-from"_L1)};
}

void Codec<IllegalPlayer>::write(const IllegalPlayer& ruling, MemberWriter& writer) {
    writer.word("team"_L1, ruling.team);
    writer.shirt("number"_L1, ruling.number);
    writer.wordUnless(IllegalBy::Substitution, "by"_L1, ruling.by);
    if (ruling.takenBackFrom)
        writer.entry("taken-back-from"_L1, *ruling.takenBackFrom);
}

} // namespace setfolio
