// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Who reopens what is sealed, and why.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/framedialog.h"

class QLineEdit;

namespace setfolio {

class ReopenDialog : public FrameDialog {
    Q_OBJECT

public:
    /// The set, or the match where there is none, must be sealed. The first referee's name is proposed.
    ReopenDialog(const MatchState& state, std::optional<int> set, QWidget* parent = nullptr);

    [[nodiscard]] Reopened result() const;

private:
    std::optional<int> m_set;
    QLineEdit* m_name;
    QLineEdit* m_reason;
};

} // namespace setfolio
