// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/entrybar.h"

#include "ui/look/controls.h"
#include "ui/look/plainfield.h"
#include "ui/table/numberfield.h"
#include "ui/table/picks.h"
#include "ui/wording/findingwords.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr int longestLine = 120;

} // namespace

EntryBar::EntryBar(Recorder& recorder, QWidget* parent) : InlineBar(parent), m_recorder(recorder) {}

void EntryBar::setLook(const Look& look) {
    InlineBar::setLook(look);
    for (NumberPick* pick : m_numbers)
        pick->setLook(look);
    for (OptionPick* pick : m_options)
        pick->setLook(look);
    for (QLineEdit* line : m_lines) {
        line->setStyleSheet(controlStyle(look.theme));
        line->setFont(look.font(15));
    }
}

void EntryBar::setRoom(int width) {
    const QMargins edge = layout()->contentsMargins();
    const int room = width - edge.left() - edge.right();
    for (NumberPick* pick : m_numbers)
        pick->setRoom(room);
    for (OptionPick* pick : m_options)
        pick->setRoom(room);
}

NumberPick* EntryBar::addNumbers(const QString& label, const QString& name, const QString& prefix) {
    auto* pick = new NumberPick(label, name, prefix, this);
    pick->field().installEventFilter(this);
    addRow(pick);
    m_numbers.push_back(pick);
    return pick;
}

OptionPick* EntryBar::addOptions(const QString& label, const QString& name) {
    auto* pick = new OptionPick(label, name, this);
    addRow(pick);
    m_options.push_back(pick);
    return pick;
}

QLineEdit* EntryBar::addLine(const QString& prompt, const QString& name) {
    auto* line = new QLineEdit(this);
    line->setObjectName(name);
    line->setPlaceholderText(prompt);
    line->setAccessibleName(prompt);
    line->setMaxLength(longestLine);
    takePlainWords(*line);
    addRow(line);
    m_lines.push_back(line);
    return line;
}

void EntryBar::addReason(const QString& name) {
    m_reason = addLine(Table::tr("The referee allows it: why"), name);
    m_reason->hide();
}

Findings EntryBar::findings(const Entry& entry) const {
    return m_recorder.judge(entry);
}

void EntryBar::settled(const Entry&) {
    dismiss();
}

Outcome EntryBar::record(const Entry& entry, const QString& reason) {
    return reason.isEmpty() ? m_recorder.attempt(entry) : m_recorder.overrule(entry, reason);
}

void EntryBar::showDraft() {
    askForReason(false);
    const std::optional<Entry> entry = drafted();
    const Findings against = entry ? findings(*entry) : early();
    if (against.empty())
        setSentence(prompt(), Tone::Plain);
    else
        setSentence(inWords(against), Tone::Problem);
}

void EntryBar::recordPressed() {
    const std::optional<Entry> entry = drafted();
    if (!entry) {
        goToMissing();
        return;
    }
    if (m_recorder.place() && !corrects()) {
        Q_EMIT drawnUp(*entry);
        return;
    }
    const QString reason = m_reason && m_reason->isVisibleTo(this) ? m_reason->text().trimmed() : QString();
    settle(*entry, record(*entry, reason));
}

void EntryBar::askForReason(bool ask) {
    if (!m_reason || m_reason->isVisibleTo(this) == ask)
        return;
    m_reason->clear();
    m_reason->setVisible(ask);
    setRecordWords(ask ? Table::tr("Allowed") : Table::tr("Record"));
    Q_EMIT grown();
    if (ask)
        m_reason->setFocus(Qt::ShortcutFocusReason);
}

void EntryBar::present(QWidget* first) {
    show();
    Q_EMIT grown();
    if (first)
        first->setFocus(Qt::ShortcutFocusReason);
    else
        setFocus(Qt::ShortcutFocusReason);
}

void EntryBar::setShown(QWidget* row, bool shown) {
    if (row->isVisibleTo(this) == shown)
        return;
    row->setVisible(shown);
    Q_EMIT grown();
}

QString EntryBar::inWords(const Findings& findings) const {
    QStringList words;
    for (const Finding& finding : findings)
        words += setfolio::sentence(finding, m_recorder.state());
    return words.join(u' ');
}

bool EntryBar::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && isOptionKey(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return InlineBar::event(event);
}

void EntryBar::keyPressEvent(QKeyEvent* event) {
    if (pressOption(*event))
        return;
    if (event->text().size() == 1 && event->text().front().isDigit() && typeDigit(*event))
        return;
    InlineBar::keyPressEvent(event);
}

/// A digit typed after a tap belongs to the number that is still missing.
bool EntryBar::typeDigit(QKeyEvent& event) {
    goToMissing();
    auto* field = qobject_cast<NumberField*>(window()->focusWidget());
    return field && isAncestorOf(field) && QCoreApplication::sendEvent(field, &event);
}

/// A number field would swallow letters.
bool EntryBar::eventFilter(QObject*, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && isOptionKey(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return event->type() == QEvent::KeyPress && pressOption(*static_cast<QKeyEvent*>(event));
}

bool EntryBar::isOptionKey(const QKeyEvent& event) const {
    const bool plain = !(event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    return plain && std::ranges::any_of(m_options, [&](const OptionPick* pick) {
               return pick->isVisibleTo(this) && pick->hasKey(event.key());
           });
}

bool EntryBar::pressOption(const QKeyEvent& event) {
    if (!isOptionKey(event))
        return false;
    if (!event.isAutoRepeat())
        for (OptionPick* pick : m_options)
            if (pick->isVisibleTo(this) && pick->press(event.key()))
                break;
    return true;
}

void EntryBar::settle(const Entry& entry, const Outcome& outcome) {
    std::visit(Overloaded{
                   [&](const Acknowledged&) { settled(entry); },
                   [&](const Objected& objected) {
                       setSentence(inWords(objected.findings), Tone::Problem);
                       askForReason(!isRefused(objected.findings));
                   },
                   [&](const Failed&) { setSentence(Table::tr("Not recorded."), Tone::Problem); },
               },
               outcome);
}

} // namespace setfolio
