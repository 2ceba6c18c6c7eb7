// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "ui/sheet/draft.h"
#include "ui/sheet/page.h"
#include "ui/sheet/scene.h"

namespace setfolio::sheet {

/// What was drafted on the live area, set on its paper, in its inks. Takes the items from the draft.
[[nodiscard]] Page framed(Draft& draft, const SheetOptions& options, PageNumber number);

} // namespace setfolio::sheet
