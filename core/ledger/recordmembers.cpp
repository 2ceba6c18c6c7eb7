// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/recordmembers.h"

#include "core/ledger/memberreader.h"
#include "core/ledger/memberwriter.h"
#include "core/ledger/textforms.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// Either "before" or "instead-of", with the number of an earlier entry.
Placed readPlaced(MemberReader& reader) {
    const auto before = reader.entryIfAny("before"_L1);
    const EntryNumber target = before ? *before : reader.entry("instead-of"_L1);
    return {before ? Placed::How::Before : Placed::How::InsteadOf, target, reader.text("reason"_L1)};
}

} // namespace

QJsonObject placedJson(const Placed& placed) {
    MemberWriter writer;
    writer.entry(placed.how == Placed::How::Before ? "before"_L1 : "instead-of"_L1, placed.target);
    writer.text("reason"_L1, placed.reason);
    return writer.json();
}

tl::expected<RecordMembers, EntryJsonError> recordMembersFrom(Members& members) {
    std::optional<EntryJsonError> fault;
    MemberReader reader(members, fault);
    const MemberValue time = reader.take("time"_L1);
    const auto instant = instantFromText(time.toString());
    if (!instant && !time.isUndefined())
        reader.report(time.isString() ? EntryJsonError::Code::OutOfRange : EntryJsonError::Code::WrongType, "time"_L1);
    std::optional<QString> overruled;
    if (members.contains("overruled"_L1))
        overruled = reader.requiredText("overruled"_L1);
    std::optional<Placed> placed;
    if (members.contains("placed"_L1))
        placed = reader.object("placed"_L1, readPlaced);
    if (fault)
        return tl::unexpected(*fault);
    return entryFrom(members).map([&](Entry&& entry) {
        return RecordMembers{instant, std::move(overruled), std::move(placed), std::move(entry)};
    });
}

} // namespace setfolio
