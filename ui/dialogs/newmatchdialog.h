// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Prepares a new match on four pages, in any order: match, home team, visitors, officials.
#pragma once

#include "ui/dialogs/framedialog.h"
#include "ui/dialogs/matchdraft.h"
#include "ui/dialogs/rulebookshelf.h"
#include "ui/dialogs/teambook.h"

#include <QLocale>

#include <vector>

class QButtonGroup;
class QLabel;
class QStackedWidget;

namespace setfolio {

class MatchPage;
class OfficialsPage;
class TeamPage;
class TwoLineButton;
namespace pieces {
class PathLabel;
}

class NewMatchDialog : public FrameDialog {
    Q_OBJECT

public:
    /// `draft` is what the fields begin with: its date is the day to be proposed, its id goes into the entry. `folder`
    /// is where match files are kept; `shelf` has the rulebooks of this machine. No match is written.
    NewMatchDialog(const MatchDraft& draft, const QString& folder, const QLocale& locale,
                   const RulebookShelf& shelf = RulebookShelf(), QWidget* parent = nullptr);

    /// MatchOpened, Roster of the home team, Roster of the visitors, Officials; has a meaning once it is accepted.
    [[nodiscard]] std::vector<Entry> result() const { return entriesOf(draft()); }
    /// What has been typed so far, to begin with another time.
    [[nodiscard]] MatchDraft draft() const;
    /// The match file to be created.
    [[nodiscard]] QString path() const;

    /// What exec() gives when the fields shall begin anew, without what was typed for the match that was cancelled.
    static constexpr int BeginEmpty = 2;
    /// Offers that by a button, for a draft that was typed before.
    void offerToBeginEmpty();

    /// Offers the teams of the team book, and keeps teams in it when that is asked for; offers the teams and officials
    /// of the last match too, if there was one.
    void offer(const TeamBook& book, const MatchState& last);

    /// A problem as a sentence.
    [[nodiscard]] static QString sentence(const DraftProblem& problem);

public Q_SLOTS:
    void accept() override;

private:
    enum Page { Match, Home, Visitors, OfficialsList, PageCount };

    [[nodiscard]] QWidget* makeSteps();
    void makePages(const MatchDraft& draft, const QLocale& locale, const RulebookShelf& shelf);
    void makeFoot();
    void offerTeams();
    void keepTeam(Team team);
    void showPage(int page);
    void goOn();
    void askForPath();
    void review();
    [[nodiscard]] QString whatStops(const std::vector<DraftProblem>& problems) const;
    void showStep(int page, const QString& detail, int problems);
    void invite(const QString& missing);
    void showPath();

    MatchDraft m_begun;
    TeamBook m_book;
    std::vector<BookTeam> m_lastTeams; ///< of the last match
    QString m_folder;
    QString m_chosenPath; ///< chosen by hand; empty while it is proposed
    QStackedWidget* m_stack;
    QButtonGroup* m_steps;
    std::vector<TwoLineButton*> m_stepButtons;
    MatchPage* m_match = nullptr;
    PerTeam<TeamPage*> m_teams{};
    OfficialsPage* m_officials = nullptr;
    QLabel* m_said;
    QLabel* m_missing;
    pieces::PathLabel* m_path = nullptr;
    QPushButton* m_next = nullptr;
    bool m_tried = false; ///< the match was to be started once: from then on empty fields are marked
};

} // namespace setfolio
