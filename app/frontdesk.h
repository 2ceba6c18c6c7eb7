// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where matches are asked for: shows the start page, opens each match in a window of its own, and begins new ones.
#pragma once

#include "ui/dialogs/matchdraft.h"
#include "ui/look/appearance.h"
#include "ui/sheet/fonts.h"
#include "ui/table/clock.h"
#include "ui/wording/languages.h"

#include <QMap>
#include <QObject>
#include <QPointer>

#include <optional>

namespace setfolio {

class StartPage;
class TableWindow;

class FrontDesk : public QObject {
    Q_OBJECT

public:
    FrontDesk(SheetFonts fonts, Clock clock);
    ~FrontDesk() override;

    void showStartPage();
    /// False if there is now no window for it; why has been said. A match that is open already comes to the front.
    bool open(const QString& path);

private:
    void beginMatch();
    void beginPractice();
    void printStory(const QString& id, QWidget* parent);
    void openDemo();
    void openTeamBook(const MatchState& match);
    void showHelp();
    void changeKeys();
    void askForMatch(QWidget* parent);
    void changeLanguage(Language language);
    void changeLook(LookChoice look);
    void changeTextSize(int percent);
    void rebuildStartPage();
    class TableWindow* showTable(class MatchFile file);
    [[nodiscard]] QWidget* parentForMessages() const;

    SheetFonts m_fonts;
    Clock m_clock;
    std::optional<MatchDraft> m_laidAside; ///< typed for a new match and cancelled: the next one begins with it
    QPointer<StartPage> m_startPage;
    QMap<QString, QPointer<TableWindow>> m_tables; ///< by the canonical path of their match file
};

} // namespace setfolio
