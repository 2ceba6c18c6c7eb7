// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The adapted rulebooks kept on this machine: a folder of JSON files, each a whole rulebook.
#pragma once

#include "core/ledger/filecalls.h"
#include "core/rules/rulebook.h"

#include <QString>
#include <QStringList>

#include <variant>
#include <vector>

namespace setfolio {

/// Why a file gives no rulebook: it cannot be read, or it holds something else.
struct RulebookFileError {
    QString path;
    std::variant<FileError, RulebookError> what;
};

class RulebookShelf {
public:
    /// Without a folder nothing is kept and nothing can be.
    explicit RulebookShelf(QString folder = {}) : m_folder(std::move(folder)) {}

    struct Content {
        std::vector<Rulebook> rulebooks; ///< by their name
        std::vector<RulebookFileError> unread;
    };
    [[nodiscard]] Content content() const;
    /// Writes the file of the rulebook's id, the folder too if there is none. The one of that id is replaced.
    [[nodiscard]] tl::expected<void, FileError> keep(const Rulebook& rulebook) const;
    /// False if its file is there still.
    [[nodiscard]] bool remove(const Rulebook& rulebook) const;
    [[nodiscard]] bool has(const Rulebook& rulebook) const;

private:
    [[nodiscard]] QString pathOf(const Rulebook& rulebook) const;

    QString m_folder;
};

/// Reads a rulebook from a file of up to a mebibyte.
[[nodiscard]] tl::expected<Rulebook, RulebookFileError> readRulebook(const QString& path);
/// Writes one whole; what was there is replaced.
[[nodiscard]] tl::expected<void, FileError> writeRulebook(const QString& path, const Rulebook& rulebook);
/// "high-school-estuary-league.json", from the id.
[[nodiscard]] QString rulebookFileName(const Rulebook& rulebook);

} // namespace setfolio
