// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebookdialog.h"

#include "core/rules/rulebookcompare.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rulebooktable.h"
#include "ui/dialogs/settingpanel.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/rulebookwords.h"

#include <QButtonGroup>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QSize usual(1320, 690);
constexpr int panelWidth = 474;
constexpr int findWidth = 170;

} // namespace

RulebookDialog::RulebookDialog(const Rulebook& own, RulebookShelf shelf, QStringList takenNames, QWidget* parent)
    : FrameDialog(tr("Adapt a rulebook"), {}, tr("Keep this rulebook"), parent),
      m_draft(publishedBaseOf(own), own),
      m_begun(own),
      m_shelf(std::move(shelf)),
      m_takenNames(std::move(takenNames)),
      m_rows(m_draft),
      m_name(pieces::lineEdit()),
      m_find(pieces::lineEdit(tr("Find"))),
      m_show(new QButtonGroup(this)),
      m_table(new RulebookTable(m_rows)),
      m_panel(new SettingPanel(m_draft, *m_table)),
      m_said(new QLabel) {
    makeBody();
    makeFoot();
    recordButton()->setDefault(false); // Enter goes to the next setting
    recordButton()->setAutoDefault(false);
    connect(m_table, &RulebookTable::chosen, m_panel, [this](const QString& key) {
        if (!key.isEmpty())
            m_panel->showSetting(key);
    });
    connect(m_panel, &SettingPanel::changed, this, &RulebookDialog::review);
    giveRoom(*this, usual);
    showRows();
    m_name->setFocus();
    m_name->selectAll();
}

void RulebookDialog::accept() {
    if (const QString problem = nameProblem(); !problem.isEmpty()) {
        m_name->setFocus();
        return tell(problem);
    }
    if (!m_panel->isGood()) {
        m_panel->takeKeyboard();
        return tell(adaptingProblem({RulebookError::Code::OutOfRange, m_table->key()}));
    }
    if (const auto problem = m_draft.problem()) {
        m_show->button(static_cast<int>(RulebookRows::Show::All))->setChecked(true);
        m_find->clear();
        showRows();
        m_table->choose(problem->setting);
        m_panel->takeKeyboard();
        return tell(adaptingProblem(*problem));
    }
    if (const auto kept = m_shelf.keep(m_draft.own()); !kept)
        return tell(sentence(kept.error()));
    FrameDialog::accept();
}

void RulebookDialog::reject() {
    if (m_draft.own() == m_begun || m_warned)
        return FrameDialog::reject();
    tell(tr("What you have changed is not kept yet: press Cancel or Escape once more to drop it."));
    m_warned = true;
}

void RulebookDialog::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter)
        return FrameDialog::keyPressEvent(event);
    if (auto* button = qobject_cast<QPushButton*>(focusWidget()))
        return button->click();
    m_table->chooseNext();
    m_panel->takeKeyboard();
}

void RulebookDialog::makeHead() {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    const QStringList names{tr("All"), tr("Only what differs"), tr("Only open points")};
    for (int which = 0; which < names.size(); ++which) {
        QPushButton* button = pieces::button(names.at(which), u"show%1"_s.arg(which));
        button->setCheckable(true);
        button->setChecked(which == 0);
        m_show->addButton(button, which);
        row->addWidget(button);
    }
    m_find->setObjectName(u"find"_s);
    m_find->setAccessibleName(tr("Find a setting"));
    m_find->setMinimumWidth(scaled(findWidth));
    m_find->setClearButtonEnabled(true);
    row->addWidget(m_find, 1);
    body()->addLayout(row);
    connect(m_show, &QButtonGroup::idClicked, this, &RulebookDialog::showRows);
    connect(m_find, &QLineEdit::textChanged, this, &RulebookDialog::showRows);
}

void RulebookDialog::makeBody() {
    pieces::addField(*body(), tr("Name of your own, such as %1").arg(tr("High school (NFHS), Estuary League")), *m_name,
                     u"name"_s);
    m_name->setText(m_begun.name);
    connect(m_name, &QLineEdit::textChanged, this, [this](const QString& name) {
        m_draft.setName(name.simplified());
        review();
    });
    makeHead();
    auto* row = new QHBoxLayout;
    row->setSpacing(16);
    row->addWidget(m_table, 1);
    auto* scroll = new QScrollArea; // some settings need more room than there is on a small screen
    scroll->setProperty("bare", true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFixedWidth(scaled(panelWidth));
    scroll->setWidget(m_panel);
    row->addWidget(scroll);
    body()->addLayout(row, 1);
    m_said->setObjectName(u"problem"_s);
    m_said->setProperty("problem", true);
    m_said->setFont(windowFont(14, QFont::Medium));
    m_said->setTextFormat(Qt::PlainText);
    m_said->setWordWrap(true);
    body()->addWidget(m_said);
    m_said->hide();
}

void RulebookDialog::makeFoot() {
    QPushButton* write = pieces::button(tr("Write to a file…"), u"writeFile"_s);
    addToFoot(write);
    connect(write, &QPushButton::clicked, this, &RulebookDialog::writeFile);
    if (!m_shelf.has(m_begun))
        return;
    QPushButton* remove = pieces::button(tr("Remove from this machine"), u"remove"_s);
    addToFoot(remove);
    connect(remove, &QPushButton::clicked, this, &RulebookDialog::removeOwn);
}

void RulebookDialog::showRows() {
    const QString key = m_table->key();
    m_rows.show(static_cast<RulebookRows::Show>(m_show->checkedId()), m_find->text());
    if (!m_table->choose(key))
        m_table->chooseNext();
    m_panel->setVisible(m_table->currentIndex().isValid());
    review();
}

void RulebookDialog::review() {
    m_rows.refresh();
    m_show->button(1)->setText(tr("Only what differs (%1)").arg(m_draft.differences()));
    m_show->button(2)->setText(tr("Only open points (%1)").arg(openPoints(m_draft.own()).size()));
    m_warned = false;
    tell({});
}

void RulebookDialog::tell(const QString& sentence) {
    showSentence(*m_said, sentence);
    m_said->setVisible(!sentence.isEmpty());
}

QString RulebookDialog::nameProblem() const {
    const QString& name = m_draft.own().name;
    if (name.isEmpty())
        return tr("The rulebook needs a name of its own.");
    if (m_takenNames.contains(name, Qt::CaseInsensitive))
        return tr("Another rulebook has that name: give this one a name of its own.");
    return {};
}

void RulebookDialog::writeFile() {
    if (const auto problem = m_draft.problem())
        return tell(adaptingProblem(*problem));
    QString path =
        QFileDialog::getSaveFileName(this, tr("Write the rulebook to"),
                                     QDir::home().filePath(rulebookFileName(m_draft.own())), tr("Rulebooks (*.json)"));
    if (path.isEmpty())
        return;
    if (const auto written = writeRulebook(path, m_draft.own()); !written)
        tell(sentence(written.error()));
}

void RulebookDialog::removeOwn() {
    if (!m_shelf.remove(m_begun))
        return tell(tr("The rulebook’s file cannot be removed."));
    done(Removed);
}

} // namespace setfolio
