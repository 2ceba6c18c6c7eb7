// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/liberobar.h"

#include "core/rules/proposals.h"
#include "core/rules/ways.h"
#include "ui/table/bench.h"
#include "ui/table/numberfield.h"
#include "ui/table/picks.h"
#include "ui/wording/barwords.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

void addNew(std::vector<ShirtNumber>& numbers, ShirtNumber number) {
    if (std::ranges::find(numbers, number) == numbers.end())
        numbers.push_back(number);
}

} // namespace

LiberoBar::LiberoBar(Recorder& recorder, QWidget* parent)
    : EntryBar(recorder, parent),
      m_move(addOptions({}, u"liberoMove"_s)),
      m_libero(addNumbers(Table::tr("Libero"), u"liberoNumber"_s, u"libero"_s)),
      m_replaced(addNumbers(Table::tr("In for"), u"liberoFor"_s, u"backRow"_s)) {
    setObjectName(u"liberoBar"_s);
    addReason(u"liberoReason"_s);
    connect(m_move, &OptionPick::changed, this, &LiberoBar::moveChanged);
    connect(m_libero, &NumberPick::changed, this, [this] {
        offerReplaced();
        showDraft();
    });
    connect(&m_libero->field(), &QLineEdit::textEdited, this, &LiberoBar::goOn);
    connect(&m_replaced->field(), &NumberField::emptiedBack, this, [this] {
        if (m_libero->isVisibleTo(this))
            m_libero->field().setFocus();
    });
    connect(m_replaced, &NumberPick::changed, this, &LiberoBar::showDraft);
}

void LiberoBar::open(Team team, Qt::Key again) {
    m_team = team;
    m_lawful = liberoMoves(state(), team);
    m_moves = movesNow();
    setTitle(fill(Table::tr("Libero %1 · %2"), {codeOf(state(), team), liberoStands(state(), team)}));
    std::vector<Option> options;
    for (const Move move : m_moves)
        switch (move) {
        case Move::In:
            options.push_back({Table::tr("In"), {}, Qt::Key_I});
            break;
        case Move::Out:
            options.push_back({Table::tr("Out"), liberoOutMeans(own()), Qt::Key_O});
            break;
        case Move::Exchange:
            options.push_back({Table::tr("Exchange"), Table::tr("the other libero"), Qt::Key_X});
            break;
        case Move::Serves:
            options.push_back({own().liberoServing ? Table::tr("Serves no more") : Table::tr("Serves"),
                               Table::tr("only the mark"), again});
            break;
        }
    m_move->offer(std::move(options));
    const bool marks = state().set().contacted && m_moves.back() == Move::Serves;
    m_move->choose(marks ? static_cast<int>(m_moves.size()) - 1 : 0);
    m_replaced->setNumber(std::nullopt);
    m_replaced->field().holdKeys(false);
    arrangeRows();
    showDraft();
    present(this);
    goToMissing();
}

std::vector<LiberoBar::Move> LiberoBar::movesNow() const {
    std::vector<Move> moves;
    if (own().libero) {
        moves.push_back(Move::Out);
        if (liberosOf(own()).size() > 1)
            moves.push_back(Move::Exchange);
        return moves;
    }
    moves.push_back(Move::In);
    if (own().liberoServing || std::ranges::any_of(liberosOf(own()), [this](ShirtNumber l) { return mayServe(l); }))
        moves.push_back(Move::Serves);
    return moves;
}

/// Whether there is a serve that could be hers. Where only the slot is wrong the mark is offered: choosing it says why.
bool LiberoBar::mayServe(ShirtNumber libero) const {
    const Findings against = findings(LiberoServe{m_team, libero});
    return !isRefused(against) &&
           std::ranges::find(against, FindingKind::LiberoMayNotServe, &Finding::kind) == against.end();
}

std::optional<LiberoBar::Move> LiberoBar::move() const {
    const int chosen = m_move->chosen();
    return chosen < 0 ? std::nullopt : std::optional(m_moves.at(static_cast<std::size_t>(chosen)));
}

/// Who may lawfully make the move that is chosen; where nobody may, whoever can be meant by it, to be told why not.
std::vector<ShirtNumber> LiberoBar::candidates() const {
    if (move() == Move::Out || (move() == Move::Serves && own().liberoServing))
        return {};
    std::vector<ShirtNumber> numbers;
    for (const Entry& lawful : m_lawful) {
        const auto* in = std::get_if<LiberoIn>(&lawful);
        const auto* exchange = std::get_if<LiberoExchange>(&lawful);
        if (in && move() == Move::In)
            addNew(numbers, in->libero);
        if (exchange && move() == Move::Exchange)
            addNew(numbers, exchange->in);
    }
    if (!numbers.empty())
        return numbers;
    numbers = liberosOf(own());
    if (own().libero)
        std::erase(numbers, own().libero->libero);
    return numbers;
}

/// Whom the libero may lawfully come in for; where that is nobody, all of the six, to be told why not.
void LiberoBar::offerReplaced() {
    std::vector<ShirtNumber> numbers;
    for (const Entry& lawful : m_lawful)
        if (const auto* in = std::get_if<LiberoIn>(&lawful);
            in && in->libero == m_libero->number().value_or(in->libero))
            addNew(numbers, in->replaced);
    std::vector<OfferedNumber> offered;
    for (const BenchPlayer& player : sixOf(state(), m_team))
        if (numbers.empty() || std::ranges::find(numbers, player.number) != numbers.end())
            offered.push_back({player.number, roman(*player.slot)});
    m_replaced->offer(std::move(offered));
}

void LiberoBar::arrangeRows() {
    const std::vector<ShirtNumber> numbers = candidates();
    std::vector<OfferedNumber> offered;
    for (const ShirtNumber number : numbers)
        offered.push_back({number});
    m_libero->offer(std::move(offered));
    m_libero->setNumber(numbers.size() == 1 ? std::optional(numbers.front()) : std::nullopt);
    offerReplaced();
    const auto proposed = move() == Move::In ? proposedReplacement(state(), m_team) : std::nullopt;
    m_libero->propose(proposed && numbers.size() > 1 ? std::optional(proposed->libero) : std::nullopt);
    m_replaced->propose(proposed ? std::optional(proposed->replaced) : std::nullopt);
    setShown(m_libero, numbers.size() > 1);
    setShown(m_replaced, move() == Move::In);
}

std::optional<Entry> LiberoBar::drafted() const {
    const std::optional<ShirtNumber> libero = m_libero->numberOrProposed();
    const std::optional<ShirtNumber> replaced = m_replaced->numberOrProposed();
    if (!move())
        return std::nullopt;
    switch (*move()) {
    case Move::In:
        return libero && replaced ? std::optional<Entry>(LiberoIn{m_team, *libero, *replaced}) : std::nullopt;
    case Move::Out:
        return LiberoOut{m_team, own().libero->libero};
    case Move::Exchange:
        return libero ? std::optional<Entry>(LiberoExchange{m_team, *libero, own().libero->libero}) : std::nullopt;
    case Move::Serves:
        if (own().liberoServing)
            return LiberoServe{m_team, *own().liberoServing, LiberoServing::Ends};
        return libero ? std::optional<Entry>(LiberoServe{m_team, *libero}) : std::nullopt;
    }
    Q_UNREACHABLE();
}

QString LiberoBar::prompt() const {
    if (move() == Move::In && !m_replaced->number() && m_replaced->field().proposed())
        return fill(Table::tr("In for %1, at the place of the server? Enter records it, or type another number."),
                    {QString::number(m_replaced->field().proposed()->value)});
    if (drafted())
        return Table::tr("Enter records.");
    if (!m_libero->number())
        return Table::tr("Which libero?");
    return Table::tr("In for whom? Those who may go are offered.");
}

void LiberoBar::goToMissing() {
    NumberPick* missing = m_libero->isVisibleTo(this) && !m_libero->number() ? m_libero : m_replaced;
    if (missing->isVisibleTo(this))
        missing->field().setFocus(Qt::ShortcutFocusReason);
    else
        setFocus(Qt::ShortcutFocusReason);
}

/// A number that can only be hers leaves the keyboard to the one she comes in for.
void LiberoBar::goOn() {
    const QString typed = m_libero->field().text();
    const bool onlyOne = std::ranges::count_if(candidates(), [&](ShirtNumber number) {
                             return QString::number(number.value).startsWith(typed);
                         }) == 1;
    const bool whole = onlyOne && m_libero->number() && std::ranges::count(candidates(), *m_libero->number()) == 1;
    m_replaced->field().holdKeys(m_libero->number().has_value());
    if (whole && m_replaced->isVisibleTo(this))
        m_replaced->field().setFocus(Qt::ShortcutFocusReason);
}

void LiberoBar::moveChanged() {
    arrangeRows();
    showDraft();
    if (move() == Move::Serves && drafted())
        recordPressed();
    else
        goToMissing();
}

} // namespace setfolio
