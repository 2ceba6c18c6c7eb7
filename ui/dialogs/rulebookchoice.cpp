// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebookchoice.h"

#include "core/rules/rulebookcompare.h"
#include "ui/dialogs/dropfields.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rulebookdialog.h"
#include "ui/dialogs/rulebookdraft.h"
#include "ui/dialogs/rulebookview.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/rulebookwords.h"

#include <QButtonGroup>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

QString problemOf(const RulebookFileError& error) {
    if (const auto* file = std::get_if<FileError>(&error.what))
        return sentence(*file);
    return rulebookFileProblem(error.path, std::get<RulebookError>(error.what));
}

bool isPublished(const Rulebook& rulebook) {
    const std::vector<QString> ids = publishedRulebookIds();
    return std::ranges::find(ids, rulebook.id) != ids.end();
}

} // namespace

RulebookChoice::RulebookChoice(const Rulebook& own, RulebookShelf shelf, QWidget& under, QWidget* parent)
    : QWidget(parent),
      m_shelf(std::move(shelf)),
      m_choice(new ChoiceField),
      m_says(new RulebookView),
      m_openWords(pieces::explanation({})),
      m_said(pieces::explanation({})) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    makeChoice(*column);
    column->addWidget(&under);
    makeView(*column);
    collect(own);
    offer(own);
    connect(m_choice, &QComboBox::currentIndexChanged, this, [this] {
        tell({});
        showRulebook();
        Q_EMIT changed();
    });
}

const Rulebook& RulebookChoice::rulebook() const {
    return m_rulebooks.at(static_cast<std::size_t>(std::max(0, m_choice->currentIndex())));
}

void RulebookChoice::makeChoice(QVBoxLayout& column) {
    pieces::addField(column, tr("Rulebook"), *m_choice, u"rulebook"_s);
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    QPushButton* adapt = pieces::button(tr("Adapt…"), u"adapt"_s);
    QPushButton* read = pieces::button(tr("Read from a file…"), u"readRulebook"_s);
    row->addWidget(adapt, 1);
    row->addWidget(read, 1);
    column.addLayout(row);
    m_said->setObjectName(u"rulebookProblem"_s);
    m_said->setProperty("secondary", false);
    m_said->setProperty("problem", true);
    m_said->hide();
    column.addWidget(m_said);
    connect(adapt, &QPushButton::clicked, this, &RulebookChoice::adapt);
    connect(read, &QPushButton::clicked, this, &RulebookChoice::readFile);
}

void RulebookChoice::makeView(QVBoxLayout& column) {
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    auto* group = new QButtonGroup(this);
    m_all = pieces::button(tr("All settings"), u"allSettings"_s);
    m_open = pieces::button(tr("Open points"), u"openPoints"_s);
    for (QPushButton* button : {m_all, m_open}) {
        button->setCheckable(true);
        group->addButton(button);
        row->addWidget(button, 1);
    }
    m_all->setChecked(true);
    m_openWords->setObjectName(u"openPointsWords"_s);
    column.addWidget(m_openWords);
    column.addLayout(row);
    column.addWidget(m_says, 1);
    connect(group, &QButtonGroup::buttonClicked, this, &RulebookChoice::showRulebook);
}

void RulebookChoice::collect(const Rulebook& own) {
    m_rulebooks.clear();
    for (const QString& id : publishedRulebookIds())
        if (const auto published = publishedRulebook(id))
            m_rulebooks.push_back(*published);
    const RulebookShelf::Content kept = m_shelf.content();
    m_rulebooks.insert(m_rulebooks.end(), kept.rulebooks.begin(), kept.rulebooks.end());
    const bool known = std::ranges::find(m_rulebooks, own) != m_rulebooks.end() || m_shelf.has(own);
    if (m_rulebooks.empty() || (!own.id.isEmpty() && !known)) // the last match was played under a copy of its own
        m_rulebooks.push_back(own);
    if (!kept.unread.empty())
        tell(problemOf(kept.unread.front()));
}

void RulebookChoice::offer(const Rulebook& wanted) {
    const QSignalBlocker quiet(m_choice);
    m_choice->clear();
    for (const Rulebook& rulebook : m_rulebooks)
        m_choice->addItem(titleOf(rulebook));
    auto found = std::ranges::find(m_rulebooks, wanted);
    if (found == m_rulebooks.end()) // its newer edition
        found = std::ranges::find(m_rulebooks, wanted.id, &Rulebook::id);
    m_choice->setCurrentIndex(found == m_rulebooks.end() ? 0 : static_cast<int>(found - m_rulebooks.begin()));
    showRulebook();
}

void RulebookChoice::showRulebook() {
    m_says->setRulebook(rulebook(), m_open->isChecked());
    m_openWords->setText(openPointsWords(openPoints(rulebook()).size()) + u' ' + rulesDiffer());
}

void RulebookChoice::adapt() {
    const Rulebook own = isAdapted(rulebook()) ? rulebook() : copyOf(rulebook(), m_addition);
    RulebookDialog dialog(own, m_shelf, namesBut(own), window());
    const int answer = dialog.exec();
    if (answer == QDialog::Rejected)
        return;
    const Rulebook wanted = answer == QDialog::Accepted ? dialog.rulebook() : publishedBaseOf(own);
    tell({});
    collect(wanted);
    offer(wanted);
    Q_EMIT changed();
}

void RulebookChoice::readFile() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Read a rulebook from a file"), QDir::homePath(),
                                                      tr("Rulebooks (*.json)"));
    if (path.isEmpty())
        return;
    const auto read = readRulebook(path);
    if (!read)
        return tell(problemOf(read.error()));
    tell({});
    Rulebook wanted = *read;
    if (std::ranges::find(m_rulebooks, wanted) == m_rulebooks.end()) {
        const bool isFree = !isPublished(wanted) && !m_shelf.has(wanted) && !namesBut({}).contains(wanted.name);
        if (!isFree) // nothing that is kept is written over
            wanted = copyOf(wanted, tr("from a file"));
        if (const auto kept = m_shelf.keep(wanted); !kept)
            tell(sentence(kept.error()));
        collect(wanted);
    }
    offer(wanted);
    Q_EMIT changed();
}

void RulebookChoice::tell(const QString& sentence) {
    showSentence(*m_said, sentence);
    m_said->setVisible(!sentence.isEmpty());
}

Rulebook RulebookChoice::copyOf(const Rulebook& rulebook, const QString& addition) const {
    QSet<QString> ids;
    for (const Rulebook& one : m_rulebooks)
        ids.insert(one.id);
    const QStringList names = namesBut({});
    const QString stem = u"%1, %2"_s.arg(rulebook.name, addition.isEmpty() ? tr("adapted") : addition.simplified());
    QString name = stem;
    for (int count = 2; names.contains(name); ++count)
        name = u"%1 %2"_s.arg(stem).arg(count);
    return copyToAdapt(rulebook, name, ids);
}

QStringList RulebookChoice::namesBut(const Rulebook& rulebook) const {
    QStringList names;
    for (const Rulebook& one : m_rulebooks)
        if (one.id != rulebook.id)
            names << one.name;
    return names;
}

} // namespace setfolio
