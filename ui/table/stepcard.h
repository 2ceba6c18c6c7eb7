// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What to do next while no rally can be played: one sentence, one button, and Enter.
#pragma once

#include "ui/table/look.h"
#include "ui/wording/nextstep.h"

#include <QWidget>

class QHBoxLayout;
class QTimeEdit;

namespace setfolio {

class KeyButton;

class StepCard : public QWidget {
    Q_OBJECT

public:
    explicit StepCard(QWidget* parent = nullptr);

    void setLook(const Look& look);
    /// Shows a step; `withTime` offers the time of day to be written on the sheet.
    void setStep(const StepWords& words, bool withTime);
    /// The clock's time of day, until the scorer has written another.
    void setTimeOfDay(QTime now);
    /// What counts down in the head, "Interval 2:31"; empty for nothing.
    void setCountdown(const QString& words);
    void setEnabledStep(bool enabled);

    [[nodiscard]] QTime time() const;

Q_SIGNALS:
    void pressed();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    StepWords m_words;
    QString m_countdown;
    QHBoxLayout* m_row;
    QTimeEdit* m_time;
    KeyButton* m_button;
    bool m_timeIsWritten = false;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
