// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The table: the sheet, the deck under it and the panel beside it, for one match.
#pragma once

#include "ui/sheet/fonts.h"
#include "ui/table/clock.h"
#include "ui/table/commands.h"
#include "ui/table/look.h"
#include "ui/table/noticestrip.h"
#include "ui/table/recorder.h"
#include "ui/table/sight.h"
#include "ui/table/tabledialogs.h"
#include "ui/wording/entrylog.h"
#include "ui/wording/languages.h"

#include <QMainWindow>
#include <QTimer>

#include <memory>

namespace setfolio {

class Conductor;
class Deck;
class InlineBars;
class NoticeBand;
class Panel;
class SheetView;
class TableActions;
class TableLayout;
class TopBar;

class TableWindow : public QMainWindow {
    Q_OBJECT

public:
    /// With the dialogs of the program.
    TableWindow(MatchFile file, const Clock& clock, const SheetFonts& fonts);
    TableWindow(MatchFile file, Clock clock, SheetFonts fonts, TableDialogs dialogs);
    ~TableWindow() override;

    [[nodiscard]] const MatchFile& file() const { return m_recorder->file(); }
    /// Marks the look in the menu and gives it to the program, and so to this window and all others.
    void setLook(LookChoice choice);
    /// How much of the sheet is seen, as its buttons do it.
    void setSight(Sight sight);
    /// Makes everything in the window anew: its words or its keys are others. The match and its file stay.
    void rebuild();
    /// The languages that the View menu offers, and which of them is marked as chosen; none are offered at first.
    void offerLanguages(std::vector<Language> languages, Language chosen);
    /// Carries out a command as its key does, if it is enabled.
    void perform(TableCommand command);
    /// A band of somebody else's, between the notices and the sheet; it belongs to the window from now on.
    void putOverSheet(QWidget& band);
    /// Another clock in the hall than the one the window was opened with, as in a story.
    void setTimeOfDay(std::function<QTime()> timeOfDay);
    [[nodiscard]] const Look& look() const { return m_look; }

Q_SIGNALS:
    void lookChanged(const setfolio::Look& look);
    void lookChosen(setfolio::LookChoice choice);
    void textSizeChosen(int percent);
    void sightChosen(setfolio::Sight sight);
    void languageChosen(setfolio::Language language);
    /// Everything in the window has been made anew, in another language; bands over the sheet are gone.
    void rebuilt();
    void newMatchAsked();
    void openMatchAsked();
    void teamBookAsked();
    void helpAsked();
    void keysAsked();
    /// Everything that `entry` changed has been painted.
    void painted(setfolio::EntryNumber entry);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build();
    void connectCommands();
    void connectSight();
    void tellOfFile();
    void applyLook();
    void placeBars();
    void refresh();
    void showStrip();
    void showTimeOut();
    void tick();
    void showFailure(const LedgerError& error);
    void showRecorded(EntryNumber number);
    [[nodiscard]] Situation situation() const;

    Recorder* m_recorder;
    SheetFonts m_fonts;
    TableDialogs m_dialogs;
    TableActions* m_actions = nullptr;
    Conductor* m_conductor = nullptr;
    InlineBars* m_bars = nullptr;
    TopBar* m_top = nullptr;
    NoticeBand* m_band = nullptr;
    SheetView* m_sheet = nullptr;
    Panel* m_panel = nullptr;
    Deck* m_deck = nullptr;
    std::unique_ptr<TableLayout> m_layout;
    double m_textScale = 1; ///< what the window has been built for
    QTimer m_ticker;
    EntryLog m_log;
    QString m_refused;       ///< why the last thing asked for was not recorded
    EntryNumber m_unpainted; ///< recorded, and on its way to the screen
    Look m_look = Look::of(Theme::Light, 1);
    std::vector<Language> m_languages;
    Language m_language = Language::AsSystem;
};

} // namespace setfolio
