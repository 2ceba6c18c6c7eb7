// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/lostcheck.h"

#include "core/match/entry.h"
#include "ui/wording/markwords.h"
#include "ui/wording/notewords.h"
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
        for (const SlotRecord& row : team.slots)
            for (const Standing& standing : row.stood)
                want(ItemRole::SlotNumber, standing.since, shirtWords(standing.number), m_sheets);
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
    return text.remove(u' ');
}

QString remarksOf(const MatchHeading& heading, const SetRecord& set) {
    QString text;
    for (std::size_t i = 5; i < set.sanctions.size(); ++i)
        text += sentence(set.sanctions[i], heading.opened.teams).simplified();
    for (const Note& note : set.notes)
        text += sentence(note, heading.opened.teams).simplified();
    return packed(text);
}

QString remarksOn(const std::vector<Page>& pages) {
    QString text;
    for (const Page& page : pages)
        for (const Item& item : page.items)
            if (item.role == ItemRole::RemarkText)
                text += textOf(item);
    return packed(text);
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

QStringList lostFrom(const MatchHeading& heading, const SetRecord& set, const std::vector<Page>& pages) {
    QStringList lost;
    const Counts found = foundOn(pages);
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
    if (const QString wanted = remarksOf(heading, set), written = remarksOn(pages); wanted != written)
        lost += QStringLiteral("remarks: wanted %1\ngot %2").arg(wanted, written);
    return lost;
}

} // namespace setfolio::testing
