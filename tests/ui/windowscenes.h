// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Every window and dialog of the program, in every state in which it looks different.
#pragma once

#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

namespace setfolio::testing {

/// A window that is shown, for as long as `keeps` lives.
struct ShownWindow {
    std::shared_ptr<void> keeps;
    QWidget* window = nullptr;
};

struct WindowScene {
    const char* name;
    std::function<ShownWindow()> show;
};

/// The table's windows have the size that is left of a screen of 1366 x 768 beside a panel of the desktop and a title
/// bar.
inline constexpr QSize smallestRoom(1366, 696);
[[nodiscard]] const std::vector<WindowScene>& windowScenes();
/// Those of them in which a bar of the table is open.
[[nodiscard]] std::vector<WindowScene> barScenes();
/// Those of the team book, of the help page and of the keys.
[[nodiscard]] std::vector<WindowScene> bookScenes();

} // namespace setfolio::testing
