// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// While a time-out runs: how long it has left, and what to compare meanwhile with the scoreboard and the bench.
#pragma once

#include "ui/table/commands.h"
#include "ui/table/deckview.h"
#include "ui/table/look.h"

#include <QWidget>

class QHBoxLayout;
class QVBoxLayout;

namespace setfolio {

/// What to compare, for one team.
struct Comparison {
    Team team = Team::Home;
    QString code;
    QString points;
    QString substitutions;
    QString timeOuts;
    bool operator==(const Comparison&) const = default;
};

struct TimeOutView {
    QString title;        ///< "Time-out SAL"
    QString count;        ///< "1 of 2"
    int seconds = 60;     ///< it lasts, by the rulebook
    int warningAfter = 0; ///< seconds from its start; 0 for none
    PerSide<Comparison> sides;
    QString server; ///< "SAL 9, slot IV, serves next"
    bool operator==(const TimeOutView&) const = default;
};

[[nodiscard]] TimeOutView timeOutViewOf(const MatchState& state, Team team);

/// What the card says this long after the start.
enum class TimeOutStage : std::uint8_t { Running, Warned, Over };
[[nodiscard]] TimeOutStage stageAfter(const TimeOutView& view, int elapsed);

class TimeOutCard : public QWidget {
    Q_OBJECT

public:
    explicit TimeOutCard(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setView(const TimeOutView& view);
    void setElapsed(int seconds);
    [[nodiscard]] const TimeOutView& view() const { return m_view; }
    [[nodiscard]] int elapsed() const { return m_elapsed; }

    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void closed();
    void commanded(TableCommand command);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void addButtons();
    void paintCountdown(QPainter& painter) const;
    void paintComparison(QPainter& painter) const;
    void paintRow(QPainter& painter, double middle, const QString& label, const QString& left,
                  const QString& right) const;

    TimeOutView m_view;
    int m_elapsed = 0;
    QVBoxLayout* m_column;
    QHBoxLayout* m_buttons;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
