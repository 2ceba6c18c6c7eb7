// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A practice match on paper: what happens, in order, to be read out to a class that writes by pen.
#pragma once

#include "ui/sheet/page.h"
#include "ui/wording/storywords.h"

#include <vector>

namespace setfolio {

/// At least one page; what happens stands numbered in two columns.
[[nodiscard]] std::vector<Page> composeStory(const StoryText& story, const SheetFonts& fonts, PaperSize paper);

} // namespace setfolio
