// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Folds one entry into a state that is its own; each kind is one overload. Only fold.h's apply uses it.
#pragma once

#include "core/match/entry.h"
#include "core/match/state.h"

namespace setfolio {

class Applier {
public:
    Applier(MatchState& state, const Recorded& recorded)
        : m_state(state),
          m_number(recorded.number),
          m_time(recorded.time),
          m_placed(recorded.placed.has_value()) {}

    // applymatch.cpp, the forfeit in applyforfeit.cpp
    void operator()(const MatchOpened& opened);
    void operator()(const Roster& roster);
    void operator()(const Officials& officials);
    void operator()(const MatchClosed&);
    void operator()(const Forfeit& forfeit);
    void operator()(const Suspended&);
    void operator()(const Resumed& resumed);

    // applyset.cpp
    void operator()(const Toss& toss);
    void operator()(const LineUp& lineUp);
    void operator()(const SetStarted& started);
    void operator()(const SetEnded& ended);
    void operator()(const SidesChanged&);

    // applyrally.cpp
    void operator()(const ServeContacted&);
    void operator()(const RallyWon& rally);
    void operator()(const Replay& replay);
    void operator()(const NoServe&);
    void operator()(const ServerSeen& seen);
    void operator()(const WrongServer& ruling);
    void operator()(const IllegalPlayer& ruling);

    // applydeadball.cpp
    void operator()(const Substitution& substitution);
    void operator()(const PlaceVacated& vacated);
    void operator()(const TimeOut& timeOut);
    void operator()(const CaptainNamed& named);
    void operator()(const Sanction& sanction);
    void operator()(const DelaySanction& sanction);
    void operator()(const ImproperRequest& request);
    void operator()(const SheetCompared&) {}
    void operator()(const PenaltyPoint& penalty);
    void operator()(const Remark&) {}
    void operator()(const Strike&) {}

    // applysignoff.cpp
    void operator()(const Signed& given);
    void operator()(const LeftUnsigned& left);
    void operator()(const Sealed& sealed);
    void operator()(const Reopened& reopened);

    // applylibero.cpp
    void operator()(const LiberoServe& serve);
    void operator()(const LiberoIn& in);
    void operator()(const LiberoOut& out);
    void operator()(const LiberoExchange& exchange);
    void operator()(const LiberoRedesignated& redesignated);
    void operator()(const LateReplacement& late);

private:
    [[nodiscard]] SetState& set() { return m_state.sets.back(); }
    [[nodiscard]] bool inPlay() const;
    /// Writes the line-up into slots I to VI once it is known who serves first.
    void assignSlots(Team team);
    /// The liberos of the set: the line-up's, or, where it names none, those named for the match.
    void nameLiberos(Team team);
    /// Who has won a set as its points stand.
    [[nodiscard]] std::optional<Team> winnerOf(const SetState& set) const;
    /// The points on the sheet have changed: whether the set is won.
    void decide();
    /// The points that a team needs to win a set, because its opponents forfeit it.
    void giveWhatIsNeeded(SetState& set, Team winner);
    void forfeitEarlier(const Forfeit& forfeit);
    /// A set has another winner: the match may have another course.
    void followNewWinner();
    void beginSetAfter(const SetState& previous);
    void serveMade();
    void endInterruption();
    void award(Team team, PointBy by);
    void giveServeTo(Team team);
    void takeBack(Team team, EntryNumber first);
    /// Whether a ruling means something here: in play, or where points that won the set are taken back.
    [[nodiscard]] bool maySettle(std::optional<EntryNumber> takenBackFrom) const;
    /// The server of the team's last term was another, or it has not served yet: unless a point won on serve in that
    /// term stands, no libero has served in it. Source for the slot she is bound to: NCAA Women's Volleyball 2012 and
    /// 2013 Rules, Libero tracking sheet instructions (where she serves).
    void unserve(Team team);
    /// The next replacement of a libero of the team need not wait for a rally.
    void lieRallyBehind(TeamInSet& team);
    /// The player came in by an illegal substitution: it does not count where the rulebook says so, and whom it
    /// replaced is not out for good.
    void ruleIllegal(TeamInSet& team, ShirtNumber number);
    void settle(Team team, std::optional<EntryNumber> takenBackFrom);
    /// A point without a rally: now, or with the start of the set.
    void givePenaltyPoint(Team team);
    void give(SanctionGiven given, bool bringsPoint);
    /// A substitution belongs to a request; another request of the same interruption is another one. One that is forced
    /// on a team is no request of hers.
    void noteRequest(const Substitution& substitution);
    SignOff& signOffBegun(std::optional<int> set); ///< the one in force, or a new one
    void answer(std::optional<int> set, const Signatory& who);
    void moveLibero(TeamInSet& team, std::optional<LiberoOnCourt> libero);

    MatchState& m_state;
    EntryNumber m_number;
    QDateTime m_time;
    bool m_placed; ///< a correction: its time is not that of the play
};

} // namespace setfolio
