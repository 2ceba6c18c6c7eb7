// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A practice match: a set as it should have been recorded, and what of it can be seen and heard from the table.
#pragma once

#include "core/match/state.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <vector>

namespace setfolio {

/// One thing that happens on court, told to the learner: the entry that records it is hers to make.
struct StoryStep {
    Recorded told;      ///< what the right sheet has for it
    MatchState before;  ///< as it should stand then
    ShirtNumber server; ///< who serves, by the number on her shirt: not always the one whose turn it is
    bool operator==(const StoryStep&) const = default;
};

struct Story {
    QString id;                   ///< the name of its file, "1-plain-set"
    std::vector<Recorded> given;  ///< done before the learner sits down: teams, toss and line-ups
    std::vector<Recorded> right;  ///< given, and all that should be recorded after it
    std::vector<StoryStep> steps; ///< in the order they are told
    bool operator==(const Story&) const = default;
};

/// The practice matches that the program carries, the easiest first.
[[nodiscard]] const std::vector<QString>& storyIds();

/// The story of a list of entries (FORMAT.md) whose first set is played; none if the list cannot be read.
[[nodiscard]] std::optional<Story> storyOf(const QString& id, const QByteArray& list);

/// A practice match that the program carries.
[[nodiscard]] Story practiceStory(const QString& id);

/// What the clock in the hall shows when the first `told` steps have been told; before the first one, when the last of
/// what is given was done.
[[nodiscard]] QTime timeOfDayAfter(const Story& story, std::size_t told);

/// What should stand recorded when the first `told` steps have been told.
[[nodiscard]] std::vector<Recorded> rightAfter(const Story& story, std::size_t told);

} // namespace setfolio
