// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/sheets.h"

#include "core/record/localtime.h"
#include "core/record/tracking.h"
#include "core/record/writeup.h"
#include "core/report/report.h"
#include "ui/sheet/coachpages.h"
#include "ui/sheet/entrypages.h"
#include "ui/sheet/handover.h"
#include "ui/sheet/liberosheet.h"
#include "ui/sheet/matchpage.h"
#include "ui/sheet/slips.h"

#include <algorithm>

namespace setfolio {

namespace {

constexpr int blankColumns = 4; ///< of a sheet written by hand: its marks are larger, and a long term needs room

/// Composes what was chosen of one match.
class Printer {
public:
    Printer(const PrintedMatch& match, const SheetChoice& choice, const SheetOptions& options)
        : m_match(match),
          m_choice(choice),
          m_options(options),
          m_tracked(trackSets(match.entries)) {
        m_options.utcOffset = secondsFromUtc(match.entries);
        m_options.named = holdNames(match.entries);
        if (!match.entries.empty())
            m_options.standsAt = match.entries.back().time.toUTC().addSecs(m_options.utcOffset).time();
    }

    std::vector<Page> compose() {
        for (const SheetKind kind : allSheetKinds)
            if (m_choice.kinds.contains(kind))
                add(kind);
        return std::move(m_pages);
    }

private:
    [[nodiscard]] const MatchHeading& heading() const { return m_match.record.heading; }
    void add(std::vector<Page> pages) { std::ranges::move(pages, std::back_inserter(m_pages)); }
    void add(SheetKind kind);
    void addOfSets(SheetKind kind);
    void addOfSet(SheetKind kind, const SetRecord& set, const PerTeam<TrackedTeam>& tracked);
    void addCoach();
    void addBlankSet();
    [[nodiscard]] bool isChosen(int set) const { return m_choice.sets.empty() || m_choice.sets.contains(set); }

    PrintedMatch m_match;
    const SheetChoice& m_choice;
    SheetOptions m_options;
    std::vector<PerTeam<TrackedTeam>> m_tracked;
    std::vector<Page> m_pages;
};

void Printer::add(SheetKind kind) {
    switch (kind) {
    case SheetKind::Match:
        return add(composeMatch(m_match.record, m_options));
    case SheetKind::Set:
    case SheetKind::HandOver:
    case SheetKind::Libero:
        return addOfSets(kind);
    case SheetKind::Coach:
        return addCoach();
    case SheetKind::Entries:
        return add(composeEntries(heading(), m_match.entries, m_options));
    case SheetKind::Slips:
        return add(composeSlips(m_match.record, m_options));
    case SheetKind::BlankSlips:
        return add(composeBlankSlips(heading(), m_options));
    case SheetKind::BlankSet:
        return addBlankSet();
    }
    Q_UNREACHABLE();
}

void Printer::addOfSets(SheetKind kind) {
    const std::vector<SetRecord>& sets = m_match.record.sets;
    if (sets.empty() && isChosen(1))
        addOfSet(kind, SetRecord(), {});
    for (std::size_t i = 0; i < sets.size(); ++i)
        if (isChosen(sets[i].number))
            addOfSet(kind, sets[i], i < m_tracked.size() ? m_tracked[i] : PerTeam<TrackedTeam>());
}

void Printer::addOfSet(SheetKind kind, const SetRecord& set, const PerTeam<TrackedTeam>& tracked) {
    if (kind == SheetKind::Libero)
        return add(composeLibero(heading(), set, tracked, m_options));
    if (kind == SheetKind::HandOver)
        return add(composeHandOver(heading(), set, tracked, m_options));
    SheetOptions options = m_options;
    if (!set.live)
        options.standsAt = {};
    add(composeSet(heading(), set, options));
}

void Printer::addCoach() {
    std::vector<SetFigures> figures;
    for (SetFigures& set : figuresOf(m_match.entries))
        if (isChosen(set.number))
            figures.push_back(std::move(set));
    add(composeCoach(heading(), figures, m_options));
}

void Printer::addBlankSet() {
    SetRecord blank;
    blank.number = 0;
    SheetOptions options = m_options;
    options.standsAt = {};
    options.named = false; // there is nothing on it but rules
    options.leastColumns = blankColumns;
    add(composeSet(heading(), blank, options));
}

bool isDecided(const MatchHeading& heading) {
    return heading.forfeit ||
           std::ranges::any_of(bothTeams, [&](Team team) { return 2 * heading.setsWon[team] > heading.opened.bestOf; });
}

} // namespace

QString nameOf(SheetKind kind) {
    static const std::array<QString, allSheetKinds.size()> names{
        QStringLiteral("match"),  QStringLiteral("set"),         QStringLiteral("hand-over"),
        QStringLiteral("libero"), QStringLiteral("coach"),       QStringLiteral("entries"),
        QStringLiteral("slips"),  QStringLiteral("blank-slips"), QStringLiteral("blank-set")};
    return names.at(static_cast<std::size_t>(kind));
}

std::optional<SheetKind> sheetKindNamed(const QString& name) {
    const auto named = std::ranges::find(allSheetKinds, name, [](SheetKind kind) { return nameOf(kind); });
    return named == allSheetKinds.end() ? std::nullopt : std::optional(*named);
}

bool isOfASet(SheetKind kind) {
    return kind == SheetKind::Set || kind == SheetKind::HandOver || kind == SheetKind::Libero ||
           kind == SheetKind::Coach;
}

std::set<SheetKind> usualSheets(const MatchRecord& record) {
    std::set<SheetKind> kinds{SheetKind::Set};
    if (isDecided(record.heading))
        kinds.insert(SheetKind::Match);
    return kinds;
}

std::vector<Page> composeSheets(const PrintedMatch& match, const SheetChoice& choice, const SheetOptions& options) {
    if (choice.names == Names::Given)
        return Printer(match, choice, options).compose();
    const std::vector<Recorded> nameless = withoutNames(match.entries);
    const MatchRecord record = writeUp(nameless);
    return Printer({record, nameless}, choice, options).compose();
}

} // namespace setfolio
