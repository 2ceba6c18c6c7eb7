// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What of a seal stands on paper: its code in groups, for the hand, and a text in full, for the QR code.
#pragma once

#include "core/record/record.h"

namespace setfolio {

/// The code of a digest as FORMAT.md gives it: six groups of four, "3K7T HAMX …", joined by spaces. Empty for an empty
/// digest.
[[nodiscard]] QString sealCode(const QString& digest);

/// What someone has typed from paper or read from the QR code: the digits it gives of a digest, from its start; 24 for
/// a code, 64 for a digest, none if it is neither. Case, spaces, hyphens and line feeds do not matter.
[[nodiscard]] std::optional<QString> digitsOfSeal(const QString& typed);

/// The seal for a phone to read: plain lines with the digest in full, the match's identity, and the result: the points
/// of the set, or the sets of the match.
[[nodiscard]] QString sealText(const MatchHeading& heading, const SignOffRecord& signOff, const PerTeam<int>& result);

} // namespace setfolio
