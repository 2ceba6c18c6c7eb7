// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Arbitrary entries for RapidCheck: any value the format allows, whether or not a match would have it. What makes them
/// is compiled once, in arbitraryentries.cpp: it is long work for a compiler.
#pragma once

#include "core/match/entry.h"

#include <rapidcheck.h>

#include <iosfwd>
#include <vector>

namespace setfolio {

/// So that a counterexample is shown as the JSON it would be written as.
void showValue(const Entry& entry, std::ostream& out);

namespace arbitrary {

/// Entries as a ledger may hold them: opened first and only once, numbered from 1, corrections pointing back.
[[nodiscard]] rc::Gen<std::vector<Recorded>> ledger();

} // namespace arbitrary
} // namespace setfolio

namespace rc {

/// Every kind is as likely as any other.
template <>
struct Arbitrary<setfolio::Entry> {
    static Gen<setfolio::Entry> arbitrary();
};

} // namespace rc
