// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The table of commands as actions: their keys work wherever the focus is, and the menus hold them.
#pragma once

#include "ui/table/commands.h"
#include "ui/table/look.h"
#include "ui/wording/languages.h"

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
    ~TableActions() override;

    void fill(QMenuBar& bar);
    /// Marks what is chosen now, without a signal.
    void showChoices(LookChoice look, Language language);
    void setSituation(const Situation& situation);
    [[nodiscard]] QAction* action(TableCommand command) const { return m_actions.at(command); }

Q_SIGNALS:
    void commanded(TableCommand command);
    void lookChosen(LookChoice choice);
    void languageChosen(setfolio::Language language);

private:
    void addLooks(QMenu& menu);
    void addLanguages(QMenu& menu);

    std::map<TableCommand, QAction*> m_actions;
    std::map<LookChoice, QAction*> m_looks;
    std::map<Language, QAction*> m_languages;
};

} // namespace setfolio
