// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/recordmembers.h"

#include "core/ledger/memberreader.h"
#include "core/ledger/textforms.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

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
    if (fault)
        return tl::unexpected(*fault);
    return entryFrom(members).map([&](Entry&& entry) {
        return RecordMembers{instant, std::move(overruled), std::move(entry)};
    });
}

} // namespace setfolio
