// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Which entries are told among the remarks of a set, and what the remark holds.
#pragma once

#include "core/record/moment.h"
#include "core/record/record.h"

namespace setfolio {

/// Adds the next note of a set; its number.
int addNote(SetRecord& record, NoteContent content, EntryNumber entry);
/// Adds the note that a standing entry's mark refers to, if it has one; its number, or 0.
int addNoteOfMark(SetRecord& record, const Recorded& recorded, const Moment& before);
/// Adds the note that stands for a standing entry by itself, if it has one.
void addNoteOfEvent(SetRecord& record, const Recorded& recorded, const Moment& before);
/// Adds the note of an entry that `correction` has struck, if it is worth one; its number, or 0.
int addNoteOfStruck(SetRecord& record, const Recorded& recorded, const Recorded& correction, const Moment& before);

} // namespace setfolio
