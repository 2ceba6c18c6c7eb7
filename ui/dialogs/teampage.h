// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A page of a new match: one team, its name and plate, its coach and its roster.
#pragma once

#include "ui/dialogs/matchdraft.h"
#include "ui/dialogs/teambook.h"

#include <QWidget>

class QBoxLayout;
class QLineEdit;
class QPushButton;

namespace setfolio {

class RosterEditor;
namespace pieces {
class Plate;
}

class TeamPage : public QWidget {
    Q_OBJECT

public:
    TeamPage(const MatchDraft& draft, Team team, QWidget* parent = nullptr);

    void writeTo(MatchDraft& draft) const;
    void setRulebook(const Rulebook& rulebook);
    /// The other team's code, which this one may not have too.
    void setOtherCode(const QString& code);
    [[nodiscard]] QString code() const;
    /// Marks the fields that have a problem.
    void markProblems(const std::vector<DraftProblem>& problems);
    /// Gives the keyboard to the first of them.
    void goToProblem(const std::vector<DraftProblem>& problems);
    [[nodiscard]] QString summary() const;

    /// A button with these teams, each of which fills the page, and one that asks to keep the team in the team book.
    void offerTeams(const std::vector<BookTeam>& teams);
    void setTeam(const BookTeam& team);
    [[nodiscard]] BookTeam team() const;

Q_SIGNALS:
    void changed();
    void keepAsked();

private:
    [[nodiscard]] QWidget* makeSide();
    [[nodiscard]] bool isIn(const std::vector<DraftProblem>& problems, DraftProblem::Code code) const;
    void proposeCode();

    Team m_team;
    QString m_otherCode;
    bool m_codeIsOwn = false; ///< typed by hand, no longer proposed
    QLineEdit* m_name;
    QLineEdit* m_code;
    QLineEdit* m_colour;
    QLineEdit* m_coach;
    pieces::Plate* m_plate;
    RosterEditor* m_roster;
    QBoxLayout* m_book = nullptr; ///< the place of the team book's buttons
    QPushButton* m_offer = nullptr;
};

} // namespace setfolio
