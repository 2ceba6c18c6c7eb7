// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/appearancechoice.h"

#include "ui/dialogs/dropfields.h"
#include "ui/dialogs/pieces.h"
#include "ui/look/appearancewords.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

AppearanceChoice::AppearanceChoice(QWidget* parent) : QWidget(parent), m_languages(new QHBoxLayout) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* row = new QHBoxLayout;
    for (QBoxLayout* each : {m_languages, static_cast<QBoxLayout*>(row)}) {
        each->setSpacing(8);
        column->addLayout(each);
    }
    addLooks(*row);
    addTextSizes(*row);
}

void AppearanceChoice::offerLanguages(const std::vector<Language>& languages, Language chosen) {
    const Language spoken = chosen == Language::AsSystem ? languageOf(QLocale().name().section(u'_', 0, 0)) : chosen;
    for (const Language language : languages) {
        if (language == Language::AsSystem)
            continue;
        QPushButton* button = pieces::toggle(setfolio::nameOf(language), u"language-"_s + codeOf(language));
        button->setChecked(language == spoken);
        m_languages->addWidget(button, 1);
        connect(button, &QPushButton::clicked, this, [this, language] { Q_EMIT languageChosen(language); });
    }
}

void AppearanceChoice::addLooks(QBoxLayout& row) {
    auto* looks = new ChoiceField;
    looks->setObjectName(u"look"_s);
    looks->setAccessibleName(tr("Look"));
    for (const LookChoice look : allLookChoices)
        looks->addItem(nameOf(look));
    looks->setCurrentIndex(static_cast<int>(std::ranges::find(allLookChoices, programLook()) - allLookChoices.begin()));
    row.addWidget(looks, 1);
    connect(looks, &QComboBox::activated, this,
            [this](int index) { Q_EMIT lookChosen(allLookChoices.at(static_cast<std::size_t>(index))); });
}

void AppearanceChoice::addTextSizes(QBoxLayout& row) {
    auto* sizes = new ChoiceField;
    sizes->setObjectName(u"textSize"_s);
    sizes->setAccessibleName(tr("Size of words"));
    for (const int percent : textSizes)
        sizes->addItem(tr("Words at %1 %").arg(percent));
    sizes->setCurrentIndex(static_cast<int>(std::ranges::find(textSizes, programTextSize()) - textSizes.begin()));
    row.addWidget(sizes, 1);
    connect(sizes, &QComboBox::activated, this,
            [this](int index) { Q_EMIT textSizeChosen(textSizes.at(static_cast<std::size_t>(index))); });
}

} // namespace setfolio
