// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/ladderfield.h"

#include "core/rules/settingwords.h"
#include "ui/dialogs/dropfields.h"
#include "ui/dialogs/pieces.h"
#include "ui/wording/rulebooklabels.h"

#include <QGridLayout>
#include <QJsonArray>
#include <QJsonObject>
#include <QPushButton>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int levelWidth = 132;
constexpr int pointWidth = 58;
constexpr int gap = 5;

template <typename Enum>
QString phraseOf(std::size_t place) {
    return settingPhrase(QLatin1String(wordsOf<Enum>[place]));
}

QPushButton* toggle(const QString& words, const QString& name) {
    QPushButton* button = pieces::button(words, name);
    button->setProperty("chip", true);
    button->setCheckable(true);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    return button;
}

} // namespace

LadderField::LadderField(const std::vector<CardStep>& ladder, QWidget* parent) : SettingEditor(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(gap);
    grid->setColumnMinimumWidth(0, levelWidth);
    grid->setColumnStretch(1, 1);
    grid->setColumnMinimumWidth(2, pointWidth);
    for (std::size_t place = 0; place < wordsOf<SanctionLevel>.size(); ++place)
        addRung(*grid, static_cast<SanctionLevel>(place), ladder);
    grid->addWidget(
        pieces::explanation(tr("The levels in use, the cards shown, and whether the opponents get a point.")),
        grid->rowCount(), 0, 1, 3);
    setFirst(m_rungs.front().level);
    review();
}

void LadderField::addRung(QGridLayout& grid, SanctionLevel level, const std::vector<CardStep>& ladder) {
    const auto place = static_cast<std::size_t>(level);
    const QString words = phraseOf<SanctionLevel>(place);
    const auto step = std::ranges::find(ladder, level, &CardStep::level);
    const bool isIn = step != ladder.end();
    const Rung rung{toggle(words, u"level%1"_s.arg(place)), new ChoiceField,
                    toggle(tr("point"), u"point%1"_s.arg(place))};
    for (std::size_t cards = 0; cards < wordsOf<CardsShown>.size(); ++cards)
        rung.cards->addItem(phraseOf<CardsShown>(cards));
    rung.level->setChecked(isIn);
    rung.cards->setObjectName(u"cards%1"_s.arg(place));
    rung.cards->setAccessibleName(tr("Cards shown, %1").arg(words));
    rung.cards->setCurrentIndex(isIn ? static_cast<int>(step->cards) : 0);
    rung.point->setChecked(isIn && step->point);
    rung.point->setAccessibleName(tr("The opponents get a point, %1").arg(words));
    const int row = static_cast<int>(place);
    grid.addWidget(rung.level, row, 0);
    grid.addWidget(rung.cards, row, 1);
    grid.addWidget(rung.point, row, 2);
    connect(rung.level, &QPushButton::clicked, this, &LadderField::collect);
    connect(rung.point, &QPushButton::clicked, this, &LadderField::collect);
    connect(rung.cards, &QComboBox::activated, this, &LadderField::collect);
    m_rungs.push_back(rung);
}

void LadderField::collect() {
    QJsonArray ladder;
    for (std::size_t place = 0; place < m_rungs.size(); ++place) {
        const Rung& rung = m_rungs[place];
        if (!rung.level->isChecked())
            continue;
        const auto cards = static_cast<std::size_t>(rung.cards->currentIndex());
        ladder.append(QJsonObject{{u"level"_s, QLatin1String(wordsOf<SanctionLevel>[place])},
                                  {u"cards"_s, QLatin1String(wordsOf<CardsShown>[cards])},
                                  {u"point"_s, rung.point->isChecked()}});
    }
    review();
    Q_EMIT changed(ladder);
}

void LadderField::review() {
    const auto used = std::ranges::count_if(m_rungs, [](const Rung& rung) { return rung.level->isChecked(); });
    for (const Rung& rung : m_rungs) {
        const bool isIn = rung.level->isChecked();
        rung.level->setEnabled(!isIn || used > 1); // a ladder has at least one rung
        rung.cards->setVisible(isIn);
        rung.point->setVisible(isIn);
    }
}

} // namespace setfolio
