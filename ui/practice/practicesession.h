// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A practice match at the table: the story is told over the sheet, and in the end the two sheets are compared.
#pragma once

#include "ui/practice/comparisondialog.h"
#include "ui/practice/storyreader.h"
#include "ui/sheet/fonts.h"

#include <QObject>

#include <functional>

namespace setfolio {

class StoryBand;
class TableWindow;

/// Shows the comparison, and lives as long as it is open; a test looks at it instead.
using ShowComparison =
    std::function<void(QWidget* parent, const Compared& compared, const std::vector<Recorded>& right)>;

/// Belongs to the window, which holds the learner's match: begun with what the story gives.
class PracticeSession : public QObject {
    Q_OBJECT

public:
    PracticeSession(TableWindow& window, Story story, Pace pace, ShowComparison show);

    [[nodiscard]] StoryReader& reader() const { return *m_reader; }
    [[nodiscard]] Compared compared() const;

private:
    void showBand();
    void showTime();

    TableWindow& m_window;
    StoryReader* m_reader;
    ShowComparison m_show;
};

/// With the dialogs of the program.
[[nodiscard]] ShowComparison comparisonShown(const SheetFonts& fonts);

} // namespace setfolio
