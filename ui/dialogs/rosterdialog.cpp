// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rosterdialog.h"

#include "core/rules/judge.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rostereditor.h"
#include "ui/dialogs/verdictview.h"
#include "ui/look/controls.h"
#include "ui/wording/names.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

RosterDialog::RosterDialog(const MatchState& state, Team team, QWidget* parent)
    : FrameDialog(tr("Roster of %1").arg(codeOf(state, team)),
                  tr("It takes the place of the earlier one; what is on the sheet of a set already stays."),
                  tr("Record the roster"), parent),
      m_state(state),
      m_team(team),
      m_coach(pieces::lineEdit(tr("may be empty"))),
      m_roster(new RosterEditor),
      m_verdict(new VerdictView) {
    m_coach->setText(state.rosters[team].coach);
    m_roster->setRulebook(state.rulebook());
    m_roster->setRows(rowsOf(state.rosters[team].players));
    auto* side = new QVBoxLayout;
    side->setSpacing(10);
    pieces::addField(*side, tr("Coach"), *m_coach, u"coach"_s);
    side->addWidget(m_roster->tools(), 1);
    side->addWidget(m_verdict);
    auto* row = new QHBoxLayout;
    row->setSpacing(20);
    row->addLayout(side, 2);
    row->addWidget(m_roster, 3);
    body()->addLayout(row, 1);
    giveRoom(*this, QSize(980, 660));
    connect(m_roster, &RosterEditor::changed, this, &RosterDialog::review);
    connect(m_verdict, &VerdictView::changed, this, &RosterDialog::allowOrNot);
    review();
    m_roster->setFocus();
}

Roster RosterDialog::result() const {
    return {m_team, playersOf(m_roster->rows()), plainLine(m_coach->text())};
}

std::optional<QString> RosterDialog::overruled() const {
    return m_verdict->overruled();
}

void RosterDialog::review() {
    const Findings findings = judge(m_state, result());
    m_verdict->setFindings(findings, m_state);
    m_verdict->setVisible(!findings.empty());
    allowOrNot();
}

void RosterDialog::allowOrNot() {
    const std::vector<RosterRow> rows = m_roster->rows();
    const bool lost = std::ranges::any_of(
        rows, [](const RosterRow& row) { return !row.isEmpty() && !numberFromText(row.number).isValid(); });
    recordButton()->setEnabled(!lost && m_verdict->mayRecord());
}

} // namespace setfolio
