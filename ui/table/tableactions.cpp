// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/tableactions.h"

#include "ui/look/appearancewords.h"
#include "ui/table/keys.h"

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

QAction* addChoice(QMenu& menu, QActionGroup& group, const QString& name, const QString& id) {
    QAction* action = menu.addAction(name);
    action->setObjectName(id);
    action->setCheckable(true);
    group.addAction(action);
    return action;
}

} // namespace

TableActions::TableActions(QWidget& window) : QObject(&window) {
    for (const CommandInfo& info : allCommands()) {
        auto* action = new QAction(nameOf(info.command), &window);
        action->setObjectName(info.id);
        action->setShortcuts(keysOf(info.command));
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
    for (const TableMenu which : allTableMenus) {
        QMenu* menu = bar.addMenu(titleOf(which));
        for (const CommandInfo& info : allCommands())
            if (info.menu == which)
                menu->addAction(m_actions.at(info.command));
        if (which != TableMenu::View)
            continue;
        menu->addSeparator();
        addLooks(*menu);
        addTextSizes(*menu);
        menu->addSeparator();
        m_view = menu;
    }
}

void TableActions::setSituation(const Situation& situation) {
    for (const auto& [command, action] : m_actions)
        action->setEnabled(mayBeAsked(command, situation));
}

void TableActions::addLooks(QMenu& menu) {
    QMenu* looks = menu.addMenu(Table::tr("&Look"));
    auto* group = new QActionGroup(this);
    for (const LookChoice choice : allLookChoices) {
        QAction* action = addChoice(*looks, *group, nameOf(choice), u"look%1"_s.arg(static_cast<int>(choice)));
        action->setChecked(choice == programLook());
        m_looks.emplace(choice, action);
        connect(action, &QAction::triggered, this, [this, choice] { Q_EMIT lookChosen(choice); });
    }
}

void TableActions::addTextSizes(QMenu& menu) {
    QMenu* sizes = menu.addMenu(Table::tr("Size of &words"));
    auto* group = new QActionGroup(this);
    for (const int percent : textSizes) {
        QAction* action = addChoice(*sizes, *group, Table::tr("%1 %").arg(percent), u"textSize%1"_s.arg(percent));
        action->setChecked(percent == programTextSize());
        connect(action, &QAction::triggered, this, [this, percent] { Q_EMIT textSizeChosen(percent); });
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
