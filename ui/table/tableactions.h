// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The table of commands as actions: their keys work wherever the focus is, and the menus hold them.
#pragma once

#include "ui/table/commands.h"
#include "ui/table/look.h"

#include <QObject>

#include <map>

class QAction;
class QMenu;
class QMenuBar;
class QWidget;

namespace setfolio {

/// A key held down never commands twice.
class TableActions : public QObject {
    Q_OBJECT

public:
    /// The actions' keys work in `window`.
    explicit TableActions(QWidget& window);

    void fill(QMenuBar& bar);
    void setSituation(const Situation& situation);
    [[nodiscard]] QAction* action(TableCommand command) const { return m_actions.at(command); }

Q_SIGNALS:
    void commanded(TableCommand command);
    void lookChosen(LookChoice choice);

private:
    void addLooks(QMenu& menu);

    std::map<TableCommand, QAction*> m_actions;
};

} // namespace setfolio
