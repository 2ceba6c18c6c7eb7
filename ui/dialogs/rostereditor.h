// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A team's roster: typed in a table, pasted from a spreadsheet or read from a CSV file, with what is wrong said at
/// once; and written into a CSV file.
#pragma once

#include "ui/dialogs/rosterrows.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace setfolio {

class RosterModel;
class RosterTable;

class RosterEditor : public QWidget {
    Q_OBJECT

public:
    explicit RosterEditor(QWidget* parent = nullptr);

    [[nodiscard]] std::vector<RosterRow> rows() const;
    void setRows(const std::vector<RosterRow>& rows);
    void setRulebook(const Rulebook& rulebook);
    /// How many players have a number.
    [[nodiscard]] int playerCount() const;

    /// The buttons and the sentences, to be put beside the table.
    [[nodiscard]] QWidget* tools() const { return m_tools; }

    /// A problem as a sentence.
    [[nodiscard]] static QString sentence(const RosterProblem& problem);

public Q_SLOTS:
    /// Takes a roster as text, in the place of the one in the table.
    void takeText(const QString& text);

Q_SIGNALS:
    void changed();

private:
    void makeTools();
    void paste();
    void askForFile();
    void askWhereToSave();
    void say(const QString& done);
    void bringBack();
    void showProblems();

    RosterModel* m_model;
    RosterTable* m_table;
    QWidget* m_tools;
    QPushButton* m_back = nullptr;
    QLabel* m_said = nullptr;
    QLabel* m_done = nullptr;                  ///< what went well
    std::vector<RosterRow> m_before;           ///< what the last paste took the place of
    std::vector<RosterProblem> m_textProblems; ///< of the text that was read last
    QString m_fileTrouble;                     ///< why a file could not be read
};

} // namespace setfolio
