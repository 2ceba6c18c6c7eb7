// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The matches that the tests of the dialogs begin with.
#pragma once

#include "tests/support/matchbuilder.h"

#include <QTest>
#include <QWidget>

namespace setfolio::testing {

/// Numbers 1 2 3 4 7 8 9 10 11 12 14 15 with invented names; 7 is captain, 2 libero. The visitors' are one higher.
inline Roster twelve(Team team) {
    static const char* const names[] = {"Ada Lund",  "Bea Moss",   "Cyra Thistlewood-Ashgrove",
                                        "Dina Roe",  "Esme Vale",  "Fay Orr",
                                        "Gwen Pike", "Hope Marl",  "Ines Dale",
                                        "June Fenn", "Kit Barrow", "Lena Hythe"};
    static constexpr int numbers[] = {1, 2, 3, 4, 7, 8, 9, 10, 11, 12, 14, 15};
    Roster roster{team, {}, QStringLiteral("M. Aldous")};
    for (int place = 0; place < 12; ++place)
        roster.players.push_back({ShirtNumber(numbers[place] + (team == Team::Visitors ? 1 : 0)),
                                  QString::fromUtf8(names[place]), place == 4, place == 1});
    return roster;
}

/// Opened, with both rosters.
inline MatchBuilder withRosters() {
    MatchBuilder match;
    match.open().add(twelve(Team::Home)).add(twelve(Team::Visitors));
    return match;
}

/// And set 1 ready to start, home serving.
inline MatchBuilder linedUp() {
    MatchBuilder match = withRosters();
    match.toss(Team::Home).lineUp(Team::Home, {1, 3, 4, 7, 8, 9}).lineUp(Team::Visitors, {2, 4, 5, 8, 9, 10});
    return match;
}

/// Set 1 played to 25-0; its end is due.
inline MatchBuilder setWon() {
    MatchBuilder match = linedUp();
    match.start().play("hhhhhhhhhhhhhhhhhhhhhhhhh");
    return match;
}

/// Shows a window and waits until the keyboard is in it.
inline void showActive(QWidget& window) {
    window.show();
    if (!QTest::qWaitForWindowActive(&window))
        qFatal("a window does not come up");
}

/// Types keys as a hand would: each goes to the widget that has the keyboard then.
inline void typeInto(QWidget& window, const QString& keys) {
    for (const QChar key : keys) {
        QWidget* target = window.focusWidget();
        QTest::keyClick(target ? target : &window, key.toLatin1());
    }
}

/// The child of that name; the test stops when there is none.
template <typename Child>
Child* childOf(QWidget& window, const char* name) {
    auto* child = window.findChild<Child*>(QString::fromLatin1(name));
    if (!child)
        qFatal("no %s", name);
    return child;
}

} // namespace setfolio::testing
