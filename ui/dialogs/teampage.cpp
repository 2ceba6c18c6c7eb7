// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/teampage.h"

#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rostereditor.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

TeamPage::TeamPage(const MatchDraft& draft, Team team, QWidget* parent)
    : QWidget(parent),
      m_team(team),
      m_name(pieces::lineEdit()),
      m_code(pieces::lineEdit({}, 5)),
      m_colour(pieces::lineEdit(tr("such as navy"))),
      m_coach(pieces::lineEdit(tr("may be empty"))),
      m_plate(new pieces::Plate(team, {})),
      m_roster(new RosterEditor) {
    const TeamName& named = draft.opened.teams[team];
    m_name->setText(named.name);
    m_code->setText(named.code);
    m_colour->setText(named.colour);
    m_coach->setText(draft.coaches[team]);
    m_plate->setCode(named.code);
    m_codeIsOwn = !named.code.isEmpty();
    m_roster->setRulebook(draft.opened.rulebook);
    m_roster->setRows(draft.rosters[team]);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(20);
    row->addWidget(makeSide());
    row->addWidget(m_roster, 1);
    connect(m_name, &QLineEdit::textEdited, this, &TeamPage::proposeCode);
    connect(m_code, &QLineEdit::textEdited, this, [this](const QString& typed) {
        m_codeIsOwn = !typed.isEmpty();
        m_code->setText(typed.toUpper());
    });
    connect(m_code, &QLineEdit::textChanged, m_plate, &pieces::Plate::setCode);
    for (const QLineEdit* field : {m_name, m_code, m_colour, m_coach})
        connect(field, &QLineEdit::textChanged, this, &TeamPage::changed);
    connect(m_roster, &RosterEditor::changed, this, &TeamPage::changed);
    setFocusProxy(m_name);
}

void TeamPage::writeTo(MatchDraft& draft) const {
    draft.opened.teams[m_team] = {m_name->text(), m_code->text(), m_colour->text()};
    draft.coaches[m_team] = m_coach->text();
    draft.rosters[m_team] = m_roster->rows();
}

void TeamPage::setRulebook(const Rulebook& rulebook) {
    m_roster->setRulebook(rulebook);
}

void TeamPage::setOtherCode(const QString& code) {
    m_otherCode = code;
}

QString TeamPage::code() const {
    return m_code->text();
}

void TeamPage::markProblems(const std::vector<DraftProblem>& problems) {
    using Code = DraftProblem::Code;
    setProblem(*m_name, isIn(problems, Code::NameMissing));
    setProblem(*m_code, isIn(problems, Code::CodeUnfit) || isIn(problems, Code::SameCode));
}

void TeamPage::goToProblem(const std::vector<DraftProblem>& problems) {
    using Code = DraftProblem::Code;
    if (isIn(problems, Code::NameMissing))
        m_name->setFocus();
    else if (isIn(problems, Code::CodeUnfit) || isIn(problems, Code::SameCode))
        m_code->setFocus();
    else
        m_roster->setFocus();
}

QString TeamPage::summary() const {
    const int players = m_roster->playerCount();
    return players == 0 ? tr("no roster") : tr("%n players", nullptr, players);
}

void TeamPage::offerTeams(const std::vector<BookTeam>& teams) {
    if (!m_offer) {
        m_offer = pieces::button(tr("Team book"), u"fromBook"_s);
        auto* keep = pieces::button(tr("Keep in it"), u"keepTeam"_s);
        keep->setToolTip(tr("Keeps this team with its roster in the team book"));
        m_book->addWidget(m_offer, 1);
        m_book->addWidget(keep, 1);
        connect(keep, &QPushButton::clicked, this, &TeamPage::keepAsked);
    }
    delete m_offer->menu();
    auto* menu = new QMenu(m_offer);
    menu->setObjectName(u"bookTeams"_s);
    for (const BookTeam& team : teams) {
        QAction* action = menu->addAction(asButtonWords(team.team.name));
        connect(action, &QAction::triggered, this, [this, team] { setTeam(team); });
    }
    m_offer->setMenu(menu);
    m_offer->setEnabled(!teams.empty());
}

void TeamPage::setTeam(const BookTeam& team) {
    m_name->setText(team.team.name);
    m_codeIsOwn = !team.team.code.isEmpty();
    m_code->setText(m_codeIsOwn ? team.team.code : codeFor(team.team.name, m_otherCode));
    m_colour->setText(team.team.colour);
    m_coach->setText(team.coach);
    m_roster->setRows(rowsOf(team.players));
}

BookTeam TeamPage::team() const {
    return {{},
            {plainLine(m_name->text()), plainLine(m_code->text()), plainLine(m_colour->text())},
            plainLine(m_coach->text()),
            playersOf(m_roster->rows())};
}

QWidget* TeamPage::makeSide() {
    auto* side = new QWidget;
    side->setFixedWidth(scaled(370));
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    pieces::addField(*column, tr("Name"), *m_name, u"name"_s);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    pieces::addField(*row, tr("Short name, 2 to 5 letters"), *m_code, u"code"_s);
    auto* plate = new QVBoxLayout;
    plate->addStretch();
    plate->addWidget(m_plate);
    plate->addSpacing(5);
    row->addLayout(plate);
    column->addLayout(row);
    auto* second = new QHBoxLayout;
    second->setSpacing(12);
    pieces::addField(*second, tr("Shirt colour"), *m_colour, u"colour"_s);
    pieces::addField(*second, tr("Coach"), *m_coach, u"coach"_s);
    column->addLayout(second);
    m_book = new QHBoxLayout;
    m_book->setSpacing(8);
    column->addLayout(m_book);
    column->addWidget(m_roster->tools(), 1);
    return side;
}

bool TeamPage::isIn(const std::vector<DraftProblem>& problems, DraftProblem::Code code) const {
    return std::ranges::any_of(
        problems, [&](const DraftProblem& problem) { return problem.team == m_team && problem.code == code; });
}

void TeamPage::proposeCode() {
    if (!m_codeIsOwn)
        m_code->setText(codeFor(m_name->text(), m_otherCode));
}

} // namespace setfolio
