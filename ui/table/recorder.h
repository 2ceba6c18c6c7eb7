// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The one door to the match file: what is lawful is recorded, what is not comes back with the reasons.
#pragma once

#include "core/record/matchfile.h"
#include "ui/table/clock.h"

#include <QObject>

#include <variant>

namespace setfolio {

/// The entry is on disk.
struct Acknowledged {
    EntryNumber number;
};
/// What is to be said against it; nothing was recorded.
struct Objected {
    Findings findings;
};
/// The file could not take it; nothing was recorded, the state is as it was.
struct Failed {
    LedgerError error;
};
using Outcome = std::variant<Acknowledged, Objected, Failed>;

class Recorder : public QObject {
    Q_OBJECT

public:
    Recorder(MatchFile file, Clock clock, QObject* parent = nullptr);

    [[nodiscard]] const MatchFile& file() const { return m_file; }
    /// As the match stands; while a correction is to be placed, as it stood at that place.
    [[nodiscard]] const MatchState& state() const { return m_placed ? m_then : m_file.state(); }
    [[nodiscard]] const Clock& clock() const { return m_clock; }
    void setTimeOfDay(std::function<QTime()> timeOfDay) { m_clock.timeOfDay = std::move(timeOfDay); }
    [[nodiscard]] bool isReadOnly() const { return m_file.ledger().isReadOnly(); }
    [[nodiscard]] bool canUndo() const { return m_canUndo; }
    [[nodiscard]] bool canRedo() const { return m_canRedo; }
    /// The newest entry that stands; none in an empty ledger.
    [[nodiscard]] const Recorded* newest() const;

    /// What is recorded next is a correction at this place, until it is recorded or given up.
    void place(const Placed& placed);
    void giveUpPlace();
    [[nodiscard]] const std::optional<Placed>& place() const { return m_placed; }

    [[nodiscard]] Findings judge(const Entry& entry) const { return m_file.judge(entry, m_placed, m_clock.utc()); }
    /// Judges and records; a correction may be placed among the entries before.
    Outcome attempt(const Entry& entry, const std::optional<Placed>& placed = std::nullopt);
    /// Records against findings that only say "unlawful", on the referee's word.
    Outcome overrule(const Entry& entry, const QString& reason, const std::optional<Placed>& placed = std::nullopt);
    /// Nothing to undo or redo: objected without findings.
    Outcome undo();
    Outcome redo();

Q_SIGNALS:
    /// An entry is on disk and folded in.
    void recorded(setfolio::EntryNumber number);
    void failed(const setfolio::LedgerError& error);
    void placeChanged();

private:
    Outcome settle(tl::expected<EntryNumber, LedgerError> appended);
    void lookBack();

    MatchFile m_file;
    Clock m_clock;
    std::optional<Placed> m_placed;
    MatchState m_then; ///< the state at that place
    bool m_canUndo = false;
    bool m_canRedo = false;
};

} // namespace setfolio
