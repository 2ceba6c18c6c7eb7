// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/table/tablehand.h"

#include "core/match/signoff.h"
#include "tests/ui/table/realdialogs.h"
#include "ui/dialogs/lineuppanel.h"
#include "ui/table/numberfield.h"
#include "ui/table/repairbar.h"

#include <QApplication>
#include <QLineEdit>
#include <QMenu>
#include <QTimer>

#include <map>

namespace setfolio::testing {

TableHand::TableHand(OpenTable& table) : m_table(table) {
    m_table.dialogs = realDialogs(m_table);
    m_table.dialogs.signOff = [](QWidget*, Recorder&, std::optional<int>) {};
}

// clang-format off
void TableHand::enter(const Entry& entry) {
    std::visit(Overloaded{
        [&](const Toss& it) { toss(it); },
        [&](const SetStarted&) { press(Qt::Key_Return); },
        [&](const SetEnded&) { endSet(); },
        [&](const ServeContacted&) { press(Qt::Key_Space); },
        [&](const RallyWon& it) { side(it.by, Qt::Key_Left, Qt::Key_Right); },
        [&](const Replay& it) { press(Qt::Key_Y, it.again == Again::ReServe ? Qt::ShiftModifier : Qt::NoModifier); },
        [&](const NoServe&) { press(Qt::Key_N); },
        [&](const TimeOut& it) { side(it.team, Qt::Key_D, Qt::Key_K); },
        [&](const Substitution& it) { substitute(it); },
        [&](const LiberoIn& it) { liberoIn(it); },
        [&](const LiberoOut& it) { liberoOut(it); },
        [&](const Sanction& it) { card(it); },
        [&](const DelaySanction& it) { delay(it); },
        [&](const ServerSeen& it) { seen(it); },
        [&](const WrongServer& it) { rule(it); },
        [&](const CaptainNamed& it) { nameCaptain(it); },
        [&](const Remark& it) { press(Qt::Key_M); write(it.text); press(Qt::Key_Return); },
        [&](const auto&) { qFatal("this hand knows no way"); },
    }, entry);
}
// clang-format on

void TableHand::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    ++m_inputs;
    m_table.press(key, modifiers);
}

void TableHand::number(ShirtNumber number) {
    for (const QChar digit : QString::number(number.value)) {
        ++m_inputs;
        QTest::keyClick(m_table.window().focusWidget(), digit.toLatin1());
    }
}

void TableHand::click(const QString& name) {
    clickOn(*m_table.find<QWidget>(name.toLatin1().constData()));
}

void TableHand::clickOn(QWidget& control) {
    ++m_inputs;
    QTest::mouseClick(&control, Qt::LeftButton);
}

void TableHand::write(const QString& sentence) {
    m_letters += static_cast<int>(sentence.size());
    QTest::keyClicks(m_table.window().focusWidget(), sentence);
}

void TableHand::side(Team team, Qt::Key left, Qt::Key right) {
    press(m_table.set().left == team ? left : right);
}

void TableHand::keyTo(QWidget& window, Qt::Key key) {
    ++m_inputs;
    QTest::keyClick(window.focusWidget() ? window.focusWidget() : &window, key);
}

void TableHand::digitsTo(QWidget& window, ShirtNumber number) {
    for (const QChar digit : QString::number(number.value)) {
        ++m_inputs;
        QTest::keyClick(window.focusWidget(), digit.toLatin1());
    }
}

bool TableHand::isProposed(const char* field, ShirtNumber number) {
    const auto* edit = m_table.find<QLineEdit>(field);
    return edit->text().isEmpty() && edit->placeholderText() == QString::number(number.value);
}

bool TableHand::stands(const char* field, ShirtNumber number) {
    return m_table.find<QLineEdit>(field)->text() == QString::number(number.value);
}

/// Enter opens the dialog; what is done in it is done while it waits.
void TableHand::inDialog(const std::function<void(QWidget&)>& answer) {
    bool answered = false;
    QTimer::singleShot(0, &m_table.window(), [&] {
        QWidget* dialog = QApplication::activeModalWidget();
        if (!dialog)
            qFatal("no dialog has opened");
        answered = true;
        answer(*dialog);
    });
    press(Qt::Key_Return);
    if (!answered)
        qFatal("no dialog has opened");
    m_table.window().activateWindow(); // no window manager does it here
    if (!QTest::qWaitForWindowActive(&m_table.window()))
        qFatal("the window does not come back");
}

void TableHand::toss(const Toss& toss) {
    inDialog([&](QWidget& dialog) {
        keyTo(dialog, toss.left == Team::Home ? Qt::Key_1 : Qt::Key_2);
        keyTo(dialog, toss.servesFirst == Team::Home ? Qt::Key_3 : Qt::Key_4);
        keyTo(dialog, Qt::Key_Return);
    });
}

void TableHand::endSet() {
    inDialog([&](QWidget& dialog) { keyTo(dialog, Qt::Key_Return); });
    if (!firstSignOffDue(m_table.state()))
        return;
    press(Qt::Key_Return); // opens the sign-off, which waits
    ++m_inputs;            // Esc
}

void TableHand::lineUps(const LineUp& left, const LineUp& right) {
    inDialog([&](QWidget& dialog) {
        typeLineUp(dialog, left);
        typeLineUp(dialog, right);
        clickOn(*dialog.findChild<QAbstractButton*>(QStringLiteral("record")));
    });
}

/// Whether the line-up of the set before gives it, as it was or turned.
bool TableHand::takesEarlier(LineUpPanel& panel, const LineUp& lineUp) {
    auto* earlier = panel.findChild<QAbstractButton*>(QStringLiteral("asEarlier"));
    if (!earlier)
        return false;
    clickOn(*earlier);
    for (int turn = 0; turn < 5 && panel.lineUp().positions != lineUp.positions; ++turn)
        clickOn(*panel.findChild<QAbstractButton*>(QStringLiteral("rotate")));
    return panel.lineUp().positions == lineUp.positions;
}

/// The six by keys; the liberos, being the roster's, by the button there is for that, and so is the captain.
void TableHand::typeLineUp(QWidget& dialog, const LineUp& lineUp) {
    for (auto* panel : dialog.findChildren<LineUpPanel*>()) {
        if (panel->team() != lineUp.team || takesEarlier(*panel, lineUp))
            continue;
        if (!panel->isAncestorOf(dialog.focusWidget()))
            clickOn(*panel->findChild<QLineEdit*>(QStringLiteral("position1")));
        for (const ShirtNumber number : lineUp.positions) {
            const QWidget* place = dialog.focusWidget();
            digitsTo(dialog, number);
            if (dialog.focusWidget() == place) // the digit may go on
                keyTo(dialog, Qt::Key_Space);
        }
        clickOn(*panel->findChild<QAbstractButton*>(QStringLiteral("rosterLiberos")));
    }
}

void TableHand::substitute(const Substitution& substitution) {
    side(substitution.team, Qt::Key_S, Qt::Key_L);
    const bool exceptional = substitution.kind == SubstitutionKind::Exceptional;
    if (!exceptional && isProposed("subIn", substitution.in) && isProposed("subOut", substitution.out))
        return press(Qt::Key_Return);
    number(substitution.in);
    if (exceptional)
        press(Qt::Key_E);
    if (!stands("subOut", substitution.out)) {
        if (m_table.window().focusWidget() == m_table.find<QLineEdit>("subIn"))
            press(Qt::Key_Return);
        number(substitution.out);
    }
    press(Qt::Key_Return);
}

void TableHand::liberoIn(const LiberoIn& in) {
    side(in.team, Qt::Key_F, Qt::Key_J);
    if (isProposed("liberoNumber", in.libero) && isProposed("liberoFor", in.replaced))
        return press(Qt::Key_Return);
    if (!stands("liberoNumber", in.libero)) {
        number(in.libero);
        if (m_table.window().focusWidget() == m_table.find<QLineEdit>("liberoNumber"))
            press(Qt::Key_Return);
    }
    number(in.replaced);
    press(Qt::Key_Return);
}

void TableHand::liberoOut(const LiberoOut& out) {
    side(out.team, Qt::Key_F, Qt::Key_J);
    press(Qt::Key_Return);
}

void TableHand::card(const Sanction& sanction) {
    side(sanction.team, Qt::Key_G, Qt::Key_H);
    if (const auto* player = std::get_if<ShirtNumber>(&sanction.who))
        number(*player);
    else
        press(std::get<BenchRole>(sanction.who) == BenchRole::Coach ? Qt::Key_C : Qt::Key_A);
    const auto& ladder = m_table.state().rulebook().conductLadder;
    static const std::map<SanctionLevel, Qt::Key> keys{{SanctionLevel::Warning, Qt::Key_W},
                                                       {SanctionLevel::Penalty, Qt::Key_P},
                                                       {SanctionLevel::Expulsion, Qt::Key_E},
                                                       {SanctionLevel::Disqualification, Qt::Key_Q}};
    for (std::size_t rung = 0; rung < ladder.size(); ++rung)
        if (ladder[rung].level == sanction.level &&
            !m_table.find(qPrintable(QStringLiteral("cardLevel%1").arg(rung)))->isChecked())
            press(keys.at(sanction.level));
    click(QStringLiteral("cardWhy"));
    write(sanction.reason);
    press(Qt::Key_Return);
}

void TableHand::delay(const DelaySanction& sanction) {
    side(sanction.team, Qt::Key_G, Qt::Key_H);
    press(Qt::Key_D);
    click(QStringLiteral("cardWhy"));
    write(sanction.reason);
    press(Qt::Key_Return);
}

void TableHand::seen(const ServerSeen& seen) {
    press(Qt::Key_W);
    number(seen.number);
    press(Qt::Key_Return);
}

/// After the contact the number is known and the points are proposed.
void TableHand::rule(const WrongServer&) {
    press(Qt::Key_W);
    press(Qt::Key_Return);
}

/// There is no key for it: the menu, and the command in it.
void TableHand::nameCaptain(const CaptainNamed& named) {
    const bool left = m_table.set().left == named.team;
    auto* action =
        m_table.window().findChild<QAction*>(left ? QStringLiteral("captainLeft") : QStringLiteral("captainRight"));
    if (!action)
        qFatal("no command to name a captain");
    m_inputs += 2;
    action->trigger();
    number(named.captain);
    press(Qt::Key_Return);
}

void TableHand::putRallyIn(Team winner, EntryNumber before) {
    press(Qt::Key_C);
    auto* bar = m_table.find<RepairBar>("repairBar");
    while (bar->target() > before)
        press(Qt::Key_Down);
    press(Qt::Key_B);
    side(winner, Qt::Key_Left, Qt::Key_Right);
    press(Qt::Key_Return);
}

} // namespace setfolio::testing
