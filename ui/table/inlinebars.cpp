// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/inlinebars.h"

#include "ui/table/askbar.h"
#include "ui/table/choicebar.h"
#include "ui/table/substitutionbar.h"

#include <QLayout>

#include <algorithm>

namespace setfolio {

InlineBars::InlineBars(Recorder& recorder, QWidget& ground)
    : QObject(&ground),
      m_ground(ground),
      m_substitution(new SubstitutionBar(recorder, &ground)),
      m_ask(new AskBar(&ground)),
      m_choice(new ChoiceBar(&ground)) {
    for (InlineBar* bar : all()) {
        connect(bar, &InlineBar::grown, this, [this, bar] { arrange(*bar); });
        connect(bar, &InlineBar::closed, &m_ground, [this] { m_ground.setFocus(Qt::OtherFocusReason); });
    }
}

void InlineBars::setLook(const Look& look) {
    for (InlineBar* bar : all())
        bar->setLook(look);
}

void InlineBars::setPlace(const QRect& middle) {
    m_middle = middle;
    m_substitution->setRoom(middle.width());
    for (InlineBar* bar : all())
        arrange(*bar);
}

void InlineBars::dismiss() {
    closeOthers(nullptr);
}

bool InlineBars::isOpen() const {
    return std::ranges::any_of(all(), [](const InlineBar* bar) { return !bar->isHidden(); });
}

SubstitutionBar& InlineBars::substitution() {
    closeOthers(m_substitution);
    return *m_substitution;
}

AskBar& InlineBars::ask() {
    closeOthers(m_ask);
    return *m_ask;
}

ChoiceBar& InlineBars::choice() {
    closeOthers(m_choice);
    return *m_choice;
}

std::array<InlineBar*, 3> InlineBars::all() const {
    return {m_substitution, m_ask, m_choice};
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
    bar.setGeometry(m_middle.left() + (m_middle.width() - width) / 2, m_middle.bottom() + 1 - height, width, height);
    bar.raise();
}

} // namespace setfolio
