// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/newmatchdialog.h"

#include "ui/dialogs/matchpage.h"
#include "ui/dialogs/officialspage.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rostereditor.h"
#include "ui/dialogs/teampage.h"
#include "ui/dialogs/twolinebutton.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/errorwords.h"

#include <QButtonGroup>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int railWidth = 240;

} // namespace

NewMatchDialog::NewMatchDialog(const MatchDraft& draft, const QString& folder, const QLocale& locale,
                               const RulebookShelf& shelf, QWidget* parent)
    : FrameDialog(tr("New match"), {}, tr("Start the match"), parent),
      m_begun(draft),
      m_folder(folder),
      m_stack(new QStackedWidget),
      m_steps(new QButtonGroup(this)),
      m_said(new QLabel),
      m_missing(pieces::explanation({})) {
    makePages(draft, locale, shelf);
    auto* row = new QHBoxLayout;
    row->setSpacing(20);
    row->addWidget(makeSteps());
    row->addWidget(m_stack, 1);
    body()->addLayout(row, 1);
    m_said->setObjectName(u"problem"_s);
    m_said->setProperty("problem", true);
    m_said->setFont(windowFont(14, QFont::Medium));
    m_said->setTextFormat(Qt::PlainText);
    body()->addWidget(m_said);
    m_said->hide();
    m_missing->setObjectName(u"missing"_s);
    body()->addWidget(m_missing);
    makeFoot();
    giveRoom(*this, QSize(1240, 690));
    review();
    showPage(Match);
}

MatchDraft NewMatchDialog::draft() const {
    MatchDraft draft = m_begun;
    m_match->writeTo(draft);
    for (const Team team : bothTeams)
        m_teams[team]->writeTo(draft);
    draft.officials = m_officials->officials();
    return draft;
}

QString NewMatchDialog::path() const {
    if (!m_chosenPath.isEmpty())
        return m_chosenPath;
    return freePath(m_folder, fileNameFor(draft().opened), [](const QString& path) { return QFileInfo::exists(path); });
}

void NewMatchDialog::offerToBeginEmpty() {
    auto* empty = pieces::button(tr("Begin empty"), u"beginEmpty"_s);
    empty->setToolTip(tr("Drops what was typed for the match that was cancelled"));
    addToFoot(empty);
    connect(empty, &QPushButton::clicked, this, [this] { done(BeginEmpty); });
}

void NewMatchDialog::offer(const TeamBook& book, const MatchState& last) {
    m_book = book;
    for (const Team team : bothTeams)
        if (const BookTeam own = bookTeamOf(last, team); !own.team.name.isEmpty())
            m_lastTeams.push_back(own);
    if (!last.officials.officials.empty())
        m_officials->offerLast(last.officials.officials);
    offerTeams();
    for (const Team team : bothTeams)
        connect(m_teams[team], &TeamPage::keepAsked, this, [this, team] { keepTeam(team); });
}

void NewMatchDialog::offerTeams() {
    std::vector<BookTeam> teams = m_book.content().teams;
    for (const BookTeam& last : m_lastTeams)
        if (std::ranges::none_of(teams, [&](const BookTeam& own) { return own.team.name == last.team.name; }))
            teams.push_back(last);
    for (const Team team : bothTeams)
        m_teams[team]->offerTeams(teams);
}

void NewMatchDialog::keepTeam(Team team) {
    const BookTeam own = m_teams[team]->team();
    const auto kept = own.team.name.isEmpty() ? tl::expected<void, FileError>() : m_book.keep(own);
    const QString sentence = own.team.name.isEmpty() ? tr("Give the team a name first: the book finds it by that.")
                             : kept                  ? tr("%1 is in the team book now.").arg(own.team.name)
                                                     : setfolio::sentence(kept.error());
    m_said->setText(sentence);
    setProblem(*m_said, own.team.name.isEmpty() || !kept);
    m_said->show();
    offerTeams();
}

QString NewMatchDialog::sentence(const DraftProblem& problem) {
    const bool home = problem.team == Team::Home;
    switch (problem.code) {
    case DraftProblem::Code::NameMissing:
        return home ? tr("The home team needs a name.") : tr("The visitors need a name.");
    case DraftProblem::Code::CodeUnfit:
        return home ? tr("The home team’s short name needs two to five letters or digits.")
                    : tr("The visitors’ short name needs two to five letters or digits.");
    case DraftProblem::Code::SameCode:
        return tr("Both teams have the same short name: change one of them.");
    case DraftProblem::Code::Roster:
        return (home ? tr("Home roster. %1") : tr("Visitors’ roster. %1")).arg(RosterEditor::sentence(problem.roster));
    }
    Q_UNREACHABLE();
}

void NewMatchDialog::accept() {
    m_tried = true;
    review();
    const std::vector<DraftProblem> problems = problemsOf(draft());
    if (!m_match->isGood())
        return showPage(Match);
    if (!problems.empty()) {
        const Team first = problems.front().team;
        showPage(first == Team::Home ? Home : Visitors);
        return m_teams[first]->goToProblem(problems);
    }
    if (!QFileInfo::exists(path()))
        FrameDialog::accept();
}

QWidget* NewMatchDialog::makeSteps() {
    auto* rail = new QWidget;
    rail->setFixedWidth(scaled(railWidth));
    auto* column = new QVBoxLayout(rail);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    const QStringList titles{tr("Match"), tr("Home team"), tr("Visitors"), tr("Officials and crew")};
    for (int page = 0; page < PageCount; ++page) {
        auto* step = new TwoLineButton(u"%1  %2"_s.arg(page + 1).arg(titles.at(page)), {});
        step->setObjectName(u"step%1"_s.arg(page + 1));
        step->setCheckable(true);
        step->setToolTip(tr("Alt+%1").arg(page + 1));
        m_steps->addButton(step, page);
        m_stepButtons.push_back(step);
        column->addWidget(step);
        auto* key = new QShortcut(QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + page)), this);
        connect(key, &QShortcut::activated, this, [this, page] { showPage(page); });
    }
    column->addStretch();
    connect(m_steps, &QButtonGroup::idClicked, this, &NewMatchDialog::showPage);
    return rail;
}

void NewMatchDialog::makePages(const MatchDraft& draft, const QLocale& locale, const RulebookShelf& shelf) {
    m_match = new MatchPage(draft, locale, shelf);
    m_match->setObjectName(u"matchPage"_s);
    m_stack->addWidget(m_match);
    for (const Team team : bothTeams) {
        m_teams[team] = new TeamPage(draft, team);
        m_teams[team]->setObjectName(team == Team::Home ? u"homePage"_s : u"visitorsPage"_s);
        m_stack->addWidget(m_teams[team]);
        connect(m_teams[team], &TeamPage::changed, this, &NewMatchDialog::review);
    }
    m_officials = new OfficialsPage(draft.officials);
    m_officials->setObjectName(u"officialsPage"_s);
    m_stack->addWidget(m_officials);
    connect(m_match, &MatchPage::changed, this, &NewMatchDialog::review);
    connect(m_officials, &OfficialsPage::changed, this, &NewMatchDialog::review);
}

void NewMatchDialog::makeFoot() {
    auto* other = pieces::button(tr("Other file…"), u"otherFile"_s);
    m_path = new pieces::PathLabel;
    m_path->setObjectName(u"path"_s);
    m_next = pieces::button(tr("Next"), u"next"_s);
    addToFoot(other);
    addToFoot(m_path, true);
    addToFoot(m_next);
    connect(other, &QPushButton::clicked, this, &NewMatchDialog::askForPath);
    connect(m_next, &QPushButton::clicked, this, &NewMatchDialog::goOn);
}

void NewMatchDialog::showPage(int page) {
    m_steps->button(page)->setChecked(true);
    m_stack->setCurrentIndex(page);
    m_stack->currentWidget()->setFocus();
    const bool last = page == OfficialsList;
    m_next->setVisible(!last);
    m_next->setDefault(!last); // Enter goes through the pages, and only on the last one starts the match
    recordButton()->setDefault(last);
}

void NewMatchDialog::goOn() {
    showPage(std::min(m_stack->currentIndex() + 1, static_cast<int>(OfficialsList)));
}

void NewMatchDialog::askForPath() {
    QString chosen = QFileDialog::getSaveFileName(this, tr("Keep the match in"), path(), tr("Matches (*.setfolio)"), {},
                                                  QFileDialog::DontConfirmOverwrite);
    if (chosen.isEmpty())
        return;
    if (!chosen.endsWith(u".setfolio"_s))
        chosen += u".setfolio"_s;
    m_chosenPath = chosen;
    review();
}

void NewMatchDialog::review() {
    if (!m_path)
        return;
    for (const Team team : bothTeams) {
        m_teams[team]->setRulebook(m_match->rulebook());
        m_teams[team]->setOtherCode(m_teams[opponentsOf(team)]->code());
    }
    const MatchDraft typed = draft();
    std::vector<DraftProblem> problems = problemsOf(typed);
    const QString missing = whatStops(problems);
    if (!m_tried) // nobody is told of an empty field before having had the time to fill it
        std::erase_if(problems, [](const DraftProblem& p) { return p.code != DraftProblem::Code::Roster; });
    for (const Team team : bothTeams) {
        const auto count = std::ranges::count(problems, team, &DraftProblem::team);
        const QString code = m_teams[team]->code();
        const QString detail = code.isEmpty() ? m_teams[team]->summary() : code + u" · "_s + m_teams[team]->summary();
        showStep(team == Team::Home ? Home : Visitors, detail, static_cast<int>(count));
        if (m_tried)
            m_teams[team]->markProblems(problems);
    }
    showStep(Match, typed.opened.competition, m_match->isGood() ? 0 : 1);
    showStep(OfficialsList, m_officials->summary(), 0);
    m_said->setText(whatStops(problems));
    setProblem(*m_said, true);
    m_said->setVisible(m_tried && !m_said->text().isEmpty());
    invite(missing);
    showPath();
}

/// Only what can be done now invites; what the start still waits for is said quietly, or as a problem once it was
/// tried.
void NewMatchDialog::invite(const QString& missing) {
    makePrimary(*recordButton(), missing.isEmpty());
    makePrimary(*m_next, !missing.isEmpty());
    m_missing->setText(missing.isEmpty() ? QString() : tr("The match cannot start yet. %1").arg(missing));
    m_missing->setVisible(!missing.isEmpty() && m_said->isHidden());
}

QString NewMatchDialog::whatStops(const std::vector<DraftProblem>& problems) const {
    if (!m_match->isGood())
        return tr("The scheduled time cannot be read: type it like 18:30 or 6:30 pm, or leave it empty.");
    if (!problems.empty())
        return sentence(problems.front());
    if (QFileInfo::exists(path()))
        return tr("A file of that name is there already: choose another one.");
    return {};
}

void NewMatchDialog::showStep(int page, const QString& detail, int problems) {
    TwoLineButton* step = m_stepButtons.at(static_cast<std::size_t>(page));
    step->setDetail(detail);
    step->setBadge(problems == 0 ? QString() : tr("%n to mend", nullptr, problems));
}

void NewMatchDialog::showPath() {
    m_path->setPath(tr("Kept in %1").arg(QDir::toNativeSeparators(path())));
}

} // namespace setfolio
