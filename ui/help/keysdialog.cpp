// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/help/keysdialog.h"

#include "ui/dialogs/pieces.h"
#include "ui/help/keyfield.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/fill.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QSize usual(980, 660);
constexpr int keyWidth = 170;
constexpr int sideWidth = 340;

QString capsOf(TableCommand command, const ChangedKeys& changed) {
    const QList<QKeySequence> keys = keysOf(command, changed);
    return keys.isEmpty() ? QString() : capOf(keys.first());
}

} // namespace

KeysDialog::KeysDialog(const ChangedKeys& changed, QWidget* parent)
    : FrameDialog(tr("Change keys"), tr("They are kept on this machine and shown wherever they act."),
                  tr("Keep these keys"), parent),
      m_changed(changed),
      m_table(new QTableWidget(static_cast<int>(allCommands().size()), 2)),
      m_name(pieces::heading({})),
      m_field(new KeyField),
      m_said(new QLabel) {
    setObjectName(u"keysDialog"_s);
    m_table->setObjectName(u"commands"_s);
    m_table->setAccessibleName(tr("What can be asked of the table, and its keys"));
    m_table->setHorizontalHeaderLabels({tr("What"), tr("Key")});
    m_table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_table->setColumnWidth(1, scaled(keyWidth));
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(scaled(targetHeight));
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false);
    fillTable();
    auto* row = new QHBoxLayout;
    row->setSpacing(20);
    row->addWidget(m_table, 1);
    row->addWidget(makeSide());
    body()->addLayout(row, 1);
    connect(m_table, &QTableWidget::currentCellChanged, this, &KeysDialog::showChosen);
    connect(m_field, &KeyField::keyPressed, this, &KeysDialog::take);
    giveRoom(*this, usual);
    m_table->setCurrentCell(0, 0);
    showChosen();
    m_table->setFocus();
}

QWidget* KeysDialog::makeSide() {
    auto* side = new QWidget;
    side->setFixedWidth(scaled(sideWidth));
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    m_name->setWordWrap(true);
    column->addWidget(m_name);
    pieces::addField(*column, tr("New key: press it here"), *m_field, u"newKey"_s);
    auto* none = pieces::button(tr("No key"), u"noKey"_s);
    auto* back = pieces::button(tr("Built-in key"), u"builtIn"_s);
    auto* all = pieces::button(tr("All built-in keys"), u"allBuiltIn"_s);
    auto* both = new QHBoxLayout;
    both->addWidget(none);
    both->addWidget(back);
    column->addLayout(both);
    column->addWidget(all);
    m_said->setObjectName(u"said"_s);
    m_said->setFont(windowFont(14, QFont::Medium));
    m_said->setTextFormat(Qt::PlainText);
    m_said->setWordWrap(true);
    m_said->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    column->addWidget(m_said, 1);
    connect(none, &QPushButton::clicked, this, [this] { take(QKeySequence()); });
    connect(back, &QPushButton::clicked, this, &KeysDialog::giveBack);
    connect(all, &QPushButton::clicked, this, &KeysDialog::giveAllBack);
    return side;
}

void KeysDialog::fillTable() {
    int row = 0;
    for (const CommandInfo& info : allCommands()) {
        m_table->setItem(row, 0, new QTableWidgetItem(nameOf(info.command).remove(u'…')));
        m_table->setItem(row, 1, new QTableWidgetItem(capsOf(info.command, m_changed)));
        ++row;
    }
}

TableCommand KeysDialog::chosen() const {
    return allCommands()[static_cast<std::size_t>(std::max(0, m_table->currentRow()))].command;
}

void KeysDialog::showChosen() {
    m_name->setText(nameOf(chosen()).remove(u'…'));
    m_field->setText(capsOf(chosen(), m_changed));
    m_field->setAccessibleDescription(m_name->text());
    say({}, false);
}

void KeysDialog::take(const QKeySequence& key) {
    if (const auto conflict = conflictOf(chosen(), key, m_changed))
        return say(sentence(*conflict, key), true);
    const QList<QKeySequence>& builtIn = infoOf(chosen()).keys;
    if (key == (builtIn.isEmpty() ? QKeySequence() : builtIn.first()))
        m_changed.erase(chosen());
    else
        m_changed.insert_or_assign(chosen(), key);
    fillTable();
    showChosen();
    say(key.isEmpty() ? tr("It has no key now; its menu has it.") : fill(tr("Its key is %1 now."), {capOf(key)}),
        false);
}

void KeysDialog::giveBack() {
    const QList<QKeySequence>& builtIn = infoOf(chosen()).keys;
    take(builtIn.isEmpty() ? QKeySequence() : builtIn.first());
}

void KeysDialog::giveAllBack() {
    m_changed.clear();
    fillTable();
    showChosen();
    say(tr("All keys are the built-in ones again."), false);
}

void KeysDialog::say(const QString& sentence, bool problem) {
    m_said->setText(sentence);
    setProblem(*m_said, problem);
}

} // namespace setfolio
