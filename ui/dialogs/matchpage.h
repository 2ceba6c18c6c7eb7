// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The first page of a new match: what is played, where, when, and under which rulebook.
#pragma once

#include "ui/dialogs/matchdraft.h"

#include <QLocale>
#include <QWidget>

class QBoxLayout;
class QButtonGroup;
class QComboBox;
class QDateEdit;
class QHBoxLayout;
class QLineEdit;

namespace setfolio {

class RulebookView;
class TimeField;

class MatchPage : public QWidget {
    Q_OBJECT

public:
    MatchPage(const MatchDraft& draft, const QLocale& locale, QWidget* parent = nullptr);

    void writeTo(MatchDraft& draft) const;
    /// Whether the time can be read.
    [[nodiscard]] bool isGood() const;
    [[nodiscard]] const Rulebook& rulebook() const;

Q_SIGNALS:
    void changed();

private:
    void makeFields(const MatchDraft& draft, const QLocale& locale);
    [[nodiscard]] QWidget* makeForm();
    [[nodiscard]] QWidget* makeRulebook();
    void collectRulebooks(const Rulebook& own);
    void chooseRulebook(int index);
    void offerBestOf(int wanted);

    QLineEdit* m_competition = nullptr;
    QLineEdit* m_division = nullptr;
    QLineEdit* m_number = nullptr;
    QLineEdit* m_venue = nullptr;
    QDateEdit* m_date = nullptr;
    TimeField* m_time = nullptr;
    QComboBox* m_choice = nullptr;
    QButtonGroup* m_bestOf = nullptr;
    QHBoxLayout* m_bestOfRow = nullptr;
    RulebookView* m_says = nullptr;
    std::vector<Rulebook> m_rulebooks;
};

} // namespace setfolio
