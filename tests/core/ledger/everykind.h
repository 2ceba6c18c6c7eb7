// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A small ledger that holds every kind of entry, as values and as bytes.
#pragma once

#include "core/ledger/chain.h"
#include "core/match/entry.h"

#include <QString>

namespace setfolio::testing {

/// A rulebook of the program's own values; the published ones change their words.
inline Rulebook plainRulebook() {
    Rulebook rulebook;
    rulebook.id = u"plain"_qs;
    rulebook.name = u"Plain"_qs;
    rulebook.season = u"2026-27"_qs;
    for (const QString& setting : toJson(rulebook).value(u"settings").toObject().keys())
        rulebook.sources.insert(setting, {u"-"_qs, {}});
    return rulebook;
}

/// Signatures of a set and of the match, seals, and a set opened again.
inline std::vector<Entry> everySignOff() {
    using enum Team;
    return {Signed{1, {Signer::Scorer, {}}, u"Wim Sedge"_qs, {{{0, 410, 0}, {55, 380, 16}}, {{60, 20, 233}}}, {}},
            Signed{{}, {Signer::Captains, Visitors}, u"Ruta Fell"_qs, {{{1, 2, 3}}}, u"time-out refused"_qs},
            LeftUnsigned{1, {Signer::Coaches, Home}, u"has left"_qs},
            Sealed{1, {}, SealOf::ThisFile},
            Sealed{{}, QString(64, u'c'), SealOf::Original},
            Reopened{1, u"R. Dunlin"_qs, u"score of rally 12"_qs}};
}

inline MatchOpened openedInFull() {
    MatchOpened opened;
    opened.id = u"7f1c2a54-3f0e-4b5e-9c0d-2f6c1a9b8e77"_qs;
    opened.competition = u"Estuary League"_qs;
    opened.division = u"Girls, first division"_qs;
    opened.matchNumber = u"14"_qs;
    opened.venue = u"Saltmarsh Hall \u2013 court 2"_qs;
    opened.date = QDate(2026, 10, 10);
    opened.scheduled = QTime(18, 30);
    opened.teams.home = {u"Saltmarsh Herons"_qs, u"SAL"_qs, u"white"_qs};
    opened.teams.visitors = {u"Quarry Ridge Larks"_qs, u"QRL"_qs, u"dark green"_qs};
    opened.rulebook = plainRulebook();
    opened.namesLeftOut = true; // a seal of the original stands only so
    return opened;
}

/// Every kind of the variant at least once, opened first; they need not make sense as a match.
inline std::vector<Entry> everyKind() {
    using enum Team;
    const auto n = [](int number) { return ShirtNumber(number); };
    std::vector<Entry> kinds{
        openedInFull(),
        Roster{Home, {{n(4), u"Ida Bream"_qs, true, false}, {n(9), {}, false, true}}, u"Mo Teal"_qs},
        Officials{{{Role::FirstReferee, u"R. Dunlin"_qs}, {Role::Scorer, {}}}},
        Toss{Visitors, Home},
        LineUp{Home, {n(4), n(9), n(1), n(12), n(7), n(15)}, {}, {}},
        LineUp{Visitors, {n(2), n(5), n(8), n(10), n(14), n(21)}, n(8), {n(3)}},
        SetStarted{QTime(18, 40)},
        ServeContacted{},
        RallyWon{Home},
        ServerSeen{n(10)},
        WrongServer{Home, n(10), EntryNumber(9)},
        Replay{Again::ReServe},
        NoServe{},
        Substitution{Visitors, n(33), n(5)},
        Substitution{Home, n(30), n(1), SubstitutionKind::Exceptional},
        PlaceVacated{Visitors, n(33), u"hurt"_qs},
        TimeOut{Home},
        CaptainNamed{Home, n(12)},
        SheetCompared{u"scoreboard one behind"_qs},
        LiberoIn{Visitors, n(3), n(8)},
        LiberoExchange{Visitors, n(6), n(3)},
        LiberoOut{Visitors, n(6)},
        LiberoRedesignated{Visitors, n(3), n(17), u"ill"_qs},
        Sanction{Visitors, n(14), SanctionLevel::Warning, u"words"_qs},
        Sanction{Home, BenchRole::AssistantCoach, SanctionLevel::Penalty, {}},
        DelaySanction{Home, DelayLevel::Warning, u"shoe"_qs},
        ImproperRequest{Visitors, u"third time-out"_qs},
        SidesChanged{},
        Suspended{u"lights out"_qs},
        Resumed{GoOn::SetAgain},
        LiberoServe{Visitors, n(3), LiberoServing::Begins},
        PenaltyPoint{Home, u"delay, second time"_qs},
        Remark{u"net lowered by 2 cm:\n\"as agreed\" \u2014 \u00c5sa \U0001D11E"_qs},
        Strike{EntryNumber(9), u"ball was out"_qs},
        SetEnded{QTime(19, 2)},
        Forfeit{Visitors, ForfeitKind::Incomplete, Scope::Set, u"five players"_qs},
        Forfeit{Home, ForfeitKind::Incomplete, Scope::Set, u"not registered"_qs, EarlierSet{1, 10}},
        Replay{Again::Replay, ReplayCause::Injury},
        IllegalPlayer{Home, n(11), IllegalBy::LiberoReplacement, EntryNumber(9)},
        LateReplacement{Visitors},
        MatchClosed{}};
    for (Entry& entry : everySignOff())
        kinds.push_back(std::move(entry));
    kinds.emplace_back(Remark{u"done"_qs});
    return kinds;
}

inline QDateTime noon(qint64 laterMilliseconds = 0) {
    return QDateTime(QDate(2026, 10, 10), QTime(12, 0), Qt::UTC).addMSecs(laterMilliseconds);
}

/// Numbered from 1, 1.007 s apart; the last was recorded on the referee's word.
inline std::vector<Recorded> recorded(const std::vector<Entry>& entries) {
    std::vector<Recorded> list;
    for (const Entry& entry : entries) {
        const auto number = static_cast<std::uint32_t>(list.size() + 1);
        list.push_back({EntryNumber(number), noon(number * 1007), entry, std::nullopt, std::nullopt});
    }
    if (list.size() > 20)
        list[20].placed = {Placed::How::Before, EntryNumber(12), u"seen late"_qs};
    if (list.size() > 1)
        list.back().overruled = u"the referee's word"_qs;
    QByteArray digest = firstDigest();
    for (Recorded& entry : list) { // a seal is over the lines before it
        entry.entry = withSeal(entry.entry, digest);
        digest = digestOfLine(ledgerLine(entry, digest));
    }
    return list;
}

/// The lines of a ledger, each with its line feed.
inline std::vector<QByteArray> linesOf(const std::vector<Recorded>& entries) {
    std::vector<QByteArray> lines;
    QByteArray digest = firstDigest();
    for (const Recorded& entry : entries) {
        lines.push_back(ledgerLine(entry, digest));
        digest = digestOfLine(lines.back());
    }
    return lines;
}

inline QByteArray joined(const std::vector<QByteArray>& lines) {
    QByteArray bytes;
    for (const QByteArray& line : lines)
        bytes += line;
    return bytes;
}

inline QByteArray bytesOf(const std::vector<Recorded>& entries) {
    return joined(linesOf(entries));
}

inline QByteArray everyKindBytes() {
    return bytesOf(recorded(everyKind()));
}

} // namespace setfolio::testing
