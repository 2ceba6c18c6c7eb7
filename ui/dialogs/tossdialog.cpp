// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/tossdialog.h"

#include "core/rules/judge.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/tosscourt.h"
#include "ui/dialogs/verdictview.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/wording/fill.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

TossDialog::TossDialog(const MatchState& state, QWidget* parent)
    : FrameDialog(isDecidingSet(state, state.set().number) ? tr("Toss for the deciding set") : tr("Toss"),
                  tr("Ask the referee. Left and right are as you see the court from your table."),
                  tr("Record the toss"), parent),
      m_state(state),
      m_court(new TossCourt(state.opened->teams)),
      m_verdict(new VerdictView) {
    m_court->setObjectName(u"court"_s);
    body()->addWidget(m_court);
    m_leftButtons = addChoice(tr("Stands left of the scorer"), u"left"_s, tr("1 2"));
    m_serveButtons = addChoice(tr("Serves first"), u"serves"_s, tr("3 4"));
    body()->addWidget(m_verdict);
    connect(m_leftButtons, &QButtonGroup::idClicked, this, [this](int id) { chooseLeft(static_cast<Team>(id)); });
    connect(m_serveButtons, &QButtonGroup::idClicked, this, [this](int id) { chooseServer(static_cast<Team>(id)); });
    connect(m_court, &TossCourt::halfClicked, this, [this](Side side) {
        if (m_left)
            chooseServer(side == Side::Left ? *m_left : opponentsOf(*m_left));
    });
    connect(m_verdict, &VerdictView::changed, this,
            [this] { recordButton()->setEnabled(m_left && m_serves && m_verdict->mayRecord()); });
    review();
    m_leftButtons->button(static_cast<int>(Team::Home))->setFocus();
}

std::optional<QString> TossDialog::overruled() const {
    return m_verdict->overruled();
}

void TossDialog::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_1:
    case Qt::Key_2:
        return chooseLeft(event->key() == Qt::Key_1 ? Team::Home : Team::Visitors);
    case Qt::Key_3:
    case Qt::Key_4:
        return chooseServer(event->key() == Qt::Key_3 ? Team::Home : Team::Visitors);
    }
    FrameDialog::keyPressEvent(event);
}

QButtonGroup* TossDialog::addChoice(const QString& question, const QString& name, const QString& caps) {
    auto* group = new QButtonGroup(this);
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    auto* label = pieces::heading(question, 15);
    label->setMinimumWidth(scaled(210));
    row->addWidget(label);
    const QStringList keys = caps.split(u' ');
    for (const Team team : bothTeams) {
        const TeamName& named = m_state.opened->teams[team];
        const bool home = team == Team::Home;
        auto* button = pieces::button(u"%1   %2"_s.arg(keys.at(home ? 0 : 1), asButtonWords(named.name)),
                                      name + (home ? u"Home"_s : u"Visitors"_s));
        button->setAccessibleName(fill(u"%1: %2"_s, {question, named.name}));
        button->setCheckable(true);
        group->addButton(button, static_cast<int>(team));
        row->addWidget(button, 1);
    }
    body()->addLayout(row);
    return group;
}

void TossDialog::chooseLeft(Team team) {
    m_left = team;
    m_leftButtons->button(static_cast<int>(team))->setChecked(true);
    m_court->setLeft(m_left);
    review();
}

void TossDialog::chooseServer(Team team) {
    m_serves = team;
    m_serveButtons->button(static_cast<int>(team))->setChecked(true);
    m_court->setServesFirst(m_serves);
    review();
}

void TossDialog::review() {
    const Findings findings = judge(m_state, Toss{m_serves.value_or(Team::Home), m_left.value_or(Team::Home)});
    m_verdict->setFindings(findings, m_state);
    m_verdict->setVisible(!findings.empty());
}

} // namespace setfolio
