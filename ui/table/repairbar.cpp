// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/repairbar.h"

#include "ui/look/controls.h"
#include "ui/table/bench.h"
#include "ui/table/deckview.h"
#include "ui/table/numberfield.h"
#include "ui/table/picks.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QSignalBlocker>

#include <algorithm>
#include <ranges>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr int rowHeight = 44;
constexpr int rowsShown = 3;
constexpr int numberRole = Qt::UserRole;

std::vector<OfferedNumber> numbersOf(const std::vector<BenchPlayer>& players) {
    std::vector<OfferedNumber> numbers;
    for (const BenchPlayer& player : players)
        numbers.push_back({player.number, player.slot ? roman(*player.slot) : QString()});
    return numbers;
}

/// What is never corrected here: the match's frame has its own dialogs.
bool isFrame(const Entry& entry) {
    return std::holds_alternative<MatchOpened>(entry) || std::holds_alternative<Roster>(entry) ||
           std::holds_alternative<Officials>(entry);
}

bool isSeal(const Finding& finding) {
    return finding.kind == FindingKind::IsSealed;
}

} // namespace

RepairBar::RepairBar(Recorder& recorder, QWidget* parent)
    : EntryBar(recorder, parent),
      m_list(new QListWidget(this)),
      m_how(nullptr) {
    setObjectName(u"repairBar"_s);
    m_list->setObjectName(u"repairList"_s);
    m_list->setAccessibleName(Table::tr("Entries, the newest first"));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->installEventFilter(this);
    addRow(m_list);
    m_how = addOptions({}, u"repairHow"_s);
    m_missed = addOptions({}, u"missed"_s);
    m_in = addNumbers(Table::tr("In"), u"repairIn"_s, u"repairBench"_s);
    m_out = addNumbers(Table::tr("Out"), u"repairOut"_s, u"repairCourt"_s);
    m_why = addLine(Table::tr("Why, for the remarks"), u"repairWhy"_s);
    m_preview = new QLabel(this);
    m_preview->setObjectName(u"repairPreview"_s);
    m_preview->setTextFormat(Qt::PlainText);
    m_preview->setWordWrap(true);
    addRow(m_preview);
    addReason(u"repairReason"_s);
    connect(m_list, &QListWidget::currentRowChanged, this, &RepairBar::targetChanged);
    connect(m_how, &OptionPick::changed, this, &RepairBar::howChanged);
    connect(m_missed, &OptionPick::changed, this, [this] {
        if (m_missed->chosen() == static_cast<int>(Missed::SomethingElse))
            return recordAtTheTable(Placed::How::Before);
        arrangeRows();
        offerNumbers();
        draftChanged();
        goToMissing();
    });
    connect(m_in, &NumberPick::changed, this, &RepairBar::draftChanged);
    connect(m_out, &NumberPick::changed, this, &RepairBar::draftChanged);
    connect(this, &InlineBar::closed, this, [this] { // what was drawn up and not confirmed is given up
        if (std::exchange(m_drawnUp, std::nullopt))
            this->recorder().giveUpPlace();
    });
}

void RepairBar::setLook(const Look& look) {
    EntryBar::setLook(look);
    m_list->setStyleSheet(controlStyle(look.theme));
    m_list->setFont(look.font(13.5));
    m_preview->setStyleSheet(controlStyle(look.theme));
    m_preview->setFont(look.font(13, QFont::DemiBold));
    arrangeRows();
}

void RepairBar::setRoom(int width) {
    EntryBar::setRoom(width);
    const QMargins edge = layout()->contentsMargins();
    m_room = width - edge.left() - edge.right();
    showPreview(m_preview->text());
}

void RepairBar::open(EntryNumber at) {
    m_drawnUp.reset();
    showRow(true);
    m_log.follow(recorder().file().ledger().entries());
    m_why->clear();
    m_missed->choose(-1);
    offerMissed();
    m_how->choose(-1);
    fillList(at);
    targetChanged();
    present(m_list);
}

void RepairBar::confirm(const Entry& entry) {
    m_drawnUp = entry;
    m_log.follow(recorder().file().ledger().entries());
    m_why->setText(recorder().place()->reason);
    setTitle(drawnUpWords(*recorder().place(), entry, state(), m_log));
    showRow(false);
    draftChanged();
    present(this);
}

/// Leaves the bar: the table stands as it did at that place, and what is recorded there comes back to confirm().
void RepairBar::recordAtTheTable(Placed::How how) {
    const Placed placed{how, target(), m_why->text().simplified()};
    dismiss();
    recorder().place(placed);
}

/// The list and the choices, or, to confirm, neither.
void RepairBar::showRow(bool listed) {
    setShown(m_list, listed);
    setShown(m_how, listed);
    if (listed)
        return;
    for (QWidget* row : std::initializer_list<QWidget*>{m_missed, m_in, m_out})
        setShown(row, false);
}

void RepairBar::fillList(EntryNumber at) {
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    const auto timeline = timelineOf(recorder().file().ledger().entries());
    for (const TimelineItem& item : timeline | std::views::reverse) {
        if (isFrame(item.recorded->entry))
            continue;
        const LoggedEntry& line = m_log.lines().at(item.recorded->number.value - 1);
        const QString code = line.words.team ? codeOf(state(), *line.words.team) + u"  "_s : QString();
        const QString rally = line.words.rally > 0 ? QString::number(line.words.rally).rightJustified(3) : u"    "_s;
        auto* row = new QListWidgetItem(rally + u"   "_s + code + line.words.words, m_list);
        row->setData(numberRole, item.recorded->number.value);
        row->setSizeHint({0, look().whole(rowHeight)});
        QFont font = look().font(13.5);
        font.setStrikeOut(!item.stands());
        row->setFont(font);
        if (item.recorded->number == at)
            m_list->setCurrentItem(row);
    }
    if (!m_list->currentItem())
        m_list->setCurrentRow(0);
    m_list->scrollToItem(m_list->currentItem(), QAbstractItemView::PositionAtCenter);
}

/// By the keys that the table has for the same.
void RepairBar::offerMissed() {
    const QString left = codeOf(state(), teamOn(state(), Side::Left));
    const QString right = codeOf(state(), teamOn(state(), Side::Right));
    m_missed->offer({{fill(Table::tr("Rally to %1"), {left}), {}, Qt::Key_Left},
                     {fill(Table::tr("Rally to %1"), {right}), {}, Qt::Key_Right},
                     {fill(Table::tr("Sub %1"), {left}), {}, Qt::Key_S},
                     {fill(Table::tr("Sub %1"), {right}), {}, Qt::Key_L},
                     {fill(Table::tr("Time-out %1"), {left}), {}, Qt::Key_D},
                     {fill(Table::tr("Time-out %1"), {right}), {}, Qt::Key_K},
                     {Table::tr("Something else"), Table::tr("record it at the table"), Qt::Key_E}});
}

EntryNumber RepairBar::target() const {
    const QListWidgetItem* row = m_list->currentItem();
    return row ? EntryNumber(row->data(numberRole).toUInt()) : EntryNumber();
}

QString RepairBar::preview() const {
    return m_preview->text();
}

const Recorded* RepairBar::chosen() const {
    const auto entries = recorder().file().ledger().entries();
    return target().value == 0 ? nullptr : &entries[target().value - 1];
}

bool RepairBar::isStanding() const {
    return chosen() && standsIn(recorder().file().ledger().entries(), target());
}

RepairBar::How RepairBar::how() const {
    const int chosen = m_how->chosen();
    return chosen < 0 ? How::Strike : m_hows.at(static_cast<std::size_t>(chosen));
}

std::optional<Placed> RepairBar::placed() const {
    const QString why = m_why->text().simplified();
    if (m_drawnUp && recorder().place())
        return Placed{recorder().place()->how, recorder().place()->target, why};
    switch (how()) {
    case How::Strike:
        return std::nullopt;
    case How::Change:
        return Placed{Placed::How::InsteadOf, target(), why};
    case How::PutIn:
        return Placed{Placed::How::Before, target(), why};
    }
    return std::nullopt;
}

std::optional<Team> RepairBar::substitutionTeam() const {
    if (how() == How::Change && chosen())
        if (const auto* old = std::get_if<Substitution>(&chosen()->entry))
            return old->team;
    if (how() != How::PutIn)
        return std::nullopt;
    if (m_missed->chosen() == static_cast<int>(Missed::LeftSubstitution))
        return teamOn(state(), Side::Left);
    if (m_missed->chosen() == static_cast<int>(Missed::RightSubstitution))
        return teamOn(state(), Side::Right);
    return std::nullopt;
}

std::optional<Entry> RepairBar::substitution(Team team) const {
    if (!m_in->number() || !m_out->number())
        return std::nullopt;
    return Substitution{team, *m_in->number(), *m_out->number()};
}

std::optional<Entry> RepairBar::changed() const {
    if (const auto* rally = std::get_if<RallyWon>(&chosen()->entry))
        return RallyWon{opponentsOf(rally->by)};
    const auto* old = std::get_if<Substitution>(&chosen()->entry);
    if (!old)
        return std::nullopt;
    std::optional<Entry> entry = substitution(old->team);
    if (entry)
        std::get<Substitution>(*entry).kind = old->kind;
    return entry == std::optional(chosen()->entry) ? std::nullopt : entry;
}

std::optional<Entry> RepairBar::missed() const {
    if (m_missed->chosen() < 0)
        return std::nullopt;
    const Team left = teamOn(state(), Side::Left);
    switch (static_cast<Missed>(m_missed->chosen())) {
    case Missed::LeftRally:
        return RallyWon{left};
    case Missed::RightRally:
        return RallyWon{opponentsOf(left)};
    case Missed::LeftSubstitution:
        return substitution(left);
    case Missed::RightSubstitution:
        return substitution(opponentsOf(left));
    case Missed::LeftTimeOut:
        return TimeOut{left};
    case Missed::RightTimeOut:
        return TimeOut{opponentsOf(left)};
    case Missed::SomethingElse:
        break;
    }
    return std::nullopt;
}

std::optional<Entry> RepairBar::drafted() const {
    if (m_drawnUp)
        return m_drawnUp;
    if (!isStanding())
        return std::nullopt;
    switch (how()) {
    case How::Strike:
        return Strike{target(), m_why->text().simplified()};
    case How::Change:
        return changed();
    case How::PutIn:
        return missed();
    }
    return std::nullopt;
}

QString RepairBar::prompt() const {
    if (!m_drawnUp && !isStanding())
        return Table::tr("This entry is struck already: choose another one.");
    if (drafted())
        return Table::tr("Enter records the correction.");
    if (substitutionTeam())
        return Table::tr("Number in and number out, as it was.");
    return Table::tr("What was missed?");
}

Findings RepairBar::findings(const Entry& entry) const {
    return recorder().file().judge(entry, placed());
}

Outcome RepairBar::record(const Entry& entry, const QString& reason) {
    Outcome outcome =
        reason.isEmpty() ? recorder().attempt(entry, placed()) : recorder().overrule(entry, reason, placed());
    const auto* objected = std::get_if<Objected>(&outcome);
    if (objected && std::ranges::any_of(objected->findings, isSeal)) // once the bar has said so itself
        QMetaObject::invokeMethod(
            this, [this, at = target()] { Q_EMIT sealMet(at); }, Qt::QueuedConnection);
    return outcome;
}

void RepairBar::goToMissing() {
    if (m_drawnUp)
        setFocus(Qt::ShortcutFocusReason);
    else if (!substitutionTeam())
        m_list->setFocus(Qt::ShortcutFocusReason);
    else
        (m_in->number() ? m_out : m_in)->field().setFocus(Qt::ShortcutFocusReason);
}

/// Who signs, signs again.
bool RepairBar::mayChange() const {
    return chosen() && isStanding() &&
           !std::visit(Overloaded{[](const Signed&) { return true; }, [](const LeftUnsigned&) { return true; },
                                  [](const Sealed&) { return true; }, [](const Reopened&) { return true; },
                                  [](const auto&) { return false; }},
                       chosen()->entry);
}

/// A rally's winner and a substitution's numbers; the rest is recorded anew at the table.
bool RepairBar::isChangedHere() const {
    return std::holds_alternative<RallyWon>(chosen()->entry) || std::holds_alternative<Substitution>(chosen()->entry);
}

void RepairBar::targetChanged() {
    const How before = how();
    m_hows = {How::Strike, How::PutIn};
    std::vector<Option> options{{Table::tr("Strike it"), {}, Qt::Key_X},
                                {Table::tr("Put in before it"), {}, Qt::Key_B}};
    if (mayChange()) {
        const bool rally = std::holds_alternative<RallyWon>(chosen()->entry);
        const QString words = !isChangedHere() ? Table::tr("Record it anew")
                              : rally          ? Table::tr("Other winner")
                                               : Table::tr("Other numbers");
        m_hows.insert(m_hows.begin() + 1, How::Change);
        options.insert(options.begin() + 1, {words, {}, Qt::Key_O});
    }
    m_how->offer(std::move(options));
    const auto same = std::ranges::find(m_hows, before);
    const bool stays = same != m_hows.end() && (before != How::Change || isChangedHere());
    m_how->choose(stays ? static_cast<int>(same - m_hows.begin()) : 0);
    arrangeRows();
    offerNumbers();
    draftChanged();
}

void RepairBar::howChanged() {
    if (how() == How::Change && !isChangedHere())
        return recordAtTheTable(Placed::How::InsteadOf);
    m_missed->choose(-1);
    arrangeRows();
    offerNumbers();
    draftChanged();
    goToMissing();
}

/// Where numbers are asked for, the rest makes room for them; choosing to put something in shows it again.
void RepairBar::arrangeRows() {
    if (m_drawnUp)
        return;
    const bool numbers = substitutionTeam().has_value();
    setTitle(numbers ? fill(Table::tr("Correct an entry · substitution %1"), {codeOf(state(), *substitutionTeam())})
                     : Table::tr("Correct an entry"));
    m_list->setFixedHeight(look().whole(rowHeight * (numbers ? 1 : rowsShown) + 4));
    if (m_list->currentItem())
        m_list->scrollToItem(m_list->currentItem(), QAbstractItemView::PositionAtCenter);
    setShown(m_missed, how() == How::PutIn && !numbers);
    setShown(m_in, numbers);
    setShown(m_out, numbers);
}

void RepairBar::offerNumbers() {
    const std::optional<Team> team = substitutionTeam();
    if (!team)
        return;
    const MatchState then = stateBefore(recorder().file().ledger().entries(), target());
    m_in->offer(numbersOf(benchOf(then, *team)));
    m_out->offer(numbersOf(sixOf(then, *team)));
    const auto* old = how() == How::Change ? std::get_if<Substitution>(&chosen()->entry) : nullptr;
    m_in->setNumber(old ? std::optional(old->in) : std::nullopt);
    m_out->setNumber(old ? std::optional(old->out) : std::nullopt);
}

void RepairBar::draftChanged() {
    showDraft();
    const std::optional<Entry> entry = drafted();
    if (!entry || isRefused(findings(*entry)))
        return showPreview({});
    const MatchFile& file = recorder().file();
    showPreview(setfolio::sentence(previewOf(file.ledger().entries(), file.state(), {*entry, placed()}), m_log));
}

void RepairBar::showPreview(const QString& words) {
    m_preview->setText(words);
    const int needed = words.isEmpty() ? 0 : m_preview->heightForWidth(m_room);
    const int height = std::max(needed, look().whole(36));
    if (m_preview->height() != height) {
        m_preview->setFixedHeight(height);
        Q_EMIT grown();
    }
}

} // namespace setfolio
