// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/frontdesk.h"

#include "app/choices.h"
#include "app/damagedmatch.h"
#include "app/recentmatches.h"
#include "app/tongue.h"
#include "core/ledger/newledger.h"
#include "core/ledger/wholefile.h"
#include "core/record/matchfile.h"
#include "ui/dialogs/newmatchdialog.h"
#include "ui/dialogs/teambookdialog.h"
#include "ui/help/helpdialog.h"
#include "ui/help/keysdialog.h"
#include "ui/look/windowplace.h"
#include "ui/practice/practicedialog.h"
#include "ui/practice/practicesession.h"
#include "ui/print/sheetpages.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/storysheet.h"
#include "ui/table/tablewindow.h"
#include "ui/wording/about.h"
#include "ui/wording/commandwords.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/openwords.h"
#include "ui/wording/storywords.h"

#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUuid>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

QString ownFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + u"/setfolio"_s;
}

TeamBook teamBook() {
    return TeamBook(ownFolder() + u"/teams"_s);
}

/// The demo match to look round in: a copy of the user's own, made once, in which what is entered stays.
QString demoCopy() {
    const QString folder = ownFolder();
    const QString path = folder + u"/demo.setfolio"_s;
    QDir().mkpath(folder);
    if (!QFileInfo::exists(path) && QFile::copy(u":/demo/herons-larks.setfolio"_s, path))
        QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner | QFile::ReadGroup | QFile::ReadOther);
    return path;
}

/// The matches opened last, without the demo match and practice: a new match has nothing to take from invented teams.
QStringList ownPaths() {
    QStringList paths = recentPaths();
    const QString folder = QFileInfo(ownFolder()).canonicalFilePath(); // empty while there is none
    if (!folder.isEmpty())
        paths.removeIf([&](const QString& path) { return path.startsWith(folder + u'/'); });
    return paths;
}

/// What the fields of a new match begin with.
MatchDraft draftFor(const Clock& clock) {
    MatchDraft draft = draftAfter(newestMatch(ownPaths()));
    draft.opened.id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    draft.opened.date = clock.utc().toLocalTime().date();
    return draft;
}

/// A file of its own for each practice match, which can be opened again like any other.
QString practicePath(const Story& story, const Clock& clock) {
    return ownFolder() + u"/practice/%1-%2.setfolio"_s.arg(story.id, clock.utc().toString(u"yyyyMMdd-HHmmss"_s));
}

std::vector<Recorded> recordedAt(const QDateTime& time, const std::vector<Entry>& entries) {
    std::vector<Recorded> recorded;
    for (const Entry& entry : entries)
        recorded.push_back({EntryNumber(static_cast<std::uint32_t>(recorded.size() + 1)), time, entry, std::nullopt});
    return recorded;
}

/// Writes the match file, or gives the sentence that says why it could not be.
tl::expected<void, QString> writeMatch(const QString& path, const std::vector<Recorded>& entries) {
    const auto bytes = ledgerOf(entries);
    if (!bytes) {
        LedgerError error = bytes.error();
        error.path = path;
        return tl::unexpected(sentence(error));
    }
    QDir().mkpath(QFileInfo(path).absolutePath());
    if (const auto written = writeNewFile(path, *bytes, systemCalls()); !written)
        return tl::unexpected(sentence(written.error()));
    return {};
}

} // namespace

FrontDesk::FrontDesk(SheetFonts fonts, Clock clock) : m_fonts(std::move(fonts)), m_clock(std::move(clock)) {}

FrontDesk::~FrontDesk() {
    delete m_startPage;
    for (const QPointer<TableWindow>& table : std::as_const(m_tables))
        delete table;
}

void FrontDesk::showStartPage() {
    m_startPage = new StartPage(recentMatches(recentPaths(), QLocale()));
    m_startPage->setAttribute(Qt::WA_DeleteOnClose);
    m_startPage->setFolder(matchFolder());
    m_startPage->offerLanguages(languagesToChoose(), chosenLanguage());
    // the page is made anew with what was chosen, which must not happen within its own button
    connect(m_startPage, &StartPage::languageChosen, this, &FrontDesk::changeLanguage, Qt::QueuedConnection);
    connect(m_startPage, &StartPage::lookChosen, this, &FrontDesk::changeLook, Qt::QueuedConnection);
    connect(m_startPage, &StartPage::textSizeChosen, this, &FrontDesk::changeTextSize, Qt::QueuedConnection);
    connect(m_startPage, &StartPage::newMatchWanted, this, &FrontDesk::beginMatch);
    connect(m_startPage, &StartPage::matchChosen, this, &FrontDesk::open);
    connect(m_startPage, &StartPage::practiceWanted, this, &FrontDesk::beginPractice);
    connect(m_startPage, &StartPage::demoWanted, this, &FrontDesk::openDemo);
    connect(m_startPage, &StartPage::teamBookWanted, this, [this] { openTeamBook({}); });
    connect(m_startPage, &StartPage::helpWanted, this, &FrontDesk::showHelp);
    m_startPage->setWindowTitle(u"Setfolio"_s);
    m_startPage->show();
}

bool FrontDesk::open(const QString& path) {
    const QString canonical = QFileInfo(path).canonicalFilePath();
    if (TableWindow* table = m_tables.value(canonical); table && !canonical.isEmpty()) {
        table->raise();
        table->activateWindow();
        return true;
    }
    auto file = MatchFile::open(path, Ledger::Access::ReadWrite);
    if (!file) {
        LedgerError error = file.error();
        error.path = path;
        if (m_startPage && !QFileInfo::exists(path))
            m_startPage->showGone(path);
        const QString copy = tellOfDamage(error, parentForMessages());
        return !copy.isEmpty() && open(copy);
    }
    showTable(std::move(*file));
    return true;
}

void FrontDesk::beginMatch() {
    NewMatchDialog dialog(m_laidAside ? *m_laidAside : draftFor(m_clock), matchFolder(), QLocale(),
                          RulebookShelf(ownFolder() + u"/rulebooks"_s), parentForMessages());
    dialog.offer(teamBook(), newestMatch(ownPaths()));
    if (m_laidAside)
        dialog.offerToBeginEmpty();
    const MatchDraft proposed = dialog.draft();
    int answer = dialog.exec();
    for (; answer == QDialog::Accepted; answer = dialog.exec()) {
        const QString path = dialog.path();
        const auto written = writeMatch(path, recordedAt(m_clock.utc(), dialog.result()));
        if (written) {
            m_laidAside.reset();
            rememberMatchFolder(QFileInfo(path).absolutePath());
            open(path);
            return;
        }
        tell(written.error(), parentForMessages());
    }
    if (answer == NewMatchDialog::BeginEmpty) {
        m_laidAside.reset();
        return beginMatch();
    }
    if (const MatchDraft typed = dialog.draft(); typed != proposed)
        m_laidAside = typed;
}

void FrontDesk::beginPractice() {
    PracticeDialog dialog(parentForMessages());
    connect(&dialog, &PracticeDialog::printAsked, this,
            [this, &dialog](const QString& id) { printStory(id, &dialog); });
    if (dialog.exec() != QDialog::Accepted)
        return;
    Story story = practiceStory(dialog.storyId());
    const QString path = practicePath(story, m_clock);
    if (const auto written = writeMatch(path, story.given); !written)
        return tell(written.error(), parentForMessages());
    auto file = MatchFile::open(path, Ledger::Access::ReadWrite);
    if (!file) {
        LedgerError error = file.error();
        error.path = path;
        return tell(sentence(error), parentForMessages());
    }
    TableWindow* table = showTable(std::move(*file));
    new PracticeSession(*table, std::move(story), dialog.pace(), comparisonShown(m_fonts));
}

void FrontDesk::printStory(const QString& id, QWidget* parent) {
    const Story story = practiceStory(id);
    const QString name = QDir(matchFolder()).filePath(id + u".pdf"_s);
    const QString path = QFileDialog::getSaveFileName(parent, storyTitle(id), name, u"PDF (*.pdf)"_s);
    if (path.isEmpty())
        return;
    const auto pages = composeStory(storyTextOf(story), m_fonts, usualPaper(QLocale()));
    const auto pdf = pdfOf(pages, {storyTitle(id), aboutLine(), m_clock.utc()});
    const auto written = pdf ? writeWholeFile(path, *pdf) : tl::expected<void, FileError>();
    if (!pdf)
        tell(sheetsNotDrawn(path), parent);
    else if (!written)
        tell(sentence(written.error()), parent);
    else
        tellDone(pagesWritten(path, static_cast<int>(pages.size())), parent);
}

void FrontDesk::openDemo() {
    open(demoCopy());
}

void FrontDesk::openTeamBook(const MatchState& match) {
    TeamBookDialog(teamBook(), match, parentForMessages()).exec();
}

void FrontDesk::showHelp() {
    HelpDialog(parentForMessages()).exec();
}

void FrontDesk::changeKeys() {
    KeysDialog dialog(changedKeys(), parentForMessages());
    if (dialog.exec() != QDialog::Accepted || dialog.result() == changedKeys())
        return;
    rememberKeys(dialog.result());
    setChangedKeys(dialog.result());
    for (const QPointer<TableWindow>& table : std::as_const(m_tables))
        if (table)
            table->rebuild();
}

void FrontDesk::askForMatch(QWidget* parent) {
    const QString path = QFileDialog::getOpenFileName(parent, openMatchTitle(), matchFolder(), matchFilesFilter());
    if (!path.isEmpty())
        open(path);
}

void FrontDesk::changeLanguage(Language language) {
    rememberLanguage(language);
    speak(language);
    for (const QPointer<TableWindow>& table : std::as_const(m_tables))
        if (table)
            table->offerLanguages(languagesToChoose(), language);
    rebuildStartPage();
}

void FrontDesk::changeLook(LookChoice look) {
    rememberLook(look);
    setProgramLook(look);
    rebuildStartPage();
}

void FrontDesk::changeTextSize(int percent) {
    rememberTextSize(percent);
    setProgramTextSize(percent);
    rebuildStartPage();
}

void FrontDesk::rebuildStartPage() {
    if (m_startPage)
        m_startPage->rebuild(recentMatches(recentPaths(), QLocale()), chosenLanguage());
}

TableWindow* FrontDesk::showTable(MatchFile file) {
    const QString path = QFileInfo(file.ledger().path()).canonicalFilePath();
    rememberMatch(path);
    auto* table = new TableWindow(std::move(file), m_clock, m_fonts, standardDialogs(m_fonts, m_clock));
    table->setAttribute(Qt::WA_DeleteOnClose);
    connect(table, &TableWindow::newMatchAsked, this, &FrontDesk::beginMatch);
    connect(table, &TableWindow::openMatchAsked, this, [this, table] { askForMatch(table); });
    connect(table, &TableWindow::languageChosen, this, &FrontDesk::changeLanguage);
    connect(table, &TableWindow::teamBookAsked, this, [this, table] { openTeamBook(table->file().state()); });
    connect(table, &TableWindow::helpAsked, this, &FrontDesk::showHelp);
    // the window is built anew with its new keys, which must not happen within its own command
    connect(table, &TableWindow::keysAsked, this, &FrontDesk::changeKeys, Qt::QueuedConnection);
    connect(table, &TableWindow::lookChosen, this, rememberLook);
    connect(table, &TableWindow::textSizeChosen, this, &FrontDesk::changeTextSize);
    connect(table, &TableWindow::sightChosen, this, rememberSight);
    table->setSight(chosenSight());
    table->offerLanguages(languagesToChoose(), chosenLanguage());
    m_tables.insert(path, table);
    keepPlace(*table, u"table"_s);
    table->show();
    if (m_startPage)
        m_startPage->close();
    return table;
}

QWidget* FrontDesk::parentForMessages() const {
    return QApplication::activeWindow();
}

} // namespace setfolio
