// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Sign-offs that undo passes over.
#pragma once

#include "core/match/entry.h"

#include <optional>
#include <vector>

namespace setfolio {

/// Sign-offs that were reopened, met from the newest entry backwards: they stay as they are, and undo passes over them.
class VoidSignOffs {
public:
    /// To be asked of each standing entry in turn, from the newest back.
    [[nodiscard]] bool passesOver(const Entry& entry);

private:
    [[nodiscard]] bool isVoid(std::optional<int> set) const;

    std::vector<std::optional<int>> m_reopened; ///< whose seal is still to be met
    std::vector<std::optional<int>> m_void;
};

} // namespace setfolio
