// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Everything that can be asked of the table, in one table: menus, buttons and key caps read it.
#pragma once

#include "core/match/state.h"

#include <QKeySequence>
#include <QList>
#include <QString>

#include <array>
#include <optional>
#include <span>

namespace setfolio {

enum class TableCommand : std::uint8_t {
    NextStep, ///< what the amber head says
    LeftWins,
    RightWins,
    ServeContacted,
    Replay,
    ReplayBecause, ///< with what it is played over for
    ReServe,
    NoServe,
    LeftSubstitution,
    LeftTimeOut,
    LeftLibero,
    RightSubstitution,
    RightTimeOut,
    RightLibero,
    WhoServes, ///< which number stands at the line
    LeftCard,
    RightCard,
    LeftPenalty,
    RightPenalty,
    LeftIllegalPlayer, ///< found on court after play was resumed
    RightIllegalPlayer,
    LeftCaptain,
    RightCaptain,
    LeftRedesignation,
    RightRedesignation,
    SidesChanged,
    ComparedAgrees,
    ComparedDiffers,
    Suspend,
    Forfeit,
    Remark,
    Correct,
    Undo,
    Redo,
    GoToLive,
    PageBack,
    PageOn,
    LiveBand,
    PageWidth,
    WholePage,
    Larger,
    Smaller,
    NewMatch,
    OpenMatch,
    Toss,
    LeftLineUp,
    RightLineUp,
    LeftRoster,
    RightRoster,
    Officials,
    SignOff, ///< what is due, or what was sealed last
    Reopen,  ///< what was sealed last
    Print,
    SaveCopy, ///< of the match, for others
    TeamBook,
    CloseWindow,
    Help,
    ChangeKeys,
};

/// The menu a command stands in.
enum class TableMenu : std::uint8_t { Match, Set, Rally, Sheet, View, Help };
inline constexpr std::array allTableMenus{TableMenu::Match, TableMenu::Set,  TableMenu::Rally,
                                          TableMenu::Sheet, TableMenu::View, TableMenu::Help};

struct CommandInfo {
    TableCommand command;
    TableMenu menu;
    QString id;               ///< the name of the control and of the action, "leftWins"
    QList<QKeySequence> keys; ///< built in; the first one is shown on the control and may be changed
    std::optional<Side> side; ///< keys belong to sides, not to teams
    bool records;             ///< it writes an entry, or asks for one
    unsigned phases;          ///< a bit for each Phase in which it can mean something
};

/// What a command's being enabled depends on.
struct Situation {
    Phase phase = Phase::NotOpened;
    bool readOnly = false; ///< another window holds the file
    bool canUndo = false;
    bool canRedo = false;
    bool signOffPutOff = false; ///< it is not the next step until more is due
};

[[nodiscard]] std::span<const CommandInfo> allCommands();
[[nodiscard]] const CommandInfo& infoOf(TableCommand command);
/// As menus and buttons say it.
[[nodiscard]] QString nameOf(TableCommand command);
/// The title of a menu, with its mnemonic.
[[nodiscard]] QString titleOf(TableMenu menu);
/// The words for its first key as it is in force, as they stand on a key cap: "S", "Space", "←"; empty without a key.
[[nodiscard]] QString keyCapOf(TableCommand command);
/// Likewise for any key.
[[nodiscard]] QString capOf(const QKeySequence& key);
/// Whether it can mean anything now. What would only be against the rulebook stays enabled: pressing it says why.
[[nodiscard]] bool mayBeAsked(TableCommand command, const Situation& situation);

} // namespace setfolio
