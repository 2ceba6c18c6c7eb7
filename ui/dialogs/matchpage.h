// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The first page of a new match: what is played, where, when, and under which rulebook.
#pragma once

#include "ui/dialogs/matchdraft.h"
#include "ui/dialogs/rulebookshelf.h"

#include <QLocale>
#include <QWidget>

class QBoxLayout;
class QButtonGroup;
class QDateEdit;
class QHBoxLayout;
class QLineEdit;

namespace setfolio {

class RulebookChoice;
class TimeField;

class MatchPage : public QWidget {
    Q_OBJECT

public:
    /// `shelf` has the rulebooks that are offered beside the published ones.
    MatchPage(const MatchDraft& draft, const QLocale& locale, const RulebookShelf& shelf, QWidget* parent = nullptr);

    void writeTo(MatchDraft& draft) const;
    /// Whether the time can be read.
    [[nodiscard]] bool isGood() const;
    [[nodiscard]] const Rulebook& rulebook() const;

Q_SIGNALS:
    void changed();

private:
    void makeFields(const MatchDraft& draft, const QLocale& locale);
    [[nodiscard]] QWidget* makeForm();
    [[nodiscard]] QWidget* makeRulebook(const Rulebook& own, const RulebookShelf& shelf);
    void offerBestOf(int wanted);

    QLineEdit* m_competition = nullptr;
    QLineEdit* m_division = nullptr;
    QLineEdit* m_number = nullptr;
    QLineEdit* m_venue = nullptr;
    QDateEdit* m_date = nullptr;
    TimeField* m_time = nullptr;
    RulebookChoice* m_rulebook = nullptr;
    QButtonGroup* m_bestOf = nullptr;
    QHBoxLayout* m_bestOfRow = nullptr;
};

} // namespace setfolio
