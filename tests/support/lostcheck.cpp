// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/lostcheck.h"

#include "core/match/entry.h"
#include "core/record/tracking.h"
#include "ui/wording/entrylog.h"
#include "ui/wording/markwords.h"
#include "ui/wording/notewords.h"
#include "ui/wording/pagewords.h"
#include "ui/wording/sanctionwords.h"
#include "ui/wording/sheetwords.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace setfolio::testing {

namespace {

/// What is looked for: the role of an item, the entry it tells of, its text.
using Sought = std::tuple<ItemRole, std::uint32_t, QString>;
using Counts = std::map<Sought, int>;

QString textOf(const Item& item) {
    const auto* text = std::get_if<TextShape>(&item.shape);
    return text ? text->shaped->text : QString();
}

Counts foundOn(const std::vector<Page>& pages) {
    Counts counts;
    for (const Page& page : pages)
        for (const Item& item : page.items)
            ++counts[{item.role, item.entry.value, textOf(item)}];
    return counts;
}

/// Counts what the record of a set has.
class Wanted {
public:
    Wanted(const SetRecord& set, int sheets) : m_set(set), m_sheets(sheets) {
        for (const Team team : bothTeams)
            takeTeam(set.teams[team]);
    }
    [[nodiscard]] const Counts& counts() const { return m_counts; }

private:
    void want(ItemRole role, EntryNumber entry, const QString& text, int times = 1) {
        if (times > 0)
            m_counts[{role, entry.value, text}] += times;
    }
    void takeTeam(const TeamRecord& team) {
        for (const Term& term : team.terms)
            for (const Mark& mark : term.marks)
                take(mark);
        for (const RunningPoint& point : team.running)
            take(point, team.running);
        for (const TimeOutTaken& timeOut : team.timeOuts)
            want(ItemRole::TimeOutScore, timeOut.entry, scoreWords(timeOut.own, timeOut.opponents), m_sheets);
        for (const CountedSubstitution& counted : team.substitutions)
            want(ItemRole::CounterCross, counted.entry, {}, m_sheets);
    }
    void take(const Mark& mark) {
        const QString letters = markLetters(mark.content);
        if (mark.shape != MarkShape::None)
            want(ItemRole::ServeMark, mark.entry, {});
        want(roleOf(mark), mark.entry, letters, letters.isEmpty() ? 0 : 1);
        if (const QString numbers = markNumbers(mark.content); !numbers.isEmpty())
            want(ItemRole::TermWord, mark.entry, numbers);
        want(ItemRole::MarkStrike, mark.entry, {}, mark.struck ? 1 : 0);
        want(ItemRole::MarkCross, mark.entry, {}, mark.takenBack ? 2 : 0);
    }
    static ItemRole roleOf(const Mark& mark) {
        if (mark.shape != MarkShape::None)
            return ItemRole::ServeContent;
        if (std::holds_alternative<OpeningPoint>(mark.content))
            return ItemRole::OpeningNumber;
        return std::holds_alternative<ExitScore>(mark.content) ? ItemRole::ExitScore : ItemRole::TermWord;
    }
    void take(const RunningPoint& point, const std::vector<RunningPoint>& all) {
        const bool again = point.takenBack && std::ranges::any_of(all, [&](const RunningPoint& other) {
                               return other.place > point.place && other.total == point.total;
                           });
        if (again)
            return want(ItemRole::RunningCross, point.entry, QStringLiteral("×"));
        want(ItemRole::RunningNumber, point.entry, QString::number(point.total));
        want(ItemRole::RunningOpponents, point.entry, QString::number(point.opponents));
    }

    const SetRecord& m_set;
    int m_sheets;
    Counts m_counts;
};

/// Without spaces, since lines are broken at them.
QString packed(QString text) {
    return text.simplified().remove(u' ');
}

/// All that is written on some pages, in the order in which it is written.
class Written {
public:
    explicit Written(const std::vector<Page>& pages) {
        for (const Page& page : pages)
            for (const Item& item : page.items) {
                m_all += packed(textOf(item)) + u'\n';
                m_joined += packed(textOf(item));
                if (item.role == ItemRole::RemarkText)
                    m_remarks += packed(textOf(item));
            }
    }
    [[nodiscard]] bool has(const QString& words) const { return m_joined.contains(packed(words)); }
    [[nodiscard]] bool hasRemark(const QString& words) const { return m_remarks.contains(packed(words)); }
    /// As a text of its own, or a line of one.
    [[nodiscard]] bool hasAlone(const QString& words) const { return m_all.contains(packed(words) + u'\n'); }

private:
    QString m_all, m_joined, m_remarks;
};

void wantNames(QStringList& lost, const MatchHeading& heading, const Written& written) {
    QStringList names{heading.opened.competition, heading.opened.division, heading.opened.venue};
    for (const Team team : bothTeams)
        names += heading.opened.teams[team].name;
    for (const Official& official : heading.officials)
        names += official.name;
    for (const QString& name : names)
        if (!written.has(name))
            lost += QStringLiteral("the name %1").arg(name);
}

/// The numbers that have stood in the slots: there, or all that are missing there in one remark.
void wantSlots(QStringList& lost, const SetRecord& set, const Counts& found, int sheets, const Written& written) {
    for (const Team team : bothTeams)
        for (const Slot slot : allSlots) {
            QStringList older;
            std::size_t place = 0;
            for (const Standing& standing : set.teams[team].slots[slot.index()].stood) {
                const QString number = shirtWords(standing.number);
                const auto item = found.find({ItemRole::SlotNumber, standing.since.value, number});
                const bool there = item != found.end() && item->second >= sheets;
                if (!there && place > 0)
                    older += number;
                else if (!there)
                    lost += QStringLiteral("the starter %1").arg(number);
                ++place;
            }
            if (!older.isEmpty() && !written.hasRemark(older.join(QStringLiteral(", "))))
                lost += QStringLiteral("from slot %1: %2").arg(slot.value).arg(older.join(u' '));
        }
}

bool isOn(const std::vector<Page>& pages, Team team, ItemRole role, const QString& text) {
    return std::ranges::any_of(pages.front().items, [&](const Item& item) {
        return item.team == team && item.role == role && (text.isEmpty() || textOf(item) == text);
    });
}

/// The captain's mark beside her number, and the liberos in the strip and over the slots they have served in.
void wantMembers(QStringList& lost, const MatchHeading& heading, const SetRecord& set, const std::vector<Page>& pages) {
    for (const Team team : bothTeams) {
        const TeamRecord& record = set.teams[team];
        const bool stands = std::ranges::any_of(record.slots, [&](const SlotRecord& row) {
            return record.captain && !row.stood.empty() && row.stood.front().number == *record.captain;
        });
        const CaptainMark mark = heading.opened.rulebook.captainMark;
        if (stands && mark == CaptainMark::LetterC && !isOn(pages, team, ItemRole::CaptainLetter, {}))
            lost += QStringLiteral("a captain's letter");
        if (stands && mark == CaptainMark::RingedNumber && !isOn(pages, team, ItemRole::CaptainRing, {}))
            lost += QStringLiteral("a captain's ring");
        for (const ShirtNumber libero : record.liberos)
            if (!isOn(pages, team, ItemRole::Value, shirtWords(libero)))
                lost += QStringLiteral("libero %1 in the strip").arg(libero.value);
        for (const SlotRecord& row : record.slots)
            if (row.libero && !isOn(pages, team, ItemRole::LiberoNumber, shirtWords(*row.libero)))
                lost += QStringLiteral("libero %1 over a slot").arg(row.libero->value);
    }
}

void wantRemarks(QStringList& lost, const MatchHeading& heading, const SetRecord& set, const Written& written) {
    QStringList remarks;
    for (std::size_t i = 5; i < set.sanctions.size(); ++i)
        remarks += sentence(set.sanctions[i], heading.opened.teams);
    for (const Note& note : set.notes)
        remarks += sentence(note, heading.opened.teams);
    for (const QString& remark : remarks)
        if (!written.hasRemark(remark))
            lost += QStringLiteral("the remark %1").arg(remark);
}

bool hasLineFor(const std::vector<Page>& pages, const SanctionLine& line) {
    return std::ranges::any_of(pages, [&line](const Page& page) {
        return std::ranges::any_of(page.items, [&line](const Item& item) {
            return item.zone == Zone::Foot && item.role == ItemRole::Value && item.entry == line.entry;
        });
    });
}

QString inWords(const Sought& sought, int found, int wanted) {
    return QStringLiteral("%1 of %2: role %3, entry %4, \"%5\"")
        .arg(found)
        .arg(wanted)
        .arg(static_cast<int>(std::get<0>(sought)))
        .arg(std::get<1>(sought))
        .arg(std::get<2>(sought));
}

} // namespace

QStringList lostFromSet(const MatchHeading& heading, const SetRecord& set, const std::vector<Page>& pages) {
    QStringList lost;
    const Counts found = foundOn(pages);
    const Written written(pages);
    const auto sheets = static_cast<int>(pages.front().flow.pages.size());
    const Wanted record(set, sheets);
    for (const auto& [sought, wanted] : record.counts()) {
        const auto place = found.find(sought);
        const int times = place == found.end() ? 0 : place->second;
        if (times < wanted) // a page after the last ladder repeats its rungs
            lost += inWords(sought, times, wanted);
    }
    for (std::size_t i = 0; i < std::min<std::size_t>(5, set.sanctions.size()); ++i)
        if (!hasLineFor(pages, set.sanctions[i]))
            lost += QStringLiteral("the sanction of entry %1").arg(set.sanctions[i].entry.value);
    wantSlots(lost, set, found, sheets, written);
    wantMembers(lost, heading, set, pages);
    wantRemarks(lost, heading, set, written);
    wantNames(lost, heading, written);
    return lost;
}

QStringList lostFromMatch(const MatchRecord& record, const std::vector<Page>& pages) {
    QStringList lost;
    const Written written(pages);
    const MatchHeading& heading = record.heading;
    wantNames(lost, heading, written);
    QStringList wanted;
    for (const Team team : bothTeams) {
        wanted += heading.rosters[team].coach;
        for (const RosterPlayer& player : heading.rosters[team].players)
            wanted += QString::number(player.number.value) + player.name;
    }
    for (const SetRecord& set : record.sets) {
        for (const SanctionLine& line : set.sanctions)
            wanted += line.reason;
        for (const Note& note : set.notes)
            wanted += QString::number(note.number) + sentence(note, heading.opened.teams);
    }
    for (const QString& words : wanted)
        if (!written.has(words))
            lost += words;
    return lost;
}

QStringList lostFromEntries(std::span<const Recorded> entries, const std::vector<Page>& pages) {
    QStringList lost;
    const Written written(pages);
    EntryLog log;
    log.follow(entries);
    for (const LoggedEntry& line : log.lines()) {
        const Recorded& recorded = entries[line.number.value - 1];
        QStringList wanted{line.words.words};
        if (recorded.placed && !recorded.placed->reason.trimmed().isEmpty())
            wanted += reasonWords(recorded.placed->reason);
        if (recorded.overruled)
            wanted += overruledWords(*recorded.overruled);
        if (!written.hasAlone(QString::number(line.number.value)))
            wanted += QStringLiteral("entry number %1").arg(line.number.value);
        for (const QString& words : wanted)
            if (!written.has(words))
                lost += words;
    }
    return lost;
}

QStringList lostFromLibero(std::span<const Recorded> entries, const std::vector<Page>& pages) {
    QStringList lost;
    Counts found;
    for (const Page& page : pages)
        for (const Item& item : page.items)
            if (item.role == ItemRole::SlotNumber)
                ++found[{item.role, item.entry.value, {}}];
    for (const PerTeam<TrackedTeam>& set : trackSets(entries))
        for (const Team team : bothTeams)
            for (const TrackedSlot& slot : set[team].slots)
                for (const TrackedArrival& arrival : slot.arrivals)
                    if (set[team].kept && !found.contains({ItemRole::SlotNumber, arrival.entry.value, {}}))
                        lost += QStringLiteral("the arrival of %1").arg(arrival.number.value);
    return lost;
}

} // namespace setfolio::testing
