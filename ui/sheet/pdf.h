// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Pages as a PDF.
#pragma once

#include "ui/sheet/page.h"

#include <QByteArray>
#include <QDateTime>

#include <vector>

namespace setfolio {

struct PdfInfo {
    QString title;
    QString author; ///< the program, in the document's Creator
    QDateTime created;
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
