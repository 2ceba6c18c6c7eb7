// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where the table takes its time from: the program gives it, so that nothing below takes it from the air.
#pragma once

#include <QDateTime>
#include <QTime>

#include <functional>

namespace setfolio {

struct Clock {
    std::function<QDateTime()> utc;   ///< now, UTC: the time an entry is recorded with
    std::function<QTime()> timeOfDay; ///< now, as the clock in the hall shows it
};

} // namespace setfolio
