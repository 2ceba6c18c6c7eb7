// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A time of day as a scorer types it.
#pragma once

#include <QLocale>
#include <QString>
#include <QTime>

namespace setfolio {

/// "19:04", "19.04", "1904", "7:04 pm", "7 PM": the time to the minute; invalid when it is none. Without am or pm the
/// hours are those of 24.
[[nodiscard]] QTime timeFromText(const QString& text);

/// The time as the locale writes it, without seconds; timeFromText reads it back for every locale of 24 hours and for
/// those that write AM and PM.
[[nodiscard]] QString textOfTime(QTime time, const QLocale& locale);

} // namespace setfolio
