// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The band over the sheet that tells what happens on court.
#pragma once

#include "ui/table/look.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace setfolio {

class StoryReader;

class StoryBand : public QWidget {
    Q_OBJECT

public:
    explicit StoryBand(StoryReader& reader, QWidget* parent = nullptr);

    void setLook(const Look& look);

Q_SIGNALS:
    void comparisonAsked();

private:
    void tell();
    void showWhatIsDue();
    QPushButton* makeButton(const QString& name, Qt::Key key, void (StoryBand::*pressed)());
    void next();
    void holdOrGoOn();
    void compare();

    StoryReader& m_reader;
    QLabel* m_before;
    QLabel* m_now;
    QPushButton* m_next;
    QPushButton* m_hold;
    QPushButton* m_compare;
};

} // namespace setfolio
