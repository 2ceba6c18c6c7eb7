// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/panel.h"

#include "ui/table/commandpad.h"
#include "ui/table/entrylist.h"
#include "ui/table/servingcard.h"
#include "ui/table/stepcard.h"
#include "ui/table/timeoutcard.h"

#include <QStackedWidget>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr std::size_t mostLines = 12; // on the largest screen

} // namespace

Panel::Panel(QWidget* parent) : QWidget(parent) {
    setObjectName(u"sidePanel"_s);
    m_upper = new QStackedWidget(this);
    m_upper->addWidget(makeUpper());
    m_timeOut = new TimeOutCard(this);
    m_upper->addWidget(m_timeOut);
    m_pad = new CommandPad(this);
    m_column = new QVBoxLayout(this);
    m_column->addWidget(m_upper, 1);
    m_column->addWidget(m_pad);
    connect(m_pad, &CommandPad::commanded, this, &Panel::commanded);
    connect(m_step, &StepCard::pressed, this, [this] { Q_EMIT commanded(TableCommand::NextStep); });
    connect(m_timeOut, &TimeOutCard::commanded, this, &Panel::commanded);
    connect(m_timeOut, &TimeOutCard::closed, this, &Panel::putTimeOutAway);
    setLook(Look::of(Theme::Light, 1));
}

QWidget* Panel::makeUpper() {
    auto* upper = new QWidget(this);
    m_head = new QStackedWidget(upper);
    m_serving = new ServingCard(m_head);
    m_step = new StepCard(m_head);
    m_head->addWidget(m_serving);
    m_head->addWidget(m_step);
    m_list = new EntryList(upper);
    m_upperColumn = new QVBoxLayout(upper);
    m_upperColumn->addWidget(m_head);
    m_upperColumn->addWidget(m_list, 1);
    return upper;
}

QWidget& Panel::detachLower() {
    m_lower = new QWidget(this);
    auto* column = new QVBoxLayout(m_lower);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_pad);
    column->addWidget(m_list, 1);
    show(m_upper->currentWidget());
    return *m_lower;
}

void Panel::setLook(const Look& look) {
    setFixedWidth(look.whole(296));
    if (m_lower) {
        m_lower->setFixedWidth(look.whole(296));
        m_lower->layout()->setSpacing(look.whole(10));
    }
    for (QVBoxLayout* column : {m_column, m_upperColumn}) {
        column->setContentsMargins(0, 0, 0, 0);
        column->setSpacing(look.whole(10));
    }
    m_head->setFixedHeight(look.whole(168));
    m_serving->setLook(look);
    m_step->setLook(look);
    m_list->setLook(look);
    m_timeOut->setLook(look);
    m_pad->setLook(look);
}

void Panel::setState(const MatchState& state, const DeckView& view, const Situation& situation) {
    const NextStep next = nextStep(state, situation.signOffPutOff);
    const StepWords words = wordsFor(next, state);
    const bool rally = (next.step == Step::Serve || next.step == Step::Decide) && view.serving;
    if (rally)
        m_serving->setView(*view.serving, words.title);
    else
        m_step->setStep(words, next.step == Step::StartSet);
    m_step->setEnabledStep(mayBeAsked(TableCommand::NextStep, situation));
    m_head->setCurrentWidget(rally ? static_cast<QWidget*>(m_serving) : m_step);
    m_pad->setSituation(situation);
}

void Panel::setLog(const EntryLog& log, const MatchState& state) {
    m_list->setEntries(newestOf(log, state, mostLines));
}

void Panel::showTimeOut(const MatchState& state, const Recorded& timeOut) {
    if (timeOut.number == m_putAway)
        return;
    m_shownTimeOut = timeOut.number;
    m_began = timeOut.time;
    m_timeOut->setView(timeOutViewOf(state, std::get<TimeOut>(timeOut.entry).team));
    show(m_timeOut);
}

void Panel::hideTimeOut() {
    show(m_upper->widget(0));
}

/// Where the panel is as high as what it shows, the page that is not seen takes no room.
void Panel::show(QWidget* page) {
    for (int i = 0; m_lower && i < m_upper->count(); ++i) {
        const bool seen = m_upper->widget(i) == page;
        m_upper->widget(i)->setSizePolicy(QSizePolicy::Preferred, seen ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    }
    m_upper->setCurrentWidget(page);
}

void Panel::putTimeOutAway() {
    if (!showsTimeOut())
        return;
    m_putAway = m_shownTimeOut;
    hideTimeOut();
}

void Panel::setTime(const QDateTime& now) {
    if (showsTimeOut())
        m_timeOut->setElapsed(static_cast<int>(m_began.secsTo(now)));
}

bool Panel::showsTimeOut() const {
    return m_upper->currentWidget() == m_timeOut;
}

} // namespace setfolio
