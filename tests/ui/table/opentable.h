// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A table window over a match file of its own, with a clock that the test sets and dialogs that answer at once.
#pragma once

#include "tests/support/matchbuilder.h"
#include "ui/table/tablewindow.h"
#include "ui/wording/errorwords.h"

#include <QAbstractButton>
#include <QTemporaryDir>
#include <QTest>

#include <memory>

namespace setfolio::testing {

class OpenTable {
public:
    explicit OpenTable(const MatchBuilder& match, QSize size = {1366, 768}) : OpenTable(match.entries(), size) {}
    OpenTable(std::span<const Recorded> entries, QSize size) {
        auto file = MatchFile::create(path());
        if (!file)
            qFatal("no match file");
        for (const Recorded& recorded : entries)
            if (!file->record(recorded.entry, recorded.time, recorded.overruled, recorded.placed))
                qFatal("not recorded");
        show(std::move(*file), size);
    }
    /// Closes the window, lets `between` have the file, and opens it again.
    template <typename Between>
    void reopen(Between&& between) {
        m_window.reset();
        between(path());
        auto file = MatchFile::open(path(), Ledger::Access::ReadWrite);
        if (!file)
            qFatal("not opened: %s", qPrintable(sentence(file.error())));
        show(std::move(*file), {1366, 768});
    }

    [[nodiscard]] QString path() const { return m_folder.filePath(QStringLiteral("match.setfolio")); }
    [[nodiscard]] TableWindow& window() { return *m_window; }
    [[nodiscard]] const MatchState& state() const { return m_window->file().state(); }
    [[nodiscard]] const SetState& set() const { return state().set(); }
    [[nodiscard]] PerTeam<int> score() const { return {set().teams.home.points, set().teams.visitors.points}; }
    [[nodiscard]] std::size_t recorded() const { return m_window->file().ledger().entries().size(); }
    [[nodiscard]] const Recorded& newest() const { return m_window->file().ledger().entries().back(); }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QWidget* focus = m_window->focusWidget();
        QTest::keyClick(focus ? focus : m_window.get(), key, modifiers);
    }
    void type(const char* keys) {
        for (; *keys; ++keys)
            QTest::keyClick(m_window->focusWidget(), *keys);
    }
    template <typename Widget = QAbstractButton>
    [[nodiscard]] Widget* find(const char* name) {
        auto* found = m_window->findChild<Widget*>(QLatin1String(name));
        if (!found)
            qFatal("no control named %s", name);
        return found;
    }
    void click(const char* name) { QTest::mouseClick(find<QAbstractButton>(name), Qt::LeftButton); }

    QDateTime now{QDate(2026, 10, 10), QTime(19, 1, 22), Qt::UTC};
    QTime timeOfDay{15, 1, 22};
    TableDialogs dialogs; ///< each answers nothing unless the test says otherwise
    int printed = 0;
    int copied = 0;

private:
    void show(MatchFile file, QSize size) {
        Clock clock{[this] { return now; }, [this] { return timeOfDay; }};
        TableDialogs asked;
        asked.toss = [this](QWidget* w, const MatchState& s) {
            return dialogs.toss ? dialogs.toss(w, s) : std::nullopt;
        };
        asked.lineUp = [this](QWidget* w, const MatchState& s, Team t) {
            return dialogs.lineUp ? dialogs.lineUp(w, s, t) : std::vector<Answer>();
        };
        asked.roster = [this](QWidget* w, const MatchState& s, Team t) {
            return dialogs.roster ? dialogs.roster(w, s, t) : std::nullopt;
        };
        asked.officials = [this](QWidget* w, const MatchState& s) {
            return dialogs.officials ? dialogs.officials(w, s) : std::nullopt;
        };
        asked.setEnd = [this](QWidget* w, const MatchState& s, QTime t) {
            return dialogs.setEnd ? dialogs.setEnd(w, s, t) : std::nullopt;
        };
        asked.closeMatch = [this](QWidget* w, const MatchState& s) {
            return dialogs.closeMatch ? dialogs.closeMatch(w, s) : std::nullopt;
        };
        asked.signOff = [this](QWidget* w, Recorder& r, std::optional<int> set) {
            if (dialogs.signOff)
                dialogs.signOff(w, r, set);
        };
        asked.reopen = [this](QWidget* w, const MatchState& s, std::optional<int> set) {
            return dialogs.reopen ? dialogs.reopen(w, s, set) : std::nullopt;
        };
        asked.print = [this](QWidget*, const MatchFile&) { ++printed; };
        asked.saveCopy = [this](QWidget*, const MatchFile&) { ++copied; };
        auto fonts = SheetFonts::load();
        if (!fonts)
            qFatal("the sheet's typeface is missing");
        m_window = std::make_unique<TableWindow>(std::move(file), clock, *fonts, asked);
        m_window->setWindowState(Qt::WindowNoState);
        m_window->resize(size);
        m_window->show();
        if (!QTest::qWaitForWindowActive(m_window.get()))
            qFatal("the window does not come up");
    }

    QTemporaryDir m_folder;
    std::unique_ptr<TableWindow> m_window;
};

} // namespace setfolio::testing
