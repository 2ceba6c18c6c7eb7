// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/commands.h"

#include <QCoreApplication>

#include <algorithm>
#include <vector>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

using Keys = QList<QKeySequence>;

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

Keys one(QKeyCombination combination) {
    return {QKeySequence(combination)};
}

Keys standard(QKeySequence::StandardKey key) {
    return QKeySequence::keyBindings(key);
}

Keys undoKeys() {
    return one(Qt::Key_Backspace) + standard(QKeySequence::Undo);
}

// clang-format off
std::vector<CommandInfo> makeTable() {
    using C = Command;
    using M = Menu;
    const auto left = Side::Left;
    const auto right = Side::Right;
    const auto none = std::nullopt;
    return {
        {C::NextStep,          M::Set,   u"nextStep"_s,       {Qt::Key_Return, Qt::Key_Enter}, none,  true},
        {C::LeftWins,          M::Rally, u"leftWins"_s,       one(Qt::Key_Left),              left,  true},
        {C::RightWins,         M::Rally, u"rightWins"_s,      one(Qt::Key_Right),             right, true},
        {C::ServeContacted,    M::Rally, u"serveContacted"_s, one(Qt::Key_Space),             none,  true},
        {C::Replay,            M::Rally, u"replay"_s,         one(Qt::Key_Y),                 none,  true},
        {C::ReServe,           M::Rally, u"reServe"_s,        one(Qt::SHIFT | Qt::Key_Y),     none,  true},
        {C::NoServe,           M::Rally, u"noServe"_s,        one(Qt::Key_N),                 none,  true},
        {C::LeftSubstitution,  M::Set,   u"subLeft"_s,        one(Qt::Key_S),                 left,  true},
        {C::LeftTimeOut,       M::Set,   u"timeOutLeft"_s,    one(Qt::Key_D),                 left,  true},
        {C::LeftLibero,        M::Set,   u"liberoLeft"_s,     one(Qt::Key_F),                 left,  true},
        {C::RightSubstitution, M::Set,   u"subRight"_s,       one(Qt::Key_L),                 right, true},
        {C::RightTimeOut,      M::Set,   u"timeOutRight"_s,   one(Qt::Key_K),                 right, true},
        {C::RightLibero,       M::Set,   u"liberoRight"_s,    one(Qt::Key_J),                 right, true},
        {C::LeftPenalty,       M::Rally, u"penaltyLeft"_s,    {},                             left,  true},
        {C::RightPenalty,      M::Rally, u"penaltyRight"_s,   {},                             right, true},
        {C::Remark,            M::Sheet, u"remark"_s,         one(Qt::Key_M),                 none,  true},
        {C::Undo,              M::Sheet, u"undo"_s,           undoKeys(),                     none,  true},
        {C::Redo,              M::Sheet, u"redo"_s,           standard(QKeySequence::Redo),   none,  true},
        {C::GoToLive,          M::View,  u"goToLive"_s,       one(Qt::Key_Home),              none,  false},
        {C::PageBack,          M::View,  u"pageBack"_s,       one(Qt::Key_PageUp),            none,  false},
        {C::PageOn,            M::View,  u"pageOn"_s,         one(Qt::Key_PageDown),          none,  false},
        {C::LiveBand,          M::View,  u"liveBand"_s,       one(Qt::Key_F7),                none,  false},
        {C::WholePage,         M::View,  u"wholePage"_s,      one(Qt::Key_F8),                none,  false},
        {C::NewMatch,          M::Match, u"newMatch"_s,       standard(QKeySequence::New),    none,  false},
        {C::OpenMatch,         M::Match, u"openMatch"_s,      standard(QKeySequence::Open),   none,  false},
        {C::Toss,              M::Set,   u"toss"_s,           {},                             none,  true},
        {C::LeftLineUp,        M::Set,   u"lineUpLeft"_s,     {},                             left,  true},
        {C::RightLineUp,       M::Set,   u"lineUpRight"_s,    {},                             right, true},
        {C::Print,             M::Match, u"print"_s,          standard(QKeySequence::Print),  none,  false},
        {C::CloseWindow,       M::Match, u"closeWindow"_s,    standard(QKeySequence::Close),  none,  false},
    };
}
// clang-format on

/// A key's name as it stands on the keyboard.
QString capName(const QString& key) {
    static const QMap<QString, QString> names{
        {u"Left"_s, u"←"_s},
        {u"Right"_s, u"→"_s},
        {u"Space"_s, Table::tr("Space")},
        {u"Backspace"_s, Table::tr("Backspace")},
        {u"Return"_s, Table::tr("Enter")},
        {u"Home"_s, Table::tr("Home")},
        {u"PgUp"_s, Table::tr("Page up")},
        {u"PgDown"_s, Table::tr("Page down")},
    };
    return names.value(key, key);
}

bool isInSet(Phase phase) {
    return phase == Phase::ReadyToServe || phase == Phase::Rally;
}

} // namespace

std::span<const CommandInfo> allCommands() {
    static const std::vector<CommandInfo> table = makeTable();
    return table;
}

const CommandInfo& infoOf(Command command) {
    const auto commands = allCommands();
    const auto found = std::ranges::find(commands, command, &CommandInfo::command);
    Q_ASSERT(found != commands.end());
    return *found;
}

// clang-format off
QString nameOf(Command command) {
    switch (command) {
    case Command::NextStep:          return Table::tr("Next step");
    case Command::LeftWins:          return Table::tr("Left side wins the rally");
    case Command::RightWins:         return Table::tr("Right side wins the rally");
    case Command::ServeContacted:    return Table::tr("Serve contacted");
    case Command::Replay:            return Table::tr("Replay");
    case Command::ReServe:           return Table::tr("Re-serve");
    case Command::NoServe:           return Table::tr("No serve");
    case Command::LeftSubstitution:  return Table::tr("Substitution, left side");
    case Command::LeftTimeOut:       return Table::tr("Time-out, left side");
    case Command::LeftLibero:        return Table::tr("Libero serves, left side");
    case Command::RightSubstitution: return Table::tr("Substitution, right side");
    case Command::RightTimeOut:      return Table::tr("Time-out, right side");
    case Command::RightLibero:       return Table::tr("Libero serves, right side");
    case Command::LeftPenalty:       return Table::tr("Penalty point to the left side…");
    case Command::RightPenalty:      return Table::tr("Penalty point to the right side…");
    case Command::Remark:            return Table::tr("Remark…");
    case Command::Undo:              return Table::tr("Undo");
    case Command::Redo:              return Table::tr("Redo");
    case Command::GoToLive:          return Table::tr("Go to live");
    case Command::PageBack:          return Table::tr("Page back");
    case Command::PageOn:            return Table::tr("Page on");
    case Command::LiveBand:          return Table::tr("Live band");
    case Command::WholePage:         return Table::tr("Whole page");
    case Command::NewMatch:          return Table::tr("New match…");
    case Command::OpenMatch:         return Table::tr("Open…");
    case Command::Toss:              return Table::tr("Toss…");
    case Command::LeftLineUp:        return Table::tr("Line-up, left side…");
    case Command::RightLineUp:       return Table::tr("Line-up, right side…");
    case Command::Print:             return Table::tr("Print…");
    case Command::CloseWindow:       return Table::tr("Close");
    }
    return {};
}
// clang-format on

QString keyCapOf(Command command) {
    const Keys& keys = infoOf(command).keys;
    return keys.isEmpty() ? QString() : capName(keys.first().toString(QKeySequence::PortableText));
}

bool isEnabled(Command command, const Situation& situation) {
    if (infoOf(command).records && situation.readOnly)
        return false;
    const Phase phase = situation.phase;
    switch (command) {
    case Command::NextStep:
        return phase != Phase::NotOpened && !isInSet(phase);
    case Command::ServeContacted:
    case Command::NoServe:
    case Command::LeftWins:
    case Command::RightWins:
    case Command::Replay:
    case Command::ReServe:
    case Command::LeftTimeOut:
    case Command::LeftLibero:
    case Command::RightTimeOut:
    case Command::RightLibero:
    case Command::LeftPenalty:
    case Command::RightPenalty:
        return isInSet(phase);
    case Command::LeftSubstitution:
    case Command::RightSubstitution:
        return isInSet(phase) || phase == Phase::BeforeSet;
    case Command::Toss:
    case Command::LeftLineUp:
    case Command::RightLineUp:
        return phase == Phase::BeforeSet;
    case Command::Remark:
        return phase != Phase::NotOpened && phase != Phase::MatchClosed;
    case Command::Undo:
        return situation.canUndo;
    case Command::Redo:
        return situation.canRedo;
    case Command::GoToLive:
    case Command::PageBack:
    case Command::PageOn:
    case Command::LiveBand:
    case Command::WholePage:
    case Command::Print:
        return phase != Phase::NotOpened;
    case Command::NewMatch:
    case Command::OpenMatch:
    case Command::CloseWindow:
        return true;
    }
    return false;
}

} // namespace setfolio
