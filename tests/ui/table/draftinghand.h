// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A hand that tries to enter what the rulebook does not allow, and hears what the window says to it.
#pragma once

#include "tests/ui/table/opentable.h"

#include <optional>

namespace setfolio {
class LiberoBar;
}

namespace setfolio::testing {

class DraftingHand {
public:
    explicit DraftingHand(OpenTable& table);

    /// What the window says against the entry, by keys up to the one that would record it; none where the window has no
    /// way to ask for it. Nothing is recorded.
    [[nodiscard]] std::optional<QString> hear(const Entry& entry);
    /// The referee allows what was heard last, and says why.
    void allow(const QString& reason);
    /// What stands on the screen against an entry, in the bars and under the net.
    [[nodiscard]] QString said() const;

private:
    [[nodiscard]] bool draft(const Entry& entry);
    [[nodiscard]] bool substitute(const Substitution& entry);
    [[nodiscard]] bool vacate(const PlaceVacated& entry);
    [[nodiscard]] bool liberoIn(const LiberoIn& entry);
    [[nodiscard]] bool liberoExchange(const LiberoExchange& entry);
    [[nodiscard]] bool liberoServe(const LiberoServe& entry);
    [[nodiscard]] bool redesignate(const LiberoRedesignated& entry);
    [[nodiscard]] bool nameCaptain(const CaptainNamed& entry);
    [[nodiscard]] bool card(const Sanction& entry);
    [[nodiscard]] bool delay(const DelaySanction& entry);
    [[nodiscard]] bool forfeit(const Forfeit& entry);
    [[nodiscard]] bool resume(const Resumed& entry);
    [[nodiscard]] bool rule(const WrongServer& entry);
    [[nodiscard]] bool card(Team team, Qt::Key what);
    [[nodiscard]] bool key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    [[nodiscard]] bool side(Team team, Qt::Key left, Qt::Key right);
    [[nodiscard]] bool command(const char* name);
    [[nodiscard]] bool command(Team team, const char* left, const char* right);
    [[nodiscard]] bool option(const char* bar, Qt::Key key, const QString& words);
    [[nodiscard]] bool type(const char* field, ShirtNumber number);

    [[nodiscard]] std::optional<QString> hearInDialog(const Entry& entry);
    [[nodiscard]] bool fillIn(QWidget& dialog, const Entry& entry);
    void record(QWidget& dialog);

    OpenTable& m_table;
    std::optional<Entry> m_inDialog; ///< what was heard last was said by a dialog
    QString m_reason;                ///< what is typed there; empty to give it up
};

} // namespace setfolio::testing
