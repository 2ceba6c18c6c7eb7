// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/commands.h"

#include "ui/table/keys.h"

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

/// With the key as it is without Shift on many keyboards.
Keys largerKeys() {
    return standard(QKeySequence::ZoomIn) + one(Qt::CTRL | Qt::Key_Equal);
}

constexpr unsigned bit(Phase phase) {
    return 1U << static_cast<unsigned>(phase);
}

// Phases in which a command can mean something.
constexpr unsigned beforeSet = bit(Phase::BeforeSet);
constexpr unsigned inSet = bit(Phase::ReadyToServe) | bit(Phase::Rally);
constexpr unsigned won = bit(Phase::SetWon);
constexpr unsigned suspended = bit(Phase::Suspended);
constexpr unsigned closed = bit(Phase::MatchClosed);
constexpr unsigned dead = beforeSet | won | suspended | bit(Phase::MatchWon) | closed;
constexpr unsigned opened = inSet | beforeSet | won | suspended | bit(Phase::MatchWon);
constexpr unsigned always = opened | closed | bit(Phase::NotOpened);

// clang-format off
std::vector<CommandInfo> makeTable() {
    using C = TableCommand;
    using M = TableMenu;
    const auto left = Side::Left;
    const auto right = Side::Right;
    const auto none = std::nullopt;
    return {
        {C::NextStep,          M::Set,   u"nextStep"_s,       {Qt::Key_Return, Qt::Key_Enter}, none,  true,  dead},
        {C::LeftWins,          M::Rally, u"leftWins"_s,       one(Qt::Key_Left),              left,  true,  inSet},
        {C::RightWins,         M::Rally, u"rightWins"_s,      one(Qt::Key_Right),             right, true,  inSet},
        {C::ServeContacted,    M::Rally, u"serveContacted"_s, one(Qt::Key_Space),             none,  true,  inSet},
        {C::Replay,            M::Rally, u"replay"_s,         one(Qt::Key_Y),                 none,  true,  inSet},
        {C::ReplayBecause,     M::Rally, u"replayBecause"_s,  one(Qt::ALT | Qt::Key_Y),       none,  true,  inSet},
        {C::ReServe,           M::Rally, u"reServe"_s,        one(Qt::SHIFT | Qt::Key_Y),     none,  true,  inSet},
        {C::NoServe,           M::Rally, u"noServe"_s,        one(Qt::Key_N),                 none,  true,  inSet},
        {C::LeftSubstitution,  M::Set,   u"subLeft"_s,        one(Qt::Key_S),                 left,  true,  beforeSet | inSet},
        {C::LeftTimeOut,       M::Set,   u"timeOutLeft"_s,    one(Qt::Key_D),                 left,  true,  inSet},
        {C::LeftLibero,        M::Set,   u"liberoLeft"_s,     one(Qt::Key_F),                 left,  true,  beforeSet | inSet},
        {C::RightSubstitution, M::Set,   u"subRight"_s,       one(Qt::Key_L),                 right, true,  beforeSet | inSet},
        {C::RightTimeOut,      M::Set,   u"timeOutRight"_s,   one(Qt::Key_K),                 right, true,  inSet},
        {C::RightLibero,       M::Set,   u"liberoRight"_s,    one(Qt::Key_J),                 right, true,  beforeSet | inSet},
        {C::WhoServes,         M::Rally, u"whoServes"_s,      one(Qt::Key_W),                 none,  true,  inSet | won},
        {C::LeftCard,          M::Set,   u"cardLeft"_s,       one(Qt::Key_G),                 left,  true,  opened},
        {C::RightCard,         M::Set,   u"cardRight"_s,      one(Qt::Key_H),                 right, true,  opened},
        {C::LeftPenalty,       M::Rally, u"penaltyLeft"_s,    {},                             left,  true,  beforeSet | inSet | won},
        {C::RightPenalty,      M::Rally, u"penaltyRight"_s,   {},                             right, true,  beforeSet | inSet | won},
        {C::LeftIllegalPlayer, M::Rally, u"illegalLeft"_s,    one(Qt::SHIFT | Qt::Key_S),     left,  true,  inSet | won},
        {C::RightIllegalPlayer, M::Rally, u"illegalRight"_s,  one(Qt::SHIFT | Qt::Key_L),     right, true,  inSet | won},
        {C::LeftCaptain,       M::Set,   u"captainLeft"_s,    {},                             left,  true,  inSet},
        {C::RightCaptain,      M::Set,   u"captainRight"_s,   {},                             right, true,  inSet},
        {C::LeftRedesignation, M::Set,   u"newLiberoLeft"_s,  {},                             left,  true,  beforeSet | inSet},
        {C::RightRedesignation, M::Set,  u"newLiberoRight"_s, {},                             right, true,  beforeSet | inSet},
        {C::SidesChanged,      M::Set,   u"sidesChanged"_s,   {},                             none,  true,  inSet},
        {C::ComparedAgrees,    M::Sheet, u"agrees"_s,         {},                             none,  true,  opened},
        {C::ComparedDiffers,   M::Sheet, u"differs"_s,        {},                             none,  true,  opened},
        {C::Remark,            M::Sheet, u"remark"_s,         one(Qt::Key_M),                 none,  true,  opened},
        {C::Correct,           M::Sheet, u"correct"_s,        one(Qt::Key_C),                 none,  true,  opened},
        {C::Undo,              M::Sheet, u"undo"_s,           undoKeys(),                     none,  true,  always},
        {C::Redo,              M::Sheet, u"redo"_s,           standard(QKeySequence::Redo),   none,  true,  always},
        {C::NewMatch,          M::Match, u"newMatch"_s,       standard(QKeySequence::New),    none,  false, always},
        {C::OpenMatch,         M::Match, u"openMatch"_s,      standard(QKeySequence::Open),   none,  false, always},
        {C::Toss,              M::Set,   u"toss"_s,           {},                             none,  true,  beforeSet},
        {C::LeftLineUp,        M::Set,   u"lineUpLeft"_s,     {},                             left,  true,  beforeSet},
        {C::RightLineUp,       M::Set,   u"lineUpRight"_s,    {},                             right, true,  beforeSet},
        {C::LeftRoster,        M::Set,   u"rosterLeft"_s,     {},                             left,  true,  opened},
        {C::RightRoster,       M::Set,   u"rosterRight"_s,    {},                             right, true,  opened},
        {C::Officials,         M::Match, u"officials"_s,      {},                             none,  true,  opened},
        {C::SignOff,           M::Match, u"signOff"_s,        one(Qt::Key_F3),                none,  true,  opened | closed},
        {C::Reopen,            M::Match, u"reopen"_s,         {},                             none,  true,  opened | closed},
        {C::Print,             M::Match, u"print"_s,          standard(QKeySequence::Print),  none,  false, opened | closed},
        {C::SaveCopy,          M::Match, u"saveCopy"_s,       one(Qt::CTRL | Qt::SHIFT | Qt::Key_S), none, false, opened | closed},
        {C::TeamBook,          M::Match, u"teamBook"_s,       {},                             none,  false, always},
        {C::Suspend,           M::Match, u"suspend"_s,        {},                             none,  true,  beforeSet | inSet | won},
        {C::Forfeit,           M::Match, u"forfeit"_s,        {},                             none,  true,  opened},
        {C::CloseWindow,       M::Match, u"closeWindow"_s,    standard(QKeySequence::Close),  none,  false, always},
        {C::Help,              M::Help,  u"help"_s,           one(Qt::Key_F1),                none,  false, always},
        {C::ChangeKeys,        M::Help,  u"changeKeys"_s,     {},                             none,  false, always},
    };
}

std::vector<CommandInfo> viewCommands() {
    using C = TableCommand;
    using M = TableMenu;
    const auto none = std::nullopt;
    return {
        {C::GoToLive,          M::View,  u"goToLive"_s,       one(Qt::Key_Home),              none,  false, opened | closed},
        {C::PageBack,          M::View,  u"pageBack"_s,       one(Qt::Key_PageUp),            none,  false, opened | closed},
        {C::PageOn,            M::View,  u"pageOn"_s,         one(Qt::Key_PageDown),          none,  false, opened | closed},
        {C::LiveBand,          M::View,  u"liveBand"_s,       one(Qt::Key_F7),                none,  false, opened | closed},
        {C::PageWidth,         M::View,  u"pageWidth"_s,      one(Qt::Key_F6),                none,  false, opened | closed},
        {C::WholePage,         M::View,  u"wholePage"_s,      one(Qt::Key_F8),                none,  false, opened | closed},
        {C::Larger,            M::View,  u"larger"_s,         largerKeys(),                   none,  false, opened | closed},
        {C::Smaller,           M::View,  u"smaller"_s,        standard(QKeySequence::ZoomOut), none, false, opened | closed},
    };
}
// clang-format on

/// A key's name as it stands on the keyboards of those who speak the language; the others have Qt's.
QString capName(Qt::Key key) {
    switch (key) {
    case Qt::Key_Left:
        return u"←"_s;
    case Qt::Key_Right:
        return u"→"_s;
    case Qt::Key_Up:
        return u"↑"_s;
    case Qt::Key_Down:
        return u"↓"_s;
    case Qt::Key_Space:
        return Table::tr("Space");
    case Qt::Key_Backspace:
        return Table::tr("Backspace");
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return Table::tr("Enter");
    case Qt::Key_Home:
        return Table::tr("Home");
    case Qt::Key_PageUp:
        return Table::tr("Page up");
    case Qt::Key_PageDown:
        return Table::tr("Page down");
    default:
        return QKeySequence(key).toString(QKeySequence::NativeText);
    }
}

QStringList modifierCaps(Qt::KeyboardModifiers modifiers) {
    QStringList caps;
    if (modifiers.testFlag(Qt::ControlModifier))
        caps << Table::tr("Ctrl", "a key");
    if (modifiers.testFlag(Qt::AltModifier))
        caps << Table::tr("Alt", "a key");
    if (modifiers.testFlag(Qt::ShiftModifier))
        caps << Table::tr("Shift", "a key");
    if (modifiers.testFlag(Qt::MetaModifier))
        caps << QKeySequence(Qt::META).toString(QKeySequence::NativeText).chopped(1);
    return caps;
}

} // namespace

std::span<const CommandInfo> allCommands() {
    static const std::vector<CommandInfo> table = [] {
        std::vector<CommandInfo> all = makeTable();
        const std::vector<CommandInfo> view = viewCommands();
        all.insert(all.end(), view.begin(), view.end());
        return all;
    }();
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
    case TableCommand::ReplayBecause:     return Table::tr("Replay and its cause…");
    case TableCommand::ReServe:           return Table::tr("Re-serve");
    case TableCommand::NoServe:           return Table::tr("No serve");
    case TableCommand::LeftSubstitution:  return Table::tr("Substitution, left side");
    case TableCommand::LeftTimeOut:       return Table::tr("Time-out, left side");
    case TableCommand::LeftLibero:        return Table::tr("Libero, left side");
    case TableCommand::RightSubstitution: return Table::tr("Substitution, right side");
    case TableCommand::RightTimeOut:      return Table::tr("Time-out, right side");
    case TableCommand::RightLibero:       return Table::tr("Libero, right side");
    case TableCommand::WhoServes:         return Table::tr("Who is at the line?");
    case TableCommand::LeftCard:          return Table::tr("Card or delay, left side");
    case TableCommand::RightCard:         return Table::tr("Card or delay, right side");
    case TableCommand::LeftPenalty:       return Table::tr("Penalty point to the left side…");
    case TableCommand::RightPenalty:      return Table::tr("Penalty point to the right side…");
    case TableCommand::LeftIllegalPlayer: return Table::tr("Illegal player found, left side…");
    case TableCommand::RightIllegalPlayer: return Table::tr("Illegal player found, right side…");
    case TableCommand::LeftCaptain:       return Table::tr("Playing captain, left side…");
    case TableCommand::RightCaptain:      return Table::tr("Playing captain, right side…");
    case TableCommand::LeftRedesignation: return Table::tr("New libero, left side…");
    case TableCommand::RightRedesignation: return Table::tr("New libero, right side…");
    case TableCommand::SidesChanged:      return Table::tr("Sides changed");
    case TableCommand::ComparedAgrees:    return Table::tr("Compared with the scoreboard: agrees");
    case TableCommand::ComparedDiffers:   return Table::tr("Compared with the scoreboard: differs…");
    case TableCommand::Suspend:           return Table::tr("Suspend play…");
    case TableCommand::Forfeit:           return Table::tr("Forfeit…");
    case TableCommand::Remark:            return Table::tr("Remark…");
    case TableCommand::Correct:           return Table::tr("Correct…");
    case TableCommand::Undo: return Table::tr("Undo");  case TableCommand::Redo: return Table::tr("Redo");
    case TableCommand::GoToLive:          return Table::tr("Go to live");
    case TableCommand::PageBack: return Table::tr("Page back");  case TableCommand::PageOn: return Table::tr("Page on");
    case TableCommand::LiveBand:          return Table::tr("Live band");
    case TableCommand::WholePage:         return Table::tr("Whole page");
    case TableCommand::PageWidth:         return Table::tr("Page width");
    case TableCommand::Larger: return Table::tr("Larger");  case TableCommand::Smaller: return Table::tr("Smaller");
    case TableCommand::NewMatch:          return Table::tr("New match…");
    case TableCommand::OpenMatch:         return Table::tr("Open…");
    case TableCommand::Toss:              return Table::tr("Toss…");
    case TableCommand::LeftLineUp:        return Table::tr("Line-up, left side…");
    case TableCommand::RightLineUp:       return Table::tr("Line-up, right side…");
    case TableCommand::LeftRoster:        return Table::tr("Roster, left side…");
    case TableCommand::RightRoster:       return Table::tr("Roster, right side…");
    case TableCommand::Officials:         return Table::tr("Officials…");
    case TableCommand::SignOff:           return Table::tr("Sign off…");
    case TableCommand::Reopen:            return Table::tr("Reopen what is sealed…");
    case TableCommand::Print:             return Table::tr("Print…");
    case TableCommand::SaveCopy:          return Table::tr("Save a copy…");
    case TableCommand::TeamBook:          return Table::tr("Team book…");
    case TableCommand::CloseWindow:       return Table::tr("Close");
    case TableCommand::Help:              return Table::tr("How things are entered…");
    case TableCommand::ChangeKeys:        return Table::tr("Change keys…");
    }
    return {};
}
// clang-format on

QString titleOf(TableMenu menu) {
    switch (menu) {
    case TableMenu::Match:
        return Table::tr("&Match");
    case TableMenu::Set:
        return Table::tr("&Set");
    case TableMenu::Rally:
        return Table::tr("&Rally");
    case TableMenu::Sheet:
        return Table::tr("S&heet");
    case TableMenu::View:
        return Table::tr("&View");
    case TableMenu::Help:
        return Table::tr("Hel&p");
    }
    return {};
}

QString keyCapOf(TableCommand command) {
    const Keys keys = keysOf(command);
    return keys.isEmpty() ? QString() : capOf(keys.first());
}

QString capOf(const QKeySequence& key) {
    if (key.isEmpty())
        return {};
    QStringList caps = modifierCaps(key[0].keyboardModifiers());
    return (caps << capName(key[0].key())).join(u'+');
}

bool mayBeAsked(TableCommand command, const Situation& situation) {
    if (infoOf(command).records && situation.readOnly)
        return false;
    if (command == TableCommand::Undo)
        return situation.canUndo;
    if (command == TableCommand::Redo)
        return situation.canRedo;
    return (infoOf(command).phases & bit(situation.phase)) != 0;
}

} // namespace setfolio
