// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/setwriter.h"

#include "core/record/hand.h"
#include "core/record/notes.h"

namespace setfolio {

void SetWriter::write(const Recorded& recorded) {
    const int number = addNoteOfMark(m_record, recorded, m_before);
    Hand hand{m_record, m_before, m_rulebook, recorded, nullptr, number};
    if (const auto taken = takenBackBy(recorded.entry)) {
        const int count = hand.takeBack(*taken);
        if (auto* wrong = std::get_if<WrongServerNote>(&m_record.notes.back().content))
            wrong->takenBack = count;
        else if (auto* illegal = std::get_if<EventNote>(&m_record.notes.back().content))
            illegal->takenBack = count;
    }
    std::visit(hand, recorded.entry);
    hand.closeExits();
    addNoteOfEvent(m_record, recorded, m_before);
}

void SetWriter::writeStruck(const Recorded& recorded, const Recorded& correction) {
    const int number = addNoteOfStruck(m_record, recorded, correction, m_before);
    std::visit(Hand{m_record, m_before, m_rulebook, recorded, &correction, number}, recorded.entry);
}

} // namespace setfolio
