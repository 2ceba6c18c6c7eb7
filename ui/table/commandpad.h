// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The commands that belong to no side.
#pragma once

#include "ui/table/keybutton.h"

#include <QWidget>

class QGridLayout;

namespace setfolio {

class CommandPad : public QWidget {
    Q_OBJECT

public:
    explicit CommandPad(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setSituation(const Situation& situation);

Q_SIGNALS:
    void commanded(TableCommand command);

private:
    QGridLayout* m_grid;
    std::vector<KeyButton*> m_buttons;
};

} // namespace setfolio
