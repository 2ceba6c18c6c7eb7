// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/table/papermarks.h"

namespace setfolio::testing {

namespace {

// Sources: "circle" is the notation with rings of the NCAA women's scoresheet instructions; "Iowa" the libero tracking
// instructions of the Iowa Girls High School Athletic Union; what else is written is common practice at a table.

constexpr int ring = 1;       // a ring, or the libero's triangle, for the serve (circle)
constexpr int number = 1;     // a total in the row of the server
constexpr int lost = 1;       // R in the ring (circle)
constexpr int running = 1;    // the total slashed in the running score (circle)
constexpr int box = 1;        // the square of a rally lost without a lawful serve (circle)
constexpr int score = 2;      // both teams' points
constexpr int letter = 1;     // S, T, RS, C, P, a card's letter
constexpr int crossed = 1;    // a number, a counter or a ring crossed off
constexpr int teamAndSet = 2; // of a line in a box
constexpr int time = 1;

// The tracking sheet shows the six on court at any time (Iowa).
constexpr int trackedChange = crossed + number; // who leaves crossed off, who comes written; for a libero, L

int rally(const SetState& set, Team by) {
    const bool firstOfLibero = liberoAtServe(set) && !set.teams[set.serving].liberoSlot;
    const int triangles = firstOfLibero ? 2 : 0; // round the slot's numeral, on both sheets
    return (by == set.serving ? ring + number + running : ring + lost + number + running) + triangles;
}

int lineUp(const LineUp& lineUp) {
    const int six = 6 * number;
    const int liberos = static_cast<int>(lineUp.liberos.size()) * number;
    return six + letter + liberos + six + liberos; // on both sheets, the captain on one
}

int substitution(const Substitution& substitution) {
    const int counter = substitution.kind == SubstitutionKind::Regular ? crossed : 0;
    const int line = letter + number + number; // S in/out in the row of the server
    return line + crossed + number + counter + trackedChange;
}

int ruling(const MatchState& before, const WrongServer& ruling) {
    int points = 0;
    for (const Point& point : before.set().points)
        points += point.team == ruling.team && ruling.takenBackFrom && point.entry >= *ruling.takenBackFrom ? 1 : 0;
    const int takenBack = points * (crossed + crossed);    // in the row, in the running score
    const int line = number + number + teamAndSet + score; // who served, who should have
    return ring + box + lost + number + running + takenBack + line;
}

int sanction(bool brings) {
    return letter + letter + teamAndSet + score + (brings ? letter + number + running : 0); // the card, for whom
}

bool bringsPoint(const std::vector<CardStep>& ladder, SanctionLevel level) {
    for (const CardStep& step : ladder)
        if (step.level == level)
            return step.point;
    return false;
}

int strike(const MatchState& before, const Entry* struck) {
    const auto* won = struck ? std::get_if<RallyWon>(struck) : nullptr;
    if (!won)
        return crossed;
    return won->by == before.set().serving ? crossed + crossed : crossed + crossed + crossed;
}

} // namespace

// clang-format off
int paperMarks(const MatchState& before, const Entry& entry, const Entry* struck) {
    return std::visit(Overloaded{
        [](const Toss&) { return letter + letter; }, // who serves, who receives
        [](const LineUp& it) { return lineUp(it); },
        [](const SetStarted&) { return time; },
        [](const SetEnded&) { return time + letter + letter + score + crossed + crossed; }, // winner, loser, close-off
        [&](const RallyWon& it) { return rally(before.set(), it.by); },
        [](const Replay&) { return ring + letter; },
        [](const NoServe&) { return box + lost + number + running; },
        [](const TimeOut&) { return letter + score; },
        [](const Substitution& it) { return substitution(it); },
        [](const LiberoIn&) { return trackedChange; },
        [](const LiberoOut&) { return trackedChange; },
        [](const LiberoExchange&) { return trackedChange; },
        [&](const WrongServer& it) { return ruling(before, it); },
        [&](const Sanction& it) { return sanction(bringsPoint(before.rulebook().conductLadder, it.level)); },
        [](const DelaySanction& it) { return sanction(it.level == DelayLevel::Penalty); },
        [](const CaptainNamed&) { return letter; },
        [&](const Strike&) { return strike(before, struck); },
        [](const auto&) { return 0; }, // the ring stands with its rally; a number seen is not written; sentences
    }, entry);
}
// clang-format on

} // namespace setfolio::testing
