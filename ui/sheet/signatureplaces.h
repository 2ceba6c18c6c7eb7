// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where the page of the match is signed and sealed. The places are the same whether they are filled by pen or not.
#pragma once

#include "ui/sheet/scene.h"

namespace setfolio::sheet {

/// The place of one signer: role and printed name over a line to sign on. Lengths on the live area.
struct SignaturePlace {
    Signatory who;
    QRectF area;                                                                ///< all of it
    [[nodiscard]] QRectF stroke() const { return area.adjusted(0, 5.6, 0, 0); } ///< for the signature itself
};

/// In the rulebook's order of signing; captains and coaches have a place a team.
[[nodiscard]] std::vector<SignaturePlace> signaturePlaces(const Rulebook& rulebook);
/// For the seal's groups, and beside them a square for a code.
[[nodiscard]] QRectF sealPlace();

/// Title, roles, printed names as far as they are known, the signatures of the match or lines to sign on, the seal or
/// its empty box.
void drawSignaturePlaces(Draft& draft, const MatchRecord& record);

} // namespace setfolio::sheet
