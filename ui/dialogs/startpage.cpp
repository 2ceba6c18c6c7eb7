// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/startpage.h"

#include "ui/dialogs/appearancechoice.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/twolinebutton.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"

#include <QDir>
#include <QFileDialog>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QSize smallest(1080, 640);
constexpr QSize usual(1160, 680); ///< eight matches without scrolling

} // namespace

StartPage::StartPage(const std::vector<RecentMatch>& recent, QWidget* parent) : QWidget(parent), m_matches(recent) {
    setObjectName(u"page"_s);
    setAttribute(Qt::WA_StyledBackground);
    makeKeys();
    build();
    m_newMatch->setFocus();
}

void StartPage::build() {
    dress(*this);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(40, 40, 40, 40);
    row->setSpacing(40);
    row->addStretch(1);
    row->addWidget(makeChoices());
    row->addWidget(makeRecent());
    row->addStretch(1);
    pieces::fillWith(*this, row);
    setMinimumSize(smallest);
    if (!isMaximized())
        giveRoom(*this, usual);
    setFocusProxy(m_newMatch);
}

void StartPage::rebuild(std::vector<RecentMatch> recent, Language chosen) {
    const QString name = focusWidget() ? focusWidget()->objectName() : QString();
    qDeleteAll(findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
    delete layout();
    m_recent.clear();
    m_matches = std::move(recent);
    setStyleSheet({});
    setPalette({}); // that of the program again
    build();
    m_appearance->offerLanguages(m_languages, chosen);
    for (QWidget* child : findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        child->show(); // what is hidden cannot have the keyboard
    auto* before = findChild<QWidget*>(name);
    (before ? before : m_newMatch)->setFocus();
}

void StartPage::showGone(const QString& path) {
    const auto found = m_recent.find(path);
    if (found == m_recent.end())
        return;
    found->second->setDetail(tr("The file is no longer there: %1").arg(QDir::toNativeSeparators(path)));
    found->second->setEnabled(false);
}

void StartPage::offerLanguages(std::vector<Language> languages, Language chosen) {
    m_languages = std::move(languages);
    m_appearance->offerLanguages(m_languages, chosen);
}

void StartPage::keyPressEvent(QKeyEvent* event) {
    auto* button = qobject_cast<QPushButton*>(focusWidget());
    if (button && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter))
        return button->click();
    QWidget::keyPressEvent(event);
}

QWidget* StartPage::makeChoices() {
    auto* side = new QWidget;
    side->setFixedWidth(scaled(400));
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    column->addWidget(pieces::heading(u"Setfolio"_s, 40));
    auto* lead = pieces::explanation(tr("The score sheet of a volleyball match, kept at the table and printed for the "
                                        "signatures."));
    column->addWidget(lead);
    column->addSpacing(14);
    m_newMatch = new TwoLineButton(tr("New match…"), tr("Teams, rosters, officials and rulebook"));
    m_newMatch->setObjectName(u"newMatch"_s);
    makePrimary(*m_newMatch);
    auto* open = new TwoLineButton(tr("Open a match file…"), tr("Go on with a match, or read and print it"));
    open->setObjectName(u"openFile"_s);
    auto* practice = new TwoLineButton(tr("Practice…"), tr("A set is told to you, and your sheet compared"));
    practice->setObjectName(u"practice"_s);
    auto* demo = new TwoLineButton(tr("Open the demo match"), tr("Invented teams, to look round"));
    demo->setObjectName(u"demo"_s);
    for (QPushButton* button : std::initializer_list<QPushButton*>{m_newMatch, open, practice, demo})
        column->addWidget(button);
    column->addLayout(makeSmallChoices());
    column->addStretch();
    column->addWidget(makeAppearance());
    connect(m_newMatch, &QPushButton::clicked, this, &StartPage::newMatchWanted);
    connect(open, &QPushButton::clicked, this, &StartPage::askForFile);
    connect(practice, &QPushButton::clicked, this, &StartPage::practiceWanted);
    connect(demo, &QPushButton::clicked, this, &StartPage::demoWanted);
    return side;
}

QBoxLayout* StartPage::makeSmallChoices() {
    auto* book = pieces::button(tr("Team book…"), u"teamBook"_s);
    auto* help = pieces::button(tr("Help…"), u"help"_s);
    help->setToolTip(tr("How things are entered, F1"));
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    row->addWidget(book, 1);
    row->addWidget(help, 1);
    connect(book, &QPushButton::clicked, this, &StartPage::teamBookWanted);
    connect(help, &QPushButton::clicked, this, &StartPage::helpWanted);
    return row;
}

QWidget* StartPage::makeAppearance() {
    m_appearance = new AppearanceChoice;
    connect(m_appearance, &AppearanceChoice::languageChosen, this, &StartPage::languageChosen);
    connect(m_appearance, &AppearanceChoice::lookChosen, this, &StartPage::lookChosen);
    connect(m_appearance, &AppearanceChoice::textSizeChosen, this, &StartPage::textSizeChosen);
    return m_appearance;
}

QWidget* StartPage::makeRecent() {
    auto* side = new QWidget;
    side->setFixedWidth(scaled(560));
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(10);
    column->addWidget(pieces::heading(tr("Recent matches")));
    if (m_matches.empty())
        column->addWidget(pieces::explanation(tr("None yet. Matches that you keep or open are listed here.")));
    auto* list = new QWidget;
    auto* rows = new QVBoxLayout(list);
    rows->setContentsMargins(0, 0, 6, 0);
    rows->setSpacing(8);
    for (const RecentMatch& match : m_matches) {
        auto* button = new TwoLineButton(match.title, match.detail);
        button->setObjectName(u"recent"_s);
        button->setToolTip(plainTip(match.path));
        rows->addWidget(button);
        m_recent.insert_or_assign(match.path, button);
        connect(button, &QPushButton::clicked, this, [this, path = match.path] { Q_EMIT matchChosen(path); });
    }
    rows->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setProperty("bare", true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidgetResizable(true);
    scroll->setWidget(list);
    column->addWidget(scroll, 1);
    return side;
}

void StartPage::makeKeys() {
    connect(new QShortcut(QKeySequence::New, this), &QShortcut::activated, this, &StartPage::newMatchWanted);
    connect(new QShortcut(QKeySequence::Open, this), &QShortcut::activated, this, &StartPage::askForFile);
    connect(new QShortcut(Qt::Key_F1, this), &QShortcut::activated, this, &StartPage::helpWanted);
}

void StartPage::askForFile() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a match file"), m_folder, tr("Matches (*.setfolio)"));
    if (!path.isEmpty())
        Q_EMIT matchChosen(path);
}

} // namespace setfolio
