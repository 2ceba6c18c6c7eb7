// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Cards and delays of a team: who, which level with what it brings, what for.
#pragma once

#include "ui/table/entrybar.h"

namespace setfolio {

/// The next rung of the rulebook's ladder is proposed; the referee may give another.
class CardBar : public EntryBar {
    Q_OBJECT

public:
    explicit CardBar(Recorder& recorder, QWidget* parent = nullptr);

    void open(Team team);
    [[nodiscard]] Team team() const { return m_team; }

protected:
    [[nodiscard]] std::optional<Entry> drafted() const override;
    [[nodiscard]] QString prompt() const override;
    void goToMissing() override;

private:
    enum class What : std::uint8_t { Conduct, Delay, Request, LateReplacement };
    [[nodiscard]] What what() const;
    [[nodiscard]] std::optional<Member> who() const;
    [[nodiscard]] SanctionLevel level() const;
    [[nodiscard]] DelayLevel delay() const;
    void whatChanged();
    void memberChanged();
    void offerLevels();
    void propose();

    Team m_team = Team::Home;
    OptionPick* m_what;
    NumberPick* m_number;
    OptionPick* m_role;
    OptionPick* m_level;
    QLineEdit* m_why;
};

} // namespace setfolio
