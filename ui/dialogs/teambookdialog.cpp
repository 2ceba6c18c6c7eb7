// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/teambookdialog.h"

#include "core/record/shown.h"
#include "core/rules/rulebook.h"
#include "ui/dialogs/matchdraft.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/teampage.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/fill.h"

#include <QBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QSize usual(1240, 690);
constexpr int sideWidth = 250;

MatchDraft draftWith(const BookTeam& team) {
    MatchDraft draft;
    draft.opened.rulebook = publishedRulebook(publishedRulebookIds().front()).value_or(Rulebook());
    draft.opened.teams.home = team.team;
    draft.coaches.home = team.coach;
    draft.rosters.home = rowsOf(team.players);
    return draft;
}

/// Lines with something in them, but no number: they would be lost.
bool losesLines(const std::vector<RosterRow>& rows) {
    return std::ranges::any_of(
        rows, [](const RosterRow& row) { return !row.isEmpty() && !numberFromText(row.number).isValid(); });
}

} // namespace

TeamBookDialog::TeamBookDialog(TeamBook book, const MatchState& match, QWidget* parent)
    : FrameDialog(tr("Team book"), tr("Teams kept on this machine, to begin a match with."), tr("Keep the team book"),
                  parent),
      m_book(std::move(book)),
      m_list(new QListWidget),
      m_place(new QStackedWidget),
      m_said(new QLabel) {
    setObjectName(u"teamBook"_s);
    const TeamBook::Content content = m_book.content();
    m_kept = m_teams = content.teams;
    auto* side = new QWidget;
    side->setFixedWidth(scaled(sideWidth));
    auto* column = new QVBoxLayout(side);
    makeSide(match, *column);
    m_place->addWidget(pieces::explanation(tr("There is no team in the book yet: add one.")));
    auto* row = new QHBoxLayout;
    row->setSpacing(20);
    row->addWidget(side);
    row->addWidget(m_place, 1);
    body()->addLayout(row, 1);
    m_said->setObjectName(u"said"_s);
    m_said->setFont(windowFont(14, QFont::Medium));
    m_said->setTextFormat(Qt::PlainText);
    body()->addWidget(m_said);
    giveRoom(*this, usual);
    recordButton()->setDefault(false); // Enter goes down the roster
    recordButton()->setAutoDefault(false);
    for (const BookTeam& team : m_teams)
        m_list->addItem(asShown(team.team.name));
    connect(m_list, &QListWidget::currentRowChanged, this, &TeamBookDialog::showRow);
    m_teams.empty() ? showPage() : m_list->setCurrentRow(0);
    tell(content.unread.isEmpty()
             ? QString()
             : fill(tr("No team can be read from %1: it is left as it is."), {content.unread.join(u", "_s)}));
    m_list->setFocus();
}

void TeamBookDialog::accept() {
    takePage();
    if (const QString problem = whatStops(); !problem.isEmpty())
        return tell(problem);
    if (const QString problem = keepAll(); !problem.isEmpty())
        return tell(problem);
    FrameDialog::accept();
}

void TeamBookDialog::reject() {
    takePage();
    if (m_teams == m_kept || m_warned)
        return FrameDialog::reject();
    tell(tr("What you have changed is not kept yet: press Cancel or Escape once more to drop it."));
    m_warned = true;
}

void TeamBookDialog::makeSide(const MatchState& match, QBoxLayout& column) {
    column.setContentsMargins(0, 0, 0, 0);
    column.setSpacing(8);
    m_list->setObjectName(u"teams"_s);
    m_list->setAccessibleName(tr("Teams of the book"));
    m_list->setStyleSheet(u"QListView::item { min-height: %1px; padding-left: 8px; }"_s.arg(scaled(targetHeight)));
    column.addWidget(m_list, 1);
    auto* add = pieces::button(tr("New team"), u"newTeam"_s);
    column.addWidget(add);
    connect(add, &QPushButton::clicked, this, [this] { addTeam({}); });
    for (const Team team : bothTeams) {
        const BookTeam own = bookTeamOf(match, team);
        if (own.team.name.isEmpty())
            continue;
        auto* take = pieces::button(fill(tr("Take over %1"), {asButtonWords(own.team.code)}),
                                    team == Team::Home ? u"takeHome"_s : u"takeVisitors"_s);
        take->setToolTip(plainTip(own.team.name));
        column.addWidget(take);
        connect(take, &QPushButton::clicked, this, [this, own] { addTeam(own); });
    }
    m_remove = pieces::button(tr("Delete the team"), u"remove"_s);
    m_back = pieces::button(tr("Bring it back"), u"bringBackTeam"_s);
    m_back->hide();
    column.addWidget(m_remove);
    column.addWidget(m_back);
    connect(m_remove, &QPushButton::clicked, this, &TeamBookDialog::removeTeam);
    connect(m_back, &QPushButton::clicked, this, &TeamBookDialog::bringBack);
}

void TeamBookDialog::showRow(int row) {
    takePage();
    m_shown = row;
    showPage();
}

/// What was typed on the page goes into its team.
void TeamBookDialog::takePage() {
    if (!m_page)
        return;
    MatchDraft draft;
    m_page->writeTo(draft);
    BookTeam& team = m_teams.at(static_cast<std::size_t>(m_shown));
    const TeamName& name = draft.opened.teams.home;
    team.team = {plainLine(name.name), plainLine(name.code), plainLine(name.colour)};
    team.coach = plainLine(draft.coaches.home);
    team.players = playersOf(draft.rosters.home);
}

void TeamBookDialog::showPage() {
    delete m_page;
    m_page = nullptr;
    m_remove->setEnabled(m_shown >= 0);
    if (m_shown < 0)
        return;
    m_page = new TeamPage(draftWith(m_teams.at(static_cast<std::size_t>(m_shown))), Team::Home);
    m_page->setObjectName(u"bookPage"_s);
    m_place->addWidget(m_page);
    m_place->setCurrentWidget(m_page);
    connect(m_page, &TeamPage::changed, this, &TeamBookDialog::nameRow);
}

void TeamBookDialog::nameRow() {
    MatchDraft draft;
    m_page->writeTo(draft);
    m_list->item(m_shown)->setText(asShown(draft.opened.teams.home.name));
    m_warned = false;
    tell({});
}

void TeamBookDialog::addTeam(const BookTeam& team) {
    takePage();
    const auto same = std::ranges::find(m_teams, team.team.name, [](const BookTeam& own) { return own.team.name; });
    if (!team.team.name.isEmpty() && same != m_teams.end()) { // the roster of today takes the place of the earlier one
        const QString file = same->file;
        *same = team;
        same->file = file;
        delete std::exchange(m_page, nullptr);
        m_shown = static_cast<int>(same - m_teams.begin());
        m_list->setCurrentRow(m_shown);
        showPage();
        return tell(fill(tr("%1 has the roster of the match now."), {team.team.name}), false);
    }
    m_teams.push_back(team);
    m_list->addItem(asShown(team.team.name));
    m_list->setCurrentRow(m_list->count() - 1);
    m_page->setFocus();
}

void TeamBookDialog::removeTeam() {
    takePage();
    const int row = m_shown;
    m_removed = m_teams.at(static_cast<std::size_t>(row));
    delete std::exchange(m_page, nullptr);
    m_shown = -1;
    m_teams.erase(m_teams.begin() + row);
    {
        const QSignalBlocker quiet(m_list); // its rows and the teams have to agree first
        delete m_list->takeItem(row);
    }
    m_shown = m_list->currentRow();
    showPage();
    m_back->show();
    tell(fill(tr("%1 is out of the book once it is kept."), {m_removed->team.name}), false);
}

void TeamBookDialog::bringBack() {
    if (m_removed)
        addTeam(*std::exchange(m_removed, std::nullopt));
    m_back->hide();
    tell({});
}

void TeamBookDialog::tell(const QString& sentence, bool problem) {
    m_said->setText(sentence);
    setProblem(*m_said, problem);
    m_said->setVisible(!sentence.isEmpty());
}

QString TeamBookDialog::whatStops() {
    for (std::size_t place = 0; place < m_teams.size(); ++place) {
        const auto sameName = [&](const BookTeam& other) { return other.team.name == m_teams[place].team.name; };
        const bool nameless = m_teams[place].team.name.isEmpty();
        if (!nameless && std::ranges::count_if(m_teams, sameName) == 1)
            continue;
        m_list->setCurrentRow(static_cast<int>(place));
        m_page->setFocus();
        return nameless
                   ? tr("A team needs a name: type it, or delete the team.")
                   : fill(tr("Two teams are called %1: give one of them another name."), {m_teams[place].team.name});
    }
    MatchDraft draft;
    if (m_page)
        m_page->writeTo(draft);
    return losesLines(draft.rosters.home) ? tr("A line of the roster has no number: give it one, or empty the line.")
                                          : QString();
}

/// Writes what differs and deletes what is out; the sentence that says why if that fails.
QString TeamBookDialog::keepAll() {
    for (const BookTeam& team : m_kept) {
        const auto is = std::ranges::find(m_teams, team.file, &BookTeam::file);
        if (is == m_teams.end() && !m_book.remove(team))
            return fill(tr("%1 could not be deleted: its file is still there."), {team.team.name});
    }
    for (const BookTeam& team : m_teams) {
        if (std::ranges::find(m_kept, team) != m_kept.end())
            continue;
        if (const auto kept = m_book.keep(team); !kept)
            return sentence(kept.error());
    }
    return {};
}

} // namespace setfolio
