// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/lineuppanel.h"

#include "core/record/shown.h"
#include "ui/dialogs/numberchips.h"
#include "ui/dialogs/orderstrip.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/positionfield.h"
#include "ui/dialogs/shirtfield.h"
#include "ui/dialogs/verdictview.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/names.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

LineUpPanel::LineUpPanel(const MatchState& state, Team team, QWidget* parent)
    : QFrame(parent),
      m_state(state),
      m_team(team),
      m_strip(new OrderStrip),
      m_chips(new NumberChips(state.rosters[team])),
      m_verdict(new VerdictView) {
    setObjectName(u"panel"_s);
    auto* middle = new QHBoxLayout;
    middle->setSpacing(12);
    middle->addLayout(makeCourt(), 1);
    middle->addLayout(makeSide());
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 10, 14, 10);
    column->setSpacing(8);
    column->addLayout(makeHead());
    column->addLayout(middle);
    column->addWidget(m_strip);
    column->addWidget(m_chips);
    column->addWidget(m_verdict, 1);
    m_chips->setVisible(!state.rosters[team].players.empty());
    for (PositionField* place : m_places)
        addToOrder(&place->field());
    addToOrder(m_captain);
    for (ShirtField* libero : m_liberos)
        addToOrder(libero);
    for (std::size_t place = 1; place < m_order.size(); ++place)
        setTabOrder(m_order[place - 1], m_order[place]);
    connect(m_chips, &NumberChips::picked, this, &LineUpPanel::pick);
    connect(m_verdict, &VerdictView::changed, this, &LineUpPanel::changed);
    if (const auto& given = state.set().teams[team].lineUp)
        fill(*given);
    review();
}

LineUp LineUpPanel::lineUp() const {
    LineUp lineUp{.team = m_team, .positions = {}, .captain = {}, .liberos = {}};
    for (std::size_t place = 0; place < m_places.size(); ++place)
        lineUp.positions.at(place) = m_places.at(place)->field().number();
    if (m_captain->number().isValid())
        lineUp.captain = m_captain->number();
    for (const ShirtField* libero : m_liberos)
        lineUp.liberos.push_back(libero->number());
    return withoutEmptyLiberos(lineUp);
}

std::optional<QString> LineUpPanel::overruled() const {
    return m_verdict->overruled();
}

LineUpPanel::Readiness LineUpPanel::readiness() const {
    const LineUp typed = lineUp();
    const auto& given = m_state.set().teams[m_team].lineUp;
    const bool empty = std::ranges::all_of(m_order, [](const ShirtField* field) { return field->text().isEmpty(); });
    if (empty || (given && typed == *given))
        return Readiness::Untouched;
    const bool misread = std::ranges::any_of(
        m_order, [](const ShirtField* field) { return !field->text().isEmpty() && !field->number().isValid(); });
    if (!isFilled(typed) || misread)
        return Readiness::Unfinished;
    return m_verdict->mayRecord() ? Readiness::Ready : Readiness::Refused;
}

std::vector<CourtPosition> LineUpPanel::missing() const {
    std::vector<CourtPosition> positions;
    for (std::size_t place = 0; place < m_places.size(); ++place) {
        if (!m_places.at(place)->field().number().isValid())
            positions.emplace_back(static_cast<int>(place) + 1);
    }
    return positions;
}

void LineUpPanel::begin() {
    const auto empty = std::ranges::find_if(m_order, [](const ShirtField* field) { return field->text().isEmpty(); });
    (empty == m_order.end() ? m_order.front() : *empty)->setFocus();
}

QLayout* LineUpPanel::makeHead() {
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addWidget(new pieces::Plate(m_team, codeOf(m_state, m_team)));
    auto* name = pieces::heading(asShown(m_state.opened->teams[m_team].name), 16);
    if (textScale() == 1) { // else it scrolls
        name->setMinimumWidth(60);
        name->setWordWrap(true);
        name->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    }
    row->addWidget(name, 1);
    const std::vector<QPushButton*> proposals = makeProposals();
    if (proposals.size() <= 1) {
        for (QPushButton* proposed : proposals)
            row->addWidget(proposed);
        return row;
    }
    auto* both = new QVBoxLayout; // there is no room beside the name for more than one
    both->setSpacing(8);
    both->addLayout(row);
    auto* second = new QHBoxLayout;
    second->setSpacing(12);
    for (QPushButton* proposed : proposals)
        second->addWidget(proposed, 1);
    both->addLayout(second);
    return both;
}

std::vector<QPushButton*> LineUpPanel::makeProposals() {
    std::vector<QPushButton*> proposals;
    const auto add = [&](const QString& words, const QString& name, const QString& tip, auto act) {
        proposals.push_back(pieces::button(words, name));
        proposals.back()->setToolTip(tip);
        connect(proposals.back(), &QPushButton::clicked, this, act);
    };
    if (!rosterLiberos(m_state, m_team).empty())
        add(tr("Roster’s liberos"), u"rosterLiberos"_s, tr("Puts in the liberos that the roster marks"),
            &LineUpPanel::fillFromRoster);
    if (const auto earlier = earlierLineUp(m_state, m_team)) {
        add(tr("As in set %1").arg(earlier->set), u"asEarlier"_s,
            tr("Puts in the six, the captain and the liberos with which the team began set %1").arg(earlier->set),
            [this, lineUp = earlier->lineUp] { fill(lineUp); });
        add(tr("Rotate"), u"rotate"_s, tr("Turns the six by one place, as when the team wins the serve"),
            &LineUpPanel::rotate);
    }
    return proposals;
}

QLayout* LineUpPanel::makeCourt() {
    auto* net = new QLabel(tr("net"));
    net->setObjectName(u"net"_s);
    net->setFont(windowFont(12, QFont::DemiBold));
    net->setAlignment(Qt::AlignCenter);
    net->setFixedHeight(scaled(18));
    auto* court = new QGridLayout;
    court->setSpacing(6);
    court->addWidget(net, 0, 0, 1, 3);
    // as seen from behind the team: 4 3 2 at the net, 5 6 1 at the end line
    const std::array<std::array<int, 3>, 2> rows{{{4, 3, 2}, {5, 6, 1}}};
    for (int row = 0; row < 2; ++row) {
        for (int column = 0; column < 3; ++column) {
            const CourtPosition position(rows.at(static_cast<std::size_t>(row)).at(static_cast<std::size_t>(column)));
            auto* place = new PositionField(position, m_state.rosters[m_team]);
            m_places.at(position.index()) = place;
            court->addWidget(place, row + 1, column);
        }
    }
    return court;
}

QLayout* LineUpPanel::makeSide() {
    auto* column = new QVBoxLayout;
    column->setSpacing(4);
    const Roster& roster = m_state.rosters[m_team];
    m_captain = new ShirtField(roster);
    if (const auto captain = rosterCaptain(m_state, m_team))
        m_captain->setPlaceholderText(QString::number(captain->value));
    m_captain->setToolTip(tr("Left empty: the captain of the roster"));
    pieces::addField(*column, tr("Captain"), *m_captain, u"captain"_s);
    for (int count = 1; count <= m_state.rulebook().maximumLiberos; ++count) {
        auto* libero = new ShirtField(roster);
        const QString label = m_state.rulebook().maximumLiberos == 1 ? tr("Libero") : tr("Libero %1").arg(count);
        pieces::addField(*column, label, *libero, u"libero%1"_s.arg(count));
        m_liberos.push_back(libero);
    }
    std::vector<ShirtField*> fields = m_liberos;
    fields.push_back(m_captain);
    for (ShirtField* field : fields) {
        field->setFixedWidth(scaled(104));
        field->setFont(windowFont(18, QFont::Bold));
    }
    column->addStretch();
    return column;
}

void LineUpPanel::addToOrder(ShirtField* field) {
    const std::size_t place = m_order.size();
    m_order.push_back(field);
    connect(field, &ShirtField::filled, this, [this, place] { goOn(place, 1); });
    connect(field, &ShirtField::emptiedBack, this, [this, place] { goOn(place, -1); });
    connect(field, &ShirtField::entered, this, [this, place] {
        m_current = place;
        showUsed();
    });
    connect(field, &QLineEdit::textChanged, this, &LineUpPanel::review);
}

void LineUpPanel::fill(const LineUp& lineUp) {
    for (std::size_t place = 0; place < m_places.size(); ++place)
        m_places.at(place)->field().setNumber(lineUp.positions.at(place));
    m_captain->setNumber(lineUp.captain.value_or(ShirtNumber()));
    for (std::size_t place = 0; place < m_liberos.size(); ++place)
        m_liberos[place]->setNumber(place < lineUp.liberos.size() ? lineUp.liberos[place] : ShirtNumber());
}

/// Who stands in position 2 comes to 1.
void LineUpPanel::rotate() {
    const LineUp before = lineUp();
    for (std::size_t place = 0; place < m_places.size(); ++place)
        m_places.at(place)->field().setNumber(before.positions.at((place + 1) % m_places.size()));
}

void LineUpPanel::fillFromRoster() {
    const std::vector<ShirtNumber> liberos = rosterLiberos(m_state, m_team);
    for (std::size_t place = 0; place < m_liberos.size() && place < liberos.size(); ++place)
        m_liberos[place]->setNumber(liberos[place]);
}

void LineUpPanel::pick(ShirtNumber number) {
    m_order[m_current]->setNumber(number);
    goOn(m_current, 1);
}

void LineUpPanel::goOn(std::size_t from, int step) {
    if (step < 0 && from == 0)
        return;
    const std::size_t next = step < 0 ? from - 1 : from + 1;
    if (next == m_order.size())
        return Q_EMIT completed();
    m_order[next]->setFocus();
}

void LineUpPanel::review() {
    const LineUp typed = lineUp();
    const Findings findings = findingsFor(m_state, typed);
    m_verdict->setFindings(findings, m_state);
    markFields(findings);
    showOrder(typed);
    showUsed();
    Q_EMIT changed();
}

void LineUpPanel::showUsed() {
    if (m_order[m_current] == m_captain) // she is one of those who have been named already
        return m_chips->setUsed({});
    const LineUp typed = lineUp();
    std::vector<ShirtNumber> used(typed.positions.begin(), typed.positions.end());
    used.insert(used.end(), typed.liberos.begin(), typed.liberos.end());
    m_chips->setUsed(used);
}

void LineUpPanel::markFields(const Findings& findings) {
    for (ShirtField* field : m_order) {
        const bool misread = !field->text().isEmpty() && !field->number().isValid();
        const bool named = field->number().isValid() && std::ranges::any_of(findings, [field](const Finding& finding) {
                               return finding.number == field->number();
                           });
        setProblem(*field, misread || named);
    }
}

void LineUpPanel::showOrder(const LineUp& lineUp) {
    const auto order = servingOrder(m_state, lineUp);
    const bool servesFirst = m_state.set().servesFirst == m_team;
    m_strip->setOrder(order, servesFirst);
    for (std::size_t place = 0; place < m_places.size(); ++place) {
        if (!m_state.set().servesFirst || m_state.set().started) // its slots are settled then
            continue;
        LineUp alone{.team = m_team, .positions = {}, .captain = {}, .liberos = {}};
        alone.positions.at(place) = ShirtNumber(0);
        const auto slots = servingOrder(m_state, alone);
        const auto slot = std::ranges::find(*slots, ShirtNumber(0)) - slots->begin();
        m_places.at(place)->setSlot(Slot(static_cast<int>(slot) + 1));
    }
}

} // namespace setfolio
