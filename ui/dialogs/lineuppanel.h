// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The line-up slip of one team: six places as on court seen from behind the team, captain, liberos.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/lineupdraft.h"

#include <QFrame>

#include <array>
#include <vector>

class QLayout;
class QPushButton;

namespace setfolio {

class NumberChips;
class OrderStrip;
class PositionField;
class ShirtField;
class VerdictView;

class LineUpPanel : public QFrame {
    Q_OBJECT

public:
    /// Shows the line-up that the team has in this set, or empty places.
    LineUpPanel(const MatchState& state, Team team, QWidget* parent = nullptr);

    [[nodiscard]] Team team() const { return m_team; }
    [[nodiscard]] LineUp lineUp() const;
    [[nodiscard]] std::optional<QString> overruled() const;

    enum class Readiness : std::uint8_t {
        Untouched, ///< empty, or as it was recorded before
        Unfinished,
        Refused, ///< filled, but something is against it
        Ready
    };
    [[nodiscard]] Readiness readiness() const;
    /// The court positions that are still empty.
    [[nodiscard]] std::vector<CourtPosition> missing() const;

    /// Gives the keyboard to the first empty place.
    void begin();

Q_SIGNALS:
    void changed();
    void completed(); ///< the last field was filled: the keyboard may go on elsewhere

private:
    [[nodiscard]] QLayout* makeHead();
    [[nodiscard]] std::vector<QPushButton*> makeProposals();
    [[nodiscard]] QLayout* makeCourt();
    [[nodiscard]] QLayout* makeSide();
    void addToOrder(ShirtField* field);
    void fill(const LineUp& lineUp);
    void rotate();
    void fillFromRoster();
    void pick(ShirtNumber number);
    void goOn(std::size_t from, int step);
    void review();
    void showUsed();
    void markFields(const Findings& findings);
    void showOrder(const LineUp& lineUp);

    MatchState m_state;
    Team m_team;
    std::array<PositionField*, 6> m_places{};
    ShirtField* m_captain = nullptr;
    std::vector<ShirtField*> m_liberos;
    std::vector<ShirtField*> m_order; ///< all fields, as the keyboard goes through them
    std::size_t m_current = 0;
    OrderStrip* m_strip;
    NumberChips* m_chips;
    VerdictView* m_verdict;
};

} // namespace setfolio
