// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entryjson.h"

#include "core/ledger/codec.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// Reads the kind of that name, if the variant has it; the pointer only names the variant's kinds.
template <typename... Kinds>
std::optional<Entry> readKind(const QString& kind, MemberReader& reader, const std::variant<Kinds...>*) {
    std::optional<Entry> entry;
    std::ignore = ((kind == Codec<Kinds>::name && (entry = Codec<Kinds>::read(reader), true)) || ...);
    return entry;
}

template <typename Kind>
constexpr QLatin1StringView nameOf(const Kind&) {
    return Codec<Kind>::name;
}

} // namespace

QString kindOf(const Entry& entry) {
    return std::visit([](const auto& kind) { return QString(nameOf(kind)); }, entry);
}

QJsonObject toJson(const Entry& entry) {
    MemberWriter writer;
    writer.put("kind"_L1, kindOf(entry));
    std::visit([&]<typename Kind>(const Kind& kind) { Codec<Kind>::write(kind, writer); }, entry);
    return writer.json();
}

tl::expected<Entry, EntryJsonError> entryFromJson(const QJsonObject& json) {
    Members members(json);
    return entryFrom(members);
}

tl::expected<Entry, EntryJsonError> entryFrom(Members& members) {
    std::optional<EntryJsonError> fault;
    MemberReader reader(members, fault);
    const MemberValue kind = reader.take("kind"_L1);
    if (!kind.isString())
        reader.report(kind.isUndefined() ? EntryJsonError::Code::MissingMember : EntryJsonError::Code::WrongType,
                      "kind"_L1);
    auto entry = readKind(kind.toString(), reader, static_cast<const Entry*>(nullptr));
    if (!entry)
        reader.reportAt(EntryJsonError::Code::UnknownKind, kind.toString());
    reader.refuseTheRest();
    if (fault)
        return tl::unexpected(*fault);
    return std::move(*entry);
}

} // namespace setfolio
