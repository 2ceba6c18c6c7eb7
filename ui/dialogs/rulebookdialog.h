// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Adapts a rulebook to a league: all settings by group, what differs from the published one, what is to be looked up.
#pragma once

#include "ui/dialogs/framedialog.h"
#include "ui/dialogs/rulebookrows.h"
#include "ui/dialogs/rulebookshelf.h"

#include <QStringList>

class QButtonGroup;
class QLineEdit;

namespace setfolio {

class RulebookTable;
class SettingPanel;

class RulebookDialog : public FrameDialog {
    Q_OBJECT

public:
    /// `own` is the copy to be changed; it is kept on the shelf when the dialog is accepted. It cannot have a name of
    /// `takenNames`.
    RulebookDialog(const Rulebook& own, RulebookShelf shelf, QStringList takenNames, QWidget* parent = nullptr);

    /// As it stands.
    [[nodiscard]] const Rulebook& rulebook() const { return m_draft.own(); }
    /// What exec() gives when the copy was removed from the shelf.
    static constexpr int Removed = 2;

public Q_SLOTS:
    void accept() override;
    /// Asks once, by a sentence, if something was changed.
    void reject() override;

protected:
    /// Enter presses the button that has the keyboard, else it goes to the next setting.
    void keyPressEvent(QKeyEvent* event) override;

private:
    void makeHead();
    void makeBody();
    void makeFoot();
    void showRows();
    void review();
    void tell(const QString& sentence);
    [[nodiscard]] QString nameProblem() const;
    void writeFile();
    void removeOwn();

    RulebookDraft m_draft;
    Rulebook m_begun;
    RulebookShelf m_shelf;
    QStringList m_takenNames;
    RulebookRows m_rows;
    QLineEdit* m_name;
    QLineEdit* m_find;
    QButtonGroup* m_show;
    RulebookTable* m_table;
    SettingPanel* m_panel;
    QLabel* m_said;
    bool m_warned = false; ///< that what was changed would be lost
};

} // namespace setfolio
