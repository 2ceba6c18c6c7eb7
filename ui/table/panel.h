// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The panel beside the sheet: who serves or what to do next, the last entries or the running time-out, and the
/// commands that belong to no side.
#pragma once

#include "ui/table/deckview.h"
#include "ui/table/keybutton.h"
#include "ui/wording/entrylog.h"

#include <QWidget>

class QStackedWidget;
class QVBoxLayout;

namespace setfolio {

class CommandPad;
class EntryList;
class ServingCard;
class StepCard;
class TimeOutCard;

class Panel : public QWidget {
    Q_OBJECT

public:
    explicit Panel(QWidget* parent = nullptr);

    void setLook(const Look& look);
    /// Takes the newest entries and the buttons out, to be put elsewhere.
    [[nodiscard]] QWidget& detachLower();
    void setState(const MatchState& state, const DeckView& view, const Situation& situation);
    void setLog(const EntryLog& log, const MatchState& state);

    /// Shows the card of a running time-out, unless the scorer has put it away.
    void showTimeOut(const MatchState& state, const Recorded& timeOut);
    void hideTimeOut();
    void putTimeOutAway();
    void setTime(const QDateTime& now);
    [[nodiscard]] bool showsTimeOut() const;

    [[nodiscard]] StepCard& step() const { return *m_step; }
    [[nodiscard]] EntryList& list() const { return *m_list; }
    [[nodiscard]] TimeOutCard& timeOut() const { return *m_timeOut; }

Q_SIGNALS:
    void commanded(TableCommand command);

private:
    [[nodiscard]] QWidget* makeUpper();
    void show(QWidget* page);

    QVBoxLayout* m_column;
    QVBoxLayout* m_upperColumn;
    QWidget* m_lower = nullptr; ///< the newest entries and the buttons, where they stand by themselves
    QStackedWidget* m_upper;    ///< the two below, or the time-out
    QStackedWidget* m_head;     ///< the server, or the next step
    ServingCard* m_serving;
    StepCard* m_step;
    EntryList* m_list;
    TimeOutCard* m_timeOut;
    CommandPad* m_pad;
    EntryNumber m_shownTimeOut;
    EntryNumber m_putAway;
    QDateTime m_began;
};

} // namespace setfolio
