// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// One of the six places of a line-up slip: the court position, the number and whose it is.
#pragma once

#include "core/match/entry.h"

#include <QFrame>

#include <optional>

class QLabel;

namespace setfolio {

class ShirtField;

class PositionField : public QFrame {
    Q_OBJECT

public:
    PositionField(CourtPosition position, const Roster& roster, QWidget* parent = nullptr);

    [[nodiscard]] ShirtField& field() const { return *m_field; }
    /// The slot that the number will stand in; none while it is not known.
    void setSlot(std::optional<Slot> slot);

private:
    void showName();

    Roster m_roster;
    QLabel* m_slot;
    ShirtField* m_field;
    QLabel* m_name;
};

} // namespace setfolio
