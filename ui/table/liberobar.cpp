// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/liberobar.h"

#include "core/rules/proposals.h"
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

/// The back row, whom a libero may come in for (FIVB Official Volleyball Rules 2025-2028, 19.3.1.1).
std::vector<OfferedNumber> backRowOf(const SetState& set, Team team) {
    std::vector<OfferedNumber> row;
    for (const Slot slot : allSlots)
        if (const ShirtNumber number = onCourt(set.teams[team], slot);
            number.isValid() && !positionOf(set, team, slot).isFrontRow())
            row.push_back({number, roman(slot)});
    return row;
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
    connect(m_libero, &NumberPick::changed, this, &LiberoBar::showDraft);
    connect(&m_libero->field(), &QLineEdit::textEdited, this, &LiberoBar::goOn);
    connect(&m_replaced->field(), &NumberField::emptiedBack, this, [this] {
        if (m_libero->isVisibleTo(this))
            m_libero->field().setFocus();
    });
    connect(m_replaced, &NumberPick::changed, this, &LiberoBar::showDraft);
}

void LiberoBar::open(Team team, Qt::Key again) {
    m_team = team;
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
    m_replaced->offer(backRowOf(state().set(), team));
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
    const bool mayServe = state().rulebook().liberoServe != LiberoServeRule::Never;
    if (own().liberoServing || (mayServe && state().set().serving == m_team))
        moves.push_back(Move::Serves);
    return moves;
}

std::optional<LiberoBar::Move> LiberoBar::move() const {
    const int chosen = m_move->chosen();
    return chosen < 0 ? std::nullopt : std::optional(m_moves.at(static_cast<std::size_t>(chosen)));
}

/// Who can be meant by the move that is chosen.
std::vector<ShirtNumber> LiberoBar::candidates() const {
    if (move() == Move::Out || (move() == Move::Serves && own().liberoServing))
        return {};
    std::vector<ShirtNumber> numbers = liberosOf(own());
    if (own().libero)
        std::erase(numbers, own().libero->libero);
    return numbers;
}

void LiberoBar::arrangeRows() {
    const std::vector<ShirtNumber> numbers = candidates();
    std::vector<OfferedNumber> offered;
    for (const ShirtNumber number : numbers)
        offered.push_back({number});
    m_libero->offer(std::move(offered));
    m_libero->setNumber(numbers.size() == 1 ? std::optional(numbers.front()) : std::nullopt);
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
    return Table::tr("In for whom? The back row is offered.");
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
