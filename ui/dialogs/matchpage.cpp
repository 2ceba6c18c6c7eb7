// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/matchpage.h"

#include "ui/dialogs/dropfields.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rulebookchoice.h"
#include "ui/dialogs/timefield.h"
#include "ui/look/appearance.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

MatchPage::MatchPage(const MatchDraft& draft, const QLocale& locale, const RulebookShelf& shelf, QWidget* parent)
    : QWidget(parent) {
    makeFields(draft, locale);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(20);
    row->addWidget(makeForm(), 1);
    row->addWidget(makeRulebook(draft.opened.rulebook, shelf), 1);
    offerBestOf(draft.opened.bestOf);
    connect(m_rulebook, &RulebookChoice::changed, this, [this] {
        offerBestOf(m_bestOf->checkedId());
        Q_EMIT changed();
    });
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
    return m_rulebook->rulebook();
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
    m_date->setMinimumWidth(scaled(170));
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

QWidget* MatchPage::makeRulebook(const Rulebook& own, const RulebookShelf& shelf) {
    m_bestOf = new QButtonGroup(this);
    auto* bestOf = new QWidget;
    m_bestOfRow = new QHBoxLayout(bestOf);
    m_bestOfRow->setContentsMargins(0, 0, 0, 0);
    m_bestOfRow->setSpacing(8);
    m_rulebook = new RulebookChoice(own, shelf, *bestOf);
    m_rulebook->setAddition(m_competition->text());
    connect(m_competition, &QLineEdit::textChanged, m_rulebook, &RulebookChoice::setAddition);
    return m_rulebook;
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
