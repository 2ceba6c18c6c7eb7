// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A bar that asks for one line: a remark, the reason of a penalty, why the referee allows something.
#pragma once

#include "ui/table/inlinebar.h"

#include <functional>

class QLineEdit;

namespace setfolio {

struct Question {
    QString title;
    QString sentence; ///< what is to be said about it
    QString prompt;   ///< in the empty field
    QString button;   ///< "Record"
    QString line{};   ///< what the field begins with
    bool warns = false;
    bool mayBeEmpty = false;
};

class AskBar : public InlineBar {
    Q_OBJECT

public:
    explicit AskBar(QWidget* parent = nullptr);

    void setLook(const Look& look) override;
    /// Asks; `answered` is called with the line, without blanks at its ends, once the bar has closed.
    void ask(const Question& question, std::function<void(const QString&)> answered);

protected:
    void recordPressed() override;

private:
    QLineEdit* m_line;
    bool m_mayBeEmpty = false;
    std::function<void(const QString&)> m_answered;
};

} // namespace setfolio
