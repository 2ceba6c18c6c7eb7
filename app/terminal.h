// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The two streams a command speaks on: results go to standard output, what went wrong to standard error.
#pragma once

#include "app/exitcode.h"

#include <QByteArray>
#include <QString>

namespace setfolio {

/// The text with every control character shown as an escape, \u001b, so that a name in a file cannot steer a terminal.
/// Characters that turn the direction of writing count as such.
[[nodiscard]] QString plainly(const QString& text);

/// A line of results; one of messages, which begins with the program's name.
void sayResult(const QString& line);
void sayMessage(const QString& line);
/// Bytes of results, as they are.
void writeResult(const QByteArray& bytes);

/// Whether all results have reached where they were sent; says so if not, and gives the worse code.
[[nodiscard]] ExitCode withResultsWritten(ExitCode code);

} // namespace setfolio
