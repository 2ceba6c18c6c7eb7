// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the referee looks over before signing: the result in large figures, all else line by line, and the sheet.
#pragma once

#include "core/record/signoffreview.h"
#include "ui/sheet/fonts.h"
#include "ui/wording/reviewwords.h"

#include <QWidget>

class QListWidget;

namespace setfolio {

class SheetPane;

class ReviewPage : public QWidget {
    Q_OBJECT

public:
    /// `record` must live on and stay as it is.
    ReviewPage(const SignOffReview& review, const MatchRecord& record, const MatchState& state, SheetFonts fonts,
               QWidget* parent = nullptr);

    [[nodiscard]] QListWidget& list() const { return *m_list; }
    [[nodiscard]] SheetPane& sheet() const { return *m_sheet; }

private:
    void addLine(const ReviewLine& line);
    void showMark(int row);

    std::vector<ReviewLine> m_lines;
    QListWidget* m_list;
    SheetPane* m_sheet;
};

} // namespace setfolio
