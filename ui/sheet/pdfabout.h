// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a PDF says of itself: in its information dictionary, its catalogue and its XMP packet, the same in all three.
#pragma once

#include "ui/sheet/pdf.h"
#include "ui/sheet/pdfobjects.h"

namespace setfolio::sheet {

/// Text as it may stand in a document's metadata: without what XML 1.0 has no place for.
[[nodiscard]] QString plainWords(const QString& text);

/// The XMP packet (ISO 16684-1).
[[nodiscard]] QByteArray xmpOf(const PdfInfo& info);

/// Sets the date and author of the information dictionary, and the language of the catalogue; false if there is
/// neither.
[[nodiscard]] bool describe(PdfObjects& pdf, const PdfInfo& info);

} // namespace setfolio::sheet
