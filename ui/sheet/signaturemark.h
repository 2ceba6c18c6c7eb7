// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Signatures as they are printed: the strokes as they were drawn, or the word for their absence.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/draft.h"

namespace setfolio::sheet {

/// What somebody has signed, or why not, and whether its sign-off is void.
struct GivenSignature {
    const SignatureRecord* record;
    bool isVoid;
};

/// What one signatory has given, the oldest first: void signatures stay beside the newest. Of many the last three.
[[nodiscard]] std::vector<GivenSignature> signaturesOf(const std::vector<SignOffRecord>& signOffs,
                                                       const Signatory& who);
/// The printed name of the newest; empty if it is not signed.
[[nodiscard]] QString nameIn(const std::vector<GivenSignature>& signatures);
[[nodiscard]] bool isProtest(const std::vector<GivenSignature>& signatures);
/// Draws them side by side into a place; those void are struck.
void drawSignatureMarks(Draft& draft, const Tag& tag, const QRectF& place,
                        const std::vector<GivenSignature>& signatures);

} // namespace setfolio::sheet
