// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/codec.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

Substitution Codec<Substitution>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("in"_L1), reader.shirt("out"_L1),
            reader.word<SubstitutionKind>("how"_L1, SubstitutionKind::Regular)};
}

void Codec<Substitution>::write(const Substitution& substitution, MemberWriter& writer) {
    writer.word("team"_L1, substitution.team);
    writer.shirt("in"_L1, substitution.in);
    writer.shirt("out"_L1, substitution.out);
    writer.wordUnless(SubstitutionKind::Regular, "how"_L1, substitution.kind);
}

PlaceVacated Codec<PlaceVacated>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("out"_L1), reader.text("reason"_L1)};
}

void Codec<PlaceVacated>::write(const PlaceVacated& vacated, MemberWriter& writer) {
    writer.word("team"_L1, vacated.team);
    writer.shirt("out"_L1, vacated.out);
    writer.text("reason"_L1, vacated.reason);
}

TimeOut Codec<TimeOut>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1)};
}

void Codec<TimeOut>::write(const TimeOut& timeOut, MemberWriter& writer) {
    writer.word("team"_L1, timeOut.team);
}

CaptainNamed Codec<CaptainNamed>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.shirt("captain"_L1)};
}

void Codec<CaptainNamed>::write(const CaptainNamed& named, MemberWriter& writer) {
    writer.word("team"_L1, named.team);
    writer.shirt("captain"_L1, named.captain);
}

SheetCompared Codec<SheetCompared>::read(MemberReader& reader) {
    return {reader.text("differs"_L1)};
}

void Codec<SheetCompared>::write(const SheetCompared& compared, MemberWriter& writer) {
    writer.text("differs"_L1, compared.differs);
}

Remark Codec<Remark>::read(MemberReader& reader) {
    return {reader.requiredText("text"_L1)};
}

void Codec<Remark>::write(const Remark& remark, MemberWriter& writer) {
    writer.put("text"_L1, remark.text);
}

Strike Codec<Strike>::read(MemberReader& reader) {
    return {reader.entry("entry"_L1), reader.text("reason"_L1)};
}

void Codec<Strike>::write(const Strike& strike, MemberWriter& writer) {
    writer.entry("entry"_L1, strike.target);
    writer.text("reason"_L1, strike.reason);
}

} // namespace setfolio
