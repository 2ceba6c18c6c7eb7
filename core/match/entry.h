// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the scorer records. Every entry kind is one plain struct, and Entry is the variant of them all: adding a kind
/// starts in one of the files included here, and the compiler then names each place that must know it.
#pragma once

#include "core/match/deadballentries.h"
#include "core/match/liberoentries.h"
#include "core/match/matchentries.h"
#include "core/match/rallyentries.h"
#include "core/match/sanctionentries.h"
#include "core/match/setentries.h"
#include "core/match/signoffentries.h"

#include <QDateTime>

namespace setfolio {

/// A correction that strikes an earlier entry. What it struck stays in the ledger and, struck, on the sheet. Undo
/// strikes what was done last, an entry or a correction (undo.h); striking an undo is redo.
struct Strike {
    EntryNumber target;
    QString reason;
    bool operator==(const Strike&) const = default;
};

using Entry =
    std::variant<MatchOpened, Roster, Officials, MatchClosed, Forfeit, Suspended, Resumed, Toss, LineUp, SetStarted,
                 SetEnded, SidesChanged, ServeContacted, RallyWon, Replay, NoServe, ServerSeen, WrongServer,
                 IllegalPlayer, Substitution, PlaceVacated, TimeOut, LiberoServe, LiberoIn, LiberoOut, LiberoExchange,
                 LiberoRedesignated, LateReplacement, CaptainNamed, Sanction, DelaySanction, ImproperRequest,
                 SheetCompared, PenaltyPoint, Remark, Strike, Signed, LeftUnsigned, Sealed, Reopened>;

/// A correction that sets an entry at another place than the newest: put in before an earlier entry that stands, or in
/// the place of one, which is struck by it. To strike this entry undoes both.
struct Placed {
    enum class How : std::uint8_t { Before, InsteadOf };
    How how = How::Before;
    EntryNumber target;
    QString reason;
    bool operator==(const Placed&) const = default;
};

/// An entry as it stands in the ledger.
struct Recorded {
    EntryNumber number;
    QDateTime time; ///< when it was recorded, UTC, to the millisecond
    Entry entry;
    std::optional<QString> overruled; ///< the referee's word that let an entry stand against a finding: the reason
    std::optional<Placed> placed;     ///< none: it comes after all that stands
    bool operator==(const Recorded&) const = default;
};

/// The points that a ruling takes back: the team's from the one that this entry brought on.
struct TakenBackPoints {
    Team team = Team::Home;
    EntryNumber first;
};
/// None when the entry takes none back, or is no ruling.
[[nodiscard]] std::optional<TakenBackPoints> takenBackBy(const Entry& entry);

/// Overloads for std::visit; a visit names every kind and has no default.
template <typename... Ts>
struct Overloaded : Ts... {
    using Ts::operator()...;
};
template <typename... Ts>
Overloaded(Ts...) -> Overloaded<Ts...>;

} // namespace setfolio
