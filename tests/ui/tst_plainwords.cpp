// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/limits.h"
#include "tests/support/dressed.h"
#include "tests/support/signoffs.h"
#include "tests/ui/drawnwords.h"
#include "tests/ui/table/opentable.h"
#include "tests/ui/windowscenes.h"
#include "ui/look/plainfield.h"
#include "ui/print/preview.h"

#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTextBrowser>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

/// What a name may not do: be read as markup, as a key of a button, as a formula or a place to be filled in; turn the
/// words round; or break a line.
const QString& hostile() {
    static const QString text = u"=<b>R&D</b>%1+-@\u202Ea\u202C\u2066b\u2069\u2028c"_s;
    return text;
}

/// How it is to be shown.
const QString& plain() {
    static const QString text = u"=<b>R&D</b>%1+-@\u25A1a\u25A1\u25A1b\u25A1\u25A1c"_s;
    return text;
}

/// A set with all that has words: remarks, reasons, overruled findings, corrections.
MatchBuilder fullOfWords() {
    MatchBuilder match;
    match.open(3, signedBySet());
    for (const Team team : bothTeams) {
        Roster roster{team, {}, {}};
        for (int number = 1; number < 9; ++number)
            roster.players.push_back({ShirtNumber(team == Team::Home ? number : number + 10), {}});
        match.add(roster);
    }
    match.add(Officials{{{Role::FirstReferee, {}}, {Role::SecondReferee, {}}, {Role::Scorer, {}}}});
    match.toss(Team::Home).lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
    match.start().play("hv").add(Remark{});
    match.add(Sanction{Team::Home, Member{ShirtNumber(4)}, SanctionLevel::Warning, {}});
    match.add(TimeOut{Team::Home}).add(TimeOut{Team::Home}).add(TimeOut{Team::Home}, QString());
    return match.play("h").add(Strike{match.last(), {}});
}

ShownWindow tableOf(const MatchBuilder& match, std::optional<Qt::Key> key = {}) {
    auto table = std::make_shared<OpenTable>(match);
    if (key)
        table->press(*key);
    QWidget* window = &table->window();
    return {table, window};
}

ShownWindow previewOf(const MatchBuilder& match) {
    const MatchRecord record = match.record();
    auto window =
        std::make_shared<Preview>(PrintedMatch{record, match.entries()}, SheetFonts::load().value(), PreviewOptions{});
    window->show();
    return {window, window.get()};
}

/// All windows of the program, and the table with more words.
std::vector<WindowScene> scenes() {
    std::vector<WindowScene> all = windowScenes();
    all.push_back({"table full of words", [] { return tableOf(fullOfWords()); }});
    all.push_back({"corrections full of words", [] { return tableOf(fullOfWords(), Qt::Key_C); }});
    all.push_back({"preview full of words", [] { return previewOf(fullOfWords()); }});
    return all;
}

/// Those of all lines and columns, and what they say when pointed at.
QStringList wordsIn(const QAbstractItemModel& model) {
    QStringList words;
    for (int column = 0; column < model.columnCount(); ++column) {
        words += model.headerData(column, Qt::Horizontal).toString();
        for (int row = 0; row < model.rowCount(); ++row)
            for (const int role : {Qt::DisplayRole, Qt::EditRole, Qt::ToolTipRole, Qt::AccessibleTextRole,
                                   Qt::AccessibleDescriptionRole})
                words += model.index(row, column).data(role).toString();
    }
    return words;
}

/// What a widget shows or says, by itself.
QStringList wordsOf(const QWidget& widget) {
    QStringList words{widget.toolTip(), widget.accessibleName(), widget.accessibleDescription(), widget.windowTitle()};
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        words += label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        words += button->text();
    if (const auto* field = qobject_cast<const QLineEdit*>(&widget))
        words += {field->text(), field->placeholderText()};
    if (const auto* choice = qobject_cast<const QComboBox*>(&widget))
        words += wordsIn(*choice->model());
    if (const auto* page = qobject_cast<const QTextBrowser*>(&widget))
        words += page->toPlainText();
    if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget); view && view->model())
        words += wordsIn(*view->model());
    for (const QAction* action : widget.actions())
        words += {action->text(), action->toolTip()};
    return words;
}

QList<QWidget*> widgetsOf(QWidget& window) {
    QList<QWidget*> widgets = window.findChildren<QWidget*>();
    widgets.prepend(&window);
    return widgets;
}

QString place(const QWidget& widget, const QString& text) {
    return QLatin1String(widget.metaObject()->className()) + u' ' + widget.objectName() + u": "_s + text;
}

/// Where a window would show markup as markup, or take a sign of a name for the key of a button.
QStringList richWordsIn(QWidget& window) {
    QStringList found;
    for (const QWidget* widget : widgetsOf(window)) {
        const auto* label = qobject_cast<const QLabel*>(widget);
        if (label && label->textFormat() != Qt::PlainText && Qt::mightBeRichText(label->text()))
            found += place(*widget, label->text());
        // a tooltip has no format of its own: what looks like markup is escaped in it
        if (widget->toolTip().contains(u"<b>"_s) && Qt::mightBeRichText(widget->toolTip()))
            found += place(*widget, u"tooltip: "_s + widget->toolTip());
        const auto* button = qobject_cast<const QPushButton*>(widget);
        if (button && button->text().contains(u"R&D"_s))
            found += place(*widget, u"key: "_s + button->text());
        if (label && label->buddy() && label->text().contains(u"R&D"_s))
            found += place(*widget, u"key: "_s + label->text());
    }
    return found;
}

bool holdsWhatSteers(const QString& text) {
    return std::any_of(text.begin(), text.end(), [](QChar c) {
        return (c >= QChar(0x202A) && c <= QChar(0x202E)) || (c >= QChar(0x2066) && c <= QChar(0x2069)) ||
               (c < QChar(0x20) && c != u'\n' && c != u'\t') || (c >= QChar(0x7F) && c <= QChar(0x9F));
    });
}

/// Where a window would turn the order of its words round, or hide some.
QStringList steeredWordsIn(QWidget& window) {
    QStringList found;
    for (QWidget* widget : widgetsOf(window)) {
        QStringList words = wordsOf(*widget);
        if (widget->isVisible())
            for (const DrawnWords& drawn : wordsDrawnBy(*widget))
                words += drawn.text;
        for (const QString& text : words)
            // Qt's own text layout writes a line's end so
            if (holdsWhatSteers(text) || text.contains(QString(QChar::LineSeparator) + u'c'))
                found += place(*widget, text);
    }
    return found;
}

/// Whether a window says or draws a name as it is to be shown.
bool showsAName(QWidget& window) {
    for (QWidget* widget : widgetsOf(window))
        for (const QString& text : wordsOf(*widget))
            if (text.contains(plain()))
                return true;
    return false;
}

void compareToNothing(const QStringList& complaints) {
    QVERIFY2(complaints.isEmpty(), qPrintable(u"\n  "_s + complaints.join(u"\n  "_s)));
}

} // namespace

/// What comes out of a file is shown as it stands, whatever it looks like.
class TestPlainWords : public QObject {
    Q_OBJECT

public:
    TestPlainWords() { MatchBuilder::dressing = Dresser(hostile()); } // the scenes are built only once

private Q_SLOTS:
    void everyWindowShowsNamesAsTheyStand_data() {
        QTest::addColumn<int>("scene");
        int number = 0;
        for (const WindowScene& scene : scenes())
            QTest::newRow(scene.name) << number++;
    }
    void everyWindowShowsNamesAsTheyStand() {
        QFETCH(int, scene);
        const ShownWindow shown = scenes().at(static_cast<std::size_t>(scene)).show();
        compareToNothing(richWordsIn(*shown.window) + steeredWordsIn(*shown.window));
        m_showNames += showsAName(*shown.window) ? 1 : 0;
    }

    /// Otherwise the test above would look at windows without names.
    void mostWindowsShowANameAtAll() {
        qInfo("windows with a name in words: %d", m_showNames);
        QVERIFY(m_showNames >= 40);
    }

    void everyFieldTakesPlainWordsOnly_data() { everyWindowShowsNamesAsTheyStand_data(); }
    void everyFieldTakesPlainWordsOnly() {
        QFETCH(int, scene);
        const ShownWindow shown = scenes().at(static_cast<std::size_t>(scene)).show();
        for (auto* field : shown.window->findChildren<QLineEdit*>()) {
            if (field->isReadOnly() || !field->isEnabled() || !field->isVisible())
                continue;
            field->clear();
            field->insert(u"a\u202Eb\u2066\x1B\u0085\u2029c\n"_s); // as a paste does
            QVERIFY2(!holdsWhatSteers(field->text()) && !field->text().contains(u'\n') &&
                         !field->text().contains(QChar(0x2029)),
                     qPrintable(place(*field, field->text())));
        }
    }

    void aFieldForWordsTakesNamesOfAllScripts() {
        QLineEdit field;
        takePlainWords(field);
        for (const QString& name : {u"\u05D0\u05D3\u05D4 \u05DC\u05D5\u05E0\u05D3"_s,
                                    u"\u0645\u06CC\u200C\u0634\u0648\u062F"_s, u"Ze\u0301 <b>&%1"_s}) {
            field.clear();
            QTest::keyClicks(&field, u"x"_s);
            field.backspace();
            field.insert(name);
            QCOMPARE(field.text(), name);
            QCOMPARE(field.cursorPosition(), name.size());
        }
    }

    void whatIsWrongIsFound() {
        QWidget window;
        auto* label = new QLabel(u"<b>x</b>"_s, &window);
        QCOMPARE(richWordsIn(window).size(), 1);
        label->setTextFormat(Qt::PlainText);
        label->setText(u"a\u202Eb"_s);
        QVERIFY(richWordsIn(window).isEmpty());
        QCOMPARE(steeredWordsIn(window).size(), 1);
        label->setText(u"plain"_s);
        label->setToolTip(u"<b>x</b>"_s);
        new QPushButton(u"R&D"_s, &window);
        QCOMPARE(richWordsIn(window).size(), 2);
        auto* choice = new QComboBox(&window);
        choice->addItem(u"\u2067"_s);
        (new QLineEdit(&window))->setText(u"\u202A"_s);
        QCOMPARE(steeredWordsIn(window).size(), 3); // the choice has a list of its own
    }

private:
    int m_showNames = 0;
};

QTEST_MAIN(TestPlainWords)
#include "tst_plainwords.moc"
