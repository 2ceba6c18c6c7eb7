// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Substitutions of a team, one after another, without leaving the table.
#pragma once

#include "ui/table/entrybar.h"

namespace setfolio {

/// Number in, number out (proposed where there is only one lawful answer), Enter; or Enter alone for the substitution
/// that is proposed when the bar opens. An exceptional one, and a place that
/// stays vacant because nobody can come in, say what happened.
class SubstitutionBar : public EntryBar {
    Q_OBJECT

public:
    explicit SubstitutionBar(Recorder& recorder, QWidget* parent = nullptr);

    /// `out`: who goes out, where that is known.
    void open(Team team, std::optional<ShirtNumber> out = {});
    [[nodiscard]] Team team() const { return m_team; }

protected:
    [[nodiscard]] std::optional<Entry> drafted() const override;
    [[nodiscard]] QString prompt() const override;
    [[nodiscard]] Findings early() const override;
    void goToMissing() override;
    void settled(const Entry& entry) override;

private:
    [[nodiscard]] bool isExceptional() const;
    [[nodiscard]] bool isVacating() const;
    [[nodiscard]] SubstitutionKind kind() const;
    void offerIn();
    void start(Team team, std::optional<ShirtNumber> out = std::nullopt);
    void refill();
    void propose(const std::optional<Substitution>& substitution);
    void goOn();
    void inChanged();
    void outChanged();
    void kindChanged();
    void remarkOn(const Substitution& substitution, const QString& why);

    Team m_team = Team::Home;
    bool m_outIsProposed = false;
    NumberPick* m_in;
    NumberPick* m_out;
    OptionPick* m_kind;
    QLineEdit* m_why;
};

} // namespace setfolio
