// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/lineupdialog.h"

#include "ui/dialogs/lineuppanel.h"
#include "ui/dialogs/pieces.h"
#include "ui/look/controls.h"
#include "ui/wording/names.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

LineUpDialog::LineUpDialog(const MatchState& state, Team first, QWidget* parent)
    : FrameDialog(tr("Line-ups for set %1").arg(state.set().number),
                  tr("As on the slip, by court position, seen from behind the team. A whole number goes on to the next "
                     "place by itself."),
                  tr("Record line-up"), parent),
      m_state(state),
      m_missing(pieces::explanation({})),
      m_deadline(pieces::explanation({})) {
    auto* row = new QHBoxLayout;
    row->setSpacing(14);
    const Team left = state.set().left.value_or(Team::Home);
    for (const Team team : {left, opponentsOf(left)}) {
        auto* panel = new LineUpPanel(state, team);
        panel->setProperty("team", team == Team::Home ? u"home"_s : u"visitors"_s);
        m_panels.push_back(panel);
        row->addWidget(panel, 1);
        connect(panel, &LineUpPanel::changed, this, &LineUpDialog::allowOrNot);
        connect(panel, &LineUpPanel::completed, this, [this, panel] { goOnFrom(panel); });
    }
    body()->addLayout(row, 1);
    m_missing->setObjectName(u"missing"_s);
    addToFoot(m_missing, true);
    m_deadline->setObjectName(u"deadline"_s);
    m_deadline->hide();
    addToFoot(m_deadline, false);
    giveRoom(*this, QSize(1240, 690));
    allowOrNot();
    (*std::ranges::find(m_panels, first, &LineUpPanel::team))->begin();
}

void LineUpDialog::countDown(std::function<Deadline()> deadline) {
    const auto show = [this, deadline = std::move(deadline)] {
        const Deadline now = deadline();
        QFont font = m_deadline->font();
        font.setBold(now.passed);
        m_deadline->setFont(font);
        m_deadline->setText(now.words);
        m_deadline->setVisible(!now.words.isEmpty());
    };
    auto* timer = new QTimer(this);
    connect(timer, &QTimer::timeout, this, show);
    timer->start(1000);
    show();
}

std::vector<LineUpGiven> LineUpDialog::result() const {
    std::vector<LineUpGiven> given;
    for (const LineUpPanel* panel : m_panels) {
        if (panel->readiness() == LineUpPanel::Readiness::Ready)
            given.push_back({panel->lineUp(), panel->overruled()});
    }
    return given;
}

void LineUpDialog::allowOrNot() {
    if (m_panels.size() < 2)
        return;
    using Readiness = LineUpPanel::Readiness;
    const auto stops = [](const LineUpPanel* panel) {
        return panel->readiness() == Readiness::Unfinished || panel->readiness() == Readiness::Refused;
    };
    const std::vector<LineUpGiven> given = result();
    recordButton()->setEnabled(!given.empty() && std::ranges::none_of(m_panels, stops));
    if (given.size() == 2)
        recordButton()->setText(tr("Record both line-ups"));
    else if (given.size() == 1)
        recordButton()->setText(tr("Record line-up of %1").arg(codeOf(m_state, given.front().lineUp.team)));
    else
        recordButton()->setText(tr("Record line-up"));
    m_missing->setText(whatIsMissing());
}

void LineUpDialog::goOnFrom(const LineUpPanel* panel) {
    LineUpPanel* other = panel == m_panels.front() ? m_panels.back() : m_panels.front();
    if (other->missing().empty())
        recordButton()->setFocus();
    else
        other->begin();
}

QString LineUpDialog::whatIsMissing() const {
    QStringList sentences;
    for (const LineUpPanel* panel : m_panels) {
        if (panel->readiness() != LineUpPanel::Readiness::Unfinished)
            continue;
        QStringList places;
        for (const CourtPosition position : panel->missing())
            places << QString::number(position.value);
        sentences << (places.isEmpty()
                          ? tr("%1: 00 is no shirt number.").arg(codeOf(m_state, panel->team()))
                          : tr("%1: still empty: %2.").arg(codeOf(m_state, panel->team()), places.join(u", "_s)));
    }
    return sentences.join(u' ');
}

} // namespace setfolio
