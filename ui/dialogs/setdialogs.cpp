// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/setdialogs.h"

#include "core/record/shown.h"
#include "core/rules/judge.h"
#include "ui/dialogs/clocktext.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/setresult.h"
#include "ui/dialogs/timefield.h"
#include "ui/dialogs/verdictview.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/names.h"

#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

/// A team with a large number behind it.
QFrame* scoreRow(const MatchState& state, Team team, const QString& word, int number, bool strong) {
    auto* row = pieces::panel();
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(14, 8, 18, 8);
    line->setSpacing(14);
    const QString name = asShown(state.opened->teams[team].name);
    line->addWidget(new pieces::Plate(team, codeOf(state, team)));
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    auto* called = pieces::heading(name, 17);
    called->setMinimumWidth(textScale() == 1 ? 160 : called->sizeHint().width());
    words->addStretch();
    words->addWidget(called);
    words->addWidget(pieces::explanation(word));
    words->addStretch();
    line->addLayout(words, 1);
    auto* points = pieces::heading(QString::number(number), 44);
    points->setFont(windowFont(44, strong ? QFont::Bold : QFont::Medium));
    points->setAccessibleName(u"%1: %2"_s.arg(name, QString::number(number)));
    line->addWidget(points);
    return row;
}

QLabel* cell(const QString& text, bool strong, Qt::Alignment alignment) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setFont(windowFont(15, strong ? QFont::Bold : QFont::Normal));
    label->setAlignment(alignment | Qt::AlignVCenter);
    return label;
}

QFrame* resultTable(const MatchState& state, const QLocale& locale) {
    auto* table = pieces::panel();
    auto* grid = new QGridLayout(table);
    grid->setContentsMargins(16, 10, 16, 10);
    grid->setHorizontalSpacing(26);
    grid->setVerticalSpacing(8);
    const QStringList heads{MatchCloseDialog::tr("Set"),      codeOf(state, Team::Home),
                            codeOf(state, Team::Visitors),    MatchCloseDialog::tr("Started"),
                            MatchCloseDialog::tr("Finished"), MatchCloseDialog::tr("Minutes")};
    for (int column = 0; column < heads.size(); ++column)
        grid->addWidget(pieces::explanation(heads.at(column)), 0, column, Qt::AlignRight);
    int line = 0;
    for (const SetResultRow& row : setResults(state)) {
        ++line;
        const auto points = [&](Team team) {
            return cell(QString::number(row.points[team]), row.winner == team, Qt::AlignRight);
        };
        grid->addWidget(cell(QString::number(row.number), false, Qt::AlignRight), line, 0);
        grid->addWidget(points(Team::Home), line, 1);
        grid->addWidget(points(Team::Visitors), line, 2);
        grid->addWidget(cell(textOfTime(row.from, locale), false, Qt::AlignRight), line, 3);
        grid->addWidget(cell(textOfTime(row.to, locale), false, Qt::AlignRight), line, 4);
        grid->addWidget(cell(row.minutes < 0 ? QString() : QString::number(row.minutes), false, Qt::AlignRight), line,
                        5);
    }
    return table;
}

} // namespace

SetEndDialog::SetEndDialog(const MatchState& state, QTime now, const QLocale& locale, QWidget* parent)
    : FrameDialog(tr("End of set %1").arg(state.set().number), tr("Confirm winner and score with the second referee."),
                  tr("Confirmed: end the set"), parent),
      m_time(new TimeField(now, locale)),
      m_verdict(new VerdictView) {
    const SetState& set = state.set();
    const Team first = set.winner.value_or(Team::Home);
    for (const Team team : {first, opponentsOf(first)}) {
        const bool won = set.winner == team;
        const QString word = !set.winner ? QString() : won ? tr("wins the set") : tr("loses the set");
        body()->addWidget(scoreRow(state, team, word, set.teams[team].points, won));
    }
    addTime();
    const Findings findings = judge(state, SetEnded{now});
    m_verdict->setFindings(findings, state);
    m_verdict->setVisible(!findings.empty());
    setMinimumWidth(560);
    recordButton()->setFocus();
}

SetEnded SetEndDialog::result() const {
    return {m_time->time()};
}

std::optional<QString> SetEndDialog::overruled() const {
    return m_verdict->overruled();
}

void SetEndDialog::addTime() {
    auto* row = new QHBoxLayout;
    pieces::addField(*row, tr("Finished at"), *m_time, u"time"_s);
    m_time->setMaximumWidth(scaled(180));
    row->addStretch();
    body()->addLayout(row);
    body()->addWidget(m_verdict);
    connect(m_time, &TimeField::textChanged, this, &SetEndDialog::allowOrNot);
    connect(m_verdict, &VerdictView::changed, this, &SetEndDialog::allowOrNot);
}

void SetEndDialog::allowOrNot() {
    recordButton()->setEnabled(m_time->isGood() && m_verdict->mayRecord());
}

MatchCloseDialog::MatchCloseDialog(const MatchState& state, const QLocale& locale, QWidget* parent)
    : FrameDialog(tr("Close the match"),
                  tr("Read result and remarks once more with the referee. After this, only an undo opens the match "
                     "again."),
                  tr("Close the match"), parent),
      m_verdict(new VerdictView) {
    const PerTeam<int> won = setsWon(state);
    const auto winner = leaderIn(state);
    const Team first = winner.value_or(Team::Home);
    for (const Team team : {first, opponentsOf(first)}) {
        const QString word = winner == team ? tr("wins the match, in sets") : tr("sets");
        body()->addWidget(scoreRow(state, team, word, won[team], winner == team));
    }
    body()->addWidget(resultTable(state, locale));
    body()->addWidget(m_verdict);
    const Findings findings = judge(state, MatchClosed{});
    connect(m_verdict, &VerdictView::changed, this, [this] { recordButton()->setEnabled(m_verdict->mayRecord()); });
    m_verdict->setFindings(findings, state);
    m_verdict->setVisible(!findings.empty());
    recordButton()->setEnabled(m_verdict->mayRecord());
    setMinimumWidth(560);
    recordButton()->setFocus();
}

std::optional<QString> MatchCloseDialog::overruled() const {
    return m_verdict->overruled();
}

} // namespace setfolio
