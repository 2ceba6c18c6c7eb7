// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Pages as a PDF.
#pragma once

#include "ui/sheet/page.h"

#include <QByteArray>
#include <QDateTime>

#include <tl/expected.hpp>

#include <vector>

namespace setfolio {

/// Archive: PDF/A-1b (ISO 19005-1), made to be read the same in many years: what a league files. Plain: without that
/// promise, and smaller by the colour profile.
enum class PdfForm : std::uint8_t { Archive, Plain };

/// What the document says of itself, beside the program that made it.
struct PdfInfo {
    QString title;
    QString author; ///< whose match it is: the competition
    QDateTime created;
    PdfForm form = PdfForm::Archive;
    QString subject = {}; ///< a sentence about what is in it
};

/// Why there is no PDF.
struct PdfError {
    enum class Code : std::uint8_t {
        NoPages,
        NotPainted, ///< the writer could not begin, or end, a page
        NoDate,     ///< `created` is not valid
    };
    Code code = Code::NoPages;
    bool operator==(const PdfError&) const = default;
};

/// Each page at its exact size, with embedded type and text that can be searched; no tint of the paper. The same
/// arguments give the same bytes, when the program has set a deterministic hash seed before its first QHash.
[[nodiscard]] tl::expected<QByteArray, PdfError> pdfOf(const std::vector<Page>& pages, const PdfInfo& info);

} // namespace setfolio
