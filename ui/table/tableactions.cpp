// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/tableactions.h"

#include <QAction>
#include <QActionGroup>
#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

QString titleOf(TableMenu menu) {
    switch (menu) {
    case TableMenu::Match:
        return Table::tr("&Match");
    case TableMenu::Set:
        return Table::tr("&Set");
    case TableMenu::Rally:
        return Table::tr("&Rally");
    case TableMenu::Sheet:
        return Table::tr("S&heet");
    case TableMenu::View:
        return Table::tr("&View");
    }
    return {};
}

} // namespace

TableActions::TableActions(QWidget& window) : QObject(&window) {
    for (const CommandInfo& info : allCommands()) {
        auto* action = new QAction(nameOf(info.command), &window);
        action->setObjectName(info.id);
        action->setShortcuts(info.keys);
        action->setAutoRepeat(false);
        connect(action, &QAction::triggered, this, [this, command = info.command] { Q_EMIT commanded(command); });
        window.addAction(action);
        m_actions.emplace(info.command, action);
    }
}

TableActions::~TableActions() {
    for (const auto& [command, action] : m_actions)
        delete action;
}

void TableActions::fill(QMenuBar& bar) {
    for (const TableMenu which :
         {TableMenu::Match, TableMenu::Set, TableMenu::Rally, TableMenu::Sheet, TableMenu::View}) {
        QMenu* menu = bar.addMenu(titleOf(which));
        for (const CommandInfo& info : allCommands())
            if (info.menu == which)
                menu->addAction(m_actions.at(info.command));
        if (which != TableMenu::View)
            continue;
        addLooks(*menu);
        menu->addSeparator();
        m_view = menu;
    }
}

void TableActions::setSituation(const Situation& situation) {
    for (const auto& [command, action] : m_actions)
        action->setEnabled(mayBeAsked(command, situation));
}

void TableActions::addLooks(QMenu& menu) {
    menu.addSeparator();
    auto* group = new QActionGroup(this);
    const std::array<std::pair<LookChoice, QString>, 3> choices{
        {{LookChoice::AsSystem, Table::tr("Look as the system")},
         {LookChoice::Light, Table::tr("Light look")},
         {LookChoice::Dark, Table::tr("Dark look")}}};
    for (const auto& [choice, name] : choices) {
        QAction* action = menu.addAction(name);
        action->setObjectName(u"look%1"_s.arg(static_cast<int>(choice)));
        action->setCheckable(true);
        group->addAction(action);
        m_looks.emplace(choice, action);
        connect(action, &QAction::triggered, this, [this, choice = choice] { Q_EMIT lookChosen(choice); });
    }
}

void TableActions::showLook(LookChoice look) {
    m_looks.at(look)->setChecked(true);
}

void TableActions::offerLanguages(const std::vector<Language>& languages, Language chosen) {
    if (m_languages) { // one of them may just be telling that it was chosen
        for (QAction* action : m_languages->actions())
            m_view->removeAction(action);
        m_languages->deleteLater();
    }
    m_languages = new QActionGroup(this);
    for (const Language language : languages) {
        auto* action = new QAction(nameOf(language), m_languages);
        action->setObjectName(u"language%1"_s.arg(static_cast<int>(language)));
        action->setCheckable(true);
        action->setChecked(language == chosen);
        m_view->addAction(action);
        connect(action, &QAction::triggered, this, [this, language] { Q_EMIT languageChosen(language); });
    }
}

} // namespace setfolio
