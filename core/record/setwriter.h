// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Writes the marks of one set, one entry at a time, as a hand with three pens would.
#pragma once

#include "core/match/fold.h"
#include "core/record/record.h"

namespace setfolio {

/// What the pen must know of the moment before an entry.
struct Moment {
    int set = 0; ///< the set's number, 0 when no match is open
    Phase phase = Phase::NotOpened;
    Team serving = Team::Home;
    PerTeam<Slot> nextServer;
    PerTeam<int> termsBegun;
    PerTeam<int> points;
    bool liberoServes = false;
    bool contacted = false;
    int rally = 0; ///< the number of the rally that is played or comes next
};
[[nodiscard]] Moment momentOf(const MatchState& state);

/// Holds the record of the set being written and the moment before the entry; one overload a kind that leaves a mark.
class SetWriter {
public:
    SetWriter(SetRecord& record, const Moment& before, const Rulebook& rulebook)
        : m_record(record),
          m_before(before),
          m_rulebook(rulebook) {}

    /// Writes a standing entry.
    void write(const Recorded& recorded);
    /// Writes an entry that a correction has struck: its mark, struck, and a note. Nothing else follows from it.
    void writeStruck(const Recorded& recorded, const Recorded& correction);

private:
    struct Hand; ///< the overloads
    SetRecord& m_record;
    const Moment& m_before;
    const Rulebook& m_rulebook;
};

} // namespace setfolio
