// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/checkfiles.h"

#include "app/terminal.h"
#include "core/ledger/ledger.h"
#include "ui/wording/errorwords.h"

namespace setfolio {

namespace {

/// The findings, each on a line, and the verdict after them.
ExitCode sayWhatWasFound(const QString& path, const std::vector<Recorded>& entries) {
    const std::vector<EntryFinding> findings = review(entries);
    const MatchState state = fold(entries);
    for (const EntryFinding& finding : findings)
        sayResult(findingLine(path, static_cast<int>(finding.entry.value), finding, state));
    sayResult(wholeFile(path, static_cast<int>(entries.size()), static_cast<int>(findings.size())));
    return findings.empty() ? ExitCode::Done : ExitCode::WithFindings;
}

ExitCode check(const QString& path) {
    const auto content = readLedgerFile(path);
    if (!content) {
        sayMessage(sentence(content.error()));
        return ExitCode::NoInput;
    }
    if (content->damage) {
        LedgerError damage = *content->damage;
        damage.path = path;
        sayResult(damagedFile(path, sentence(damage)));
        return ExitCode::Damaged;
    }
    const ExitCode found = sayWhatWasFound(path, content->entries);
    if (!content->torn)
        return found;
    sayResult(tornFile(path, sentence(*content->torn, path)));
    return ExitCode::Damaged;
}

} // namespace

ExitCode run(const CheckFiles& command) {
    ExitCode code = ExitCode::Done;
    for (const QString& path : command.files)
        code = worse(code, check(path));
    return code;
}

} // namespace setfolio
