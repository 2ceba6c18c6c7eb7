// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The keys of the table's commands as they are in force: built in, but for those that were changed on this machine.
#pragma once

#include "ui/table/commands.h"

#include <map>

namespace setfolio {

/// The key that a command has in place of its first built-in one; an empty one takes the key away.
using ChangedKeys = std::map<TableCommand, QKeySequence>;

/// Those in force, for the whole program. Windows show them once they are built anew.
[[nodiscard]] const ChangedKeys& changedKeys();
void setChangedKeys(const ChangedKeys& changed);

/// The keys of a command, the one that is shown first.
[[nodiscard]] QList<QKeySequence> keysOf(TableCommand command);
[[nodiscard]] QList<QKeySequence> keysOf(TableCommand command, const ChangedKeys& changed);

/// Why a key cannot be given to a command.
struct KeyConflict {
    enum class Code : std::uint8_t {
        Taken,   ///< `owner` has it
        Digit,   ///< numbers are typed with it
        Reserved ///< the window itself needs it
    };
    Code code = Code::Taken;
    TableCommand owner = TableCommand::NextStep; ///< of a key that is taken
    bool operator==(const KeyConflict&) const = default;
};
[[nodiscard]] std::optional<KeyConflict> conflictOf(TableCommand command, const QKeySequence& key,
                                                    const ChangedKeys& changed);
/// The conflict in a sentence that says what to do.
[[nodiscard]] QString sentence(const KeyConflict& conflict, const QKeySequence& key);

/// As they are kept in settings: "leftWins" and "Ctrl+A"; what cannot be read or would be in conflict is passed over.
[[nodiscard]] QMap<QString, QString> writtenKeys(const ChangedKeys& changed);
[[nodiscard]] ChangedKeys readKeys(const QMap<QString, QString>& written);

} // namespace setfolio
