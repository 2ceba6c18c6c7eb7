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

/// At the head of each sheet on which names were left out.
[[nodiscard]] QString namesLeftOutWords();
/// At the head of each sheet on which persons are named.
[[nodiscard]] QString namesGivenWords();
/// Whether a document names anybody, for those who pass it on.
[[nodiscard]] QString namesSentence(bool leftOut, bool given);

/// How far somebody who signs is.
enum class SignerStands : std::uint8_t { ToSign, HasSigned, SignedUnderProtest, LeftUnsigned };
/// "Scorer: signed".
[[nodiscard]] QString signerLine(const QString& role, SignerStands stands);

/// "Sign-off of set 2", "Sign-off of the match".
[[nodiscard]] QString signOffTitle(std::optional<int> set);
/// "Seal set 2": what the button does.
[[nodiscard]] QString sealWords(std::optional<int> set);
/// What a seal does, before it is made; and what stands under it, after.
[[nodiscard]] QString beforeSeal(std::optional<int> set);
[[nodiscard]] QString underSeal(std::optional<int> set);
/// "Reopen set 2", and what that does.
[[nodiscard]] QString reopenWords(std::optional<int> set);
[[nodiscard]] QString reopenMeans(std::optional<int> set);

} // namespace setfolio
