// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entryjson.h"
#include "core/ledger/textforms.h"
#include "core/record/exportparts.h"
#include "core/record/sealtext.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// What every part of a sign-off says: which entry it is, and when it was recorded.
QJsonObject recordedAs(QJsonObject json, EntryNumber entry, const QDateTime& at) {
    json.insert(u"entry"_s, toExport(entry));
    json.insert(u"at"_s, instantText(at));
    return json;
}

QJsonObject signatureOf(const SignatureRecord& signature) {
    QJsonObject json = std::visit([](const auto& how) { return toJson(Entry(how)); }, signature.how);
    json.insert(u"signed"_s, std::holds_alternative<Signed>(signature.how));
    json.remove("kind"_L1);
    json.remove("set"_L1);
    return recordedAs(json, signature.entry, signature.at);
}

QJsonObject sealOf(const SealRecord& seal) {
    QJsonObject json{{u"digest"_s, seal.digest}, {u"code"_s, sealCode(seal.digest)}};
    if (seal.of == SealOf::Original)
        json.insert(u"of-original"_s, true);
    return recordedAs(json, seal.entry, seal.at);
}

} // namespace

QJsonObject toExport(const SignOffRecord& signOff) {
    QJsonArray signatures;
    for (const SignatureRecord& signature : signOff.signatures)
        signatures.append(signatureOf(signature));
    QJsonObject json{{u"signatures"_s, signatures}};
    if (signOff.set)
        json.insert(u"set"_s, *signOff.set);
    if (signOff.seal)
        json.insert(u"seal"_s, sealOf(*signOff.seal));
    if (const auto& reopened = signOff.reopened)
        json.insert(u"reopened"_s, recordedAs({{u"name"_s, reopened->name}, {u"reason"_s, reopened->reason}},
                                              reopened->entry, reopened->at));
    return json;
}

} // namespace setfolio
