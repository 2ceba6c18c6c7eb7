// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/judge.h"

#include "core/match/statebefore.h"
#include "core/rules/liberojudge.h"
#include "core/rules/lineupjudge.h"
#include "core/rules/makefinding.h"
#include "core/rules/matchjudge.h"
#include "core/rules/momentjudge.h"
#include "core/rules/rulingjudge.h"
#include "core/rules/sanctionjudge.h"
#include "core/rules/sealjudge.h"
#include "core/rules/servicejudge.h"
#include "core/rules/setjudge.h"
#include "core/rules/substitutionjudge.h"

#include <algorithm>

namespace setfolio {
namespace {

/// What may come after the closing of the match: corrections, and what signs it off.
bool mayFollowClosing(const Entry& entry) {
    return std::holds_alternative<Strike>(entry) || std::holds_alternative<Signed>(entry) ||
           std::holds_alternative<LeftUnsigned>(entry) || std::holds_alternative<Sealed>(entry) ||
           std::holds_alternative<Reopened>(entry);
}

/// Judges an entry in a state whose match is opened; each kind is one overload.
class Judge {
public:
    Judge(const MatchState& state, const QDateTime& time) : m_state(state), m_time(time) {}

    Findings operator()(const MatchOpened&) const { return {refused(FindingKind::MatchAlreadyOpened)}; }
    Findings operator()(const Roster& roster) const { return judgeRoster(m_state, roster); }
    Findings operator()(const Officials&) const { return {}; }
    Findings operator()(const MatchClosed&) const { return judgeClosing(m_state); }
    Findings operator()(const Forfeit& forfeit) const { return judgeForfeit(m_state, forfeit); }
    Findings operator()(const Suspended&) const { return judgeSuspension(m_state); }
    Findings operator()(const Resumed& resumed) const { return judgeResumption(m_state, resumed, m_time); }

    Findings operator()(const Toss& toss) const { return judgeToss(m_state, toss); }
    Findings operator()(const LineUp& lineUp) const { return judgeLineUpNow(m_state, lineUp); }
    Findings operator()(const SetStarted&) const { return judgeStart(m_state); }
    Findings operator()(const SetEnded&) const { return judgeEnd(m_state); }
    Findings operator()(const SidesChanged&) const { return judgeSidesChanged(m_state); }

    Findings operator()(const ServeContacted&) const { return judgeContact(m_state); }
    Findings operator()(const RallyWon&) const { return judgeRally(m_state); }
    Findings operator()(const Replay& replay) const { return judgeReplay(m_state, replay); }
    Findings operator()(const NoServe&) const { return judgeNoServe(m_state); }
    Findings operator()(const ServerSeen& seen) const { return judgeServerSeen(m_state, seen); }
    Findings operator()(const WrongServer& ruling) const { return judgeWrongServer(m_state, ruling); }

    Findings operator()(const IllegalPlayer& ruling) const { return judgeIllegalPlayer(m_state, ruling); }

    Findings operator()(const Substitution& substitution) const { return judgeSubstitution(m_state, substitution); }
    Findings operator()(const PlaceVacated& vacated) const { return judgePlaceVacated(m_state, vacated); }
    Findings operator()(const TimeOut& timeOut) const { return judgeTimeOut(m_state, timeOut); }
    Findings operator()(const CaptainNamed& named) const { return judgeCaptain(m_state, named); }
    Findings operator()(const SheetCompared&) const { return {}; }
    Findings operator()(const Remark&) const { return {}; }

    Findings operator()(const LiberoServe& serve) const { return judgeLiberoServe(m_state, serve); }
    Findings operator()(const LiberoIn& in) const { return judgeLiberoIn(m_state, in); }
    Findings operator()(const LiberoOut& out) const { return judgeLiberoOut(m_state, out); }
    Findings operator()(const LiberoExchange& exchange) const { return judgeLiberoExchange(m_state, exchange); }
    Findings operator()(const LiberoRedesignated& former) const { return judgeRedesignation(m_state, former); }

    Findings operator()(const LateReplacement& late) const { return judgeLateReplacement(m_state, late); }

    Findings operator()(const Sanction& sanction) const { return judgeSanction(m_state, sanction); }
    Findings operator()(const DelaySanction& sanction) const { return judgeDelay(m_state, sanction); }
    Findings operator()(const ImproperRequest& request) const { return judgeImproperRequest(m_state, request); }
    Findings operator()(const PenaltyPoint&) const { return momentForPenalty(m_state); }
    Findings operator()(const Strike&) const { return {}; } // judgeStrike's

    Findings operator()(const Signed& given) const { return judgeSigned(m_state, given); }
    Findings operator()(const LeftUnsigned& left) const { return judgeLeftUnsigned(m_state, left); }
    Findings operator()(const Sealed& sealed) const { return judgeSealed(m_state, sealed); }
    Findings operator()(const Reopened& reopened) const { return judgeReopened(m_state, reopened); }

private:
    const MatchState& m_state;
    const QDateTime& m_time;
};

} // namespace

Findings judge(const MatchState& state, const Entry& entry, const QDateTime& time) {
    const auto* opening = std::get_if<MatchOpened>(&entry);
    if (!state.opened)
        return opening ? judgeOpening(*opening) : Findings{refused(FindingKind::MatchNotOpened)};
    if (Findings findings = againstSeals(state, entry); !findings.empty())
        return findings;
    if (state.closed && !mayFollowClosing(entry))
        return {refused(FindingKind::MatchIsClosed)};
    return std::visit(Judge(state, time), entry);
}

Findings judgeStrike(std::span<const Recorded> entries, const Strike& strike) {
    const std::size_t target = strike.target.value;
    Finding missing{.kind = FindingKind::NoSuchEntry, .count = static_cast<int>(target)};
    if (target < 1 || target > entries.size())
        return {missing};
    const Recorded& struck = entries[target - 1];
    if (std::holds_alternative<MatchOpened>(struck.entry))
        return {refused(FindingKind::CannotBeStruck)};
    return standsIn(entries, strike.target) ? Findings{} : Findings{missing};
}

namespace {

/// Whether corrections have seals to heed: else nobody need look for them.
bool anythingSealed(std::span<const Recorded> entries) {
    return std::ranges::any_of(entries,
                               [](const Recorded& recorded) { return std::holds_alternative<Sealed>(recorded.entry); });
}

} // namespace

Findings judgeNext(std::span<const Recorded> entries, const MatchState& state, const Entry& entry,
                   const std::optional<Placed>& placed, const QDateTime& time) {
    const auto* strike = std::get_if<Strike>(&entry);
    if (!strike && !placed)
        return judge(state, entry, time);
    if (Findings findings = judgeStrike(entries, strike ? *strike : Strike{placed->target, {}}); !findings.empty())
        return findings;
    if (Findings findings = againstSeals(entries, entry, placed); !findings.empty() || strike)
        return findings;
    return judge(stateBefore(entries, placed->target), entry);
}

std::vector<EntryFinding> review(std::span<const Recorded> entries) {
    std::vector<EntryFinding> found;
    const auto note = [&found](const Recorded& recorded, const Findings& findings) {
        for (const Finding& finding : findings)
            found.push_back({recorded.number, finding, recorded.overruled});
    };
    MatchState state;
    for (const TimelineItem& item : timelineOf(entries)) {
        if (!item.stands())
            continue;
        const QDateTime time = item.recorded->placed ? QDateTime() : item.recorded->time;
        note(*item.recorded, judge(state, item.recorded->entry, time));
        state = apply(std::move(state), *item.recorded);
    }
    const bool sealed = anythingSealed(entries);
    for (std::size_t index = 0; index < entries.size(); ++index) {
        const Recorded& recorded = entries[index];
        if (const auto* strike = std::get_if<Strike>(&recorded.entry))
            note(recorded, judgeStrike(entries.first(index), *strike));
        if (sealed)
            note(recorded, againstSeals(entries.first(index), recorded.entry, recorded.placed));
    }
    std::ranges::stable_sort(found, {}, &EntryFinding::entry);
    return found;
}

std::optional<ShirtNumber> proposedOut(const TeamInSet& team, ShirtNumber in) {
    const std::optional<Slot> own = slotOf(team, in);
    if (!own || onCourt(team, *own) == in)
        return std::nullopt;
    return onCourt(team, *own);
}

} // namespace setfolio
