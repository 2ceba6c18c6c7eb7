// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/exportparts.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

QString exportWord(Slot slot) {
    static const std::array<QString, 6> numerals{u"I"_s, u"II"_s, u"III"_s, u"IV"_s, u"V"_s, u"VI"_s};
    return numerals.at(slot.index());
}

namespace {

struct KindWord {
    FindingKind kind;
    const char* word;
};

// clang-format off
constexpr std::array kindWords{
    KindWord{FindingKind::MatchNotOpened,           "match-not-opened"},
    KindWord{FindingKind::MatchAlreadyOpened,       "match-already-opened"},
    KindWord{FindingKind::MatchIsClosed,            "match-is-closed"},
    KindWord{FindingKind::MatchAlreadyWon,          "match-already-won"},
    KindWord{FindingKind::MatchNotWon,              "match-not-won"},
    KindWord{FindingKind::MatchIsSuspended,         "match-is-suspended"},
    KindWord{FindingKind::NotSuspended,             "not-suspended"},
    KindWord{FindingKind::SetNotStarted,            "set-not-started"},
    KindWord{FindingKind::SetAlreadyStarted,        "set-already-started"},
    KindWord{FindingKind::SetAlreadyWon,            "set-already-won"},
    KindWord{FindingKind::SetNotWon,                "set-not-won"},
    KindWord{FindingKind::TossMissing,              "toss-missing"},
    KindWord{FindingKind::LineUpMissing,            "line-up-missing"},
    KindWord{FindingKind::ChangedSinceLineUp,       "changed-since-line-up"},
    KindWord{FindingKind::RallyUndecided,           "rally-undecided"},
    KindWord{FindingKind::ServeAlreadyContacted,    "serve-already-contacted"},
    KindWord{FindingKind::NotOnCourt,               "not-on-court"},
    KindWord{FindingKind::NoSuchEntry,              "no-such-entry"},
    KindWord{FindingKind::CannotBeStruck,           "cannot-be-struck"},
    KindWord{FindingKind::BestOfImpossible,         "best-of-impossible"},
    KindWord{FindingKind::NumberImpossible,         "number-impossible"},
    KindWord{FindingKind::LiberoNotServing,         "libero-not-serving"},
    KindWord{FindingKind::NotServing,               "not-serving"},
    KindWord{FindingKind::LiberoNotOnCourt,         "libero-not-on-court"},
    KindWord{FindingKind::NoSuchPoint,              "no-such-point"},
    KindWord{FindingKind::NeverServed, "never-served"},
    KindWord{FindingKind::SetNotEnded,              "set-not-ended"},
    KindWord{FindingKind::KeepsTooMuch,             "keeps-too-much"},
    KindWord{FindingKind::IsSealed,                 "is-sealed"},
    KindWord{FindingKind::NotSealed,                "not-sealed"},
    KindWord{FindingKind::SignedTooEarly,           "signed-too-early"},
    KindWord{FindingKind::SignaturesMissing,        "signatures-missing"},
    KindWord{FindingKind::ReasonMissing,            "reason-missing"},
    KindWord{FindingKind::NumberNotAllowed,         "number-not-allowed"},
    KindWord{FindingKind::DoubledInRoster,          "doubled-in-roster"},
    KindWord{FindingKind::RosterSettled, "roster-settled"},
    KindWord{FindingKind::TooManyLiberos,           "too-many-liberos"},
    KindWord{FindingKind::DoubledInLineUp,          "doubled-in-line-up"},
    KindWord{FindingKind::StrangerInLineUp,         "stranger-in-line-up"},
    KindWord{FindingKind::LiberoInLineUp,           "libero-in-line-up"},
    KindWord{FindingKind::LiberoNotOnRoster,        "libero-not-on-roster"},
    KindWord{FindingKind::LiberoNotOfMatch,         "libero-not-of-match"},
    KindWord{FindingKind::CaptainNotInTeam,         "captain-not-in-team"},
    KindWord{FindingKind::CaptainNotOnCourt,        "captain-not-on-court"},
    KindWord{FindingKind::CaptainIsLibero,          "captain-is-libero"},
    KindWord{FindingKind::FirstServeAlternates,     "first-serve-alternates"},
    KindWord{FindingKind::SidesNotAsRuled,          "sides-not-as-ruled"},
    KindWord{FindingKind::SignedOutOfOrder,         "signed-out-of-order"},
    KindWord{FindingKind::SentOff,                  "sent-off"},
    KindWord{FindingKind::ReplacedForGood,          "replaced-for-good"},
    KindWord{FindingKind::GivenUpAsLibero,          "given-up-as-libero"},
    KindWord{FindingKind::SubstituteNotOnRoster,    "substitute-not-on-roster"},
    KindWord{FindingKind::SubstituteOnCourt,        "substitute-on-court"},
    KindWord{FindingKind::SubstituteIsLibero,       "substitute-is-libero"},
    KindWord{FindingKind::SubstituteOffForLibero,   "substitute-off-for-libero"},
    KindWord{FindingKind::OutOffForLibero,          "out-off-for-libero"},
    KindWord{FindingKind::WrongSlot,                "wrong-slot"},
    KindWord{FindingKind::NotHerPartner,            "not-her-partner"},
    KindWord{FindingKind::SlotUsedUp,               "slot-used-up"},
    KindWord{FindingKind::PlayersPerSlot,           "players-per-slot"},
    KindWord{FindingKind::SubstitutionLimit,        "substitution-limit"},
    KindWord{FindingKind::SecondRequest,            "second-request"},
    KindWord{FindingKind::SubstitutionBarred,       "substitution-barred"},
    KindWord{FindingKind::SubstitutionBeforeStart,  "substitution-before-start"},
    KindWord{FindingKind::RequestBeforeRepeat,      "request-before-repeat"},
    KindWord{FindingKind::RegularSubstituteLeft,    "regular-substitute-left"},
    KindWord{FindingKind::LiberoComesLast,          "libero-comes-last"},
    KindWord{FindingKind::FewerThanSixNotAllowed,   "fewer-than-six-not-allowed"},
    KindWord{FindingKind::SubstituteLeft,           "substitute-left"},
    KindWord{FindingKind::TimeOutLimit,             "time-out-limit"},
    KindWord{FindingKind::VacantServer,             "vacant-server"},
    KindWord{FindingKind::SentOffOnCourt,           "sent-off-on-court"},
    KindWord{FindingKind::LiberoInFrontRow,         "libero-in-front-row"},
    KindWord{FindingKind::LiberoMayNotServe,        "libero-may-not-serve"},
    KindWord{FindingKind::LiberoSecondSlot,         "libero-second-slot"},
    KindWord{FindingKind::ServerIsNotLibero,        "server-is-not-libero"},
    KindWord{FindingKind::WrongServerUnruled,       "wrong-server-unruled"},
    KindWord{FindingKind::ServedRightly,            "served-rightly"},
    KindWord{FindingKind::NotServedYet, "not-served-yet"},
    KindWord{FindingKind::PointsStand,              "points-stand"},
    KindWord{FindingKind::TakenBackTooMuch,         "taken-back-too-much"},
    KindWord{FindingKind::TakenBackTooLate,         "taken-back-too-late"},
    KindWord{FindingKind::ReServeLimit,             "re-serve-limit"},
    KindWord{FindingKind::NotALibero,               "not-a-libero"},
    KindWord{FindingKind::LiberoAlreadyOnCourt,     "libero-already-on-court"},
    KindWord{FindingKind::LiberoForFrontRow,        "libero-for-front-row"},
    KindWord{FindingKind::LiberoRallyBetween,       "libero-rally-between"},
    KindWord{FindingKind::LiberoExchangeNotAllowed, "libero-exchange-not-allowed"},
    KindWord{FindingKind::RedesignationNotAllowed,  "redesignation-not-allowed"},
    KindWord{FindingKind::NewLiberoOnCourt,         "new-libero-on-court"},
    KindWord{FindingKind::LevelNotOnLadder,         "level-not-on-ladder"},
    KindWord{FindingKind::SanctionNotHigher,        "sanction-not-higher"},
    KindWord{FindingKind::TeamWarnedAlready,        "team-warned-already"},
    KindWord{FindingKind::SentOffAlready,           "sent-off-already"},
    KindWord{FindingKind::SanctionedStranger,       "sanctioned-stranger"},
    KindWord{FindingKind::DelayNotNext,             "delay-not-next"},
    KindWord{FindingKind::ImproperRequestIsDelay,   "improper-request-is-delay"},
    KindWord{FindingKind::SidesChangeEarly,         "sides-change-early"},
    KindWord{FindingKind::SidesChangedAlready,      "sides-changed-already"},
    KindWord{FindingKind::NoSidesChange,            "no-sides-change"},
    KindWord{FindingKind::DefaultIsOfMatch,         "default-is-of-match"},
    KindWord{FindingKind::IncompleteBeforePlay,     "incomplete-before-play"},
    KindWord{FindingKind::SetNotPlayedAgain,        "set-not-played-again"},
    KindWord{FindingKind::ResumedTooLate,           "resumed-too-late"},
    KindWord{FindingKind::RequestsGoToo,            "requests-go-too"},
    KindWord{FindingKind::PlayNotResumed,           "play-not-resumed"},
    KindWord{FindingKind::LateReplacementIsDelay,   "late-replacement-is-delay"},
    KindWord{FindingKind::LiberoForSentOff,         "libero-for-sent-off"},
    KindWord{FindingKind::NoLiberoThisSet,          "no-libero-this-set"},
    KindWord{FindingKind::IllegalPlayerStays,       "illegal-player-stays"},
    KindWord{FindingKind::SameLineUpDue,            "same-line-up-due"},
    KindWord{FindingKind::ServerNotOnRoster,        "server-not-on-roster"},
    KindWord{FindingKind::RosterChangeCosts,        "roster-change-costs"},
};
// clang-format on
static_assert(nameEveryKind(kindWords));

} // namespace

QString exportWord(FindingKind kind) {
    return QString::fromLatin1(kindWords.at(static_cast<std::size_t>(kind)).word);
}

QJsonValue toExport(ShirtNumber number) {
    return number.value;
}

QJsonValue toExport(EntryNumber entry) {
    return static_cast<qint64>(entry.value);
}

QJsonObject toExport(const PerTeam<int>& score) {
    return {{u"home"_s, score.home}, {u"visitors"_s, score.visitors}};
}

} // namespace setfolio
