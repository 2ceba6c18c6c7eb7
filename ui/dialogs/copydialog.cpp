// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/copydialog.h"

#include "core/ledger/wholefile.h"
#include "ui/dialogs/matchdraft.h"
#include "ui/dialogs/pieces.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/wording/copywords.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/fill.h"

#include <QButtonGroup>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

CopyDialog::CopyDialog(std::span<const Recorded> entries, const QString& folder, FileCalls calls, QWidget* parent)
    : FrameDialog(tr("Save a copy"), tr("For the league, a coach or a spreadsheet; the match itself stays as it is."),
                  tr("Save…"), parent),
      m_entries(entries.begin(), entries.end()),
      m_folder(folder),
      m_calls(std::move(calls)),
      m_forms(new QButtonGroup(this)),
      m_numbersOnly(pieces::toggle(tr("Numbers only"), u"numbersOnly"_s)),
      m_about(pieces::explanation({})),
      m_said(pieces::explanation({})) {
    addForms();
    addNames();
    m_about->setObjectName(u"about"_s);
    m_about->setProperty("secondary", false);
    m_about->setFont(windowFont(15));
    m_about->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    body()->addWidget(m_about, 1);
    m_said->setObjectName(u"said"_s);
    m_said->setFont(windowFont(14, QFont::Medium));
    m_said->setProperty("secondary", false);
    body()->addWidget(m_said);
    findChild<QPushButton*>(u"cancel"_s)->setText(tr("Close"));
    giveRoom(*this, QSize(720, 480));
    explain();
}

void CopyDialog::addForms() {
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    for (const ExportForm form : allExportForms) {
        QPushButton* button = pieces::toggle(nameOf(form), endingOf(form));
        m_forms->addButton(button, static_cast<int>(form));
        row->addWidget(button, 1);
    }
    body()->addLayout(row);
    m_forms->button(static_cast<int>(ExportForm::MatchFile))->setChecked(true);
    m_forms->button(static_cast<int>(ExportForm::MatchFile))->setFocus();
    connect(m_forms, &QButtonGroup::idToggled, this, &CopyDialog::explain);
}

void CopyDialog::addNames() {
    m_numbersOnly->setToolTip(tr("Leaves out all names of persons"));
    auto* row = new QHBoxLayout;
    row->addWidget(m_numbersOnly);
    row->addStretch();
    body()->addLayout(row);
    if (isWithoutNames()) {
        m_numbersOnly->setChecked(true);
        m_numbersOnly->setEnabled(false);
    }
    connect(m_numbersOnly, &QPushButton::toggled, this, &CopyDialog::explain);
}

QString CopyDialog::fileName() const {
    const auto* opened = m_entries.empty() ? nullptr : std::get_if<MatchOpened>(&m_entries.front().entry);
    QString stem = fileNameFor(opened ? *opened : MatchOpened());
    stem.chop(QStringView(u".setfolio").size());
    stem += names() == Names::LeftOut ? u"-numbers-only"_s : form() == ExportForm::MatchFile ? u"-copy"_s : QString();
    return stem + u'.' + endingOf(form());
}

bool CopyDialog::saveTo(const QString& path, bool mayReplace) {
    const bool leaveOut = names() == Names::LeftOut && !isWithoutNames();
    const auto bytes = exported(leaveOut ? withoutNames(m_entries) : m_entries, form());
    if (!bytes) {
        say(sentence(bytes.error()), true);
        return false;
    }
    const bool anew = form() == ExportForm::MatchFile || !mayReplace;
    const auto written = anew ? writeNewFile(path, *bytes, m_calls) : writeWholeFile(path, *bytes, m_calls);
    if (!written)
        say(sentence(written.error()), true);
    else
        say(fill(tr("Saved: %1"), {QDir::toNativeSeparators(path)}), false);
    return written.has_value();
}

void CopyDialog::accept() {
    QString path = QFileDialog::getSaveFileName(
        this, tr("Save a copy"), QDir(m_folder).filePath(fileName()), filesFilter(form()), nullptr,
        form() == ExportForm::MatchFile ? QFileDialog::DontConfirmOverwrite : QFileDialog::Options());
    if (path.isEmpty())
        return;
    const QString ending = u'.' + endingOf(form());
    const bool asked = path.endsWith(ending, Qt::CaseInsensitive); // about a file of that name
    saveTo(asked ? path : path + ending, asked);
}

void CopyDialog::explain() {
    const Names left = isWithoutNames() ? Names::Given : names(); // of what the match holds
    const QString about = aboutCopy(form(), left, left == Names::Given && holdNames(m_entries));
    showSentence(*m_about, about);
    say({}, false);
}

void CopyDialog::say(const QString& sentence, bool problem) {
    showSentence(*m_said, sentence);
    setProblem(*m_said, problem);
    m_said->setVisible(!sentence.isEmpty());
    if (textScale() > 1) // the window scrolls: a long name of a folder need not be cut
        m_said->setMinimumWidth(m_said->minimumSizeHint().width());
}

ExportForm CopyDialog::form() const {
    return static_cast<ExportForm>(m_forms->checkedId());
}

bool CopyDialog::isWithoutNames() const {
    const auto* opened = m_entries.empty() ? nullptr : std::get_if<MatchOpened>(&m_entries.front().entry);
    return opened && opened->namesLeftOut;
}

Names CopyDialog::names() const {
    return m_numbersOnly->isChecked() ? Names::LeftOut : Names::Given;
}

} // namespace setfolio
