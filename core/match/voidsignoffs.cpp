// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/voidsignoffs.h"

#include <algorithm>

namespace setfolio {

bool VoidSignOffs::passesOver(const Entry& entry) {
    if (const auto* reopened = std::get_if<Reopened>(&entry)) {
        m_reopened.insert(m_reopened.end(), {reopened->set, std::nullopt});
        return true;
    }
    if (const auto* sealed = std::get_if<Sealed>(&entry)) {
        const auto found = std::ranges::find(m_reopened, sealed->set);
        if (found == m_reopened.end())
            return false;
        m_void.push_back(sealed->set);
        std::erase(m_reopened, sealed->set);
        return true;
    }
    if (const auto* given = std::get_if<Signed>(&entry))
        return isVoid(given->set);
    const auto* left = std::get_if<LeftUnsigned>(&entry);
    return left && isVoid(left->set);
}

bool VoidSignOffs::isVoid(std::optional<int> set) const {
    return std::ranges::find(m_void, set) != m_void.end();
}

} // namespace setfolio
