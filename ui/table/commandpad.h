// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The commands that belong to no side.
#pragma once

#include "ui/table/keybutton.h"

#include <QWidget>

class QGridLayout;
class QHBoxLayout;
class QVBoxLayout;

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
    [[nodiscard]] KeyButton* makeButton(TableCommand command);

    QVBoxLayout* m_column;
    QHBoxLayout* m_first; ///< the serve, and who makes it
    QGridLayout* m_grid;
    std::vector<KeyButton*> m_buttons;
};

} // namespace setfolio
