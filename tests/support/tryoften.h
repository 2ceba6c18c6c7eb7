// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How often RapidCheck tries a property.
#pragma once

#include <QByteArray>

namespace setfolio::testing {

/// For all properties of a program; `longRun` counts when SETFOLIO_LONG is set. RC_PARAMS, when given, has the last
/// word, so that a printed seed can be run again.
inline void tryOften(int times, int longRun) {
    const int tries = qEnvironmentVariableIsSet("SETFOLIO_LONG") ? longRun : times;
    if (!qEnvironmentVariableIsSet("RC_PARAMS"))
        qputenv("RC_PARAMS", "max_success=" + QByteArray::number(tries));
}

} // namespace setfolio::testing
