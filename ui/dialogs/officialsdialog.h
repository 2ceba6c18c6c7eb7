// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Referees and crew changed after the match was opened: a line judge came late, a name was wrong.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/framedialog.h"

namespace setfolio {

class OfficialsPage;

class OfficialsDialog : public FrameDialog {
    Q_OBJECT

public:
    /// Begins with the officials as they stand.
    explicit OfficialsDialog(const MatchState& state, QWidget* parent = nullptr);

    /// All of them; the list takes the place of the earlier one.
    [[nodiscard]] Officials result() const;

private:
    OfficialsPage* m_page;
};

} // namespace setfolio
