// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Short words for making findings; for the judge's own files.
#pragma once

#include "core/rules/finding.h"

namespace setfolio {

[[nodiscard]] inline Finding refused(FindingKind kind, std::optional<Team> team = std::nullopt,
                                     ShirtNumber number = {}) {
    return {.kind = kind, .gravity = Gravity::Refused, .team = team, .number = number};
}

/// A finding that rests on a rulebook's setting or statement.
[[nodiscard]] inline Finding unlawful(FindingKind kind, const char* setting, std::optional<Team> team = std::nullopt,
                                      ShirtNumber number = {}) {
    return {.kind = kind,
            .gravity = Gravity::Unlawful,
            .setting = QString::fromLatin1(setting),
            .team = team,
            .number = number};
}

[[nodiscard]] inline Finding beyondLimit(FindingKind kind, const char* setting, Team team, int count, int limit) {
    Finding finding = unlawful(kind, setting, team);
    finding.count = count;
    finding.limit = limit;
    return finding;
}

inline void append(Findings& findings, std::optional<Finding> finding) {
    if (finding)
        findings.push_back(*std::move(finding));
}

inline void append(Findings& findings, const Findings& more) {
    findings.insert(findings.end(), more.begin(), more.end());
}

} // namespace setfolio
