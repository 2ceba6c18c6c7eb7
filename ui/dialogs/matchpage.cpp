// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/matchpage.h"

#include "ui/dialogs/dropfields.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rulebookview.h"
#include "ui/dialogs/timefield.h"
#include "ui/wording/rulebookwords.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

MatchPage::MatchPage(const MatchDraft& draft, const QLocale& locale, QWidget* parent) : QWidget(parent) {
    makeFields(draft, locale);
    collectRulebooks(draft.opened.rulebook);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(20);
    row->addWidget(makeForm(), 1);
    row->addWidget(makeRulebook(), 1);
    const auto own = std::ranges::find(m_rulebooks, draft.opened.rulebook);
    m_choice->setCurrentIndex(own == m_rulebooks.end() ? 0 : static_cast<int>(own - m_rulebooks.begin()));
    chooseRulebook(m_choice->currentIndex());
    offerBestOf(draft.opened.bestOf);
    connect(m_choice, &QComboBox::currentIndexChanged, this, &MatchPage::chooseRulebook);
    setFocusProxy(m_competition);
}

void MatchPage::writeTo(MatchDraft& draft) const {
    MatchOpened& opened = draft.opened;
    opened.competition = m_competition->text();
    opened.division = m_division->text();
    opened.matchNumber = m_number->text();
    opened.venue = m_venue->text();
    opened.date = m_date->date();
    opened.scheduled = m_time->time();
    opened.rulebook = rulebook();
    opened.bestOf = m_bestOf->checkedId();
}

bool MatchPage::isGood() const {
    return m_time->isGood();
}

const Rulebook& MatchPage::rulebook() const {
    return m_rulebooks.at(static_cast<std::size_t>(std::max(0, m_choice->currentIndex())));
}

void MatchPage::makeFields(const MatchDraft& draft, const QLocale& locale) {
    m_competition = pieces::lineEdit();
    m_competition->setText(draft.opened.competition);
    m_division = pieces::lineEdit();
    m_division->setText(draft.opened.division);
    m_number = pieces::lineEdit();
    m_number->setText(draft.opened.matchNumber);
    m_venue = pieces::lineEdit();
    m_venue->setText(draft.opened.venue);
    m_date = new DateField(draft.opened.date, locale);
    m_date->setMinimumWidth(170);
    m_time = new TimeField(draft.opened.scheduled, locale, true);
    for (QLineEdit* field : {m_competition, m_division, m_number, m_venue, static_cast<QLineEdit*>(m_time)})
        connect(field, &QLineEdit::textChanged, this, &MatchPage::changed);
    connect(m_date, &QDateEdit::dateChanged, this, &MatchPage::changed);
}

QWidget* MatchPage::makeForm() {
    auto* form = new QWidget;
    auto* column = new QVBoxLayout(form);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    const auto row = [column] {
        auto* made = new QHBoxLayout;
        made->setSpacing(12);
        column->addLayout(made);
        return made;
    };
    pieces::addField(*column, tr("Competition"), *m_competition, u"competition"_s);
    auto* first = row();
    pieces::addField(*first, tr("Division"), *m_division, u"division"_s);
    pieces::addField(*first, tr("Match number"), *m_number, u"matchNumber"_s);
    pieces::addField(*column, tr("Venue"), *m_venue, u"venue"_s);
    auto* second = row();
    pieces::addField(*second, tr("Date"), *m_date, u"date"_s);
    pieces::addField(*second, tr("Scheduled time (may be empty)"), *m_time, u"scheduled"_s);
    column->addStretch();
    return form;
}

QWidget* MatchPage::makeRulebook() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    m_choice = new ChoiceField;
    for (const Rulebook& rulebook : m_rulebooks)
        m_choice->addItem(titleOf(rulebook));
    m_bestOf = new QButtonGroup(this);
    m_bestOfRow = new QHBoxLayout;
    m_bestOfRow->setSpacing(8);
    m_says = new RulebookView;
    pieces::addField(*column, tr("Rulebook"), *m_choice, u"rulebook"_s);
    column->addLayout(m_bestOfRow);
    column->addWidget(m_says, 1);
    column->addWidget(pieces::explanation(rulesDiffer()));
    return side;
}

void MatchPage::collectRulebooks(const Rulebook& own) {
    for (const QString& id : publishedRulebookIds()) {
        if (const auto published = publishedRulebook(id))
            m_rulebooks.push_back(*published);
    }
    const bool known = std::ranges::find(m_rulebooks, own) != m_rulebooks.end();
    if (m_rulebooks.empty() || (!own.id.isEmpty() && !known)) // the last match was played under a copy of its own
        m_rulebooks.push_back(own);
}

void MatchPage::chooseRulebook(int) {
    const int wanted = m_bestOf->checkedId();
    m_says->setRulebook(rulebook());
    offerBestOf(wanted);
    Q_EMIT changed();
}

void MatchPage::offerBestOf(int wanted) {
    while (QLayoutItem* item = m_bestOfRow->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    auto* label = new QLabel(tr("Best of"));
    label->setProperty("secondary", true);
    m_bestOfRow->addWidget(label);
    const std::vector<int>& offered = rulebook().bestOf;
    const bool lawful = std::ranges::find(offered, wanted) != offered.end();
    for (const int sets : offered) {
        auto* button = pieces::button(QString::number(sets), u"bestOf%1"_s.arg(sets));
        button->setAccessibleName(tr("Best of %1 sets").arg(sets));
        button->setCheckable(true);
        button->setChecked(lawful ? sets == wanted : sets == offered.back());
        m_bestOf->addButton(button, sets);
        m_bestOfRow->addWidget(button, 1);
    }
}

} // namespace setfolio
