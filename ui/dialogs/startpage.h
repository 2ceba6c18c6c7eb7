// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the program shows when it is started without a match: begin one, open one, or go on with a recent one.
#pragma once

#include "ui/wording/languages.h"

#include <QString>
#include <QWidget>

#include <map>
#include <vector>

class QBoxLayout;
class QPushButton;

namespace setfolio {

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
    void offerLanguages(const std::vector<Language>& languages, Language chosen);

Q_SIGNALS:
    void newMatchWanted();
    void matchChosen(const QString& path);
    void practiceWanted();
    void demoWanted();
    void teamBookWanted();
    void helpWanted();
    void languageChosen(setfolio::Language language);

protected:
    /// Enter presses the button that has the keyboard.
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QWidget* makeChoices();
    [[nodiscard]] QBoxLayout* makeSmallChoices();
    [[nodiscard]] QWidget* makeRecent(const std::vector<RecentMatch>& recent);
    void makeKeys();
    void askForFile();

    QString m_folder;
    QBoxLayout* m_languages = nullptr;
    QPushButton* m_newMatch = nullptr;
    std::map<QString, TwoLineButton*> m_recent; ///< by their path
};

} // namespace setfolio
