// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/tablewindow.h"

#include "core/rules/notice.h"
#include "ui/look/placeholders.h"
#include "ui/table/conductor.h"
#include "ui/table/deck.h"
#include "ui/table/entrylist.h"
#include "ui/table/inlinebars.h"
#include "ui/table/interval.h"
#include "ui/table/keybutton.h"
#include "ui/table/noticeband.h"
#include "ui/table/panel.h"
#include "ui/table/repair.h"
#include "ui/table/running.h"
#include "ui/table/sheetview.h"
#include "ui/table/stepcard.h"
#include "ui/table/tableactions.h"
#include "ui/table/tablelayout.h"
#include "ui/table/timeoutcard.h"
#include "ui/table/topbar.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/tablewords.h"

#include <QApplication>
#include <QResizeEvent>
#include <QScreen>
#include <QScrollArea>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QSize drawnFor(1366, 768); ///< the window's size at scale 1
constexpr int ticksEvery = 200;      ///< milliseconds

/// Said in two words beside the rest.
bool isShort(const Notice& notice) {
    return notice.kind == NoticeKind::SetPoint || notice.kind == NoticeKind::MatchPoint;
}

/// Shows what has the keyboard, wherever it is.
class Scrolled : public QScrollArea {
public:
    Scrolled() {
        connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
            if (now && now != widget() && isAncestorOf(now))
                ensureWidgetVisible(now);
        });
    }
};

QWidget* scrolled(QWidget* ground) {
    auto* area = new Scrolled;
    area->setObjectName(u"tableScroll"_s);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidgetResizable(true);
    area->setWidget(ground);
    return area;
}

} // namespace

TableWindow::TableWindow(MatchFile file, const Clock& clock, const SheetFonts& fonts)
    : TableWindow(std::move(file), clock, fonts, standardDialogs(fonts, clock)) {}

TableWindow::TableWindow(MatchFile file, Clock clock, SheetFonts fonts, TableDialogs dialogs)
    : m_recorder(new Recorder(std::move(file), std::move(clock), this)),
      m_fonts(std::move(fonts)),
      m_dialogs(std::move(dialogs)) {
    setObjectName(u"tableWindow"_s);
    connect(m_recorder, &Recorder::recorded, this, &TableWindow::showRecorded);
    connect(m_recorder, &Recorder::failed, this, &TableWindow::showFailure);
    connect(m_recorder, &Recorder::placeChanged, this, &TableWindow::refresh);
    build();
    connectCommands();
    tellOfFile();
    applyLook();
    refresh();
    m_ticker.start(ticksEvery);
    connect(&m_ticker, &QTimer::timeout, this, &TableWindow::tick);
    resize(drawnFor);
    const QSize room = screen()->availableSize();
    if (room.width() <= drawnFor.width() || room.height() <= drawnFor.height())
        setWindowState(Qt::WindowMaximized);
}

TableWindow::~TableWindow() = default;

void TableWindow::setLook(LookChoice choice) {
    setProgramLook(choice);
    m_actions->showLook(choice);
    applyLook();
}

void TableWindow::setSight(Sight sight) {
    m_sheet->setSight(sight);
    m_top->setSight(sight);
}

void TableWindow::offerLanguages(std::vector<Language> languages, Language chosen) {
    m_languages = std::move(languages);
    m_language = chosen;
    m_actions->offerLanguages(m_languages, m_language);
}

void TableWindow::perform(TableCommand command) {
    if (mayBeAsked(command, situation()))
        m_conductor->perform(command);
}

void TableWindow::putOverSheet(QWidget& band) {
    m_layout->addBand(band);
}

void TableWindow::setTimeOfDay(std::function<QTime()> timeOfDay) {
    m_recorder->setTimeOfDay(std::move(timeOfDay));
    tick();
}

bool TableWindow::event(QEvent* event) {
    const bool handled = QMainWindow::event(event);
    if (event->type() == QEvent::ApplicationPaletteChange && m_layout) {
        m_actions->showLook(programLook());
        applyLook();
    }
    // the choice comes from the menu, which must not go while it is open
    if (event->type() == QEvent::ApplicationFontChange && m_layout && textScale() != m_textScale)
        QMetaObject::invokeMethod(this, &TableWindow::rebuild, Qt::QueuedConnection);
    if (event->type() == QEvent::UpdateRequest && m_unpainted.value != 0) {
        const EntryNumber number = m_unpainted;
        m_unpainted = {};
        Q_EMIT painted(number);
    }
    return handled;
}

void TableWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        m_recorder->giveUpPlace();
    else
        QMainWindow::keyPressEvent(event);
}

void TableWindow::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    const double scale =
        std::min(static_cast<double>(width()) / drawnFor.width(), static_cast<double>(height()) / drawnFor.height());
    if (std::max(1.0, scale) * m_textScale != m_look.scale)
        applyLook();
    placeBars();
}

void TableWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::ActivationChange && m_top)
        update();
    if (event->type() == QEvent::LanguageChange)
        rebuild();
}

void TableWindow::build() {
    m_textScale = textScale();
    auto* ground = new QWidget(this);
    ground->setObjectName(u"ground"_s);
    ground->setFocusPolicy(Qt::ClickFocus);
    m_top = new TopBar(this);
    setMenuWidget(m_top);
    m_band = new NoticeBand(ground);
    m_sheet = new SheetView(m_fonts, ground);
    m_panel = new Panel(ground);
    m_deck = new Deck(ground);
    m_layout = std::make_unique<TableLayout>(*ground, TableParts{m_band, m_sheet, m_panel, m_deck}, m_textScale > 1);
    setCentralWidget(m_textScale > 1 ? scrolled(ground) : ground);
    ground->setFocus(Qt::OtherFocusReason);
    m_bars = new InlineBars(*m_recorder, *ground);
    inkPlaceholders(*ground);
    connect(m_deck, &Deck::placed, this, &TableWindow::placeBars);
}

/// What is on the screen is made of words through and through: in another language or size all of it is made anew.
void TableWindow::rebuild() {
    const Sight sight = m_sheet->sight();
    delete m_conductor;
    delete m_actions;
    build();
    connectCommands();
    tellOfFile();
    applyLook();
    refresh();
    if (sight != Sight::Enlarged)
        setSight(sight);
    Q_EMIT rebuilt();
}

void TableWindow::connectCommands() {
    m_actions = new TableActions(*this);
    m_actions->fill(m_top->menus());
    const auto stepTime = [this] { return m_panel->step().time(); };
    m_conductor = new Conductor(*m_recorder, *m_bars, m_dialogs, stepTime, *this);
    connect(m_actions, &TableActions::commanded, this, &TableWindow::perform);
    connect(m_actions, &TableActions::lookChosen, this, &TableWindow::setLook);
    connect(m_actions, &TableActions::lookChosen, this, &TableWindow::lookChosen);
    connect(m_actions, &TableActions::textSizeChosen, this, &TableWindow::textSizeChosen);
    connect(m_actions, &TableActions::languageChosen, this, &TableWindow::languageChosen);
    m_actions->offerLanguages(m_languages, m_language);
    connect(m_deck, &Deck::commanded, this, &TableWindow::perform);
    connect(m_deck, &Deck::playerPressed, this, [this](const CourtPlayer& player) {
        if (mayBeAsked(TableCommand::LeftSubstitution, situation()))
            m_conductor->replace(player);
    });
    connect(&m_panel->list(), &EntryList::entryPressed, this, [this](EntryNumber entry) {
        if (mayBeAsked(TableCommand::Correct, situation()))
            m_conductor->correct(entry);
    });
    connect(m_panel, &Panel::commanded, this, &TableWindow::perform);
    for (KeyButton* button : m_top->sights())
        connect(button, &KeyButton::clicked, this, [this, button] { perform(button->command()); });
    connect(m_conductor, &Conductor::refused, this, [this](const QString& sentences) {
        m_refused = sentences;
        showStrip();
    });
    connect(m_conductor, &Conductor::stepChanged, this, &TableWindow::refresh);
    connect(m_conductor, &Conductor::newMatchAsked, this, &TableWindow::newMatchAsked);
    connect(m_conductor, &Conductor::openMatchAsked, this, &TableWindow::openMatchAsked);
    connect(m_conductor, &Conductor::closeAsked, this, &TableWindow::close);
    connect(m_conductor, &Conductor::teamBookAsked, this, &TableWindow::teamBookAsked);
    connect(m_conductor, &Conductor::helpAsked, this, &TableWindow::helpAsked);
    connect(m_conductor, &Conductor::keysAsked, this, &TableWindow::keysAsked);
    connectSight();
}

void TableWindow::connectSight() {
    connect(m_conductor, &Conductor::pageAsked, m_sheet, &SheetView::turn);
    connect(m_conductor, &Conductor::goToLiveAsked, this, [this] {
        m_sheet->goToLive();
        m_panel->putTimeOutAway();
    });
    connect(m_conductor, &Conductor::sightAsked, this, [this](Sight sight) {
        setSight(sight);
        Q_EMIT sightChosen(sight);
    });
    connect(m_conductor, &Conductor::zoomAsked, m_sheet, &SheetView::zoom);
    connect(m_sheet, &SheetView::sightChanged, m_top, &TopBar::setSight);
    connect(m_sheet, &SheetView::entryClicked, m_conductor, &Conductor::correct);
}

void TableWindow::tellOfFile() {
    const Ledger& ledger = file().ledger();
    if (ledger.isReadOnly())
        m_band->tell(BandKind::ReadOnly, readOnlyBecause(ledger.heldBy()));
    if (ledger.torn())
        m_band->tell(BandKind::TailSetAside, sentence(*ledger.torn(), ledger.path()));
    m_top->setSaved(ledger.isReadOnly() ? readOnlyWord() : savedWord(), true);
}

void TableWindow::applyLook() {
    const double scale =
        std::min(static_cast<double>(width()) / drawnFor.width(), static_cast<double>(height()) / drawnFor.height());
    m_look = Look::of(themeOf(QApplication::palette()), std::max(1.0, scale) * m_textScale);
    m_look.stacked = m_textScale > 1;
    setPalette(paletteOf(m_look.theme));
    m_layout->setLook(m_look);
    m_top->setLook(m_look);
    m_band->setLook(m_look);
    m_sheet->setLook(m_look);
    m_panel->setLook(m_look);
    m_deck->setLook(m_look);
    m_bars->setLook(m_look);
    placeBars();
    Q_EMIT lookChanged(m_look);
}

void TableWindow::placeBars() {
    const QWidget& middle = m_deck->middle();
    const QWidget* ground = middle.parentWidget() == m_deck ? m_deck->parentWidget() : middle.parentWidget();
    QRect place(middle.mapTo(ground, QPoint()), middle.size());
    if (m_look.stacked) // the whole width is little enough for a bar
        place.setLeft(m_panel->x());
    m_bars->setPlace(place);
}

void TableWindow::refresh() {
    const MatchState& state = m_recorder->state();
    const Situation now = situation();
    m_actions->setSituation(now);
    if (!state.opened)
        return;
    m_log.follow(file().ledger().entries());
    const DeckView view = deckViewOf(state);
    m_deck->setView(view, now);
    m_panel->setState(state, view, now);
    m_panel->setLog(m_log, state);
    m_sheet->setRecord(file().record(), state.set().number);
    m_top->setTitle(tableTitle(state), tableSet(state));
    setWindowTitle(tableTitle(state));
    showStrip();
    showTimeOut();
    tick();
}

void TableWindow::showStrip() {
    const MatchState& state = m_recorder->state();
    if (!state.opened)
        return;
    StripView strip;
    strip.quiet = matchLine(state);
    strip.refused = m_refused;
    const Recorded* newest = m_recorder->newest();
    if (m_recorder->place()) {
        strip.told += atThePlace(*m_recorder->place(), m_log);
    } else if (newest) {
        if (const auto* substitution = std::get_if<Substitution>(&newest->entry))
            strip.told += substitutionRecorded(*substitution, state);
        for (const Notice& notice : noticesFor(state, newest->entry))
            (!isShort(notice)                       ? strip.told
             : isToBeTold(state.rulebook(), notice) ? strip.points
                                                    : strip.quietPoints) += sentence(notice, state);
    }
    m_deck->strip().setView(strip);
}

void TableWindow::showTimeOut() {
    const Recorded* running = runningTimeOut(file().ledger().entries());
    const MatchState& state = m_recorder->state();
    if (!running || phaseOf(state) != Phase::ReadyToServe) {
        m_panel->hideTimeOut();
        return;
    }
    const qint64 elapsed = running->time.secsTo(m_recorder->clock().utc());
    if (m_panel->showsTimeOut() || elapsed < state.rulebook().timeOutSeconds)
        m_panel->showTimeOut(state, *running);
}

void TableWindow::tick() {
    const Clock& clock = m_recorder->clock();
    m_panel->step().setTimeOfDay(clock.timeOfDay());
    const std::optional<Countdown> countdown = countdownNow(m_recorder->state(), clock);
    m_panel->step().setCountdown(countdown ? countdownWords(*countdown) : QString());
    m_panel->setTime(clock.utc());
}

void TableWindow::showFailure(const LedgerError& error) {
    m_band->tell(BandKind::NotRecorded, notRecorded(sentence(error)));
    m_top->setSaved(notSaved(), false);
}

void TableWindow::showRecorded(EntryNumber number) {
    m_unpainted = number;
    m_refused.clear();
    m_top->setSaved(savedAt(m_recorder->clock().timeOfDay()), true);
    refresh();
}

Situation TableWindow::situation() const {
    return {phaseOf(m_recorder->state()), m_recorder->isReadOnly(), m_recorder->canUndo(), m_recorder->canRedo(),
            m_conductor->isSignOffPutOff()};
}

} // namespace setfolio
