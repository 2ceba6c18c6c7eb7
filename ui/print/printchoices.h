// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What was chosen for printing, remembered from one time to the next on this machine.
#pragma once

#include "ui/sheet/pdf.h"
#include "ui/wording/inkset.h"

#include <optional>

namespace setfolio {

struct PrintChoices {
    std::optional<PaperSize> paper; ///< none: the usual one of the country
    InkSet inks = InkSet::CobaltAndRust;
    PdfForm form = PdfForm::Archive;
    bool operator==(const PrintChoices&) const = default;
};

/// The choices of the last time, in the settings of the user; what is not there or not known there is as at first.
[[nodiscard]] PrintChoices rememberedChoices();
void remember(const PrintChoices& choices);

} // namespace setfolio
