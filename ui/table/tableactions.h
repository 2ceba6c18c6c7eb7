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
class QActionGroup;
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
    /// Marks the look that is chosen now, without a signal.
    void showLook(LookChoice look);
    /// Puts these languages at the end of the View menu, in place of those offered before, with the chosen one marked.
    void offerLanguages(const std::vector<Language>& languages, Language chosen);
    void setSituation(const Situation& situation);
    [[nodiscard]] QAction* action(TableCommand command) const { return m_actions.at(command); }

Q_SIGNALS:
    void commanded(TableCommand command);
    void lookChosen(LookChoice choice);
    void textSizeChosen(int percent);
    void languageChosen(setfolio::Language language);

private:
    void addLooks(QMenu& menu);
    void addTextSizes(QMenu& menu);

    std::map<TableCommand, QAction*> m_actions;
    std::map<LookChoice, QAction*> m_looks;
    QMenu* m_view = nullptr;
    QActionGroup* m_languages = nullptr;
};

} // namespace setfolio
