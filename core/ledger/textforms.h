// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Dates, times and strings in the forms of FORMAT.md: one form each, nothing else is read.
#pragma once

#include <QDate>
#include <QDateTime>
#include <QString>
#include <QTime>

#include <optional>

namespace setfolio {

/// "2026-10-10T18:42:03.120Z"; empty for an invalid time or a year beyond four digits.
[[nodiscard]] QString instantText(const QDateTime& time);
[[nodiscard]] std::optional<QDateTime> instantFromText(QStringView text);

/// "2026-10-10"; empty for an invalid date or a year beyond four digits.
[[nodiscard]] QString dateText(QDate date);
[[nodiscard]] std::optional<QDate> dateFromText(QStringView text);

/// "18:42"; empty for an invalid time.
[[nodiscard]] QString timeOfDayText(QTime time);
[[nodiscard]] std::optional<QTime> timeOfDayFromText(QStringView text);

/// Whether a text is a SHA-256 digest as it stands in a ledger: 64 hexadecimal digits, lower-case.
[[nodiscard]] bool isDigest(QStringView text);

/// Whether line feeds and tabs may stand in a string.
enum class Lines { One, Many };
/// A string of at most that many code points, without lone surrogates and control characters.
[[nodiscard]] bool isPlainText(QStringView text, qsizetype atMost, Lines lines);

} // namespace setfolio
