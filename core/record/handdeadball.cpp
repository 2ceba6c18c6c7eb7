// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/consequences.h"
#include "core/record/hand.h"

namespace setfolio {

void Hand::operator()(const Substitution& substitution) {
    Term& term = servedTerm();
    SubstitutionMark mark{substitution.team != serving(), substitution.in, substitution.out, std::nullopt};
    if (rulebook.substitutionScored)
        mark.score = {before.points[substitution.team], before.points[opponentsOf(substitution.team)]};
    add(term, MarkShape::None, mark);
}

void Hand::operator()(const TimeOut& timeOut) {
    if (inPlay())
        add(servedTerm(), MarkShape::None, TimeOutMark{timeOut.team != serving()});
}

void Hand::operator()(const LiberoServe& serve) {
    if (!inPlay() || struck() || !before.contacted)
        return;
    for (Mark& mark : servedTerm().marks) // the ring already drawn becomes hers
        if (std::holds_alternative<Awaiting>(mark.content) && !mark.struck)
            mark.shape = serve.serving == LiberoServing::Begins ? MarkShape::Triangle : MarkShape::Ring;
}

void Hand::moveLibero(LiberoMove move, Team team) {
    if (struck())
        return;
    move.score = before.points;
    move.entry = recorded.number;
    record.teams[team].liberoMoves.push_back(move);
}

void Hand::operator()(const LiberoIn& in) {
    const auto& rows = record.teams[in.team].slots;
    for (const Slot slot : allSlots)
        if (!rows[slot.index()].stood.empty() && rows[slot.index()].stood.back().number == in.replaced)
            return moveLibero({LiberoMove::How::In, in.libero, in.replaced, slot, {}, {}}, in.team);
}

void Hand::operator()(const LiberoOut& out) {
    const std::optional<LiberoOnCourt>& libero = before.liberos[out.team];
    if (!libero || libero->libero != out.libero)
        return;
    const std::vector<Standing>& stood = record.teams[out.team].slots[libero->slot.index()].stood;
    const ShirtNumber back = stood.empty() ? ShirtNumber() : stood.back().number;
    moveLibero({LiberoMove::How::Out, out.libero, back, libero->slot, {}, {}}, out.team);
}

void Hand::operator()(const LiberoExchange& exchange) {
    const std::optional<LiberoOnCourt>& libero = before.liberos[exchange.team];
    if (libero && libero->libero == exchange.out)
        moveLibero({LiberoMove::How::Exchange, exchange.in, exchange.out, libero->slot, {}, {}}, exchange.team);
}

void Hand::operator()(const LiberoRedesignated& redesignated) {
    (*this)(LiberoOut{redesignated.team, redesignated.former}); // if she is on court, the player comes back
}

void Hand::writeSanction(SanctionLine line, bool bringsPoint) {
    line.set = record.number;
    line.score = before.points;
    line.entry = recorded.number;
    line.struck = struck();
    record.sanctions.push_back(line);
    if (bringsPoint && inPlay())
        givePoint(opponentsOf(line.team));
}

void Hand::operator()(const Sanction& sanction) {
    writeSanction({.team = sanction.team, .who = sanction.who, .level = sanction.level, .reason = sanction.reason},
                  bringsPoint(rulebook, sanction.level));
}

void Hand::operator()(const DelaySanction& sanction) {
    writeSanction({.team = sanction.team, .level = sanction.level, .reason = sanction.reason},
                  sanction.level == DelayLevel::Penalty);
}

void Hand::operator()(const ImproperRequest& request) {
    writeSanction({.team = request.team, .reason = request.what}, false);
}

void Hand::operator()(const PenaltyPoint& penalty) {
    if (inPlay())
        givePoint(penalty.to);
}

} // namespace setfolio
