// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The libero of a team: in for whom, out, one for the other; or only the mark that she serves.
#pragma once

#include "ui/table/entrybar.h"

namespace setfolio {

/// The key that opens the bar, pressed once more, marks her serve: all that is written of her where the table keeps no
/// record of replacements.
class LiberoBar : public EntryBar {
    Q_OBJECT

public:
    explicit LiberoBar(Recorder& recorder, QWidget* parent = nullptr);

    /// The team must have named a libero. `again` is the key that opened the bar.
    void open(Team team, Qt::Key again);

protected:
    [[nodiscard]] std::optional<Entry> drafted() const override;
    [[nodiscard]] QString prompt() const override;
    void goToMissing() override;

private:
    enum class Move : std::uint8_t { In, Out, Exchange, Serves };
    [[nodiscard]] std::optional<Move> move() const;
    [[nodiscard]] std::vector<Move> movesNow() const;
    [[nodiscard]] const TeamInSet& own() const { return state().set().teams[m_team]; }
    [[nodiscard]] std::vector<ShirtNumber> candidates() const;
    [[nodiscard]] bool mayServe(ShirtNumber libero) const;
    void offerReplaced();
    void moveChanged();
    void arrangeRows();
    void goOn();

    Team m_team = Team::Home;
    std::vector<Entry> m_lawful; ///< the replacements that the judge has nothing against
    std::vector<Move> m_moves;
    OptionPick* m_move;
    NumberPick* m_libero;
    NumberPick* m_replaced;
};

} // namespace setfolio
