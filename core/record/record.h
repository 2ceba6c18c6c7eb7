// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What stands on the sheet of a set: marks in slots and terms, the running score, counters, remarks, result. No
/// geometry, no millimetres, no sentences: "a ring holding 7, ink 2, struck, note 3".
#pragma once

#include "core/match/state.h"

#include <QDateTime>

#include <optional>
#include <variant>
#include <vector>

namespace setfolio {

/// The shape round a mark's content. A ring stands for every serve; a triangle when the libero serves; a square for a
/// point without a serve.
enum class MarkShape : std::uint8_t { None, Ring, Triangle, Square };

/// The inks, taken in turn by round; three of them as a rule.
enum class Ink : std::uint8_t { First, Second, Third, Fourth };
/// Of so many `inks` as the rulebook wants, from 1 to 4.
[[nodiscard]] Ink inkOfRound(int round, int inks);

struct Awaiting { ///< the serve is contacted, the rally not decided: an empty ring
    bool operator==(const Awaiting&) const = default;
};
struct ServedPoint { ///< the team's new total, won on its own serve, or by a penalty in a square
    int total = 0;
    bool operator==(const ServedPoint&) const = default;
};
struct OpeningPoint { ///< the total that opens a term, won on the opponents' serve: no shape
    int total = 0;
    bool operator==(const OpeningPoint&) const = default;
};
struct RallyLost { ///< R
    bool operator==(const RallyLost&) const = default;
};
struct ServedAgain { ///< RS
    bool operator==(const ServedAgain&) const = default;
};
struct PenaltyLetter { ///< P, before the number it belongs to
    bool operator==(const PenaltyLetter&) const = default;
};
struct ScoreAt { ///< a moment's score, as one team sees it
    int own = 0;
    int opponents = 0;
    bool operator==(const ScoreAt&) const = default;
};
struct SubstitutionMark { ///< S in/out of the serving team, Sx in/out of its opponents
    bool opponents = false;
    ShirtNumber in;
    ShirtNumber out;
    std::optional<ScoreAt> score; ///< where the rulebook has it written
    bool operator==(const SubstitutionMark&) const = default;
};
struct TimeOutMark { ///< T of the serving team, Tx of its opponents
    bool opponents = false;
    bool operator==(const TimeOutMark&) const = default;
};
struct ExitScore { ///< the team's total when its server loses the serve, or wins the set
    int total = 0;
    bool operator==(const ExitScore&) const = default;
};
using MarkContent = std::variant<Awaiting, ServedPoint, OpeningPoint, RallyLost, ServedAgain, PenaltyLetter,
                                 SubstitutionMark, TimeOutMark, ExitScore>;

struct Mark {
    MarkShape shape = MarkShape::None;
    MarkContent content;
    EntryNumber entry;      ///< the entry that wrote it (the result's, once a ring is filled)
    bool struck = false;    ///< a correction has struck it; it stays legible
    bool takenBack = false; ///< a point of a wrong server, or her ring: crossed with an X
    int note = 0;           ///< the number of the remark that tells of it; 0 for none
    bool operator==(const Mark&) const = default;
};

/// A term of service: one cell of the sheet, in the slot's row and the round's column.
struct Term {
    Slot slot;
    int round = 1;
    bool crossed =
        false; ///< written order by floor position: the receiving team's first cell of slot I, a cross and nothing else
    std::vector<Mark> marks;
    bool operator==(const Term&) const = default;
};

/// How a number of the running score is marked: ringed when won on the own serve, or slashed where the rulebook wants
/// that; slashed on the opponents'; a triangle where the libero served; a square when it was given for a forfeit.
enum class RunningMark : std::uint8_t { Ring, Slash, Triangle, Square };

/// A number in the running score.
struct RunningPoint {
    int place = 1; ///< in the order of play, over both teams
    int total = 0;
    int opponents = 0; ///< the opponents' score at that moment
    RunningMark mark = RunningMark::Ring;
    bool penalty = false; ///< awarded without a rally: a small P beside the mark
    int round = 1;        ///< the round of the term it is written in: its ink
    EntryNumber entry;
    bool takenBack = false; ///< crossed with an X; the number may be won again
    bool operator==(const RunningPoint&) const = default;
};

/// A crossed number of the substitution counter.
struct CountedSubstitution {
    int round = 1;
    EntryNumber entry;
    bool operator==(const CountedSubstitution&) const = default;
};

/// A replacement of the libero, for the tracking sheet.
struct LiberoMove {
    enum class How : std::uint8_t { In, Out, Exchange };
    How how = How::In;
    ShirtNumber libero; ///< who came or, for Out, who left
    ShirtNumber other;  ///< the player of the six, or for Exchange the libero who left
    Slot slot;          ///< whose place it is
    PerTeam<int> score; ///< at that moment
    EntryNumber entry;
    bool operator==(const LiberoMove&) const = default;
};

/// A row of the order of service.
struct SlotRecord {
    std::vector<Standing> stood;       ///< the starter first; all but the last are struck; an invalid number: vacant
    std::optional<ShirtNumber> libero; ///< she has served in this slot
    bool operator==(const SlotRecord&) const = default;
};

struct TeamRecord {
    bool lineUpGiven = false;
    std::array<SlotRecord, 6> slots;
    std::optional<ShirtNumber> captain;
    std::vector<ShirtNumber> liberos;
    std::vector<Term> terms;           ///< in the order they were begun
    std::vector<RunningPoint> running; ///< in the order they were won: 1, 2, 3 ..., those taken back among them
    std::vector<TimeOutTaken> timeOuts;
    std::vector<CountedSubstitution> substitutions;
    std::vector<LiberoMove> liberoMoves;
    bool operator==(const TeamRecord&) const = default;
};

/// Why a line stands among the remarks.
struct StruckNote { ///< an entry was struck; what it was
    Recorded struck;
    std::optional<Team> team; ///< the team whose cell the mark stands in
    std::optional<Slot> slot;
    int total = 0; ///< the number in the struck mark, 0 for none
    int rally = 0; ///< the number of the rally in the set
    QString reason;
    bool operator==(const StruckNote&) const = default;
};
struct OverruledNote { ///< recorded on the referee's word against a finding
    Recorded recorded;
    PerTeam<int> score;
    bool operator==(const OverruledNote&) const = default;
};
struct PenaltyNote { ///< a penalty point and its reason
    PenaltyPoint point;
    PerTeam<int> score; ///< after it
    bool operator==(const PenaltyNote&) const = default;
};
struct PutInNote { ///< an entry that a correction has put in before another
    Recorded recorded;
    PerTeam<int> score; ///< at its place
    int rally = 0;
    bool operator==(const PutInNote&) const = default;
};
struct WrongServerNote { ///< who served, who should have, and how many points were taken back
    WrongServer ruling;
    ShirtNumber right; ///< invalid where the place is vacant
    int takenBack = 0;
    PerTeam<int> score; ///< after it
    bool operator==(const WrongServerNote&) const = default;
};
struct EventNote { ///< an entry that is told among the remarks
    Recorded recorded;
    PerTeam<int> score; ///< before it; of a ruling, after it
    int takenBack = 0;  ///< points, by a ruling
    bool operator==(const EventNote&) const = default;
};
struct ReopenedNote { ///< the seal that stood on the sheet is void
    Reopened reopened;
    QString digest;     ///< of the void seal
    PerTeam<int> score; ///< at the end of the set
    bool operator==(const ReopenedNote&) const = default;
};
struct WrittenNote { ///< the scorer's own sentence
    QString text;
    PerTeam<int> score;
    bool operator==(const WrittenNote&) const = default;
};
using NoteContent = std::variant<StruckNote, OverruledNote, PenaltyNote, PutInNote, WrongServerNote, EventNote,
                                 ReopenedNote, WrittenNote>;

struct Note {
    int number = 1; ///< from 1 in each set
    NoteContent content;
    EntryNumber entry;
    bool struck = false; ///< a written remark that a correction has struck
    bool operator==(const Note&) const = default;
};

/// A line of the sanctions: a card, a delay, or an improper request.
struct SanctionLine {
    Team team = Team::Home;
    std::optional<Member> who;                                    ///< none: the team
    std::optional<std::variant<SanctionLevel, DelayLevel>> level; ///< none: an improper request
    int set = 1;
    PerTeam<int> score; ///< before any point it brings
    QString reason;
    EntryNumber entry;
    bool struck = false;
    bool operator==(const SanctionLine&) const = default;
};

/// Where the pen is now: the cell being served in, and the slot that serves next for the other team.
struct LivePlace {
    Team serving = Team::Home;
    Slot slot;
    int round = 1;
    Slot nextOfOthers;
    bool contacted = false; ///< the empty ring has been drawn
    bool operator==(const LivePlace&) const = default;
};

struct SetResult {
    Team winner = Team::Home;
    bool confirmed = false; ///< by SetEnded
    bool operator==(const SetResult&) const = default;
};

/// Somebody's signature, or why it is missing.
struct SignatureRecord {
    Signatory who;
    std::variant<Signed, LeftUnsigned> how;
    EntryNumber entry;
    QDateTime at; ///< recorded, UTC
    bool operator==(const SignatureRecord&) const = default;
};
struct SealRecord {
    QString digest;
    SealOf of = SealOf::ThisFile;
    EntryNumber entry;
    QDateTime at; ///< recorded, UTC
    bool operator==(const SealRecord&) const = default;
};
struct ReopeningRecord {
    QString name;
    QString reason;
    EntryNumber entry;
    QDateTime at; ///< recorded, UTC
    bool operator==(const ReopeningRecord&) const = default;
};
/// A sign-off of a set or the match. Once reopened it is void, and is struck but stays legible.
struct SignOffRecord {
    std::optional<int> set; ///< none: the match
    std::vector<SignatureRecord> signatures;
    std::optional<SealRecord> seal;
    std::optional<ReopeningRecord> reopened;
    bool operator==(const SignOffRecord&) const = default;
};

/// The officials and rosters of a sheet.
struct SheetPeople {
    std::vector<Official> officials;
    PerTeam<Roster> rosters;
    bool operator==(const SheetPeople&) const = default;
};

struct SetRecord {
    int number = 1;
    std::optional<Team> servesFirst;
    std::optional<Team> left;
    bool started = false;
    QTime startedAt;
    QTime endedAt; ///< invalid until the set has ended
    PerTeam<TeamRecord> teams;
    PerTeam<int> score;
    std::vector<SanctionLine> sanctions;
    std::vector<Note> notes;
    std::optional<LivePlace> live; ///< while the set is in play
    std::optional<SetResult> result;
    bool cancelled = false; ///< does not count: broken off and played again on a sheet of its own, or in vain
    bool inVain = false;    ///< a forfeit of an earlier set decided the match before it
    int inks = 3;           ///< taken in turn, round by round
    std::vector<SignOffRecord>
        signOffs;                      ///< that its sheet shows: its own, and the match's where that is signed for all
    std::optional<SheetPeople> people; ///< as they were when the set was sealed; none: the heading's
    bool operator==(const SetRecord&) const = default;
};

/// What the sheets of all sets have in common.
struct MatchHeading {
    MatchOpened opened; ///< names, codes, best of, rulebook
    std::vector<Official> officials;
    PerTeam<Roster> rosters;
    PerTeam<int> setsWon;
    std::vector<PerTeam<int>> setScores; ///< as the result of the match states them
    std::optional<Forfeit> forfeit;      ///< of the match
    bool operator==(const MatchHeading&) const = default;
};

struct MatchRecord {
    MatchHeading heading;
    std::vector<SetRecord> sets; ///< the sets begun (toss or line-up given), in order; a cancelled one has its own
    std::vector<SignOffRecord> signOffs; ///< in the order they were begun, void ones among them
    bool operator==(const MatchRecord&) const = default;
};

} // namespace setfolio
