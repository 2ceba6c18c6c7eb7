// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/substitutionbar.h"

#include "core/rules/notice.h"
#include "ui/look/controls.h"
#include "ui/table/numberfield.h"
#include "ui/wording/fill.h"
#include "ui/wording/findingwords.h"
#include "ui/wording/names.h"
#include "ui/wording/tablewords.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr int mostInARow = 8;
constexpr int fewestInARow = 3; // the six on court stand in two rows at most
constexpr int gap = 4;
constexpr int labelWidth = 32;

} // namespace

SubstitutionBar::SubstitutionBar(Recorder& recorder, QWidget* parent) : InlineBar(parent), m_recorder(recorder) {
    setObjectName(u"substitutionBar"_s);
    m_in = makeNumberRow(Table::tr("In"), u"subIn"_s);
    m_out = makeNumberRow(Table::tr("Out"), u"subOut"_s);
    addRow(makeReasonRow());
    connect(m_in.field, &NumberField::textChanged, this, &SubstitutionBar::inChanged);
    connect(m_out.field, &NumberField::textChanged, this, &SubstitutionBar::outChanged);
}

void SubstitutionBar::setLook(const Look& look) {
    InlineBar::setLook(look);
    m_in.field->setLook(look);
    m_out.field->setLook(look);
    m_reason->setStyleSheet(controlStyle(look.theme));
    m_reason->setFont(look.font(15));
    for (QLabel* label : findChildren<QLabel*>()) {
        label->setFont(look.font(14, QFont::DemiBold));
        label->setFixedWidth(look.whole(labelWidth));
        label->setStyleSheet(controlStyle(look.theme));
    }
    if (!isHidden())
        refill();
}

void SubstitutionBar::setRoom(int width) {
    const QMargins edge = layout()->contentsMargins();
    const int room = width - edge.left() - edge.right() - look().whole(labelWidth) - m_in.field->width() - 2 * gap;
    const int columns = std::clamp((room + gap) / (look().whole(numberButtonWidth) + gap), fewestInARow, mostInARow);
    if (columns == m_buttonsInARow)
        return;
    m_buttonsInARow = columns;
    if (!isHidden())
        refill();
}

void SubstitutionBar::open(Team team) {
    m_team = team;
    m_outIsProposed = false;
    m_in.field->clear();
    m_out.field->clear();
    askForReason(false);
    refill();
    setSentence(Table::tr("Number in, number out, Enter."), Tone::Plain);
    show();
    m_in.field->setFocus(Qt::ShortcutFocusReason);
}

SubstitutionBar::NumberRow SubstitutionBar::makeNumberRow(const QString& label, const QString& name) {
    NumberRow row;
    row.field = new NumberField(this);
    row.field->setObjectName(name);
    row.field->setAccessibleName(label);
    auto* words = new QLabel(label, this);
    words->setBuddy(row.field);
    row.grid = new QGridLayout;
    row.grid->setSpacing(gap);
    auto* layout = new QHBoxLayout;
    layout->setSpacing(gap);
    layout->addWidget(words);
    layout->addWidget(row.field);
    layout->addLayout(row.grid);
    layout->addStretch(1);
    addRow(layout);
    return row;
}

QHBoxLayout* SubstitutionBar::makeReasonRow() {
    m_reason = new QLineEdit(this);
    m_reason->setObjectName(u"subReason"_s);
    m_reason->setPlaceholderText(Table::tr("The referee allows it: why"));
    m_reason->setAccessibleName(m_reason->placeholderText());
    m_reason->setMaxLength(120);
    m_reason->hide();
    auto* row = new QHBoxLayout;
    row->addWidget(m_reason);
    return row;
}

void SubstitutionBar::refill() {
    const MatchState& state = m_recorder.state();
    const TeamInSet& own = state.set().teams[m_team];
    setTitle(fill(Table::tr("Substitution %1 · %2"),
                  {codeOf(state, m_team), substitutionsUsed(own.substitutions, state.rulebook().substitutionLimit)}));
    fillRow(m_in, benchOf(state, m_team), u"bench"_s);
    fillRow(m_out, sixOf(state, m_team), u"court"_s);
    showChosen();
    Q_EMIT grown();
}

void SubstitutionBar::fillRow(NumberRow& row, const std::vector<BenchPlayer>& players, const QString& prefix) {
    for (NumberButton* button : row.buttons)
        delete button;
    row.buttons.clear();
    for (const BenchPlayer& player : players) {
        auto* button = new NumberButton(player.number, player.slot ? roman(*player.slot) : QString(), look(), this);
        button->setObjectName(prefix + QString::number(player.number.value));
        button->setCheckable(true);
        NumberField* field = row.field;
        connect(button, &NumberButton::clicked, this, [field, button] { field->setNumber(button->number()); });
        const int index = static_cast<int>(row.buttons.size());
        row.grid->addWidget(button, index / m_buttonsInARow, index % m_buttonsInARow);
        button->show();
        row.buttons.push_back(button);
    }
}

void SubstitutionBar::inChanged() {
    const std::optional<ShirtNumber> in = m_in.field->number();
    const std::optional<ShirtNumber> proposed =
        in ? proposedOut(m_recorder.state().set().teams[m_team], *in) : std::nullopt;
    if (proposed || m_outIsProposed) {
        const QSignalBlocker quiet(m_out.field);
        m_out.field->setNumber(proposed);
        m_outIsProposed = proposed.has_value();
    }
    showFindings();
}

void SubstitutionBar::outChanged() {
    m_outIsProposed = false;
    showFindings();
}

void SubstitutionBar::showFindings() {
    askForReason(false);
    showChosen();
    const std::optional<Substitution> substitution = drafted();
    if (!substitution) {
        setSentence(m_in.field->number() ? Table::tr("Who goes out?") : Table::tr("Number in, number out, Enter."),
                    Tone::Plain);
        return;
    }
    const Findings findings = m_recorder.judge(*substitution);
    if (findings.empty())
        setSentence(m_outIsProposed ? Table::tr("This is the only place for the number. Enter records.")
                                    : Table::tr("Enter records."),
                    Tone::Plain);
    else
        setSentence(inWords(findings), Tone::Problem);
}

void SubstitutionBar::showChosen() {
    for (NumberButton* button : m_in.buttons)
        button->setChecked(m_in.field->number() == button->number());
    for (NumberButton* button : m_out.buttons)
        button->setChecked(m_out.field->number() == button->number());
}

void SubstitutionBar::askForReason(bool ask) {
    if (m_reason->isVisibleTo(this) == ask)
        return;
    m_reason->clear();
    m_reason->setVisible(ask);
    setRecordWords(ask ? Table::tr("Allowed") : Table::tr("Record"));
    Q_EMIT grown();
    if (ask)
        m_reason->setFocus(Qt::ShortcutFocusReason);
}

std::optional<Substitution> SubstitutionBar::drafted() const {
    const std::optional<ShirtNumber> in = m_in.field->number();
    const std::optional<ShirtNumber> out = m_out.field->number();
    return in && out ? std::optional(Substitution{m_team, *in, *out}) : std::nullopt;
}

void SubstitutionBar::recordPressed() {
    const std::optional<Substitution> substitution = drafted();
    if (!substitution) {
        (m_in.field->number() ? m_out : m_in).field->setFocus(Qt::ShortcutFocusReason);
        return;
    }
    const QString reason = m_reason->isVisibleTo(this) ? m_reason->text().trimmed() : QString();
    settle(*substitution,
           reason.isEmpty() ? m_recorder.attempt(*substitution) : m_recorder.overrule(*substitution, reason));
}

void SubstitutionBar::settle(const Substitution& substitution, const Outcome& outcome) {
    std::visit(Overloaded{
                   [&](const Acknowledged&) { showRecorded(substitution); },
                   [&](const Objected& objected) {
                       setSentence(inWords(objected.findings), Tone::Problem);
                       askForReason(!isRefused(objected.findings));
                   },
                   [&](const Failed&) { setSentence(Table::tr("Not recorded."), Tone::Problem); },
               },
               outcome);
}

void SubstitutionBar::showRecorded(const Substitution& substitution) {
    open(m_team);
    const MatchState& state = m_recorder.state();
    QStringList words{substitutionRecorded(substitution, state)};
    for (const Notice& notice : noticesFor(state, substitution))
        if (isToBeTold(notice))
            words += setfolio::sentence(notice, state);
    setSentence(words.join(u' '), Tone::Told);
}

QString SubstitutionBar::inWords(const Findings& findings) const {
    QStringList words;
    for (const Finding& finding : findings)
        words += setfolio::sentence(finding, m_recorder.state());
    return words.join(u' ');
}

} // namespace setfolio
