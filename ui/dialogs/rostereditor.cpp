// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rostereditor.h"

#include "core/ledger/wholefile.h"
#include "ui/dialogs/delimited.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rostercsv.h"
#include "ui/dialogs/rostermodel.h"
#include "ui/dialogs/rostertable.h"
#include "ui/dialogs/rostertext.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/errorwords.h"

#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr qint64 largestFile = 1'000'000; ///< a roster is a few kilobytes; anything larger is another file

} // namespace

RosterEditor::RosterEditor(QWidget* parent)
    : QWidget(parent),
      m_model(new RosterModel(this)),
      m_table(new RosterTable(*m_model)),
      m_tools(new QWidget(this)) {
    m_table->setObjectName(u"roster"_s);
    m_table->setAccessibleName(tr("Roster"));
    auto* row = new QVBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_table);
    makeTools();
    connect(m_table, &RosterTable::pasteWanted, this, &RosterEditor::paste);
    connect(m_model, &RosterModel::changed, this, &RosterEditor::showProblems);
    setFocusProxy(m_table);
}

std::vector<RosterRow> RosterEditor::rows() const {
    std::vector<RosterRow> rows = m_model->rows();
    while (!rows.empty() && rows.back().isEmpty())
        rows.pop_back();
    return rows;
}

void RosterEditor::setRows(const std::vector<RosterRow>& rows) {
    m_model->setRows(rows);
    m_table->setCurrentIndex(m_model->index(0, 0));
}

void RosterEditor::setRulebook(const Rulebook& rulebook) {
    m_model->setRulebook(rulebook);
}

int RosterEditor::playerCount() const {
    return static_cast<int>(playersOf(m_model->rows()).size());
}

QString RosterEditor::sentence(const RosterProblem& problem) {
    using enum RosterProblem::Code;
    const QString line = QString::number(problem.line);
    switch (problem.code) {
    case NumberMissing:
        return problem.text.isEmpty() ? tr("Line %1 has no number.").arg(line)
                                      : tr("Line %1: %2 has no number.").arg(line, problem.text);
    case NotANumber:
        return tr("Line %1: “%2” is no shirt number. Numbers go from 0 to 99.").arg(line, problem.text);
    case DoubleZero:
        return tr("Line %1: 00 is no shirt number, 0 is one.").arg(line);
    case NumberNotAllowed:
        return tr("Line %1: the rulebook does not allow number %2, only %3 to %4.")
            .arg(line, problem.text, QString::number(problem.lowest), QString::number(problem.highest));
    case Doubled:
        return tr("Line %1: number %2 stands in line %3 too.").arg(line, problem.text, QString::number(problem.other));
    case SecondCaptain:
        return tr("Line %1: the captain is named in line %2 already.").arg(line, QString::number(problem.other));
    case NameTooLong:
        return tr("Line %1: the name is longer than %2 characters.").arg(line, QString::number(problem.highest));
    case TooManyLines:
        return tr("The text had more than %1 players: those from line %2 on were left out.")
            .arg(QString::number(problem.highest), line);
    case QuoteNotClosed:
        return tr("The text opens a quotation mark in line %1 that is never closed: check the last player.").arg(line);
    }
    Q_UNREACHABLE();
}

void RosterEditor::takeText(const QString& text) {
    RosterText read = rosterFromText(text);
    m_textProblems = std::move(read.problems);
    if (read.rows.empty()) {
        m_fileTrouble = tr("There is no player in that text.");
        return showProblems();
    }
    m_fileTrouble.clear();
    m_before = rows();
    m_back->setVisible(!m_before.empty());
    setRows(read.rows);
}

void RosterEditor::makeTools() {
    auto* paste = pieces::button(tr("Paste a roster"), u"paste"_s);
    auto* file = pieces::button(tr("Read a CSV file…"), u"readFile"_s);
    m_back = pieces::button(tr("Bring back the roster before"), u"bringBack"_s);
    m_back->hide();
    auto* save = pieces::button(tr("Save as CSV…"), u"saveFile"_s);
    m_done = pieces::explanation({});
    m_done->setObjectName(u"rosterDone"_s);
    m_done->hide();
    m_said = new QLabel;
    m_said->setObjectName(u"rosterProblems"_s);
    m_said->setProperty("problem", true);
    m_said->setFont(windowFont(14, QFont::Medium));
    m_said->setTextFormat(Qt::PlainText);
    m_said->setWordWrap(true);
    m_said->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* scroll = new QScrollArea;
    scroll->setProperty("bare", true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidgetResizable(true);
    scroll->setWidget(m_said);
    auto* column = new QVBoxLayout(m_tools);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* both = new QHBoxLayout;
    both->addWidget(paste);
    both->addWidget(file);
    column->addLayout(both);
    column->addWidget(save);
    column->addWidget(m_back);
    column->addWidget(m_done);
    column->addWidget(pieces::explanation(
        tr("Copy the rows in a spreadsheet: number, name, captain, libero. Numbers alone are a proper roster.")));
    column->addWidget(scroll, 1);
    connect(paste, &QPushButton::clicked, this, &RosterEditor::paste);
    connect(file, &QPushButton::clicked, this, &RosterEditor::askForFile);
    connect(save, &QPushButton::clicked, this, &RosterEditor::askWhereToSave);
    connect(m_back, &QPushButton::clicked, this, &RosterEditor::bringBack);
}

void RosterEditor::paste() {
    takeText(QGuiApplication::clipboard()->text());
}

void RosterEditor::askForFile() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Read a roster"), {},
                                                      tr("Text with columns (*.csv *.tsv *.txt);;All files (*)"));
    if (path.isEmpty())
        return;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > largestFile) {
        m_fileTrouble = file.isOpen() ? tr("%1 is too large to be a roster.").arg(path)
                                      : tr("%1 cannot be read (%2).").arg(path, file.errorString());
        return showProblems();
    }
    takeText(textOfFile(file.readAll()));
}

void RosterEditor::askWhereToSave() {
    QString path =
        QFileDialog::getSaveFileName(this, tr("Save the roster"), u"roster.csv"_s, tr("Text with columns (*.csv)"));
    if (path.isEmpty())
        return;
    if (!path.endsWith(u".csv"_s, Qt::CaseInsensitive))
        path += u".csv"_s;
    const auto written = writeWholeFile(path, rosterCsv(rows()));
    m_fileTrouble = written ? QString() : setfolio::sentence(written.error());
    showProblems();
    if (written)
        say(tr("Saved: %1").arg(QDir::toNativeSeparators(path)));
}

void RosterEditor::say(const QString& done) {
    showSentence(*m_done, done);
    m_done->setVisible(!done.isEmpty());
}

void RosterEditor::bringBack() {
    m_textProblems.clear();
    m_fileTrouble.clear();
    m_back->hide();
    setRows(m_before);
}

void RosterEditor::showProblems() {
    QStringList sentences;
    if (!m_fileTrouble.isEmpty())
        sentences << m_fileTrouble;
    for (const RosterProblem& problem : m_textProblems)
        sentences << sentence(problem);
    for (const RosterProblem& problem : m_model->problems())
        sentences << sentence(problem);
    m_said->setText(sentences.join(u'\n'));
    say({});
    Q_EMIT changed();
}

} // namespace setfolio
