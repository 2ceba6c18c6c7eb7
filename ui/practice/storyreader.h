// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Tells a practice match, one thing after another, at the pace that was chosen.
#pragma once

#include "core/practice/story.h"

#include <QObject>
#include <QTimer>

namespace setfolio {

/// How long there is for each thing that happens.
enum class Pace : std::uint8_t {
    StepByStep, ///< the learner asks for the next
    Slow,       ///< twelve seconds
    Steady,     ///< seven seconds
    AsPlayed,   ///< four seconds: about as fast as a set is played
};
/// In milliseconds; 0 for StepByStep.
[[nodiscard]] int between(Pace pace);

class StoryReader : public QObject {
    Q_OBJECT

public:
    StoryReader(Story story, Pace pace, QObject* parent = nullptr);

    [[nodiscard]] const Story& story() const { return m_story; }
    [[nodiscard]] Pace pace() const { return m_pace; }
    [[nodiscard]] std::size_t told() const { return m_told; } ///< how many steps have been told
    [[nodiscard]] bool isOver() const { return m_told == m_story.steps.size(); }
    [[nodiscard]] bool isRunning() const { return m_timer.isActive(); }

    /// Tells the next thing now; the time for it begins anew.
    void tellNext();
    /// Lets it run at its pace, or holds it. What goes step by step does not run.
    void setRunning(bool running);

Q_SIGNALS:
    void changed();

private:
    Story m_story;
    Pace m_pace;
    std::size_t m_told = 0;
    QTimer m_timer;
};

} // namespace setfolio
