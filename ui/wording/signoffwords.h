// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Words about signatures and seals.
#pragma once

#include "core/record/record.h"

#include <QString>

namespace setfolio {

/// What is printed beside signatures and seals.
enum class SignOffLabel : std::uint8_t { SignedOnScreen, UnderProtest, NotSigned, NamesLeftOut, Seal, SealOfOriginal };
[[nodiscard]] QString words(SignOffLabel label);

/// "set 2", or "match" for none.
[[nodiscard]] QString whatIsSigned(std::optional<int> set);
/// "scorer", "captain": within a sentence.
[[nodiscard]] QString signerWords(Signer role);
/// "SAL captain", "Second referee": by itself.
[[nodiscard]] QString signatoryWords(const Signatory& who, const PerTeam<TeamName>& teams);

/// "SAL captain, under protest".
[[nodiscard]] QString protestWords(const QString& role);

} // namespace setfolio
