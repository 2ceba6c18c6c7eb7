// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/timeoutcard.h"

#include "ui/table/draw.h"
#include "ui/table/keybutton.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

Comparison comparisonOf(const MatchState& state, Team team) {
    const TeamInSet& own = state.set().teams[team];
    const Rulebook& rulebook = state.rulebook();
    return {team, codeOf(state, team), QString::number(own.points),
            substitutionsUsed(substitutionsOf(own), rulebook.substitutionLimit),
            substitutionsUsed(static_cast<int>(own.timeOuts.size()), rulebook.timeOuts)};
}

QString stageWords(TimeOutStage stage, const TimeOutView& view) {
    switch (stage) {
    case TimeOutStage::Running:
        return view.warningAfter > 0 ? fill(Table::tr("warning at %1"), {clockWord(view.seconds - view.warningAfter)})
                                     : QString();
    case TimeOutStage::Warned:
        return Table::tr("sound the warning");
    case TimeOutStage::Over:
        return Table::tr("time-out is over");
    }
    return {};
}

} // namespace

TimeOutView timeOutViewOf(const MatchState& state, Team team) {
    const SetState& set = state.set();
    const Rulebook& rulebook = state.rulebook();
    TimeOutView view;
    view.title = fill(Table::tr("Time-out %1"), {codeOf(state, team)});
    view.count = substitutionsUsed(static_cast<int>(set.teams[team].timeOuts.size()), rulebook.timeOuts);
    view.seconds = rulebook.timeOutSeconds;
    view.warningAfter = rulebook.timeOutWarningSeconds;
    for (const Side side : bothSides)
        view.sides[side] = comparisonOf(state, teamOn(state, side));
    view.server = fill(Table::tr("%1 %2, slot %3"), {codeOf(state, set.serving), QString::number(serverOf(set).value),
                                                     roman(servingSlot(set, set.serving))});
    return view;
}

TimeOutStage stageAfter(const TimeOutView& view, int elapsed) {
    if (elapsed >= view.seconds)
        return TimeOutStage::Over;
    return view.warningAfter > 0 && elapsed >= view.warningAfter ? TimeOutStage::Warned : TimeOutStage::Running;
}

TimeOutCard::TimeOutCard(QWidget* parent) : QWidget(parent) {
    setObjectName(u"timeOutCard"_s);
    m_column = new QVBoxLayout(this);
    m_column->addStretch(1);
    m_buttons = new QHBoxLayout;
    m_column->addLayout(m_buttons);
    addButtons();
    setLook(Look::of(Theme::Light, 1));
}

void TimeOutCard::addButtons() {
    const std::array<std::pair<TableCommand, QString>, 2> compared{
        {{TableCommand::ComparedAgrees, Table::tr("Agrees")}, {TableCommand::ComparedDiffers, Table::tr("Differs…")}}};
    for (const auto& [command, words] : compared) {
        auto* button = new KeyButton(command, this);
        button->setWords(words);
        connect(button, &KeyButton::clicked, this, [this, button] { Q_EMIT commanded(button->command()); });
        m_buttons->addWidget(button, command == TableCommand::ComparedAgrees ? 10 : 12);
    }
    auto* close = new KeyButton(TableCommand::GoToLive, this);
    close->setObjectName(u"timeOutClose"_s);
    close->setWords(Table::tr("Back"));
    connect(close, &KeyButton::clicked, this, &TimeOutCard::closed);
    m_buttons->addWidget(close, 14);
}

void TimeOutCard::setLook(const Look& look) {
    m_look = look;
    m_column->setContentsMargins(look.whole(12), 0, look.whole(12), look.whole(7));
    m_buttons->setSpacing(look.whole(6));
    for (auto* button : findChildren<KeyButton*>()) {
        button->setLook(look);
        button->setFixedHeight(look.whole(44));
        button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    }
    update();
}

void TimeOutCard::setView(const TimeOutView& view) {
    m_view = view;
    setAccessibleName(u"%1, %2"_s.arg(view.title, view.server));
    update();
}

void TimeOutCard::setElapsed(int seconds) {
    if (seconds == m_elapsed)
        return;
    m_elapsed = seconds;
    update();
}

QSize TimeOutCard::minimumSizeHint() const {
    return {m_look.whole(200), m_look.whole(235)};
}

void TimeOutCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    draw::card(painter, QRectF(rect()), m_look);
    draw::amberHead(painter, QRectF(rect()), m_view.title, m_view.count, m_look);
    paintCountdown(painter);
    paintComparison(painter);
}

void TimeOutCard::paintCountdown(QPainter& painter) const {
    const double left = m_look.px(14);
    const double middle = m_look.px(56);
    const double used = draw::text(painter, {left, middle}, clockWord(std::max(0, m_view.seconds - m_elapsed)),
                                   m_look.font(48, QFont::Bold), m_look.colours.text);
    const TimeOutStage stage = stageAfter(m_view, m_elapsed);
    const double x = left + used + m_look.px(16);
    draw::text(painter, {x, middle}, stageWords(stage, m_view),
               m_look.font(14, stage == TimeOutStage::Running ? QFont::Medium : QFont::Bold), m_look.colours.text,
               draw::From::Left, width() - x - left);
    const double full = width() - 2 * left;
    const double part = std::clamp(1.0 - static_cast<double>(m_elapsed) / std::max(1, m_view.seconds), 0.0, 1.0);
    painter.setPen(QPen(m_look.colours.edge, 1));
    painter.setBrush(m_look.colours.button);
    const QRectF bar(left, m_look.px(80), full, m_look.px(8));
    painter.drawRect(bar);
    painter.fillRect(QRectF(bar.left(), bar.top(), bar.width() * part, bar.height()), m_look.colours.text);
}

void TimeOutCard::paintComparison(QPainter& painter) const {
    double middle = m_look.px(102);
    draw::text(painter, {m_look.px(14), middle}, Table::tr("Compare"), m_look.font(12.5, QFont::Bold),
               m_look.colours.text);
    double right = width() - m_look.px(14);
    for (const Side side : {Side::Right, Side::Left}) {
        const Comparison& column = m_view.sides[side];
        const QRectF box(right - m_look.px(64), middle - m_look.px(10), m_look.px(64), m_look.px(20));
        draw::plate(painter, box, column.team, column.code, m_look);
        right = box.left() - m_look.px(10);
    }
    const double pitch = m_look.px(17);
    middle += m_look.px(20);
    paintRow(painter, middle, Table::tr("Score"), m_view.sides.left.points, m_view.sides.right.points);
    paintRow(painter, middle + pitch, Table::tr("Substitutions"), m_view.sides.left.substitutions,
             m_view.sides.right.substitutions);
    paintRow(painter, middle + 2 * pitch, Table::tr("Time-outs"), m_view.sides.left.timeOuts,
             m_view.sides.right.timeOuts);
    draw::text(painter, {m_look.px(14), middle + 3 * pitch}, Table::tr("Serves next"), m_look.font(12.5),
               m_look.colours.secondary);
    draw::text(painter, {width() - m_look.px(14), middle + 3 * pitch}, m_view.server, m_look.font(14, QFont::Bold),
               m_look.colours.text, draw::From::Right);
}

void TimeOutCard::paintRow(QPainter& painter, double middle, const QString& label, const QString& left,
                           const QString& right) const {
    const QFont figures = m_look.font(14, QFont::Bold);
    const double far = width() - m_look.px(14 + 32);
    draw::text(painter, {m_look.px(14), middle}, label, m_look.font(12.5), m_look.colours.secondary);
    draw::text(painter, {far, middle}, right, figures, m_look.colours.text, draw::From::Centre);
    draw::text(painter, {far - m_look.px(74), middle}, left, figures, m_look.colours.text, draw::From::Centre);
}

} // namespace setfolio
