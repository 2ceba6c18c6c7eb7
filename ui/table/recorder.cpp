// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/recorder.h"

#include "core/match/statebefore.h"
#include "core/match/undo.h"

namespace setfolio {

Recorder::Recorder(MatchFile file, Clock clock, QObject* parent)
    : QObject(parent),
      m_file(std::move(file)),
      m_clock(std::move(clock)) {
    lookBack();
}

const Recorded* Recorder::newest() const {
    const auto entries = m_file.ledger().entries();
    const std::optional<EntryNumber> number = newestStanding(entries);
    return number ? &entries[number->value - 1] : nullptr;
}

void Recorder::place(const Placed& placed) {
    m_placed = placed;
    m_then = stateBefore(m_file.ledger().entries(), placed.target);
    Q_EMIT placeChanged();
}

void Recorder::giveUpPlace() {
    if (!m_placed)
        return;
    m_placed.reset();
    Q_EMIT placeChanged();
}

Outcome Recorder::attempt(const Entry& entry, const std::optional<Placed>& placed) {
    Findings findings = m_file.judge(entry, placed, m_clock.utc());
    if (!findings.empty())
        return Objected{std::move(findings)};
    return settle(m_file.record(entry, m_clock.utc(), std::nullopt, placed));
}

Outcome Recorder::overrule(const Entry& entry, const QString& reason, const std::optional<Placed>& placed) {
    Findings findings = m_file.judge(entry, placed, m_clock.utc());
    if (isRefused(findings))
        return Objected{std::move(findings)};
    return settle(
        m_file.record(entry, m_clock.utc(), findings.empty() ? std::nullopt : std::optional<QString>(reason), placed));
}

Outcome Recorder::undo() {
    const std::optional<EntryNumber> newest = newestStanding(m_file.ledger().entries());
    if (!newest)
        return Objected{};
    Findings findings = m_file.judge(Strike{*newest, {}});
    if (isRefused(findings)) // a seal is not undone
        return Objected{std::move(findings)};
    return settle(m_file.undo(m_clock.utc()));
}

Outcome Recorder::redo() {
    const std::optional<EntryNumber> undone = newestUndone(m_file.ledger().entries());
    if (!undone)
        return Objected{};
    Findings findings = m_file.judge(Strike{*undone, {}});
    if (isRefused(findings))
        return Objected{std::move(findings)};
    return settle(m_file.redo(m_clock.utc()));
}

Outcome Recorder::settle(tl::expected<EntryNumber, LedgerError> appended) {
    if (!appended) {
        Q_EMIT failed(appended.error());
        return Failed{appended.error()};
    }
    lookBack();
    m_placed.reset();
    Q_EMIT recorded(*appended);
    return Acknowledged{*appended};
}

void Recorder::lookBack() {
    const auto entries = m_file.ledger().entries();
    m_canUndo = newestToUndo(entries).has_value();
    m_canRedo = newestUndone(entries).has_value();
}

} // namespace setfolio
