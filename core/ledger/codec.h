// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// For each kind of entry its name in the file, how its members are read, and how they are written. A kind of the
/// variant without a codec does not compile.
#pragma once

#include "core/ledger/memberreader.h"
#include "core/ledger/memberwriter.h"

namespace setfolio {

template <typename Kind>
struct Codec;

// Declares the codec of a kind; a function of it is defined in the file of codecs named as its file of entries.
#define SETFOLIO_CODEC(Kind, nameInFile)                                                                               \
    template <>                                                                                                        \
    struct Codec<Kind> {                                                                                               \
        static constexpr QLatin1StringView name{nameInFile};                                                           \
        [[nodiscard]] static Kind read(MemberReader& reader);                                                          \
        static void write(const Kind& entry, MemberWriter& writer);                                                    \
    }

SETFOLIO_CODEC(MatchOpened, "match-opened");
SETFOLIO_CODEC(Roster, "roster");
SETFOLIO_CODEC(Officials, "officials");
SETFOLIO_CODEC(MatchClosed, "match-closed");
SETFOLIO_CODEC(Forfeit, "forfeit");
SETFOLIO_CODEC(Suspended, "suspended");
SETFOLIO_CODEC(Resumed, "resumed");

SETFOLIO_CODEC(Toss, "toss");
SETFOLIO_CODEC(LineUp, "line-up");
SETFOLIO_CODEC(SetStarted, "set-started");
SETFOLIO_CODEC(SetEnded, "set-ended");
SETFOLIO_CODEC(SidesChanged, "sides-changed");

SETFOLIO_CODEC(ServeContacted, "serve-contacted");
SETFOLIO_CODEC(RallyWon, "rally-won");
SETFOLIO_CODEC(Replay, "replay");
SETFOLIO_CODEC(NoServe, "no-serve");
SETFOLIO_CODEC(ServerSeen, "server-seen");
SETFOLIO_CODEC(WrongServer, "wrong-server");

SETFOLIO_CODEC(Substitution, "substitution");
SETFOLIO_CODEC(PlaceVacated, "place-vacated");
SETFOLIO_CODEC(TimeOut, "time-out");
SETFOLIO_CODEC(CaptainNamed, "captain-named");
SETFOLIO_CODEC(SheetCompared, "sheet-compared");
SETFOLIO_CODEC(Remark, "remark");

SETFOLIO_CODEC(LiberoServe, "libero-serve");
SETFOLIO_CODEC(LiberoIn, "libero-in");
SETFOLIO_CODEC(LiberoOut, "libero-out");
SETFOLIO_CODEC(LiberoExchange, "libero-exchange");
SETFOLIO_CODEC(LiberoRedesignated, "libero-redesignated");

SETFOLIO_CODEC(Sanction, "sanction");
SETFOLIO_CODEC(DelaySanction, "delay-sanction");
SETFOLIO_CODEC(ImproperRequest, "improper-request");
SETFOLIO_CODEC(PenaltyPoint, "penalty-point");

SETFOLIO_CODEC(Strike, "strike");

SETFOLIO_CODEC(Signed, "signed");
SETFOLIO_CODEC(LeftUnsigned, "left-unsigned");
SETFOLIO_CODEC(Sealed, "sealed");
SETFOLIO_CODEC(Reopened, "reopened");

#undef SETFOLIO_CODEC

} // namespace setfolio
