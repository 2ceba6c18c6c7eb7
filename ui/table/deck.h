// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The lower part of the window, where the hands are: a team area on each side of the court, as the scorer sees them.
#pragma once

#include "ui/table/deckview.h"
#include "ui/table/keybutton.h"

#include <QWidget>

class QHBoxLayout;
class QVBoxLayout;

namespace setfolio {

class CourtPicture;
class NoticeStrip;
class TeamArea;

/// When the teams change sides, areas and buttons change their contents; what belongs to a side stays where it is.
class Deck : public QWidget {
    Q_OBJECT

public:
    explicit Deck(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setView(const DeckView& view, const Situation& situation);
    [[nodiscard]] NoticeStrip& strip() const { return *m_strip; }
    /// The part between the team areas, which may be put elsewhere: inline bars lie over it.
    [[nodiscard]] QWidget& middle() const { return *m_middle; }

Q_SIGNALS:
    void commanded(TableCommand command);
    void playerPressed(const setfolio::CourtPlayer& player);
    void placed(); ///< the middle may have moved

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void moveEvent(QMoveEvent* event) override;

private:
    /// What lies at one side of the court.
    struct Wing {
        QVBoxLayout* column = nullptr;
        QHBoxLayout* row = nullptr;
        TeamArea* area = nullptr;
        std::vector<KeyButton*> buttons; ///< from the outer edge in: substitution, time-out, libero, card
    };
    [[nodiscard]] Wing makeWing(Side side);
    void makeMiddle();
    void showWing(const Wing& wing, const TeamAreaView& view, const Situation& situation);
    void pressed(Side side);

    PerSide<Wing> m_wings;
    QHBoxLayout* m_row;
    QWidget* m_middle;
    QVBoxLayout* m_centre;
    NoticeStrip* m_strip;
    CourtPicture* m_court;
};

} // namespace setfolio
