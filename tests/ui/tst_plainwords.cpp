// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/signoffs.h"
#include "tests/ui/drawnwords.h"
#include "tests/ui/table/opentable.h"
#include "ui/dialogs/lineupdialog.h"
#include "ui/dialogs/rosterdialog.h"
#include "ui/dialogs/setdialogs.h"
#include "ui/dialogs/tossdialog.h"
#include "ui/signoff/reopendialog.h"
#include "ui/signoff/signoffdialog.h"

#include <QLabel>
#include <QListWidget>
#include <QTest>

#include <functional>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

/// A match whose every name, reason and remark is this text.
MatchBuilder matchOf(const QString& hostile, bool ended) {
    MatchOpened opened;
    opened.bestOf = 3;
    opened.rulebook = signedBySet();
    opened.competition = opened.division = opened.matchNumber = opened.venue = hostile;
    opened.teams.home = {hostile, hostile.left(6), hostile};
    opened.teams.visitors = {hostile, hostile.left(6), hostile};
    MatchBuilder match;
    match.add(opened);
    for (const Team team : bothTeams) {
        const int first = team == Team::Home ? 1 : 11;
        Roster roster{team, {}, hostile};
        for (int number = first; number < first + 8; ++number)
            roster.players.push_back({ShirtNumber(number), hostile});
        match.add(roster);
    }
    match.add(Officials{{{Role::FirstReferee, hostile}, {Role::SecondReferee, hostile}, {Role::Scorer, hostile}}});
    match.toss(Team::Home).lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
    match.start().play("hv").add(Remark{hostile});
    match.add(Sanction{Team::Home, Member{ShirtNumber(4)}, SanctionLevel::Warning, hostile});
    match.add(TimeOut{Team::Home}).add(TimeOut{Team::Home}).add(TimeOut{Team::Home}, hostile);
    match.play("h").add(Strike{match.last(), hostile});
    for (int i = 0; ended && i < 25; ++i)
        match.add(RallyWon{Team::Home});
    return ended ? match.add(SetEnded{QTime(18, 59)}) : match;
}

/// What a widget shows or says, by itself.
QStringList wordsOf(const QWidget& widget) {
    QStringList words{widget.toolTip(), widget.accessibleName(), widget.accessibleDescription(), widget.windowTitle()};
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        words += label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        words += button->text();
    if (const auto* list = qobject_cast<const QListWidget*>(&widget))
        for (int row = 0; row < list->count(); ++row)
            words += list->item(row)->text();
    return words;
}

/// Where a window would show markup as markup.
QStringList richWordsIn(const QWidget& window) {
    QStringList found;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        const auto* label = qobject_cast<const QLabel*>(widget);
        if (label && label->textFormat() != Qt::PlainText && Qt::mightBeRichText(label->text()))
            found += label->objectName() + u": "_s + label->text();
        // a tooltip has no format of its own: what looks like markup is escaped in it
        if (Qt::mightBeRichText(widget->toolTip()) && widget->toolTip().contains(u"<b>"_s))
            found += widget->objectName() + u", tooltip: "_s + widget->toolTip();
    }
    return found;
}

/// Where a window would turn the order of its words round, or hide some.
QStringList steeredWordsIn(QWidget& window) {
    QStringList found;
    QList<QWidget*> widgets = window.findChildren<QWidget*>();
    widgets.prepend(&window);
    for (QWidget* widget : widgets) {
        QStringList words = wordsOf(*widget);
        if (widget->isVisible())
            for (const DrawnWords& drawn : wordsDrawnBy(*widget))
                words += drawn.text;
        for (const QString& text : words)
            if (text.contains(QChar(0x202E)))
                found +=
                    QLatin1String(widget->metaObject()->className()) + u' ' + widget->objectName() + u": "_s + text;
    }
    return found;
}

using Show = std::function<void(const QString& hostile, const std::function<void(QWidget&)>& look)>;

template <typename Window, typename... Arguments>
void lookAt(const std::function<void(QWidget&)>& look, Arguments&&... arguments) {
    Window window(std::forward<Arguments>(arguments)...);
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    look(window);
}

void showSignOff(const QString& hostile, const std::function<void(QWidget&)>& look, int presses) {
    QTemporaryDir folder;
    auto file = MatchFile::create(folder.filePath(u"match.setfolio"_s));
    const MatchBuilder match = matchOf(hostile, true);
    for (const Recorded& recorded : match.entries())
        if (!file->record(recorded.entry, recorded.time, recorded.overruled, recorded.placed))
            qFatal("not recorded");
    Recorder recorder(std::move(*file), {[] { return QDateTime(QDate(2026, 10, 10), QTime(20, 0), Qt::UTC); }, {}});
    SignOffDialog dialog(recorder, 1, SheetFonts::load().value());
    dialog.show();
    QVERIFY(QTest::qWaitForWindowExposed(&dialog));
    for (int i = 0; i < presses; ++i)
        dialog.findChild<QPushButton*>(u"next"_s)->click();
    look(dialog);
}

} // namespace

Q_DECLARE_METATYPE(Show)

/// What comes out of a file is shown as it stands, whatever it looks like.
class TestPlainWords : public QObject {
    Q_OBJECT

private:
    static void windows() {
        QTest::addColumn<Show>("show");
        const auto row = [](const char* name, Show show) { QTest::newRow(name) << std::move(show); };
        row("table in a set", [](const auto& hostile, const auto& look) {
            OpenTable table(matchOf(hostile, false));
            look(table.window());
        });
        row("table with the corrections", [](const auto& hostile, const auto& look) {
            OpenTable table(matchOf(hostile, false));
            table.press(Qt::Key_C);
            look(table.window());
        });
        row("table between sets", [](const auto& hostile, const auto& look) {
            OpenTable table(matchOf(hostile, true));
            look(table.window());
        });
        row("roster", [](const auto& hostile, const auto& look) {
            lookAt<RosterDialog>(look, matchOf(hostile, true).state(), Team::Home);
        });
        row("toss",
            [](const auto& hostile, const auto& look) { lookAt<TossDialog>(look, matchOf(hostile, true).state()); });
        row("line-ups", [](const auto& hostile, const auto& look) {
            lookAt<LineUpDialog>(look, matchOf(hostile, true).state(), Team::Home);
        });
        row("end of a set", [](const auto& hostile, const auto& look) {
            lookAt<SetEndDialog>(look, matchOf(hostile, false).state(), QTime(18, 0), QLocale::c());
        });
        row("close of the match", [](const auto& hostile, const auto& look) {
            lookAt<MatchCloseDialog>(look, matchOf(hostile, true).state(), QLocale::c());
        });
        row("sign-off, review", [](const auto& hostile, const auto& look) { showSignOff(hostile, look, 0); });
        row("sign-off, signatures", [](const auto& hostile, const auto& look) { showSignOff(hostile, look, 1); });
        row("reopening", [](const auto& hostile, const auto& look) {
            lookAt<ReopenDialog>(look, matchOf(hostile, true).state(), 1);
        });
    }

private Q_SLOTS:
    void markupIsShownAsItStands_data() { windows(); }
    void markupIsShownAsItStands() {
        QFETCH(Show, show);
        show(u"<b>x</b> =1+1"_s, [](QWidget& window) {
            const QStringList found = richWordsIn(window);
            QVERIFY2(found.isEmpty(), qPrintable(found.join(u"\n  "_s)));
        });
    }

    void nothingTurnsTheOrderOfWordsRound_data() { windows(); }
    void nothingTurnsTheOrderOfWordsRound() {
        QFETCH(Show, show);
        show(u"-a\u202Eb"_s, [](QWidget& window) {
            const QStringList found = steeredWordsIn(window);
            QVERIFY2(found.isEmpty(), qPrintable(found.join(u"\n  "_s)));
        });
    }

    void whatIsWrongIsFound() {
        QWidget window;
        auto* label = new QLabel(u"<b>x</b>"_s, &window);
        QCOMPARE(richWordsIn(window).size(), 1);
        label->setTextFormat(Qt::PlainText);
        label->setText(u"a\u202Eb"_s);
        QVERIFY(richWordsIn(window).isEmpty());
        QCOMPARE(steeredWordsIn(window).size(), 1);
    }
};

QTEST_MAIN(TestPlainWords)
#include "tst_plainwords.moc"
