// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/cardbar.h"

#include "core/rules/ways.h"
#include "ui/table/bench.h"
#include "ui/table/numberfield.h"
#include "ui/table/picks.h"
#include "ui/wording/barwords.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"
#include "ui/wording/sanctionwords.h"

#include <QCoreApplication>
#include <QLineEdit>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr std::array<BenchRole, 6> roles{
    BenchRole::Coach,     BenchRole::AssistantCoach, BenchRole::SecondAssistantCoach,
    BenchRole::Therapist, BenchRole::Doctor,         BenchRole::Other};
constexpr std::array<Qt::Key, 6> roleKeys{Qt::Key_C, Qt::Key_A, Qt::Key_S, Qt::Key_T, Qt::Key_O, Qt::Key_B};

Qt::Key keyOf(SanctionLevel level) {
    switch (level) {
    case SanctionLevel::Warning:
        return Qt::Key_W;
    case SanctionLevel::Penalty:
        return Qt::Key_P;
    case SanctionLevel::Expulsion:
        return Qt::Key_E;
    case SanctionLevel::Disqualification:
        return Qt::Key_Q;
    }
    return Qt::Key_unknown;
}

/// Everybody who may play: the roster, or, on a sheet without one, who has stood on court.
std::vector<OfferedNumber> playersOf(const MatchState& state, Team team) {
    std::vector<OfferedNumber> numbers;
    for (const RosterPlayer& player : state.rosters[team].players)
        numbers.push_back({player.number});
    if (numbers.empty())
        for (const BenchPlayer& player : sixOf(state, team))
            numbers.push_back({player.number});
    std::ranges::sort(numbers, {}, &OfferedNumber::number);
    return numbers;
}

} // namespace

CardBar::CardBar(Recorder& recorder, QWidget* parent)
    : EntryBar(recorder, parent),
      m_what(addOptions({}, u"cardWhat"_s)),
      m_number(addNumbers(Table::tr("Who"), u"cardNumber"_s, u"card"_s)),
      m_role(addOptions({}, u"cardRole"_s)),
      m_level(addOptions({}, u"cardLevel"_s)),
      m_why(addLine(Table::tr("What for"), u"cardWhy"_s)) {
    setObjectName(u"cardBar"_s);
    addReason(u"cardReason"_s);
    m_role->setMayBeNone(true);
    connect(m_what, &OptionPick::changed, this, &CardBar::whatChanged);
    connect(m_number, &NumberPick::changed, this, [this] {
        m_role->choose(-1);
        memberChanged();
    });
    connect(m_role, &OptionPick::changed, this, [this] {
        m_number->setNumber(std::nullopt);
        memberChanged();
    });
    connect(m_level, &OptionPick::changed, this, &CardBar::showDraft);
}

void CardBar::open(Team team) {
    m_team = team;
    setTitle(fill(Table::tr("Card or delay %1"), {codeOf(state(), team)}));
    std::vector<Option> whats{{Table::tr("Misconduct"), {}, Qt::Key_M},
                              {Table::tr("Delay"), {}, Qt::Key_D},
                              {Table::tr("Improper request"), {}, Qt::Key_R}};
    if (mayLetLateReplacementPass(state(), team) && !liberosOf(state().set().teams[team]).empty())
        whats.push_back({Table::tr("Late libero"), Table::tr("let pass"), Qt::Key_L});
    m_what->offer(std::move(whats));
    m_what->choose(0);
    m_number->setNumber(std::nullopt);
    m_number->offer(playersOf(state(), team));
    std::vector<Option> benches;
    for (std::size_t i = 0; i < roles.size(); ++i)
        benches.push_back({capitalised(memberWords(roles.at(i))), {}, roleKeys.at(i)});
    m_role->offer(std::move(benches));
    m_role->choose(-1);
    m_why->clear();
    whatChanged();
    present(&m_number->field());
}

CardBar::What CardBar::what() const {
    return static_cast<What>(std::max(0, m_what->chosen()));
}

std::optional<Member> CardBar::who() const {
    if (m_number->number())
        return Member(*m_number->number());
    const int role = m_role->chosen();
    return role < 0 ? std::nullopt : std::optional(Member(roles.at(static_cast<std::size_t>(role))));
}

SanctionLevel CardBar::level() const {
    const std::vector<CardStep>& ladder = state().rulebook().conductLadder;
    const auto index = static_cast<std::size_t>(std::max(0, m_level->chosen()));
    return index < ladder.size() ? ladder[index].level : SanctionLevel::Warning;
}

DelayLevel CardBar::delay() const {
    return m_level->chosen() == 1 ? DelayLevel::Penalty : DelayLevel::Warning;
}

void CardBar::whatChanged() {
    setShown(m_number, what() == What::Conduct);
    setShown(m_role, what() == What::Conduct);
    setShown(m_level, what() == What::Conduct || what() == What::Delay);
    offerLevels();
    propose();
    showDraft();
    goToMissing();
}

void CardBar::memberChanged() {
    propose();
    showDraft();
}

void CardBar::offerLevels() {
    const bool delay = what() == What::Delay;
    std::vector<Option> options;
    for (const CardStep& step : delay ? state().rulebook().delayLadder : state().rulebook().conductLadder)
        options.push_back({capitalised(levelWords(step.level)), cardsWords(step.cards), keyOf(step.level)});
    m_level->offer(std::move(options));
}

void CardBar::propose() {
    if (what() == What::Delay) {
        m_level->choose(nextDelay(state(), m_team) == DelayLevel::Penalty ? 1 : 0);
        return;
    }
    if (!who()) {
        m_level->choose(-1);
        return;
    }
    const std::vector<CardStep>& ladder = state().rulebook().conductLadder;
    const std::optional<CardStep> next = nextCard(state(), m_team, *who());
    const auto rung = next ? std::ranges::find(ladder, next->level, &CardStep::level) : ladder.end();
    m_level->choose(std::min(static_cast<int>(rung - ladder.begin()), static_cast<int>(ladder.size()) - 1));
}

std::optional<Entry> CardBar::drafted() const {
    const QString why = m_why->text().simplified();
    switch (what()) {
    case What::Conduct:
        return who() && m_level->chosen() >= 0 ? std::optional<Entry>(Sanction{m_team, *who(), level(), why})
                                               : std::nullopt;
    case What::Delay:
        return DelaySanction{m_team, delay(), why};
    case What::Request:
        return ImproperRequest{m_team, why};
    case What::LateReplacement:
        return LateReplacement{m_team};
    }
    Q_UNREACHABLE();
}

QString CardBar::prompt() const {
    switch (what()) {
    case What::Conduct:
        return who() ? sanctionMeans(state(), m_team, level()) : Table::tr("Who? A number, or someone of the bench.");
    case What::Delay:
        return delayMeans(state(), m_team, delay());
    case What::Request:
        return isImproperRequestLetPass(state(), m_team)
                   ? Table::tr("Refused and written down; the next one is a delay.")
                   : Table::tr("The rulebook makes this a delay.");
    case What::LateReplacement:
        return Table::tr("Let pass and written down; the next late one is a delay.");
    }
    return {};
}

void CardBar::goToMissing() {
    if (what() == What::Conduct && !who())
        m_number->field().setFocus(Qt::ShortcutFocusReason);
    else
        setFocus(Qt::ShortcutFocusReason);
}

} // namespace setfolio
