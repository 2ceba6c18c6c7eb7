// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The language, the look and the size of the words, to choose before a match is open: what is in force is marked.
#pragma once

#include "ui/look/appearance.h"
#include "ui/wording/languages.h"

#include <QWidget>

#include <vector>

class QBoxLayout;

namespace setfolio {

class AppearanceChoice : public QWidget {
    Q_OBJECT

public:
    explicit AppearanceChoice(QWidget* parent = nullptr);

    /// Buttons for the languages, with the present choice marked; without one, the language that is spoken.
    void offerLanguages(const std::vector<Language>& languages, Language chosen);

Q_SIGNALS:
    void languageChosen(setfolio::Language language);
    void lookChosen(setfolio::LookChoice look);
    void textSizeChosen(int percent);

private:
    void addLooks(QBoxLayout& row);
    void addTextSizes(QBoxLayout& row);

    QBoxLayout* m_languages;
};

} // namespace setfolio
