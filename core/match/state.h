// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the entries add up to: a plain value, made only by fold.h.
#pragma once

#include "core/match/entry.h"

#include <array>
#include <optional>
#include <vector>

namespace setfolio {

/// Where the match stands, from the scorer's point of view.
enum class Phase : std::uint8_t {
    NotOpened,    ///< no entry yet
    BeforeSet,    ///< toss and line-ups are awaited
    ReadyToServe, ///< dead ball: the next serve is awaited
    Rally,        ///< the serve has been contacted, the result is awaited
    SetWon,       ///< the score decides the set; the second referee's confirmation is awaited
    MatchWon,     ///< the last set has ended, or a team has forfeited; closing the match is awaited
    Suspended,    ///< play is broken off; resuming it is awaited
    MatchClosed,
};

/// How a point came.
enum class PointBy : std::uint8_t {
    OwnServe,
    OpponentsServe,
    Penalty,
    Forfeit, ///< given to the opponents of a team that forfeits
};

/// A point: whose, how, the entry that brought it, and the term of service in which it came.
struct Point {
    Team team = Team::Home;
    PointBy by = PointBy::OwnServe;
    EntryNumber entry;
    Team serving = Team::Home; ///< who served when it came
    int term = 0;              ///< which term of that team it was, from 1; 0 for a point given for a forfeit
    int completed = 0;         ///< rallies completed in the set, this one included
    bool operator==(const Point&) const = default;
};

/// A time-out taken, with the score at that moment.
struct TimeOutTaken {
    int own = 0;
    int opponents = 0;
    EntryNumber entry;
    bool operator==(const TimeOutTaken&) const = default;
};

/// A time-out or a substitution that a team asked for and got.
struct RequestGranted {
    Team team = Team::Home;
    EntryNumber entry;
    int completed = 0; ///< rallies completed in the set before it
    bool operator==(const RequestGranted&) const = default;
};

/// A number that has stood in a slot, and since which entry (the line-up's or the substitution's). An invalid number:
/// the place has been vacant since then.
struct Standing {
    ShirtNumber number;
    EntryNumber since;
    bool operator==(const Standing&) const = default;
};

/// A libero on court: in whose slot she stands.
struct LiberoOnCourt {
    ShirtNumber libero;
    Slot slot;
    bool operator==(const LiberoOnCourt&) const = default;
};

/// An exceptional substitution made: who left and may not come back.
struct ExceptionalOut {
    ShirtNumber out;
    EntryNumber entry;
    bool operator==(const ExceptionalOut&) const = default;
};

/// A team in one set.
struct TeamInSet {
    std::optional<LineUp> lineUp;
    std::array<std::vector<Standing>, 6>
        slots; ///< who has stood in slot I to VI, in order; the last is on court. Empty before the line-up
    int points = 0;
    std::vector<EntryNumber> counted; ///< the substitutions that count against the limit, in order
    std::vector<TimeOutTaken> timeOuts;
    int termsBegun = 0; ///< terms of service begun, this one included
    Slot
        nextServer; ///< while the team serves: the server's slot; else the slot that serves when it wins the serve back
    int reServes = 0;                         ///< in the present term
    std::optional<ShirtNumber> liberoServing; ///< the libero who serves the present term in the slot player's place
    std::optional<Slot> liberoSlot;           ///< the one slot a libero has served in during this set
    int liberoSlotSince = 0;                  ///< the term in which she first did
    std::optional<ShirtNumber> liberoServed;  ///< who served in it last
    std::vector<ShirtNumber> liberos;         ///< the line-up's, as redesignated since
    std::vector<ShirtNumber> liberosBefore;   ///< whom line-ups named that a later one of the set has replaced
    std::optional<LiberoOnCourt> libero;      ///< who is on court now, where a record of replacements is kept
    std::optional<int> liberoMoved;           ///< rallies completed in the set when a replacement was last made
    std::vector<ShirtNumber> liberosGivenUp;  ///< who were liberos of the set and could not go on
    std::optional<ShirtNumber> captain;       ///< named in the course of the set
    std::vector<ExceptionalOut> exceptionalOuts;
    std::vector<Standing> ruledIllegal; ///< who came in by substitutions that were ruled illegal
    bool requested = false;             ///< a substitution request of hers was granted in this interruption
    bool barred = false;                ///< sanctioned for delay in this interruption
    bool operator==(const TeamInSet&) const = default;
};

/// One set.
struct SetState {
    int number = 1;
    std::optional<Team> servesFirst; ///< unknown until the toss where there is one
    std::optional<Team> left;        ///< the team left of the scorer, likewise
    PerTeam<TeamInSet> teams;
    bool started = false;
    QTime startedAt;
    Team serving = Team::Home;            ///< who serves next, or now; has a meaning once servesFirst is known
    bool contacted = false;               ///< the serve of the present rally has been contacted
    int termContacts = 0;                 ///< serves contacted in the present term of service, but for dropped tosses
    std::optional<Replay> again;          ///< why the coming serve repeats one; none when it does not
    std::optional<ShirtNumber> seen;      ///< the number seen at the service line in the present rally
    std::optional<Team> requesting;       ///< whose substitution request is being granted, one after another
    std::vector<RequestGranted> requests; ///< all of the set, in order
    int rallies = 0;                      ///< rallies decided
    int completed = 0;                    ///< rallies completed, points for a sanction among them
    std::optional<PerTeam<int>> sidesChangedAt; ///< the score when the teams changed sides in the course of the set
    bool cancelled = false;                     ///< does not count: played again, as the next of the list, or in vain
    bool inVain = false;                        ///< a forfeit of an earlier set has decided the match before it
    std::optional<Forfeit> forfeit;             ///< a team has forfeited this set
    std::vector<Point> points;
    std::optional<Team> winner; ///< as the score says, whether confirmed or not
    bool ended = false;
    QTime endedAt;
    QDateTime endRecorded; ///< when its end was recorded, UTC
    bool operator==(const SetState&) const = default;
};

/// A sanction that stands, of misconduct or of delay.
struct SanctionGiven {
    Team team = Team::Home;
    std::optional<Member> who; ///< none: the team, for delay
    std::variant<SanctionLevel, DelayLevel> level;
    int set = 1;        ///< the number of the set it counts in
    PerTeam<int> score; ///< at that moment
    EntryNumber entry;
    bool operator==(const SanctionGiven&) const = default;
};

struct ImproperRequestMade {
    Team team = Team::Home;
    int set = 1;
    EntryNumber entry;
    bool operator==(const ImproperRequestMade&) const = default;
};

/// A late replacement of a libero that was let pass.
struct LateReplacementMade {
    Team team = Team::Home;
    int set = 1;
    EntryNumber entry;
    bool operator==(const LateReplacementMade&) const = default;
};

/// Who has signed, or was left unsigned, and the entry that says it.
struct SignatureGiven {
    Signatory who;
    EntryNumber entry;
    bool operator==(const SignatureGiven&) const = default;
};

/// A sign-off of a set or the match: being signed, then sealed, then perhaps void.
struct SignOff {
    std::optional<int> set; ///< none: the match
    std::vector<SignatureGiven> signatures;
    std::optional<EntryNumber> seal;
    std::optional<EntryNumber> reopened; ///< the entry that made it void
    bool operator==(const SignOff&) const = default;
};

struct MatchState {
    std::optional<MatchOpened> opened;
    PerTeam<Roster> rosters{{Team::Home, {}, {}}, {Team::Visitors, {}, {}}};
    Officials officials;
    std::vector<SetState> sets; ///< the last one is the present set; none before the match is opened
    std::vector<SanctionGiven> sanctions;
    std::vector<ImproperRequestMade> improperRequests;
    std::vector<LateReplacementMade> lateReplacements;
    std::vector<Team> pointsDue;    ///< points for what was sanctioned before the set: they come with its start
    std::optional<Forfeit> forfeit; ///< of the match
    bool suspended = false;
    QDateTime suspendedAt; ///< when that was recorded, UTC
    bool closed = false;
    std::vector<SignOff> signOffs; ///< in the order they were begun, those void among them; see signoff.h
    EntryNumber last;              ///< the newest entry that was folded in
    bool operator==(const MatchState&) const = default;

    [[nodiscard]] const Rulebook& rulebook() const; ///< the match must be opened
    [[nodiscard]] const SetState& set() const;      ///< the present set; the match must be opened
};

// Questions to a state; each is O(1) or O(6).

[[nodiscard]] Phase phaseOf(const MatchState& state);
/// The number of sets that wins the match.
[[nodiscard]] int setsNeeded(const MatchOpened& opened);
/// Sets won so far; a set counts when it has been ended, or given to the opponents of a team that forfeits the match.
[[nodiscard]] PerTeam<int> setsWon(const MatchState& state);
/// The points of each set as the result of the match states them: sets played, and those given for a forfeit.
[[nodiscard]] std::vector<PerTeam<int>> setScores(const MatchState& state);
/// Whether set `number` is the last one possible.
[[nodiscard]] bool isDecidingSet(const MatchOpened& opened, int number);
[[nodiscard]] bool isDecidingSet(const MatchState& state, int number);
/// Points needed to win set `number`, the margin apart.
[[nodiscard]] int pointsToWin(const MatchOpened& opened, int number);
[[nodiscard]] int pointsToWin(const MatchState& state, int number);
/// The winner of a set that stands at this score, if the rulebook says it is won. Source: the rulebook's settings.
[[nodiscard]] std::optional<Team> winnerAt(const Rulebook& rulebook, int pointsToWin, const PerTeam<int>& points);

/// The number on court in a slot (a libero in her place not counted); invalid before the line-up and where the place is
/// vacant.
[[nodiscard]] ShirtNumber onCourt(const TeamInSet& team, Slot slot);
/// Whether the place of a slot is vacant.
[[nodiscard]] bool isVacant(const TeamInSet& team, Slot slot);
/// The number that left a vacant place; invalid if the place is taken.
[[nodiscard]] ShirtNumber vacatedBy(const TeamInSet& team, Slot slot);
/// The number that a substitution takes out of a slot: the one on court or, where the place is vacant, the one that
/// left it. Invalid before the line-up.
[[nodiscard]] ShirtNumber toLeave(const TeamInSet& team, Slot slot);
/// The slot on whose place a number stands, or would stand if no libero did; none if it is not one of the six.
[[nodiscard]] std::optional<Slot> slotOnCourt(const TeamInSet& team, ShirtNumber number);
/// The slot from which a number is to go out: where it stands, or which it left vacant.
[[nodiscard]] std::optional<Slot> slotToLeave(const TeamInSet& team, ShirtNumber number);
/// The substitutions of the set that count against the limit.
[[nodiscard]] int substitutionsOf(const TeamInSet& team);
/// Whether who stands or stood so came in by a substitution that was ruled illegal.
[[nodiscard]] bool isRuledIllegal(const TeamInSet& team, const Standing& standing);
/// The slot a number is bound to, because it stands or has stood there in this set, and lawfully if it has left.
[[nodiscard]] std::optional<Slot> slotOf(const TeamInSet& team, ShirtNumber number);
/// The number on court in a court position now.
[[nodiscard]] CourtPosition positionOf(const SetState& set, Team team, Slot slot);
[[nodiscard]] Slot slotAt(const SetState& set, Team team, CourtPosition position);
/// Whether the coming serve repeats one in this way.
[[nodiscard]] bool isAgain(const SetState& set, Again how);
/// Who serves now or next: the libero where she serves in the slot player's place. Invalid where the place is vacant.
[[nodiscard]] ShirtNumber serverOf(const SetState& set);
/// The libero who serves now or next; none when it is a player of the six.
[[nodiscard]] std::optional<ShirtNumber> liberoAtServe(const SetState& set);
/// The slot that serves now or next for `team`, whether or not it has the serve.
[[nodiscard]] Slot servingSlot(const SetState& set, Team team);
/// The round, from 1, in which a team's term number `term` (from 1) is written.
[[nodiscard]] int roundOfTerm(const Rulebook& rulebook, bool servesFirst, int term);
/// The playing captain of the set: the one named last, else the line-up's, else the roster's; none when nobody named
/// one.
[[nodiscard]] std::optional<ShirtNumber> captainOf(const MatchState& state, const TeamInSet& team, Team which);
/// The liberos of the set, as the line-up names them and as redesignated since.
[[nodiscard]] const std::vector<ShirtNumber>& liberosOf(const TeamInSet& team);
/// The roster's line for a number; nullptr if it has none.
[[nodiscard]] const RosterPlayer* playerOf(const MatchState& state, Team team, ShirtNumber number);

} // namespace setfolio
