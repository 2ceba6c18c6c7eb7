// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The two streams a command speaks on: results go to standard output, what went wrong to standard error.
#pragma once

#include "app/exitcode.h"

#include <QByteArray>
#include <QString>

namespace setfolio {

/// A line of results; one of messages, which begins with the program's name. What could steer the terminal, in a name
/// from a file, is shown as an escape.
void sayResult(const QString& line);
void sayMessage(const QString& line);
/// Bytes of results, as they are.
void writeResult(const QByteArray& bytes);

/// Whether all results have reached where they were sent; says so if not, and gives the worse code.
[[nodiscard]] ExitCode withResultsWritten(ExitCode code);

} // namespace setfolio
