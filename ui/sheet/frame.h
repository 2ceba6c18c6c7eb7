// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "ui/sheet/draft.h"
#include "ui/sheet/page.h"
#include "ui/sheet/scene.h"

namespace setfolio::sheet {

/// What was drafted on the live area, set on its paper. Takes the items from the draft.
[[nodiscard]] Page framed(Draft& draft, PaperSize size, PageNumber number);

} // namespace setfolio::sheet
