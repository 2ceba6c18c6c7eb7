// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Which practice match, and how fast it is told.
#pragma once

#include "ui/dialogs/framedialog.h"
#include "ui/practice/storyreader.h"

#include <QString>

class QButtonGroup;
class QHBoxLayout;

namespace setfolio {

class PracticeDialog : public FrameDialog {
    Q_OBJECT

public:
    explicit PracticeDialog(QWidget* parent = nullptr);

    [[nodiscard]] QString storyId() const;
    [[nodiscard]] Pace pace() const;

Q_SIGNALS:
    /// The chosen story is wanted on paper, for a class that writes by pen.
    void printAsked(const QString& storyId);

private:
    void addStories();
    void addPaces();

    QButtonGroup* m_stories;
    QButtonGroup* m_paces;
};

} // namespace setfolio
