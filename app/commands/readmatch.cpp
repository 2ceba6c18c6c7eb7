// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/readmatch.h"

#include "app/terminal.h"
#include "core/ledger/ledger.h"
#include "ui/wording/commandwords.h"
#include "ui/wording/errorwords.h"

namespace setfolio {

tl::expected<std::vector<Recorded>, ExitCode> readMatch(const QString& path) {
    auto content = readLedgerFile(path);
    if (!content) {
        sayMessage(sentence(content.error()));
        return tl::unexpected(ExitCode::NoInput);
    }
    if (content->damage) {
        LedgerError damage = *content->damage;
        damage.path = path;
        sayMessage(sentence(damage));
        return tl::unexpected(ExitCode::Damaged);
    }
    if (content->torn)
        sayMessage(sentence(*content->torn, path));
    if (content->entries.empty()) {
        sayMessage(holdsNoMatch(path));
        return tl::unexpected(ExitCode::WithFindings);
    }
    return std::move(content->entries);
}

} // namespace setfolio
