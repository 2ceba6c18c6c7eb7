// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

// A new kind of the variant needs an Arbitrary here, or nothing compiles.
#include "tests/support/arbitraryentries.h"

#include "core/ledger/entryjson.h"
#include "core/ledger/jsonline.h"
#include "core/ledger/limits.h"

#include <ostream>
#include <utility>

namespace setfolio {

void showValue(const Entry& entry, std::ostream& out) {
    out << compactJson(toJson(entry)).toStdString();
}

namespace arbitrary {
namespace {

/// Characters that a string may hold: plain ones, ones that JSON escapes, ones of every length in UTF-8.
rc::Gen<char32_t> character() {
    return rc::gen::weightedOneOf<char32_t>(
        {{6, rc::gen::inRange<char32_t>(U' ', U'~' + 1)},
         {2, rc::gen::elementOf(std::u32string(U"\"\\/:{},"))},
         {2, rc::gen::inRange<char32_t>(0xA0, 0x250)},
         {1, rc::gen::elementOf(std::u32string{0xFEFF, 0x2028, 0x2029, 0x200F, 0xFFFD, 0xFFFE, 0xE000, 0xD7FF, 0x301})},
         {1, rc::gen::inRange<char32_t>(0x10000, 0x110000)}});
}

rc::Gen<QString> stringOf(rc::Gen<char32_t> characters, std::size_t atMost) {
    return rc::gen::map(
        rc::gen::container<std::vector<char32_t>>(std::move(characters)), [atMost](const std::vector<char32_t>& text) {
            return QString::fromUcs4(text.data(), static_cast<qsizetype>(std::min(text.size(), atMost)));
        });
}

rc::Gen<QString> name() {
    return stringOf(character(), limits::nameCharacters);
}
rc::Gen<QString> code() {
    return stringOf(character(), limits::codeCharacters);
}
rc::Gen<QString> text() {
    return stringOf(rc::gen::weightedOneOf<char32_t>({{9, character()}, {1, rc::gen::element<char32_t>(U'\n', U'\t')}}),
                    limits::textCharacters);
}

rc::Gen<QDate> date() {
    const auto days = rc::gen::inRange<qint64>(QDate(1, 1, 1).toJulianDay(), QDate(9999, 12, 31).toJulianDay() + 1);
    return rc::gen::weightedOneOf<QDate>(
        {{1, rc::gen::just(QDate())}, {3, rc::gen::map(days, [](qint64 day) { return QDate::fromJulianDay(day); })}});
}
rc::Gen<QTime> timeOfDay() {
    return rc::gen::weightedOneOf<QTime>(
        {{1, rc::gen::just(QTime())},
         {3, rc::gen::map(rc::gen::inRange(0, 24 * 60), [](int m) { return QTime(m / 60, m % 60); })}});
}
/// Any moment from year 1 to 9999, to the millisecond, UTC.
rc::Gen<QDateTime> instant() {
    const qint64 first = QDateTime(QDate(1, 1, 1), QTime(0, 0), Qt::UTC).toMSecsSinceEpoch();
    const qint64 last = QDateTime(QDate(9999, 12, 31), QTime(23, 59, 59, 999), Qt::UTC).toMSecsSinceEpoch();
    return rc::gen::map(rc::gen::inRange(first, last + 1),
                        [](qint64 moment) { return QDateTime::fromMSecsSinceEpoch(moment, Qt::UTC); });
}

template <typename T>
rc::Gen<std::vector<T>> upTo(qsizetype atMost, rc::Gen<T> values) {
    return rc::gen::map(rc::gen::container<std::vector<T>>(std::move(values)), [atMost](std::vector<T> list) {
        if (list.size() > static_cast<std::size_t>(atMost))
            list.resize(static_cast<std::size_t>(atMost));
        return list;
    });
}

/// A value or none.
template <typename T>
rc::Gen<std::optional<T>> maybe() {
    return rc::gen::map(rc::gen::maybe(rc::gen::arbitrary<T>()),
                        [](const rc::Maybe<T>& value) { return value ? std::optional(*value) : std::nullopt; });
}

rc::Gen<std::optional<int>> setOrMatch() {
    return rc::gen::map(rc::gen::inRange(0, limits::sets + 1),
                        [](int set) { return set > 0 ? std::optional(set) : std::nullopt; });
}

/// Strokes whose points follow each other in time, of at least a point each.
rc::Gen<std::vector<PenStroke>> strokes() {
    using Drawn = std::tuple<int, int, int, bool>; // x, y, milliseconds since the last, a stroke begins
    const auto extent = rc::gen::inRange(0, limits::strokeExtent + 1);
    return rc::gen::map(rc::gen::container<std::vector<Drawn>>(
                            rc::gen::tuple(extent, extent, rc::gen::inRange(0, 500), rc::gen::arbitrary<bool>())),
                        [](const std::vector<Drawn>& points) {
                            std::vector<PenStroke> strokes;
                            int at = 0;
                            for (const auto& [x, y, later, begins] : points) {
                                if (begins || strokes.empty())
                                    strokes.emplace_back();
                                strokes.back().push_back({x, y, at += later});
                            }
                            return strokes;
                        });
}

/// A published rulebook with other values in it.
rc::Gen<Rulebook> rulebook() {
    const auto published = publishedRulebook(publishedRulebookIds().front());
    RC_ASSERT(published.has_value());
    return rc::gen::apply(
        [published](const QString& id, int setPoints, bool capped, int limit) {
            Rulebook rulebook = *published;
            rulebook.id = id;
            rulebook.setPoints = setPoints;
            rulebook.cap = capped ? std::optional(setPoints + 5) : std::nullopt;
            rulebook.substitutionLimit = limit;
            return rulebook;
        },
        name(), rc::gen::inRange(1, 50), rc::gen::arbitrary<bool>(), rc::gen::inRange(0, 19));
}

} // namespace
} // namespace arbitrary
} // namespace setfolio

namespace rc {

#define SETFOLIO_ARBITRARY(Type, generator)                                                                            \
    template <>                                                                                                        \
    struct Arbitrary<setfolio::Type> {                                                                                 \
        static Gen<setfolio::Type> arbitrary() {                                                                       \
            using namespace setfolio;                                                                                  \
            return generator;                                                                                          \
        }                                                                                                              \
    }

SETFOLIO_ARBITRARY(Team, gen::element(Team::Home, Team::Visitors));
SETFOLIO_ARBITRARY(Role, gen::element(Role::FirstReferee, Role::SecondReferee, Role::Scorer, Role::AssistantScorer,
                                      Role::Timer, Role::LineJudge));
SETFOLIO_ARBITRARY(Again, gen::element(Again::Replay, Again::ReServe));
SETFOLIO_ARBITRARY(LiberoServing, gen::element(LiberoServing::Begins, LiberoServing::Ends));
SETFOLIO_ARBITRARY(ShirtNumber, gen::construct<ShirtNumber>(gen::inRange(0, 100)));
SETFOLIO_ARBITRARY(EntryNumber, gen::construct<EntryNumber>(gen::inRange<std::uint32_t>(1, 100'001)));
SETFOLIO_ARBITRARY(TeamName, gen::construct<TeamName>(arbitrary::name(), arbitrary::code(), arbitrary::name()));
SETFOLIO_ARBITRARY(RosterPlayer, gen::construct<RosterPlayer>(gen::arbitrary<ShirtNumber>(), arbitrary::name(),
                                                              gen::arbitrary<bool>(), gen::arbitrary<bool>()));
SETFOLIO_ARBITRARY(Official, gen::construct<Official>(gen::arbitrary<Role>(), arbitrary::name()));

SETFOLIO_ARBITRARY(MatchOpened,
                   gen::construct<MatchOpened>(arbitrary::name(), arbitrary::name(), arbitrary::name(),
                                               arbitrary::name(), arbitrary::name(), arbitrary::date(),
                                               arbitrary::timeOfDay(), gen::element(1, 3, 5),
                                               gen::construct<PerTeam<TeamName>>(gen::arbitrary<TeamName>(),
                                                                                 gen::arbitrary<TeamName>()),
                                               arbitrary::rulebook(), gen::arbitrary<bool>()));
SETFOLIO_ARBITRARY(Roster, gen::construct<Roster>(gen::arbitrary<Team>(),
                                                  arbitrary::upTo(limits::players, gen::arbitrary<RosterPlayer>()),
                                                  arbitrary::name()));
SETFOLIO_ARBITRARY(Officials,
                   gen::construct<Officials>(arbitrary::upTo(limits::officials, gen::arbitrary<Official>())));
SETFOLIO_ARBITRARY(MatchClosed, gen::just(MatchClosed{}));
SETFOLIO_ARBITRARY(EarlierSet,
                   gen::construct<EarlierSet>(gen::inRange(1, limits::sets + 1),
                                              gen::map(gen::inRange(-1, limits::pointsKept + 1), [](int keeps) {
                                                  return keeps < 0 ? std::nullopt : std::optional(keeps);
                                              })));
SETFOLIO_ARBITRARY(Forfeit,
                   gen::oneOf(gen::construct<Forfeit>(gen::arbitrary<Team>(),
                                                      gen::element(ForfeitKind::Default, ForfeitKind::Incomplete),
                                                      gen::element(Scope::Set, Scope::Match), arbitrary::text()),
                              gen::construct<Forfeit>(gen::arbitrary<Team>(), gen::just(ForfeitKind::Incomplete),
                                                      gen::just(Scope::Set), arbitrary::text(),
                                                      gen::map(gen::arbitrary<EarlierSet>(), [](const EarlierSet& set) {
                                                          return std::optional(set);
                                                      }))));
SETFOLIO_ARBITRARY(Suspended, gen::construct<Suspended>(arbitrary::text()));
SETFOLIO_ARBITRARY(Resumed, gen::construct<Resumed>(gen::element(GoOn::AsItStood, GoOn::SetAgain)));
SETFOLIO_ARBITRARY(SidesChanged, gen::just(SidesChanged{}));
SETFOLIO_ARBITRARY(Toss, gen::construct<Toss>(gen::arbitrary<Team>(), gen::arbitrary<Team>()));
SETFOLIO_ARBITRARY(LineUp,
                   gen::construct<LineUp>(gen::arbitrary<Team>(),
                                          gen::container<std::array<ShirtNumber, 6>>(gen::arbitrary<ShirtNumber>()),
                                          gen::map(gen::maybe(gen::arbitrary<ShirtNumber>()),
                                                   [](const Maybe<ShirtNumber>& number) {
                                                       return number ? std::optional(*number) : std::nullopt;
                                                   }),
                                          arbitrary::upTo(limits::liberos, gen::arbitrary<ShirtNumber>())));
SETFOLIO_ARBITRARY(SetStarted, gen::construct<SetStarted>(arbitrary::timeOfDay()));
SETFOLIO_ARBITRARY(SetEnded, gen::construct<SetEnded>(arbitrary::timeOfDay()));
SETFOLIO_ARBITRARY(ServeContacted, gen::just(ServeContacted{}));
SETFOLIO_ARBITRARY(RallyWon, gen::construct<RallyWon>(gen::arbitrary<Team>()));
SETFOLIO_ARBITRARY(ReplayCause, gen::element(ReplayCause::Injury, ReplayCause::Interference, ReplayCause::DoubleFault,
                                             ReplayCause::Whistle, ReplayCause::EarlyServe));
SETFOLIO_ARBITRARY(Replay, gen::construct<setfolio::Replay>(gen::arbitrary<Again>(), arbitrary::maybe<ReplayCause>()));
SETFOLIO_ARBITRARY(NoServe, gen::just(NoServe{}));
SETFOLIO_ARBITRARY(ServerSeen, gen::construct<ServerSeen>(gen::arbitrary<ShirtNumber>()));
SETFOLIO_ARBITRARY(WrongServer, gen::construct<WrongServer>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>(),
                                                            arbitrary::maybe<EntryNumber>()));
SETFOLIO_ARBITRARY(Substitution, gen::construct<Substitution>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>(),
                                                              gen::arbitrary<ShirtNumber>(),
                                                              gen::element(SubstitutionKind::Regular,
                                                                           SubstitutionKind::Exceptional)));
SETFOLIO_ARBITRARY(PlaceVacated, gen::construct<PlaceVacated>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>(),
                                                              arbitrary::text()));
SETFOLIO_ARBITRARY(TimeOut, gen::construct<TimeOut>(gen::arbitrary<Team>()));
SETFOLIO_ARBITRARY(LiberoServe, gen::construct<LiberoServe>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>(),
                                                            gen::arbitrary<LiberoServing>()));
SETFOLIO_ARBITRARY(LiberoIn, gen::construct<LiberoIn>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>(),
                                                      gen::arbitrary<ShirtNumber>()));
SETFOLIO_ARBITRARY(LiberoOut, gen::construct<LiberoOut>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>()));
SETFOLIO_ARBITRARY(LiberoExchange, gen::construct<LiberoExchange>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>(),
                                                                  gen::arbitrary<ShirtNumber>()));
SETFOLIO_ARBITRARY(IllegalBy, gen::element(IllegalBy::Substitution, IllegalBy::LiberoReplacement));
SETFOLIO_ARBITRARY(IllegalPlayer,
                   gen::construct<IllegalPlayer>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>(),
                                                 gen::arbitrary<IllegalBy>(), arbitrary::maybe<EntryNumber>()));
SETFOLIO_ARBITRARY(LateReplacement, gen::construct<LateReplacement>(gen::arbitrary<Team>()));
SETFOLIO_ARBITRARY(LiberoRedesignated,
                   gen::construct<LiberoRedesignated>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>(),
                                                      arbitrary::maybe<ShirtNumber>(), arbitrary::text()));
SETFOLIO_ARBITRARY(CaptainNamed, gen::construct<CaptainNamed>(gen::arbitrary<Team>(), gen::arbitrary<ShirtNumber>()));
SETFOLIO_ARBITRARY(Member,
                   gen::oneOf(gen::cast<Member>(gen::arbitrary<ShirtNumber>()),
                              gen::cast<Member>(gen::element(BenchRole::Coach, BenchRole::AssistantCoach,
                                                             BenchRole::SecondAssistantCoach, BenchRole::Therapist,
                                                             BenchRole::Doctor, BenchRole::Other))));
SETFOLIO_ARBITRARY(Sanction,
                   gen::construct<Sanction>(gen::arbitrary<Team>(), gen::arbitrary<Member>(),
                                            gen::element(SanctionLevel::Warning, SanctionLevel::Penalty,
                                                         SanctionLevel::Expulsion, SanctionLevel::Disqualification),
                                            arbitrary::text()));
SETFOLIO_ARBITRARY(DelaySanction, gen::construct<DelaySanction>(gen::arbitrary<Team>(),
                                                                gen::element(DelayLevel::Warning, DelayLevel::Penalty),
                                                                arbitrary::text()));
SETFOLIO_ARBITRARY(ImproperRequest, gen::construct<ImproperRequest>(gen::arbitrary<Team>(), arbitrary::text()));
SETFOLIO_ARBITRARY(SheetCompared, gen::construct<SheetCompared>(arbitrary::text()));
SETFOLIO_ARBITRARY(PenaltyPoint, gen::construct<PenaltyPoint>(gen::arbitrary<Team>(), arbitrary::text()));
SETFOLIO_ARBITRARY(Remark, gen::construct<Remark>(arbitrary::text()));
SETFOLIO_ARBITRARY(Strike, gen::construct<Strike>(gen::arbitrary<EntryNumber>(), arbitrary::text()));

SETFOLIO_ARBITRARY(Signatory,
                   gen::map(gen::tuple(gen::inRange(0, 6), gen::arbitrary<Team>()),
                            [](const std::tuple<int, Team>& drawn) {
                                const auto role = static_cast<Signer>(std::get<0>(drawn));
                                const bool ofTeam = role == Signer::Captains || role == Signer::Coaches;
                                return Signatory{role, ofTeam ? std::optional(std::get<1>(drawn)) : std::nullopt};
                            }));
SETFOLIO_ARBITRARY(Signed,
                   gen::construct<Signed>(arbitrary::setOrMatch(), gen::arbitrary<Signatory>(), arbitrary::name(),
                                          arbitrary::strokes(),
                                          gen::map(gen::maybe(arbitrary::text()), [](const Maybe<QString>& remark) {
                                              return remark ? std::optional(*remark) : std::nullopt;
                                          })));
SETFOLIO_ARBITRARY(LeftUnsigned, gen::construct<LeftUnsigned>(arbitrary::setOrMatch(), gen::arbitrary<Signatory>(),
                                                              arbitrary::text()));
SETFOLIO_ARBITRARY(Sealed,
                   gen::construct<Sealed>(arbitrary::setOrMatch(),
                                          gen::map(gen::inRange(0, 16),
                                                   [](int digit) { return QString::number(digit, 16).repeated(64); }),
                                          gen::element(SealOf::ThisFile, SealOf::Original)));
SETFOLIO_ARBITRARY(Reopened, gen::construct<Reopened>(arbitrary::setOrMatch(), arbitrary::name(), arbitrary::text()));

#undef SETFOLIO_ARBITRARY

namespace {

template <typename... Kinds>
Gen<std::variant<Kinds...>> anyKindOf(const std::variant<Kinds...>*) {
    return gen::oneOf(gen::cast<std::variant<Kinds...>>(gen::arbitrary<Kinds>())...);
}

} // namespace

Gen<setfolio::Entry> Arbitrary<setfolio::Entry>::arbitrary() {
    return anyKindOf(static_cast<const setfolio::Entry*>(nullptr));
}

} // namespace rc

namespace setfolio::arbitrary {

rc::Gen<std::vector<Recorded>> ledger() {
    using Later = std::tuple<Entry, QDateTime, bool, QString, EntryNumber>;
    const auto later = rc::gen::container<std::vector<Later>>(rc::gen::tuple(
        rc::gen::arbitrary<Entry>(), instant(), rc::gen::arbitrary<bool>(), text(), rc::gen::arbitrary<EntryNumber>()));
    return rc::gen::apply(
        [](const MatchOpened& opened, const std::vector<Later>& rest) {
            const QDateTime start(QDate(2026, 10, 10), QTime(18, 40), Qt::UTC);
            std::vector<Recorded> entries{{EntryNumber(1), start, opened, std::nullopt, std::nullopt}};
            for (auto [entry, time, overruled, reason, place] : rest) {
                const EntryNumber number(static_cast<std::uint32_t>(entries.size() + 1));
                const auto earlier = [&](EntryNumber any) { return EntryNumber(any.value % (number.value - 1) + 1); };
                std::optional<Placed> placed;
                if (auto* strike = std::get_if<Strike>(&entry))
                    strike->target = earlier(strike->target);
                else if (place.value % 7 == 0)
                    placed = {place.value % 2 ? Placed::How::Before : Placed::How::InsteadOf, earlier(place), reason};
                const auto pointBack = [&](auto* ruling) {
                    if (ruling && ruling->takenBackFrom)
                        ruling->takenBackFrom = earlier(*ruling->takenBackFrom);
                };
                pointBack(std::get_if<WrongServer>(&entry));
                pointBack(std::get_if<IllegalPlayer>(&entry));
                if (auto* sealed = std::get_if<Sealed>(&entry)) // over the lines before it, or of another file
                    sealed->of = SealOf::Original;
                if (auto* first = std::get_if<MatchOpened>(&entries.front().entry))
                    first->namesLeftOut = first->namesLeftOut || std::holds_alternative<Sealed>(entry);
                if (!std::holds_alternative<MatchOpened>(entry))
                    entries.push_back({number, time, entry, overruled ? std::optional(reason) : std::nullopt, placed});
            }
            return entries;
        },
        rc::gen::arbitrary<MatchOpened>(), later);
}

} // namespace setfolio::arbitrary
