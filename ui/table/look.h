// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How the table window looks: its theme, and the scale by which everything beside the sheet grows on a larger screen
/// and with the size of the words.
#pragma once

#include "ui/look/appearance.h"
#include "ui/look/colours.h"

#include <QFont>

namespace setfolio {

struct Look {
    Theme theme = Theme::Light;
    double scale = 1;     ///< 1 at 1366 x 768 and below, with words of the usual size
    bool stacked = false; ///< larger words: what stands side by side else stands above one another
    Colours colours = coloursOf(Theme::Light);
    QColor pressed;     ///< a button held down
    QColor newest;      ///< behind the newest entry
    QColor courtGround; ///< round the court
    QColor alarm;       ///< ground of a band that tells of something gone wrong
    QColor onAlarm;     ///< text on it
    QColor saved;       ///< the dot beside "Saved"

    [[nodiscard]] static Look of(Theme theme, double scale);

    /// A measure of the drawing at scale 1, in pixels of this window.
    [[nodiscard]] double px(double measure) const { return measure * scale; }
    [[nodiscard]] int whole(double measure) const { return qRound(px(measure)); }
    /// The window's type at a size of the drawing; never below 11 pixels.
    [[nodiscard]] QFont font(double size, QFont::Weight weight = QFont::Medium) const;
};

} // namespace setfolio
