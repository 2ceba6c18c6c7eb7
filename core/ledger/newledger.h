// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A match file made in one go: whole, or not at all.
#pragma once

#include "core/ledger/chain.h"

#include <span>

namespace setfolio {

/// The bytes of a ledger of these entries, numbered from 1. The error is that of an entry that cannot be recorded: its
/// line is its number.
[[nodiscard]] tl::expected<QByteArray, LedgerError> ledgerOf(std::span<const Recorded> entries);

} // namespace setfolio
