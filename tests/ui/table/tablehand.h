// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A practised scorer's hand: it enters what happens at the table by real keys and clicks, with as few as the window
/// lets it, and counts them.
#pragma once

#include "tests/ui/table/opentable.h"

#include <functional>

namespace setfolio {
class LineUpPanel;
}

namespace setfolio::testing {

/// Each key pressed and each click is an input, so a number of two digits is two. Letters of a sentence are counted
/// apart: they are as many by pen.
class TableHand {
public:
    /// The table gets its real dialogs.
    explicit TableHand(OpenTable& table);

    [[nodiscard]] int inputs() const { return m_inputs; }
    [[nodiscard]] int letters() const { return m_letters; }

    /// The match as it stands when nothing but `entry` is to be recorded next; stops the test where there is no way.
    void enter(const Entry& entry);
    /// Puts a missed rally in before an earlier entry.
    void putRallyIn(Team winner, EntryNumber before);
    void undo() { press(Qt::Key_Backspace); }
    /// Both teams' line-ups; the dialog asks for them side by side.
    void lineUps(const LineUp& left, const LineUp& right);

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void number(ShirtNumber number);
    void click(const QString& name);
    void write(const QString& sentence);
    /// The team's key: the left hand's when it stands left.
    void side(Team team, Qt::Key left, Qt::Key right);

private:
    void inDialog(const std::function<void(QWidget&)>& answer);
    [[nodiscard]] bool takesEarlier(LineUpPanel& panel, const LineUp& lineUp);
    void typeLineUp(QWidget& dialog, const LineUp& lineUp);
    void keyTo(QWidget& window, Qt::Key key);
    void digitsTo(QWidget& window, ShirtNumber number);
    void clickOn(QWidget& control);
    [[nodiscard]] bool isProposed(const char* field, ShirtNumber number);
    [[nodiscard]] bool stands(const char* field, ShirtNumber number);

    void toss(const Toss& toss);
    void endSet();
    void substitute(const Substitution& substitution);
    void liberoIn(const LiberoIn& in);
    void liberoOut(const LiberoOut& out);
    void card(const Sanction& sanction);
    void delay(const DelaySanction& sanction);
    void seen(const ServerSeen& seen);
    void rule(const WrongServer& ruling);
    void nameCaptain(const CaptainNamed& named);

    OpenTable& m_table;
    int m_inputs = 0;
    int m_letters = 0;
};

} // namespace setfolio::testing
