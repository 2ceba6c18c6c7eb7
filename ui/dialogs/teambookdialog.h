// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The team book as a window: teams are added, changed, taken over from a match and deleted. Nothing is written before
/// it is accepted.
#pragma once

#include "ui/dialogs/framedialog.h"
#include "ui/dialogs/teambook.h"

class QBoxLayout;
class QListWidget;
class QStackedWidget;

namespace setfolio {

class TeamPage;

class TeamBookDialog : public FrameDialog {
    Q_OBJECT

public:
    /// `match` offers its teams, if it is opened.
    TeamBookDialog(TeamBook book, const MatchState& match, QWidget* parent = nullptr);

public Q_SLOTS:
    void accept() override;
    void reject() override;

private:
    void makeSide(const MatchState& match, QBoxLayout& column);
    void showRow(int row);
    void takePage();
    void showPage();
    void nameRow();
    void addTeam(const BookTeam& team);
    void removeTeam();
    void bringBack();
    void tell(const QString& sentence, bool problem = true);
    [[nodiscard]] QString whatStops();
    [[nodiscard]] QString keepAll();

    TeamBook m_book;
    std::vector<BookTeam> m_kept; ///< as they stand in the book
    std::vector<BookTeam> m_teams;
    std::optional<BookTeam> m_removed; ///< the last one taken out
    int m_shown = -1;
    bool m_warned = false; ///< of changes that are not kept
    QListWidget* m_list;
    QStackedWidget* m_place;
    TeamPage* m_page = nullptr;
    QPushButton* m_remove = nullptr;
    QPushButton* m_back = nullptr;
    QLabel* m_said;
};

} // namespace setfolio
