// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The hand that writes an entry's marks: one overload a kind. While `correction` is set it writes struck marks. Only
/// SetWriter uses it.
#pragma once

#include "core/record/moment.h"
#include "core/record/record.h"

namespace setfolio {

struct Hand {
    SetRecord& record;
    const Moment& before;
    const Rulebook& rulebook;
    const Recorded& recorded;
    const Recorded* correction = nullptr;
    int note = 0; ///< the remark that tells of the entry; 0 for none

    // handrally.cpp
    void operator()(const SetStarted&);
    void operator()(const ServeContacted&);
    void operator()(const RallyWon& rally);
    void operator()(const Replay& replay);
    void operator()(const NoServe&);
    void operator()(const ServerSeen&) {}
    void operator()(const WrongServer& ruling);
    void operator()(const IllegalPlayer& ruling);
    void operator()(const Forfeit& forfeit);

    // handdeadball.cpp
    void operator()(const Substitution& substitution);
    void operator()(const TimeOut& timeOut);
    void operator()(const LiberoServe& serve);
    void operator()(const LiberoIn& in);
    void operator()(const LiberoOut& out);
    void operator()(const LiberoExchange& exchange);
    void operator()(const LiberoRedesignated& redesignated);
    void operator()(const Sanction& sanction);
    void operator()(const DelaySanction& sanction);
    void operator()(const ImproperRequest& request);
    void operator()(const PenaltyPoint& penalty);

    // What leaves no mark: the slots say it, or a remark does.
    void operator()(const PlaceVacated&) {}
    void operator()(const LateReplacement&) {}
    void operator()(const CaptainNamed&) {}
    void operator()(const SheetCompared&) {}
    void operator()(const SidesChanged&) {}
    void operator()(const Suspended&) {}
    void operator()(const Resumed& resumed);
    void operator()(const MatchOpened&) {}
    void operator()(const Roster&) {}
    void operator()(const Officials&) {}
    void operator()(const MatchClosed&) {}
    void operator()(const Toss&) {}
    void operator()(const LineUp&) {}
    void operator()(const SetEnded&) {}
    void operator()(const Remark&) {}
    void operator()(const Strike&) {}
    void operator()(const Signed&) {}
    void operator()(const LeftUnsigned&) {}
    void operator()(const Sealed&) {}
    void operator()(const Reopened&) {}

    /// Crosses the points that a ruling takes back; how many there were.
    int takeBack(const TakenBackPoints& taken);
    /// The winner's last exit score, where the entry has won the set.
    void closeExits();

private:
    // Where the pen stands.
    [[nodiscard]] bool struck() const { return correction != nullptr; }
    [[nodiscard]] Team serving() const { return before.serving; }
    [[nodiscard]] Team others() const { return opponentsOf(before.serving); }
    [[nodiscard]] bool inPlay() const { return before.phase == Phase::ReadyToServe || before.phase == Phase::Rally; }
    [[nodiscard]] int roundOf(Team team, int term) const;
    Term& servedTerm(); ///< the cell that is being served in; before the first serve, the one that will be
    Term& openedTerm(); ///< the cell that opens when the receiving team wins the serve
    Term& termAt(Team team, int round);

    // Marks.
    [[nodiscard]] MarkShape serveShape() const { return before.liberoServes ? MarkShape::Triangle : MarkShape::Ring; }
    Mark& add(Term& term, MarkShape shape, MarkContent content);
    void writeServe(MarkContent content); ///< fills the ring that stands empty for the serve, or draws one
    void writeLost(MarkShape shape);
    void writeRally(Team winner);
    void writeExit(Team team, int total); ///< where the rulebook has exit scores
    void openTerm(bool penalty);
    [[nodiscard]] int nextPlace() const; ///< of the next point in the running score
    void run(Team team, RunningMark mark, bool penalty, int round);
    void givePoint(Team team); ///< a point without a rally
    void writeSanction(SanctionLine line, bool bringsPoint);
    /// Whether a ruling leaves a mark: in play, or where points that won the set are taken back.
    [[nodiscard]] bool maySettle(std::optional<EntryNumber> takenBackFrom) const;
    void moveLibero(LiberoMove move, Team team);
    void cross(Mark& mark) const; ///< a ruling or a forfeit takes it back; the remark tells of it
    void crossPoint(Team team, EntryNumber entry);
    void crossBeyond(Team team, int kept); ///< all points of a set but its first ones
    void crossContact();                   ///< the ring drawn for a wrong server's contact
    void crossLost(Team team);             ///< the rally that a wrong server has lost; a square stands for it
    void crossExits(Team team, int total); ///< exit scores above `total`, which stands in their place
};

} // namespace setfolio
