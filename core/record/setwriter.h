// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Writes the marks and remarks of one set, one entry at a time, as a hand with three pens would.
#pragma once

#include "core/record/moment.h"
#include "core/record/record.h"

namespace setfolio {

/// Holds the record of the set being written, which already has what the state says by itself, and the moment before
/// the entry.
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
    SetRecord& m_record;
    const Moment& m_before;
    const Rulebook& m_rulebook;
};

} // namespace setfolio
