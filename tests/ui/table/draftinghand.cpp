// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/table/draftinghand.h"

#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/realdialogs.h"
#include "ui/dialogs/lineuppanel.h"
#include "ui/dialogs/rostertable.h"
#include "ui/table/deckview.h"
#include "ui/table/inlinebar.h"
#include "ui/table/noticestrip.h"
#include "ui/wording/names.h"

#include <QAction>
#include <QLabel>

#include <map>

namespace setfolio::testing {

DraftingHand::DraftingHand(OpenTable& table) : m_table(table) {
    m_table.dialogs = realDialogs(m_table);
}

std::optional<QString> DraftingHand::hear(const Entry& entry) {
    m_inDialog.reset();
    m_reason.clear();
    const bool byDialog = std::holds_alternative<LineUp>(entry) || std::holds_alternative<Roster>(entry) ||
                          std::holds_alternative<Toss>(entry);
    if (byDialog)
        return hearInDialog(entry);
    return draft(entry) ? std::optional(said()) : std::nullopt;
}

void DraftingHand::allow(const QString& reason) {
    if (m_inDialog) {
        m_reason = reason;
        static_cast<void>(hearInDialog(Entry(*m_inDialog)));
        return;
    }
    const auto typing = [this] {
        return m_table.window().focusWidget() && (m_table.window().focusWidget()->objectName().endsWith(u"Reason") ||
                                                  m_table.window().focusWidget()->objectName() == u"askLine");
    };
    if (!typing())
        m_table.press(Qt::Key_Return);
    if (!typing())
        return;
    QTest::keyClicks(m_table.window().focusWidget(), reason);
    m_table.press(Qt::Key_Return);
}

QString DraftingHand::said() const {
    QStringList words{m_table.find<NoticeStrip>("noticeStrip")->view().refused};
    for (const auto* bar : m_table.window().findChildren<InlineBar*>())
        if (bar->isVisible())
            words += bar->sentence();
    return words.join(u' ');
}

// clang-format off
bool DraftingHand::draft(const Entry& entry) {
    return std::visit(Overloaded{
        [&](const RallyWon& it) { return side(it.by, Qt::Key_Left, Qt::Key_Right); },
        [&](const ServeContacted&) { return key(Qt::Key_Space); },
        [&](const Replay& it) {
            return key(Qt::Key_Y, it.again == Again::ReServe ? Qt::ShiftModifier : Qt::NoModifier);
        },
        [&](const NoServe&) { return key(Qt::Key_N); },
        [&](const TimeOut& it) { return side(it.team, Qt::Key_D, Qt::Key_K); },
        [&](const SidesChanged&) { return command("sidesChanged"); },
        [&](const ImproperRequest& it) { return card(it.team, Qt::Key_R); },
        [&](const Substitution& it) { return substitute(it); },
        [&](const PlaceVacated& it) { return vacate(it); },
        [&](const LiberoIn& it) { return liberoIn(it); },
        [&](const LiberoExchange& it) { return liberoExchange(it); },
        [&](const LiberoServe& it) { return liberoServe(it); },
        [&](const LiberoRedesignated& it) { return redesignate(it); },
        [&](const CaptainNamed& it) { return nameCaptain(it); },
        [&](const Sanction& it) { return card(it); },
        [&](const DelaySanction& it) { return delay(it); },
        [&](const Forfeit& it) { return forfeit(it); },
        [&](const Resumed& it) { return resume(it); },
        [&](const ServerSeen& it) { return key(Qt::Key_W) && type("seenNumber", it.number); },
        [&](const WrongServer& it) { return rule(it); },
        [](const auto&) { return false; },
    }, entry);
}
// clang-format on

bool DraftingHand::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    m_table.press(key, modifiers);
    return true;
}

bool DraftingHand::side(Team team, Qt::Key left, Qt::Key right) {
    return key(teamOn(m_table.state(), Side::Left) == team ? left : right);
}

bool DraftingHand::command(const char* name) {
    auto* action = m_table.window().findChild<QAction*>(QLatin1String(name));
    if (!action || !action->isEnabled())
        return false;
    action->trigger();
    return true;
}

bool DraftingHand::command(Team team, const char* left, const char* right) {
    return command(teamOn(m_table.state(), Side::Left) == team ? left : right);
}

/// Chooses one of a bar's possibilities by its key, where it is offered.
bool DraftingHand::option(const char* bar, Qt::Key key, const QString& words) {
    for (const auto* button : m_table.find<QWidget>(bar)->findChildren<QAbstractButton*>())
        if (button->isVisible() && button->text() == words) {
            m_table.press(key);
            return true;
        }
    return false;
}

bool DraftingHand::type(const char* field, ShirtNumber number) {
    auto* edit = m_table.find<QLineEdit>(field);
    if (!edit->isVisible())
        return false;
    edit->setFocus(Qt::TabFocusReason); // what stands there is selected
    QTest::keyClicks(edit, QString::number(number.value));
    return true;
}

bool DraftingHand::substitute(const Substitution& entry) {
    if (!side(entry.team, Qt::Key_S, Qt::Key_L) || !type("subIn", entry.in))
        return !said().isEmpty();
    if (entry.kind == SubstitutionKind::Exceptional && !key(Qt::Key_E))
        return false;
    return type("subOut", entry.out);
}

bool DraftingHand::vacate(const PlaceVacated& entry) {
    return side(entry.team, Qt::Key_S, Qt::Key_L) && key(Qt::Key_V) && type("subOut", entry.out);
}

bool DraftingHand::liberoIn(const LiberoIn& entry) {
    if (!side(entry.team, Qt::Key_F, Qt::Key_J) || !option("liberoBar", Qt::Key_I, QStringLiteral("In")))
        return false;
    const bool isMeant = liberosOf(m_table.set().teams[entry.team]) == std::vector{entry.libero};
    return (type("liberoNumber", entry.libero) || isMeant) && type("liberoFor", entry.replaced);
}

bool DraftingHand::liberoExchange(const LiberoExchange& entry) {
    return side(entry.team, Qt::Key_F, Qt::Key_J) && option("liberoBar", Qt::Key_X, QStringLiteral("Exchange")) &&
           (type("liberoNumber", entry.in) || liberosOf(m_table.set().teams[entry.team]).size() == 2);
}

/// Of a single libero it is recorded at once.
bool DraftingHand::liberoServe(const LiberoServe& entry) {
    const std::vector<ShirtNumber>& liberos = liberosOf(m_table.set().teams[entry.team]);
    if (liberos.size() < 2 && liberos != std::vector{entry.libero})
        return false;
    if (!side(entry.team, Qt::Key_F, Qt::Key_J))
        return false;
    const Qt::Key again = m_table.set().left == entry.team ? Qt::Key_F : Qt::Key_J;
    if (!option("liberoBar", again, QStringLiteral("Serves")))
        return false;
    return liberos.size() < 2 || type("liberoNumber", entry.libero);
}

bool DraftingHand::redesignate(const LiberoRedesignated& entry) {
    return command(entry.team, "newLiberoLeft", "newLiberoRight") && type("formNumber", entry.former) &&
           (!entry.libero || type("formOther", *entry.libero));
}

bool DraftingHand::nameCaptain(const CaptainNamed& entry) {
    if (!command(entry.team, "captainLeft", "captainRight"))
        return false;
    QTest::keyClicks(m_table.window().focusWidget(), QString::number(entry.captain.value));
    return key(Qt::Key_Return);
}

bool DraftingHand::card(Team team, Qt::Key what) {
    return side(team, Qt::Key_G, Qt::Key_H) && key(what);
}

bool DraftingHand::card(const Sanction& entry) {
    if (!side(entry.team, Qt::Key_G, Qt::Key_H))
        return false;
    if (const auto* player = std::get_if<ShirtNumber>(&entry.who)) {
        if (!type("cardNumber", *player))
            return false;
    } else {
        static const std::map<BenchRole, Qt::Key> roles{{BenchRole::Coach, Qt::Key_C},
                                                        {BenchRole::AssistantCoach, Qt::Key_A},
                                                        {BenchRole::Therapist, Qt::Key_T},
                                                        {BenchRole::Other, Qt::Key_B}};
        const auto role = roles.find(std::get<BenchRole>(entry.who));
        if (role == roles.end() || !key(role->second))
            return false;
    }
    switch (entry.level) {
    case SanctionLevel::Warning:
        return option("cardBar", Qt::Key_W, QStringLiteral("Warning"));
    case SanctionLevel::Penalty:
        return option("cardBar", Qt::Key_P, QStringLiteral("Penalty"));
    case SanctionLevel::Expulsion:
        return option("cardBar", Qt::Key_E, QStringLiteral("Expulsion"));
    case SanctionLevel::Disqualification:
        return option("cardBar", Qt::Key_Q, QStringLiteral("Disqualification"));
    }
    return false;
}

bool DraftingHand::delay(const DelaySanction& entry) {
    const bool penalty = entry.level == DelayLevel::Penalty;
    return card(entry.team, Qt::Key_D) && option("cardBar", penalty ? Qt::Key_P : Qt::Key_W,
                                                 penalty ? QStringLiteral("Penalty") : QStringLiteral("Warning"));
}

bool DraftingHand::forfeit(const Forfeit& entry) {
    if (entry.earlier || !command("forfeit") || (entry.kind == ForfeitKind::Default && entry.reach == Scope::Set))
        return false;
    const bool set = entry.reach == Scope::Set;
    return side(entry.by, Qt::Key_F, Qt::Key_J) && key(entry.kind == ForfeitKind::Default ? Qt::Key_A
                                                       : set                              ? Qt::Key_T
                                                                                          : Qt::Key_M);
}

bool DraftingHand::resume(const Resumed& entry) {
    if (!key(Qt::Key_Return))
        return false;
    return entry.goOn == GoOn::AsItStood || option("formBar", Qt::Key_T, QStringLiteral("The set again"));
}

bool DraftingHand::rule(const WrongServer& entry) {
    if (!key(Qt::Key_W) || !option("serverBar", Qt::Key_R, QStringLiteral("Ruling: wrong server")))
        return false;
    if (entry.team != m_table.set().serving) {
        const QString before = codeOf(m_table.state(), entry.team) + QStringLiteral(" served before");
        if (!option("serverBar", Qt::Key_B, before))
            return false;
    }
    int points = 0;
    for (const Point& point : m_table.set().points)
        points += point.team == entry.team && entry.takenBackFrom && point.entry >= *entry.takenBackFrom ? 1 : 0;
    return type("seenNumber", entry.served) && type("pointsBack", ShirtNumber(points));
}

/// The dialog waits, so all that is done in it is done at once: typed and read, and either allowed or given up.
std::optional<QString> DraftingHand::hearInDialog(const Entry& entry) {
    std::optional<QString> heard;
    QTimer::singleShot(0, &m_table.window(), [&] {
        QWidget* dialog = QApplication::activeModalWidget();
        if (!dialog)
            return;
        if (!fillIn(*dialog, entry)) {
            dialog->close();
            return;
        }
        QStringList words;
        for (const auto* label : dialog->findChildren<QLabel*>(QStringLiteral("sentences")))
            words += label->text();
        heard = words.join(u' ');
        record(*dialog);
    });
    const bool opened =
        std::visit(Overloaded{[&](const LineUp& it) { return command(it.team, "lineUpLeft", "lineUpRight"); },
                              [&](const Roster& it) { return command(it.team, "rosterLeft", "rosterRight"); },
                              [&](const Toss&) { return command("toss"); }, [](const auto&) { return false; }},
                   entry);
    if (!opened)
        QTest::qWait(1);
    m_table.window().activateWindow(); // no window manager does it here
    if (!QTest::qWaitForWindowActive(&m_table.window()))
        qFatal("the window does not come back");
    m_inDialog = entry;
    return opened ? heard : std::nullopt;
}

/// False where it has no place for all of it.
bool DraftingHand::fillIn(QWidget& dialog, const Entry& entry) {
    if (const auto* toss = std::get_if<Toss>(&entry)) {
        QTest::keyClick(&dialog, toss->left == Team::Home ? Qt::Key_1 : Qt::Key_2);
        QTest::keyClick(&dialog, toss->servesFirst == Team::Home ? Qt::Key_3 : Qt::Key_4);
    } else if (const auto* roster = std::get_if<Roster>(&entry)) {
        auto* table = dialog.findChild<RosterTable*>(QStringLiteral("roster"));
        table->setCurrentIndex(table->model()->index(table->model()->rowCount() - 1, 0));
        table->setFocus();
        QTest::keyClicks(table, QString::number(roster->players.back().number.value));
        QTest::keyClick(dialog.focusWidget(), Qt::Key_Return);
        QCoreApplication::processEvents(); // a cell takes what was typed a moment later
    } else if (const auto* lineUp = std::get_if<LineUp>(&entry)) {
        const auto write = [](QWidget& panel, const QString& field, std::optional<ShirtNumber> number) {
            auto* edit = panel.findChild<QLineEdit*>(field);
            if (!edit)
                return;
            edit->setFocus(Qt::TabFocusReason);
            edit->selectAll();
            QTest::keyClick(edit, Qt::Key_Delete);
            if (number)
                QTest::keyClicks(edit, QString::number(number->value));
        };
        for (auto* panel : dialog.findChildren<LineUpPanel*>()) {
            if (panel->team() != lineUp->team)
                continue;
            const QString last = QStringLiteral("libero%1").arg(lineUp->liberos.size());
            if (!lineUp->liberos.empty() && !panel->findChild<QLineEdit*>(last))
                return false;
            for (std::size_t place = 0; place < lineUp->positions.size(); ++place)
                write(*panel, QStringLiteral("position%1").arg(place + 1), lineUp->positions.at(place));
            write(*panel, QStringLiteral("captain"), lineUp->captain);
            for (std::size_t place = 0; place < 2; ++place)
                write(*panel, QStringLiteral("libero%1").arg(place + 1),
                      place < lineUp->liberos.size() ? std::optional(lineUp->liberos[place]) : std::nullopt);
        }
    }
    return true;
}

/// With the reason where there is one; without it the dialog is given up.
void DraftingHand::record(QWidget& dialog) {
    auto* button = dialog.findChild<QAbstractButton*>(QStringLiteral("record"));
    if (m_reason.isEmpty())
        return dialog.findChild<QAbstractButton*>(QStringLiteral("cancel"))->click();
    for (auto* stands : dialog.findChildren<QAbstractButton*>(QStringLiteral("letStand")))
        if (stands->isVisible())
            stands->click();
    for (auto* reason : dialog.findChildren<QLineEdit*>(QStringLiteral("reason")))
        if (reason->isVisible())
            QTest::keyClicks(reason, m_reason);
    if (!button->isEnabled())
        return dialog.findChild<QAbstractButton*>(QStringLiteral("cancel"))->click();
    button->click();
}

} // namespace setfolio::testing
