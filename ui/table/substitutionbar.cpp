// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/substitutionbar.h"

#include "core/rules/notice.h"
#include "core/rules/proposals.h"
#include "core/rules/ways.h"
#include "ui/table/bench.h"
#include "ui/table/numberfield.h"
#include "ui/table/picks.h"
#include "ui/wording/barwords.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"
#include "ui/wording/tablewords.h"

#include <QCoreApplication>
#include <QLineEdit>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr int exceptional = 0; // the options' indices
constexpr int vacating = 1;

std::vector<OfferedNumber> offered(const std::vector<BenchPlayer>& players) {
    std::vector<OfferedNumber> numbers;
    for (const BenchPlayer& player : players)
        numbers.push_back({player.number, player.slot ? roman(*player.slot) : QString()});
    return numbers;
}

/// Who can go out: the six, and whoever left a place vacant.
std::vector<OfferedNumber> placesOf(const MatchState& state, Team team) {
    std::vector<OfferedNumber> places = offered(sixOf(state, team));
    for (const Slot slot : allSlots)
        if (const ShirtNumber left = vacatedBy(state.set().teams[team], slot); left.isValid())
            places.push_back({left, Table::tr("vacant")});
    return places;
}

} // namespace

SubstitutionBar::SubstitutionBar(Recorder& recorder, QWidget* parent)
    : EntryBar(recorder, parent),
      m_in(addNumbers(Table::tr("In"), u"subIn"_s, u"bench"_s)),
      m_out(addNumbers(Table::tr("Out"), u"subOut"_s, u"court"_s)),
      m_kind(addOptions({}, u"subKind"_s)),
      m_why(addLine(Table::tr("What happened: hurt, sent off"), u"subWhy"_s)) {
    setObjectName(u"substitutionBar"_s);
    addReason(u"subReason"_s);
    m_kind->setMayBeNone(true);
    m_kind->offer({{Table::tr("Exceptional"), {}, Qt::Key_E}, {Table::tr("Place stays vacant"), {}, Qt::Key_V}});
    m_why->hide();
    connect(m_in, &NumberPick::changed, this, &SubstitutionBar::inChanged);
    connect(&m_in->field(), &QLineEdit::textEdited, this, &SubstitutionBar::goOn);
    connect(&m_out->field(), &NumberField::emptiedBack, this, [this] { m_in->field().setFocus(); });
    connect(m_out, &NumberPick::changed, this, &SubstitutionBar::outChanged);
    connect(m_kind, &OptionPick::changed, this, &SubstitutionBar::kindChanged);
}

void SubstitutionBar::open(Team team, std::optional<ShirtNumber> out) {
    start(team, out);
    if (!out)
        propose(proposedSubstitution(state(), team));
    showDraft();
}

void SubstitutionBar::start(Team team, std::optional<ShirtNumber> out) {
    m_team = team;
    m_outIsProposed = false;
    m_in->setNumber(std::nullopt);
    m_out->setNumber(out);
    m_out->field().holdKeys(false);
    m_kind->choose(-1);
    m_why->clear();
    setShown(m_why, false);
    setShown(m_in, true);
    propose(std::nullopt);
    refill();
    showDraft();
    present(&m_in->field());
}

void SubstitutionBar::refill() {
    const TeamInSet& own = state().set().teams[m_team];
    setTitle(
        fill(Table::tr("Substitution %1 · %2"),
             {codeOf(state(), m_team), substitutionsUsed(substitutionsOf(own), state().rulebook().substitutionLimit)}));
    offerIn();
    m_out->offer(placesOf(state(), m_team));
}

/// Who may come in for the number that goes out, once that is known; the whole bench where it is not, or where nobody
/// may and the reason is to be told.
void SubstitutionBar::offerIn() {
    const std::optional<ShirtNumber> out = m_outIsProposed ? std::nullopt : m_out->number();
    std::vector<ShirtNumber> lawful;
    if (out)
        lawful = isExceptional() ? mayComeInExceptionally(state(), m_team, *out) : mayComeIn(state(), m_team, *out);
    if (lawful.empty())
        return m_in->offer(offered(benchOf(state(), m_team)));
    const TeamInSet& own = state().set().teams[m_team];
    std::vector<BenchPlayer> players;
    for (const ShirtNumber number : lawful)
        players.push_back({number, slotOf(own, number)});
    m_in->offer(offered(players));
}

bool SubstitutionBar::isExceptional() const {
    return m_kind->chosen() == exceptional;
}

SubstitutionKind SubstitutionBar::kind() const {
    return isExceptional() ? SubstitutionKind::Exceptional : SubstitutionKind::Regular;
}

bool SubstitutionBar::isVacating() const {
    return m_kind->chosen() == vacating;
}

std::optional<Entry> SubstitutionBar::drafted() const {
    const std::optional<ShirtNumber> in = m_in->numberOrProposed();
    const std::optional<ShirtNumber> out = m_out->numberOrProposed();
    if (!out || (!in && !isVacating()))
        return std::nullopt;
    if (isVacating())
        return PlaceVacated{m_team, *out, m_why->text().simplified()};
    return Substitution{m_team, *in, *out, kind()};
}

QString SubstitutionBar::prompt() const {
    if (isVacating())
        return m_out->number() ? placeStaysVacant(state(), m_team) : Table::tr("Who leaves the court?");
    if (isExceptional() && m_out->number())
        return exceptionalMeans(state(), *m_out->number());
    if (m_in->field().proposed())
        return fill(
            Table::tr("As before: %1 in for %2. Enter records it, or type another number."),
            {QString::number(m_in->field().proposed()->value), QString::number(m_out->field().proposed()->value)});
    if (!m_in->number())
        return Table::tr("Number in, number out, Enter.");
    if (!m_out->number())
        return Table::tr("Who goes out?");
    return m_outIsProposed ? Table::tr("This is the only place for the number. Enter records.")
                           : Table::tr("Enter records.");
}

/// What holds whoever goes out holds of the number that comes in.
Findings SubstitutionBar::early() const {
    if (!m_in->number() || isVacating())
        return {};
    Findings common;
    bool first = true;
    for (const BenchPlayer& player : sixOf(state(), m_team)) {
        const Findings these = findings(Substitution{m_team, *m_in->number(), player.number, kind()});
        if (first)
            common = these;
        std::erase_if(common, [&](const Finding& finding) {
            return std::ranges::find(these, finding.kind, &Finding::kind) == these.end();
        });
        first = false;
    }
    return common;
}

void SubstitutionBar::goToMissing() {
    const bool outFirst = m_in->number() || isVacating() || (isExceptional() && !m_out->number());
    (outFirst ? m_out : m_in)->field().setFocus(Qt::ShortcutFocusReason);
}

void SubstitutionBar::settled(const Entry& entry) {
    const QString why = m_why->text().simplified();
    const auto* substitution = std::get_if<Substitution>(&entry);
    if (substitution && isExceptional() && !why.isEmpty())
        remarkOn(*substitution, why);
    start(m_team); // nothing is proposed: Enter pressed twice is no second substitution
    QStringList words{substitution ? substitutionRecorded(*substitution, state())
                                   : placeVacatedRecorded(state(), m_team)};
    for (const Notice& notice : noticesFor(state(), entry))
        if (isToBeTold(state().rulebook(), notice))
            words += setfolio::sentence(notice, state());
    setSentence(words.join(u' '), Tone::Told);
}

void SubstitutionBar::remarkOn(const Substitution& substitution, const QString& why) {
    static_cast<void>(recorder().attempt(Remark{exceptionalRemark(state(), substitution, why)}));
}

void SubstitutionBar::propose(const std::optional<Substitution>& substitution) {
    m_in->propose(substitution ? std::optional(substitution->in) : std::nullopt);
    m_out->propose(substitution ? std::optional(substitution->out) : std::nullopt);
}

/// A number of two digits that says nothing of who goes out leaves the keyboard to that one.
void SubstitutionBar::goOn() {
    if (!m_out->number() && m_in->field().text().size() == 2 && early().empty())
        m_out->field().setFocus(Qt::ShortcutFocusReason);
}

void SubstitutionBar::inChanged() {
    propose(std::nullopt);
    const std::optional<ShirtNumber> in = m_in->number();
    m_out->field().holdKeys(in.has_value());
    const std::optional<ShirtNumber> proposed =
        in && !isExceptional() ? proposedOut(state().set().teams[m_team], *in) : std::nullopt;
    if (m_outIsProposed || (proposed && !m_out->number())) {
        m_out->setNumber(proposed);
        m_outIsProposed = proposed.has_value();
    }
    showDraft();
}

void SubstitutionBar::outChanged() {
    propose(std::nullopt);
    m_outIsProposed = false;
    offerIn();
    showDraft();
}

void SubstitutionBar::kindChanged() {
    propose(std::nullopt);
    setShown(m_in, !isVacating());
    setShown(m_why, isVacating() || isExceptional());
    if (isVacating())
        m_in->setNumber(std::nullopt);
    if (m_kind->chosen() >= 0 && m_outIsProposed) { // it was proposed as the place of a regular substitute
        m_out->setNumber(std::nullopt);
        m_outIsProposed = false;
    }
    offerIn();
    showDraft();
    goToMissing();
}

} // namespace setfolio
