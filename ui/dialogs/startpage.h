// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the program shows when it is started without a match: begin one, open one, or go on with a recent one.
#pragma once

#include "ui/look/appearance.h"
#include "ui/wording/languages.h"

#include <QString>
#include <QWidget>

#include <map>
#include <vector>

class QBoxLayout;
class QPushButton;

namespace setfolio {

class AppearanceChoice;
class TwoLineButton;

/// A match opened before, as the page lists it.
struct RecentMatch {
    QString path;
    QString title;  ///< "Saltmarsh Herons – Quarry Ridge Larks"
    QString detail; ///< "10 October 2026, SAL 3–1 QRL"
    bool operator==(const RecentMatch&) const = default;
};

class StartPage : public QWidget {
    Q_OBJECT

public:
    /// The newest match first; a short list.
    explicit StartPage(const std::vector<RecentMatch>& recent, QWidget* parent = nullptr);

    /// The folder in which "Open a match file" begins to look.
    void setFolder(const QString& folder) { m_folder = folder; }
    /// Marks the recent match of that path as gone: it can be seen, but no longer chosen.
    void showGone(const QString& path);
    /// Buttons for the languages, with the present choice marked.
    void offerLanguages(std::vector<Language> languages, Language chosen);
    /// Makes everything on the page anew, in the language, look and size of words that are in force now. What had the
    /// keyboard has it again.
    void rebuild(std::vector<RecentMatch> recent, Language chosen);

Q_SIGNALS:
    void newMatchWanted();
    void matchChosen(const QString& path);
    void practiceWanted();
    void demoWanted();
    void teamBookWanted();
    void helpWanted();
    void languageChosen(setfolio::Language language);
    void lookChosen(setfolio::LookChoice look);
    void textSizeChosen(int percent);

protected:
    /// Enter presses the button that has the keyboard.
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    [[nodiscard]] QWidget* makeChoices();
    [[nodiscard]] QBoxLayout* makeSmallChoices();
    [[nodiscard]] QWidget* makeAppearance();
    [[nodiscard]] QWidget* makeRecent();
    void makeKeys();
    void askForFile();

    QString m_folder;
    std::vector<RecentMatch> m_matches;
    std::vector<Language> m_languages;
    AppearanceChoice* m_appearance = nullptr;
    QPushButton* m_newMatch = nullptr;
    std::map<QString, TwoLineButton*> m_recent; ///< by their path
};

} // namespace setfolio
