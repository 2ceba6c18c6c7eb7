// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/sealjudge.h"

#include "core/match/consequences.h"
#include "core/match/signoff.h"
#include "core/match/statebefore.h"
#include "core/rules/makefinding.h"

#include <algorithm>

namespace setfolio {
namespace {

Finding about(FindingKind kind, std::optional<int> set) {
    Finding finding = refused(kind);
    finding.count = set.value_or(0);
    return finding;
}

/// Whether a set or the match can be signed now.
Findings momentToSign(const MatchState& state, std::optional<int> set) {
    if (!canBeSigned(state, set))
        return {about(FindingKind::SignedTooEarly, set)};
    return isSealed(state, set) ? Findings{about(FindingKind::IsSealed, set)} : Findings{};
}

/// The rulebook's order is kept when everybody before has signed or was left unsigned; the two captains, or coaches,
/// sign in either order, and who is not asked may sign at any time.
Findings againstOrder(const MatchState& state, std::optional<int> set, const Signatory& who) {
    const std::vector<Signatory> due = signaturesDue(state, set);
    const auto own = std::ranges::find(due, who);
    const auto first = own == due.end() ? own : std::ranges::find(due, own->role, &Signatory::role);
    if (own == due.end() || first == due.begin())
        return {};
    Finding finding = unlawful(FindingKind::SignedOutOfOrder, "signing-order", who.team);
    finding.count = static_cast<int>(first - due.begin());
    return {finding};
}

bool isSignOff(const Entry& entry) {
    return std::holds_alternative<Signed>(entry) || std::holds_alternative<LeftUnsigned>(entry) ||
           std::holds_alternative<Sealed>(entry) || std::holds_alternative<Reopened>(entry);
}

/// What an entry that is part of a sign-off belongs to; nullptr for any other entry.
const SignOff* signOffWith(const MatchState& state, EntryNumber entry) {
    const auto found = std::ranges::find_if(state.signOffs, [entry](const SignOff& signOff) {
        return signOff.seal == entry || signOff.reopened == entry ||
               std::ranges::find(signOff.signatures, entry, &SignatureGiven::entry) != signOff.signatures.end();
    });
    return found == state.signOffs.end() ? nullptr : &*found;
}

/// The number of the set on whose sheet an entry stands; none for what belongs to the match.
std::optional<int> setOf(std::span<const Recorded> entries, EntryNumber number) {
    const MatchState state = stateBefore(entries, number);
    if (state.sets.empty())
        return std::nullopt;
    return setOfEntry(state, entries[number.value - 1].entry);
}

std::vector<Recorded> with(std::span<const Recorded> entries, const Entry& entry, const std::optional<Placed>& placed) {
    std::vector<Recorded> more(entries.begin(), entries.end());
    more.push_back({EntryNumber(static_cast<std::uint32_t>(entries.size() + 1)), {}, entry, std::nullopt, placed});
    return more;
}

/// The first sealed set that would not be as it was.
Findings againstChange(const MatchState& now, const MatchState& then) {
    for (std::size_t index = 0; index < now.sets.size(); ++index) {
        const SetState& set = now.sets[index];
        const bool ended = set.ended && isSealed(now, set.number);
        if (ended && (index >= then.sets.size() || then.sets[index] != set))
            return {about(FindingKind::IsSealed, set.number)};
    }
    return {};
}

/// A signature that is not sealed yet may be struck; a seal is only reopened, and what was reopened stays so.
Findings againstStrikingSignOff(const SignOff& signOff) {
    return signOff.seal ? Findings{about(FindingKind::IsSealed, signOff.set)} : Findings{};
}

} // namespace

Findings judgeSigned(const MatchState& state, const Signed& given) {
    Findings findings = momentToSign(state, given.set);
    return findings.empty() ? againstOrder(state, given.set, given.who) : findings;
}

Findings judgeLeftUnsigned(const MatchState& state, const LeftUnsigned& left) {
    Findings findings = momentToSign(state, left.set);
    if (findings.empty() && left.reason.trimmed().isEmpty())
        findings.push_back(about(FindingKind::ReasonMissing, left.set));
    return findings.empty() ? againstOrder(state, left.set, left.who) : findings;
}

Findings judgeSealed(const MatchState& state, const Sealed& sealed) {
    Findings findings = momentToSign(state, sealed.set);
    const std::size_t due = findings.empty() ? signaturesDue(state, sealed.set).size() : 0;
    if (due > 0) {
        findings.push_back(about(FindingKind::SignaturesMissing, sealed.set));
        findings.back().limit = static_cast<int>(due);
    }
    return findings;
}

Findings judgeReopened(const MatchState& state, const Reopened& reopened) {
    if (!isSealed(state, reopened.set))
        return {about(FindingKind::NotSealed, reopened.set)};
    const bool named = state.opened->namesLeftOut || !reopened.name.trimmed().isEmpty();
    const bool told = named && !reopened.reason.trimmed().isEmpty();
    return told ? Findings{} : Findings{about(FindingKind::ReasonMissing, reopened.set)};
}

namespace {

/// A forfeit of an earlier set changes that set, and perhaps those after it.
Findings againstForfeit(const MatchState& state, const Forfeit& forfeit) {
    const bool anySealed =
        std::ranges::any_of(state.signOffs, [](const SignOff& signOff) { return signOff.seal.has_value(); });
    return anySealed ? againstChange(state, apply(state, {EntryNumber(state.last.value + 1), {}, forfeit, {}, {}}))
                     : Findings{};
}

} // namespace

Findings againstSeals(const MatchState& state, const Entry& entry) {
    if (isSignOff(entry) || std::holds_alternative<MatchClosed>(entry) || std::holds_alternative<Strike>(entry))
        return {};
    if (isSealed(state, std::nullopt))
        return {about(FindingKind::IsSealed, std::nullopt)};
    if (const auto* forfeit = std::get_if<Forfeit>(&entry); forfeit && forfeit->earlier)
        return againstForfeit(state, *forfeit);
    const SetState& set = state.set();
    return set.ended && isSealed(state, set.number) ? Findings{about(FindingKind::IsSealed, set.number)} : Findings{};
}

Findings againstSeals(std::span<const Recorded> entries, const Entry& entry, const std::optional<Placed>& placed) {
    const auto* strike = std::get_if<Strike>(&entry);
    if (!strike && !placed)
        return {};
    const EntryNumber target = strike ? strike->target : placed->target;
    const MatchState now = fold(entries);
    if (std::ranges::none_of(now.signOffs, [](const SignOff& signOff) { return signOff.seal.has_value(); }))
        return {};
    if (isSealed(now, std::nullopt))
        return {about(FindingKind::IsSealed, std::nullopt)};
    if (const SignOff* signOff = signOffWith(now, target))
        return againstStrikingSignOff(*signOff);
    const std::optional<int> set = setOf(entries, target);
    if (set && isSealed(now, *set))
        return {about(FindingKind::IsSealed, *set)};
    return againstChange(now, fold(with(entries, entry, placed)));
}

} // namespace setfolio
