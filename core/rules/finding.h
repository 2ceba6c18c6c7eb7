// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the judge has to say about an entry, as a value; the sentence for it is made in ui/wording.
#pragma once

#include "core/match/sanctionentries.h"
#include "core/rules/findingkind.h"

#include <QString>

#include <optional>
#include <vector>

namespace setfolio {

/// How grave a finding is.
enum class Gravity : std::uint8_t {
    Refused,  ///< cannot be recorded at all: it has no meaning here
    Unlawful, ///< against the rulebook; may be recorded as overruled, with the referee's reason
};

/// One finding. Which of the fields say something is written beside each kind.
struct Finding {
    FindingKind kind = FindingKind::MatchNotOpened;
    Gravity gravity = Gravity::Refused;
    QString setting = {};          ///< the rulebook's setting it rests on, empty when it rests on sense alone
    std::optional<Team> team = {}; ///< whose
    ShirtNumber number = {};       ///< the number to look at
    std::optional<Slot> slot = {};
    std::optional<Slot> other = {};
    int count = 0;
    int limit = 0;
    ShirtNumber lawful = {};        ///< the number that would be lawful, or that is in the way
    std::optional<Member> who = {}; ///< who is sanctioned
    /// The sanction that would be lawful, or that keeps her out.
    std::optional<std::variant<SanctionLevel, DelayLevel>> level = {};
    bool operator==(const Finding&) const = default;
};

using Findings = std::vector<Finding>;

[[nodiscard]] bool isRefused(const Findings& findings);

} // namespace setfolio
