// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/newledger.h"

namespace setfolio {

tl::expected<QByteArray, LedgerError> ledgerOf(std::span<const Recorded> entries) {
    QByteArray bytes;
    QByteArray digest = firstDigest();
    for (Recorded recorded : entries) {
        recorded.entry = withSeal(std::move(recorded.entry), digest);
        const QByteArray line = ledgerLine(recorded, digest);
        digest = digestOfLine(line);
        bytes += line;
    }
    // Read again, to be sure that it is a ledger: what cannot be read back must not be written.
    if (const auto damage = readLedger(bytes).damage)
        return tl::unexpected(*damage);
    return bytes;
}

} // namespace setfolio
