// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebooksettings.h"

#include "core/rules/settingwords.h"

#include <algorithm>
#include <array>
#include <type_traits>
#include <utility>

namespace setfolio {
namespace {

template <auto Field>
constexpr WordSetting word() {
    using Enum = std::remove_cvref_t<decltype(std::declval<Rulebook>().*Field)>;
    return {[](const Rulebook& rulebook) { return static_cast<std::size_t>(rulebook.*Field); },
            [](Rulebook& rulebook, std::size_t place) { rulebook.*Field = static_cast<Enum>(place); }, wordsOf<Enum>};
}

// clang-format off
constexpr std::array settings{
    Setting{"set-points",                       NumberSetting{&Rulebook::setPoints, 1, 99}},
    Setting{"deciding-set-points",              NumberSetting{&Rulebook::decidingSetPoints, 1, 99}},
    Setting{"margin",                           NumberSetting{&Rulebook::margin, 1, 9}},
    Setting{"cap",                              OptionalSetting{&Rulebook::cap, 1, 199}},
    Setting{"best-of",                          ListSetting{&Rulebook::bestOf, 1, 5, 2}},
    Setting{"interval-seconds",                 NumberSetting{&Rulebook::intervalSeconds, 0, 3600}},
    Setting{"long-interval-seconds",            OptionalSetting{&Rulebook::longIntervalSeconds, 0, 3600}},
    Setting{"long-interval-after-set",          OptionalSetting{&Rulebook::longIntervalAfterSet, 1, 5}},
    Setting{"line-up-check-seconds",            NumberSetting{&Rulebook::lineUpCheckSeconds, 0, 600}},
    Setting{"change-sides",                     word<&Rulebook::changeSides>()},
    Setting{"deciding-set-side-change",         OptionalSetting{&Rulebook::decidingSetSideChange, 1, 99}},
    Setting{"default-result",                   word<&Rulebook::defaultResult>()},
    Setting{"incomplete-result",                word<&Rulebook::incompleteResult>()},
    Setting{"resume-within-hours",              OptionalSetting{&Rulebook::resumeWithinHours, 1, 99}},
    Setting{"resumed-elsewhere",                word<&Rulebook::resumedElsewhere>()},
    Setting{"protest",                          word<&Rulebook::protest>()},
    Setting{"serve-seconds",                    NumberSetting{&Rulebook::serveSeconds, 1, 60}},
    Setting{"re-serves-per-term",               NumberSetting{&Rulebook::reServesPerTerm, 0, 9}},
    Setting{"early-serve",                      word<&Rulebook::earlyServe>()},
    Setting{"requests-in-re-serve",             FlagSetting{&Rulebook::requestsInReServe}},
    Setting{"requests-in-replay",               FlagSetting{&Rulebook::requestsInReplay}},
    Setting{"wrong-server-notice",              word<&Rulebook::wrongServerNotice>()},
    Setting{"wrong-server-points",              word<&Rulebook::wrongServerPoints>()},
    Setting{"wrong-server-until",               word<&Rulebook::wrongServerUntil>()},
    Setting{"wrong-server-requests",            FlagSetting{&Rulebook::wrongServerRequests}},
    Setting{"wrong-point-until",                word<&Rulebook::wrongPointUntil>()},
    Setting{"substitution-limit",               NumberSetting{&Rulebook::substitutionLimit, 0, 24}},
    Setting{"substitution-rule",                word<&Rulebook::substitutionRule>()},
    Setting{"players-per-slot",                 OptionalSetting{&Rulebook::playersPerSlot, 1, 24}},
    Setting{"substitution-notices",             ListSetting{&Rulebook::substitutionNotices, 1, 24}},
    Setting{"substitution-before-start",        FlagSetting{&Rulebook::substitutionBeforeStart}},
    Setting{"second-request",                   word<&Rulebook::secondRequest>()},
    Setting{"substitution-barred-by-delay",     FlagSetting{&Rulebook::substitutionBarredByDelay}},
    Setting{"substitution-request-illegal",     word<&Rulebook::substitutionRequestIllegal>()},
    Setting{"excess-substitution",              word<&Rulebook::excessSubstitution>()},
    Setting{"illegal-substitution-points",      word<&Rulebook::illegalSubstitutionPoints>()},
    Setting{"illegal-substitution-until",       word<&Rulebook::illegalSubstitutionUntil>()},
    Setting{"illegal-substitution-counts",      FlagSetting{&Rulebook::illegalSubstitutionCounts}},
    Setting{"exceptional-count",                word<&Rulebook::exceptionalCount>()},
    Setting{"exceptional-out-for",              word<&Rulebook::exceptionalOutFor>()},
    Setting{"exceptional-libero",               word<&Rulebook::exceptionalLibero>()},
    Setting{"players-at-start",                 NumberSetting{&Rulebook::playersAtStart, 1, 6}},
    Setting{"fewer-than-six",                   word<&Rulebook::fewerThanSix>()},
    Setting{"injury-seconds",                   NumberSetting{&Rulebook::injurySeconds, 0, 600}},
    Setting{"time-outs",                        NumberSetting{&Rulebook::timeOuts, 0, 4}},
    Setting{"time-out-seconds",                 NumberSetting{&Rulebook::timeOutSeconds, 1, 600}},
    Setting{"time-out-warning-seconds",         NumberSetting{&Rulebook::timeOutWarningSeconds, 0, 600}},
    Setting{"time-out-ends-early",              FlagSetting{&Rulebook::timeOutEndsEarly}},
    Setting{"time-out-notices",                 ListSetting{&Rulebook::timeOutNotices, 1, 4}},
    Setting{"excess-time-out",                  word<&Rulebook::excessTimeOut>()},
    Setting{"maximum-liberos",                  NumberSetting{&Rulebook::maximumLiberos, 0, 2}},
    Setting{"libero-named-for",                 word<&Rulebook::liberoNamedFor>()},
    Setting{"libero-named-late",                FlagSetting{&Rulebook::liberoNamedLate}},
    Setting{"libero-serve",                     word<&Rulebook::liberoServe>()},
    Setting{"libero-rally-between",             FlagSetting{&Rulebook::liberoRallyBetween}},
    Setting{"libero-replaced-by",               word<&Rulebook::liberoReplacedBy>()},
    Setting{"libero-late-replacement",          word<&Rulebook::liberoLateReplacement>()},
    Setting{"libero-illegal-replacement",       word<&Rulebook::liberoIllegalReplacement>()},
    Setting{"libero-redesignation",             word<&Rulebook::liberoRedesignation>()},
    Setting{"libero-disqualified",              word<&Rulebook::liberoDisqualified>()},
    Setting{"libero-number-wrong",              word<&Rulebook::liberoNumberWrong>()},
    Setting{"libero-captain",                   FlagSetting{&Rulebook::liberoCaptain}},
    Setting{"conduct-ladder",                   LadderSetting{&Rulebook::conductLadder}},
    Setting{"conduct-scope",                    word<&Rulebook::conductScope>()},
    Setting{"conduct-warned-once",              word<&Rulebook::conductWarnedOnce>()},
    Setting{"conduct-steps-up",                 FlagSetting{&Rulebook::conductStepsUp}},
    Setting{"coach-seated",                     word<&Rulebook::coachSeated>()},
    Setting{"delay-ladder",                     LadderSetting{&Rulebook::delayLadder}},
    Setting{"delay-scope",                      word<&Rulebook::delayScope>()},
    Setting{"delay-written",                    word<&Rulebook::delayWritten>()},
    Setting{"improper-request",                 word<&Rulebook::improperRequest>()},
    Setting{"roster-seconds",                   OptionalSetting{&Rulebook::rosterSeconds, 0, 7200}},
    Setting{"roster-late",                      word<&Rulebook::rosterLate>()},
    Setting{"roster-change",                    word<&Rulebook::rosterChange>()},
    Setting{"team-list-signed",                 FlagSetting{&Rulebook::teamListSigned}},
    Setting{"first-line-up-seconds",            NumberSetting{&Rulebook::firstLineUpSeconds, 0, 3600}},
    Setting{"first-line-up-fixed-seconds",      OptionalSetting{&Rulebook::firstLineUpFixedSeconds, 0, 3600}},
    Setting{"line-up-seconds",                  NumberSetting{&Rulebook::lineUpSeconds, 0, 3600}},
    Setting{"line-up-late",                     word<&Rulebook::lineUpLate>()},
    Setting{"line-up-number-charged",           FlagSetting{&Rulebook::lineUpNumberCharged}},
    Setting{"unregistered-player",              word<&Rulebook::unregisteredPlayer>()},
    Setting{"lowest-number",                    NumberSetting{&Rulebook::lowestNumber, 0, 99}},
    Setting{"highest-number",                   NumberSetting{&Rulebook::highestNumber, 0, 99}},
    Setting{"written-order",                    word<&Rulebook::writtenOrder>()},
    Setting{"exit-scores",                      FlagSetting{&Rulebook::exitScores}},
    Setting{"re-serve-written",                 FlagSetting{&Rulebook::reServeWritten}},
    Setting{"running-mark",                     word<&Rulebook::runningMark>()},
    Setting{"captain-mark",                     word<&Rulebook::captainMark>()},
    Setting{"libero-slot-marked",               FlagSetting{&Rulebook::liberoSlotMarked}},
    Setting{"substitution-scored",              FlagSetting{&Rulebook::substitutionScored}},
    Setting{"inks",                             NumberSetting{&Rulebook::inks, 1, 4}},
    Setting{"signing-order",                    SignersSetting{&Rulebook::signingOrder}},
    Setting{"signed-for",                       word<&Rulebook::signedFor>()},
    Setting{"set-point-notice",                 FlagSetting{&Rulebook::setPointNotice}},
    Setting{"match-point-notice",               FlagSetting{&Rulebook::matchPointNotice}},
    Setting{"side-change-notice",               FlagSetting{&Rulebook::sideChangeNotice}},
};
// clang-format on

} // namespace

std::span<const Setting> rulebookSettings() {
    return settings;
}

const Setting* settingOf(const QString& key) {
    const auto* found =
        std::ranges::find_if(settings, [&key](const Setting& setting) { return key == QLatin1String(setting.key); });
    return found == settings.end() ? nullptr : found;
}

} // namespace setfolio
