// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/checkfiles.h"

#include "app/terminal.h"
#include "core/ledger/ledger.h"
#include "core/record/sealcheck.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/sealwords.h"

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

ExitCode codeOf(const SealCheck& check) {
    if (check.line == 0 || check.damage || check.torn)
        return ExitCode::Damaged;
    return check.reachBack.empty() && check.seal ? ExitCode::Done : ExitCode::WithFindings;
}

ExitCode checkAgainst(const QString& path, const QString& digits) {
    const auto bytes = readLedgerBytes(path);
    if (!bytes) {
        sayMessage(sentence(bytes.error()));
        return ExitCode::NoInput;
    }
    const SealCheck found = checkSeal(*bytes, digits);
    for (const QString& line : wordsFor(found, path))
        sayResult(line);
    return codeOf(found);
}

} // namespace

ExitCode run(const CheckFiles& command) {
    ExitCode code = ExitCode::Done;
    for (const QString& path : command.files)
        code = worse(code, command.seal.isEmpty() ? check(path) : checkAgainst(path, command.seal));
    return code;
}

} // namespace setfolio
