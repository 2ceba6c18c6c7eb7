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
    using C = TableCommand;
    using M = TableMenu;
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
        {C::LeftRoster,        M::Set,   u"rosterLeft"_s,     {},                             left,  true},
        {C::RightRoster,       M::Set,   u"rosterRight"_s,    {},                             right, true},
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

const CommandInfo& infoOf(TableCommand command) {
    const auto commands = allCommands();
    const auto found = std::ranges::find(commands, command, &CommandInfo::command);
    Q_ASSERT(found != commands.end());
    return *found;
}

// clang-format off
QString nameOf(TableCommand command) {
    switch (command) {
    case TableCommand::NextStep:          return Table::tr("Next step");
    case TableCommand::LeftWins:          return Table::tr("Left side wins the rally");
    case TableCommand::RightWins:         return Table::tr("Right side wins the rally");
    case TableCommand::ServeContacted:    return Table::tr("Serve contacted");
    case TableCommand::Replay:            return Table::tr("Replay");
    case TableCommand::ReServe:           return Table::tr("Re-serve");
    case TableCommand::NoServe:           return Table::tr("No serve");
    case TableCommand::LeftSubstitution:  return Table::tr("Substitution, left side");
    case TableCommand::LeftTimeOut:       return Table::tr("Time-out, left side");
    case TableCommand::LeftLibero:        return Table::tr("Libero serves, left side");
    case TableCommand::RightSubstitution: return Table::tr("Substitution, right side");
    case TableCommand::RightTimeOut:      return Table::tr("Time-out, right side");
    case TableCommand::RightLibero:       return Table::tr("Libero serves, right side");
    case TableCommand::LeftPenalty:       return Table::tr("Penalty point to the left side…");
    case TableCommand::RightPenalty:      return Table::tr("Penalty point to the right side…");
    case TableCommand::Remark:            return Table::tr("Remark…");
    case TableCommand::Undo:              return Table::tr("Undo");
    case TableCommand::Redo:              return Table::tr("Redo");
    case TableCommand::GoToLive:          return Table::tr("Go to live");
    case TableCommand::PageBack:          return Table::tr("Page back");
    case TableCommand::PageOn:            return Table::tr("Page on");
    case TableCommand::LiveBand:          return Table::tr("Live band");
    case TableCommand::WholePage:         return Table::tr("Whole page");
    case TableCommand::NewMatch:          return Table::tr("New match…");
    case TableCommand::OpenMatch:         return Table::tr("Open…");
    case TableCommand::Toss:              return Table::tr("Toss…");
    case TableCommand::LeftLineUp:        return Table::tr("Line-up, left side…");
    case TableCommand::RightLineUp:       return Table::tr("Line-up, right side…");
    case TableCommand::LeftRoster:        return Table::tr("Roster, left side…");
    case TableCommand::RightRoster:       return Table::tr("Roster, right side…");
    case TableCommand::Print:             return Table::tr("Print…");
    case TableCommand::CloseWindow:       return Table::tr("Close");
    }
    return {};
}
// clang-format on

QString keyCapOf(TableCommand command) {
    const Keys& keys = infoOf(command).keys;
    return keys.isEmpty() ? QString() : capName(keys.first().toString(QKeySequence::PortableText));
}

bool mayBeAsked(TableCommand command, const Situation& situation) {
    if (infoOf(command).records && situation.readOnly)
        return false;
    const Phase phase = situation.phase;
    switch (command) {
    case TableCommand::NextStep:
        return phase != Phase::NotOpened && !isInSet(phase);
    case TableCommand::ServeContacted:
    case TableCommand::NoServe:
    case TableCommand::LeftWins:
    case TableCommand::RightWins:
    case TableCommand::Replay:
    case TableCommand::ReServe:
    case TableCommand::LeftTimeOut:
    case TableCommand::LeftLibero:
    case TableCommand::RightTimeOut:
    case TableCommand::RightLibero:
    case TableCommand::LeftPenalty:
    case TableCommand::RightPenalty:
        return isInSet(phase);
    case TableCommand::LeftSubstitution:
    case TableCommand::RightSubstitution:
        return isInSet(phase) || phase == Phase::BeforeSet;
    case TableCommand::Toss:
    case TableCommand::LeftLineUp:
    case TableCommand::RightLineUp:
        return phase == Phase::BeforeSet;
    case TableCommand::LeftRoster:
    case TableCommand::RightRoster:
    case TableCommand::Remark:
        return phase != Phase::NotOpened && phase != Phase::MatchClosed;
    case TableCommand::Undo:
        return situation.canUndo;
    case TableCommand::Redo:
        return situation.canRedo;
    case TableCommand::GoToLive:
    case TableCommand::PageBack:
    case TableCommand::PageOn:
    case TableCommand::LiveBand:
    case TableCommand::WholePage:
    case TableCommand::Print:
        return phase != Phase::NotOpened;
    case TableCommand::NewMatch:
    case TableCommand::OpenMatch:
    case TableCommand::CloseWindow:
        return true;
    }
    return false;
}

} // namespace setfolio
