// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/codec.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

LiberoServe Codec<LiberoServe>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("libero"_L1),
            reader.word<LiberoServing>("serving"_L1, LiberoServing::Begins)};
}

void Codec<LiberoServe>::write(const LiberoServe& serve, MemberWriter& writer) {
    writer.word("team"_L1, serve.team);
    writer.shirt("libero"_L1, serve.libero);
    writer.wordUnless(LiberoServing::Begins, "serving"_L1, serve.serving);
}

LiberoIn Codec<LiberoIn>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("libero"_L1), reader.shirt("replaced"_L1)};
}

void Codec<LiberoIn>::write(const LiberoIn& in, MemberWriter& writer) {
    writer.word("team"_L1, in.team);
    writer.shirt("libero"_L1, in.libero);
    writer.shirt("replaced"_L1, in.replaced);
}

LiberoOut Codec<LiberoOut>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("libero"_L1)};
}

void Codec<LiberoOut>::write(const LiberoOut& out, MemberWriter& writer) {
    writer.word("team"_L1, out.team);
    writer.shirt("libero"_L1, out.libero);
}

LiberoExchange Codec<LiberoExchange>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("in"_L1), reader.shirt("out"_L1)};
}

void Codec<LiberoExchange>::write(const LiberoExchange& exchange, MemberWriter& writer) {
    writer.word("team"_L1, exchange.team);
    writer.shirt("in"_L1, exchange.in);
    writer.shirt("out"_L1, exchange.out);
}

LiberoRedesignated Codec<LiberoRedesignated>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("former"_L1), reader.shirtIfAny("libero"_L1),
            reader.text("reason"_L1)};
}

void Codec<LiberoRedesignated>::write(const LiberoRedesignated& redesignated, MemberWriter& writer) {
    writer.word("team"_L1, redesignated.team);
    writer.shirt("former"_L1, redesignated.former);
    if (redesignated.libero)
        writer.shirt("libero"_L1, *redesignated.libero);
    writer.text("reason"_L1, redesignated.reason);
}

LateReplacement Codec<LateReplacement>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1)};
}

void Codec<LateReplacement>::write(const LateReplacement& late, MemberWriter& writer) {
    writer.word("team"_L1, late.team);
}

} // namespace setfolio
