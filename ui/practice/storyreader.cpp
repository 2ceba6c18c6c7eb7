// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/practice/storyreader.h"

namespace setfolio {

int between(Pace pace) {
    switch (pace) {
    case Pace::StepByStep:
        return 0;
    case Pace::Slow:
        return 12'000;
    case Pace::Steady:
        return 7'000;
    case Pace::AsPlayed:
        return 4'000;
    }
    return 0;
}

StoryReader::StoryReader(Story story, Pace pace, QObject* parent)
    : QObject(parent),
      m_story(std::move(story)),
      m_pace(pace) {
    m_timer.setInterval(between(pace));
    connect(&m_timer, &QTimer::timeout, this, &StoryReader::tellNext);
}

void StoryReader::tellNext() {
    if (isOver())
        return;
    ++m_told;
    if (isOver())
        m_timer.stop();
    else if (m_timer.isActive())
        m_timer.start();
    Q_EMIT changed();
}

void StoryReader::setRunning(bool running) {
    if (running && m_pace != Pace::StepByStep && !isOver())
        m_timer.start();
    else
        m_timer.stop();
    Q_EMIT changed();
}

} // namespace setfolio
