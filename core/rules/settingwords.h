// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The words that stand in a rulebook's file for the values of its enums, in the order of the enum.
#pragma once

#include "core/rules/rulebook.h"

#include <array>

namespace setfolio {

template <typename Enum>
inline constexpr auto wordsOf = nullptr;

// clang-format off
template <> inline constexpr std::array wordsOf<WrittenOrder>{"serving", "floor"};
template <> inline constexpr std::array wordsOf<LiberoServeRule>{"never", "one-slot"};
template <> inline constexpr std::array wordsOf<Scope>{"set", "match"};
template <> inline constexpr std::array wordsOf<SideChange>{"each-set", "each-set-but-deciding", "after-second-set", "no-change"};
template <> inline constexpr std::array wordsOf<LostSets>{"points-kept", "sets-to-nought"};
template <> inline constexpr std::array wordsOf<Resumption>{"goes-on", "set-replayed"};
template <> inline constexpr std::array wordsOf<ProtestRule>{"no-protest", "before-next-serve", "during-match", "at-once"};
template <> inline constexpr std::array wordsOf<EarlyServe>{"re-serve", "replay"};
template <> inline constexpr std::array wordsOf<WrongServerNotice>{"after-contact", "before-serve"};
template <> inline constexpr std::array wordsOf<TakenBack>{"present-term", "since-fault", "no-points"};
template <> inline constexpr std::array wordsOf<TakenBackUntil>{"next-serve-contact", "whenever-established"};
template <> inline constexpr std::array wordsOf<SubstitutionRule>{"own-slot", "once-out-once-back"};
template <> inline constexpr std::array wordsOf<SecondRequest>{"allowed", "after-rally", "after-rally-or-time-out"};
template <> inline constexpr std::array wordsOf<ExceptionalCount>{"while-any-left", "not-counted"};
template <> inline constexpr std::array wordsOf<ExceptionalLibero>{"last", "last-for-hurt", "never"};
template <> inline constexpr std::array wordsOf<FewerThanSix>{"vacant-place", "incomplete"};
template <> inline constexpr std::array wordsOf<RequestFault>{"delay", "improper-request"};
template <> inline constexpr std::array wordsOf<LateReplacementRule>{"delay-or-fault", "tolerated-then-penalty", "spoken-then-delay"};
template <> inline constexpr std::array wordsOf<IllegalReplacement>{"alignment-fault", "illegal-substitution"};
template <> inline constexpr std::array wordsOf<LiberoReplacedBy>{"same-player", "same-player-or-libero"};
template <> inline constexpr std::array wordsOf<Redesignation>{"no-redesignation", "when-unable", "when-none-left"};
template <> inline constexpr std::array wordsOf<LiberoDisqualified>{"other-libero", "other-or-redesignated"};
template <> inline constexpr std::array wordsOf<LiberoNumberWrong>{"corrected", "no-libero"};
template <> inline constexpr std::array wordsOf<SanctionLevel>{"warning", "penalty", "expulsion", "disqualification"};
template <> inline constexpr std::array wordsOf<CardsShown>{"yellow", "red", "both-together", "both-apart"};
template <> inline constexpr std::array wordsOf<WarnedOnce>{"person", "team"};
template <> inline constexpr std::array wordsOf<CoachSeated>{"not-seated", "after-warning", "after-penalty"};
template <> inline constexpr std::array wordsOf<DelayWritten>{"yud-rud", "columns-d"};
template <> inline constexpr std::array wordsOf<ImproperRequestRule>{"recorded-first", "delay-at-once"};
template <> inline constexpr std::array wordsOf<LateList>{"told", "delay"};
template <> inline constexpr std::array wordsOf<RosterChange>{"free", "penalty-point", "not-allowed"};
template <> inline constexpr std::array wordsOf<UnregisteredPlayer>{"added", "added-with-point", "may-not-play", "points-lost"};
template <> inline constexpr std::array wordsOf<OwnPointMark>{"ringed", "slashed"};
template <> inline constexpr std::array wordsOf<CaptainMark>{"letter-c", "ringed-number", "own-place"};
template <> inline constexpr std::array wordsOf<Signer>{"scorer", "assistant-scorer", "captains", "coaches", "second-referee", "first-referee"};
// clang-format on

} // namespace setfolio
