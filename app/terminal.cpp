// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/terminal.h"

#include "core/record/shown.h"
#include "ui/wording/commandwords.h"

#include <cstdio>

namespace setfolio {

namespace {

void writeTo(FILE* stream, const QByteArray& bytes) {
    // What failed is remembered by the stream, and asked for once at the end.
    (void)std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream);
}

} // namespace

void sayResult(const QString& line) {
    writeTo(stdout, withEscapes(line).toUtf8() + '\n');
}

void sayMessage(const QString& line) {
    writeTo(stderr, "setfolio: " + withEscapes(line).toUtf8() + '\n');
}

void writeResult(const QByteArray& bytes) {
    writeTo(stdout, bytes);
}

ExitCode withResultsWritten(ExitCode code) {
    if (std::fflush(stdout) == 0 && std::ferror(stdout) == 0)
        return code;
    sayMessage(standardOutputFailed());
    return worse(code, ExitCode::CannotWrite);
}

} // namespace setfolio
