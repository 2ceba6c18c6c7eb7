// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/exportmatch.h"

#include "app/commands/readmatch.h"
#include "app/terminal.h"
#include "core/ledger/wholefile.h"
#include "core/record/nameless.h"
#include "ui/wording/errorwords.h"

namespace setfolio {

namespace {

/// A match file is never overwritten.
ExitCode saveCopy(const QByteArray& bytes, const QString& to) {
    if (const auto written = writeNewFile(to, bytes); !written) {
        sayMessage(sentence(written.error()));
        return exitCodeOf(written.error().code);
    }
    sayResult(namesLeftOut(to));
    return ExitCode::Done;
}

} // namespace

ExitCode run(const ExportMatch& command) {
    auto entries = readMatch(command.file);
    if (!entries)
        return entries.error();
    if (command.names == Names::LeftOut)
        *entries = withoutNames(*entries);
    const auto bytes = exported(*entries, command.form);
    if (!bytes) {
        sayMessage(sentence(bytes.error()));
        return ExitCode::Damaged;
    }
    if (command.form == ExportForm::MatchFile)
        return saveCopy(*bytes, command.to);
    if (command.to.isEmpty()) {
        writeResult(*bytes);
        return ExitCode::Done;
    }
    if (const auto written = writeWholeFile(command.to, *bytes); !written) {
        sayMessage(sentence(written.error()));
        return exitCodeOf(written.error().code);
    }
    return ExitCode::Done;
}

} // namespace setfolio
