// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/inlinebars.h"

#include "ui/table/askbar.h"
#include "ui/table/cardbar.h"
#include "ui/table/choicebar.h"
#include "ui/table/formbar.h"
#include "ui/table/liberobar.h"
#include "ui/table/repairbar.h"
#include "ui/table/serverbar.h"
#include "ui/table/substitutionbar.h"

#include <QLayout>

#include <algorithm>

namespace setfolio {

InlineBars::InlineBars(Recorder& recorder, QWidget& ground)
    : QObject(&ground),
      m_ground(ground),
      m_substitution(new SubstitutionBar(recorder, &ground)),
      m_ask(new AskBar(&ground)),
      m_choice(new ChoiceBar(&ground)),
      m_libero(new LiberoBar(recorder, &ground)),
      m_server(new ServerBar(recorder, &ground)),
      m_card(new CardBar(recorder, &ground)),
      m_form(new FormBar(recorder, &ground)),
      m_repair(new RepairBar(recorder, &ground)) {
    for (InlineBar* bar : all()) {
        connect(bar, &InlineBar::grown, this, [this, bar] { arrange(*bar); });
        connect(bar, &InlineBar::closed, &m_ground, [this] {
            m_ground.setMinimumSize(0, 0);
            m_ground.setFocus(Qt::OtherFocusReason);
        });
        if (auto* drafts = qobject_cast<EntryBar*>(bar))
            connect(drafts, &EntryBar::drawnUp, this, [this](const Entry& entry) { repair().confirm(entry); });
    }
}

void InlineBars::setLook(const Look& look) {
    m_scrolls = look.stacked;
    for (InlineBar* bar : all())
        bar->setLook(look);
}

void InlineBars::setPlace(const QRect& middle) {
    m_middle = middle;
    for (InlineBar* bar : all()) {
        bar->setRoom(middle.width());
        arrange(*bar);
    }
}

void InlineBars::dismiss() {
    closeOthers(nullptr);
}

bool InlineBars::isOpen() const {
    return std::ranges::any_of(all(), [](const InlineBar* bar) { return !bar->isHidden(); });
}

SubstitutionBar& InlineBars::substitution() {
    return alone(m_substitution);
}

AskBar& InlineBars::ask() {
    return alone(m_ask);
}

ChoiceBar& InlineBars::choice() {
    return alone(m_choice);
}

LiberoBar& InlineBars::libero() {
    return alone(m_libero);
}

ServerBar& InlineBars::server() {
    return alone(m_server);
}

CardBar& InlineBars::card() {
    return alone(m_card);
}

FormBar& InlineBars::form() {
    return alone(m_form);
}

RepairBar& InlineBars::repair() {
    return alone(m_repair);
}

std::array<InlineBar*, 8> InlineBars::all() const {
    return {m_substitution, m_ask, m_choice, m_libero, m_server, m_card, m_form, m_repair};
}

void InlineBars::closeOthers(const InlineBar* but) {
    for (InlineBar* bar : all())
        if (bar != but)
            bar->dismiss();
}

void InlineBars::arrange(InlineBar& bar) {
    bar.layout()->activate();
    const QSize needed = bar.layout()->minimumSize();
    const int width = std::max(m_middle.width(), needed.width());
    const int height = std::max(m_middle.height(), needed.height());
    const QPoint corner(m_middle.left() + (m_middle.width() - width) / 2, m_middle.bottom() + 1 - height);
    bar.setGeometry(
        QRect(m_scrolls ? QPoint(std::max(0, corner.x()), std::max(0, corner.y())) : corner, QSize(width, height)));
    if (m_scrolls && !bar.isHidden())
        m_ground.setMinimumSize(QSize(bar.x() + width, bar.y() + height).expandedTo(m_ground.layout()->minimumSize()));
    bar.raise();
}

} // namespace setfolio
