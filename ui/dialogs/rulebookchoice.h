// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The rulebook a match is played under: chosen from the published ones and those kept on this machine, adapted, read
/// from a file; with what it says and its open points.
#pragma once

#include "ui/dialogs/rulebookshelf.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QPushButton;
class QLabel;
class QVBoxLayout;

namespace setfolio {

class RulebookView;

class RulebookChoice : public QWidget {
    Q_OBJECT

public:
    /// Begins with `own`, which is offered too if it is neither published nor kept. `under` comes between the choice
    /// and what the rulebook says.
    RulebookChoice(const Rulebook& own, RulebookShelf shelf, QWidget& under, QWidget* parent = nullptr);

    [[nodiscard]] const Rulebook& rulebook() const;
    /// What is added to the published rulebook's name when a copy gets a name: the competition. It may be empty.
    void setAddition(const QString& addition) { m_addition = addition; }

Q_SIGNALS:
    void changed();

private:
    void makeChoice(QVBoxLayout& column);
    void makeView(QVBoxLayout& column);
    void collect(const Rulebook& own);
    void offer(const Rulebook& wanted);
    void showRulebook();
    void adapt();
    void readFile();
    void tell(const QString& sentence);
    [[nodiscard]] Rulebook copyOf(const Rulebook& rulebook, const QString& addition) const;
    [[nodiscard]] QStringList namesBut(const Rulebook& rulebook) const;

    RulebookShelf m_shelf;
    QString m_addition;
    std::vector<Rulebook> m_rulebooks;
    QComboBox* m_choice;
    QPushButton* m_all = nullptr;
    QPushButton* m_open = nullptr;
    RulebookView* m_says;
    QLabel* m_openWords;
    QLabel* m_said;
};

} // namespace setfolio
