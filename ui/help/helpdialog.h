// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The help page: read on the screen or heard, and printed.
#pragma once

#include <QDialog>

class QPrinter;
class QTextBrowser;

namespace setfolio {

class HelpDialog : public QDialog {
    Q_OBJECT

public:
    explicit HelpDialog(QWidget* parent = nullptr);

    /// The page in type that is small enough for one sheet of paper.
    void printOn(QPrinter& printer) const;

private:
    void askForPrinter();

    QTextBrowser* m_page;
};

} // namespace setfolio
