// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is told of a practice match: what a person at the table sees and hears, and nothing that she must work out.
#pragma once

#include "core/practice/story.h"

#include <QString>
#include <QStringList>

namespace setfolio {

/// "A plain set"; the file's name for a story that is not one of ours.
[[nodiscard]] QString storyTitle(const QString& id);
/// In a sentence, what there is to learn in it.
[[nodiscard]] QString storyAbout(const QString& id);

/// "Number 12 of SAL serves." The score is never told.
[[nodiscard]] QString storySentence(const StoryStep& step);

/// A story as a class is told it: read aloud, or handed out.
struct StoryText {
    QString title;
    QString about;
    QString teams;     ///< "Saltmarsh Herons (SAL) – Quarry Ridge Larks (QRL)"
    QStringList given; ///< what is known before the set begins
    QStringList told;  ///< then what happens, in order
    bool operator==(const StoryText&) const = default;
};
[[nodiscard]] StoryText storyTextOf(const Story& story);

/// Before the set: who serves first, who stands left, the six of both teams by court position.
[[nodiscard]] QStringList storyGiven(const MatchState& state);

} // namespace setfolio
