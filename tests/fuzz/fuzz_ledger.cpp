// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

// Any bytes as a ledger, and any bytes as the content of a properly chained line.
#include "core/ledger/chain.h"

#include <QCryptographicHash>

using namespace setfolio;

namespace {

void require(bool good) {
    if (!good)
        __builtin_trap();
}

QByteArray sealed(const QByteArray& content, const QByteArray& previousDigest) {
    const QByteArray digest = QCryptographicHash::hash(previousDigest + content, QCryptographicHash::Sha256).toHex();
    return content + ",\"digest\":\"" + digest + "\"}";
}

void readAsLedger(const QByteArray& bytes) {
    const LedgerContent content = readLedger(bytes);
    require(!(content.damage && content.torn));
    require(content.wholeBytes <= bytes.size());
    require((content.wholeBytes == bytes.size()) == (!content.damage && !content.torn));
    const LedgerContent whole = readLedger(bytes.first(content.wholeBytes));
    require(!whole.damage && !whole.torn && whole.entries == content.entries);
}

void readAsLine(const QByteArray& content, EntryNumber number) {
    const QByteArray previousDigest(64, '5');
    const auto recorded = readLedgerLine(sealed(content, previousDigest), number, previousDigest);
    if (!recorded)
        return;
    const QByteArray written = ledgerLine(*recorded, previousDigest).chopped(1);
    require(readLedgerLine(written, number, previousDigest) == recorded);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size) {
    const QByteArray bytes(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size));
    readAsLedger(bytes);
    readAsLine(bytes, EntryNumber(1));
    readAsLine(bytes, EntryNumber(2));
    return 0;
}
