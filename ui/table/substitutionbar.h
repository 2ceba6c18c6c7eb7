// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Substitutions of a team, one after another, without leaving the table.
#pragma once

#include "core/match/entry.h"
#include "ui/table/bench.h"
#include "ui/table/inlinebar.h"
#include "ui/table/recorder.h"

#include <QLineEdit>

class QGridLayout;

namespace setfolio {

class NumberButton;
class NumberField;

/// Number in, number out (proposed where there is only one lawful answer), Enter. What is not lawful is said before
/// Enter; the referee's word, with its reason, lets it stand all the same.
class SubstitutionBar : public InlineBar {
    Q_OBJECT

public:
    explicit SubstitutionBar(Recorder& recorder, QWidget* parent = nullptr);

    void setLook(const Look& look) override;
    /// How wide the bar may be, in pixels: the numbers to tap stand in as many rows as that needs.
    void setRoom(int width);
    void open(Team team);
    [[nodiscard]] Team team() const { return m_team; }

protected:
    void recordPressed() override;

private:
    /// A field for a number, and the numbers to tap beside it.
    struct NumberRow {
        NumberField* field = nullptr;
        QGridLayout* grid = nullptr;
        std::vector<NumberButton*> buttons;
    };
    [[nodiscard]] NumberRow makeNumberRow(const QString& label, const QString& name);
    [[nodiscard]] QHBoxLayout* makeReasonRow();
    void refill();
    void fillRow(NumberRow& row, const std::vector<BenchPlayer>& players, const QString& prefix);
    void inChanged();
    void outChanged();
    void showFindings();
    void showChosen();
    void askForReason(bool ask);
    [[nodiscard]] std::optional<Substitution> drafted() const;
    void settle(const Substitution& substitution, const Outcome& outcome);
    void showRecorded(const Substitution& substitution);
    [[nodiscard]] QString inWords(const Findings& findings) const;

    Recorder& m_recorder;
    Team m_team = Team::Home;
    bool m_outIsProposed = false;
    int m_buttonsInARow = 8;
    NumberRow m_in;
    NumberRow m_out;
    QLineEdit* m_reason = nullptr;
};

} // namespace setfolio
