// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The words of a command line, read as what they ask for; pure.
#pragma once

#include "core/record/export.h"
#include "core/record/nameless.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/sheets.h"
#include "ui/wording/commandwords.h"

#include <QStringList>

#include <tl/expected.hpp>

#include <optional>
#include <variant>

namespace setfolio {

struct OpenWindow {
    QString file; ///< empty: the start page
    bool operator==(const OpenWindow&) const = default;
};
struct PrintSheets {
    QStringList files;
    QString to;
    std::optional<PaperSize> paper; ///< none: the usual one of the locale
    PdfForm form = PdfForm::Archive;
    std::set<SheetKind> sheets{}; ///< empty: those that are usual
    InkSet inks = InkSet::CobaltAndRust;
    Names names = Names::Given;
    bool operator==(const PrintSheets&) const = default;
};
struct CheckFiles {
    QStringList files;
    QString seal; ///< digits of a digest from paper; empty: none is asked for
    bool operator==(const CheckFiles&) const = default;
};
struct EnterList {
    QString list; ///< "-" is standard input
    QString to;
    bool operator==(const EnterList&) const = default;
};
struct ExportMatch {
    QString file;
    QString to; ///< empty: standard output; never so for a match file
    ExportForm form = ExportForm::Json;
    Names names = Names::Given; ///< always left out of a match file
    bool operator==(const ExportMatch&) const = default;
};
struct ShowHelp {
    bool operator==(const ShowHelp&) const = default;
};
struct ShowVersion {
    bool operator==(const ShowVersion&) const = default;
};
using Command = std::variant<OpenWindow, PrintSheets, CheckFiles, EnterList, ExportMatch, ShowHelp, ShowVersion>;

/// `words` are those after the program's name.
[[nodiscard]] tl::expected<Command, UsageError> commandOf(const QStringList& words);

} // namespace setfolio
