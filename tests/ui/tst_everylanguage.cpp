// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/sweep.h"
#include "tests/ui/wornwindow.h"
#include "ui/look/plate.h"
#include "ui/table/keys.h"

#include <QPushButton>
#include <QRegularExpression>
#include <QTableView>
#include <QTest>

using namespace Qt::Literals::StringLiterals;
using namespace setfolio::testing;
using namespace setfolio;

namespace {

/// Every language in every look on every screen; without SETFOLIO_LONG each language, look and screen once.
std::vector<Worn> tried() {
    if (!qEnvironmentVariableIsSet("SETFOLIO_LONG"))
        return {{Language::Spanish, LookChoice::Light, wornScreens.front()},
                {Language::French, LookChoice::Dark, wornScreens.front()},
                {Language::English, LookChoice::HighContrast, wornScreens.back()}};
    std::vector<Worn> all;
    for (const Language language : wornLanguages)
        for (const LookChoice look : wornLooks)
            for (const QSize screen : wornScreens)
                all.push_back({language, look, screen});
    return all;
}

const WindowScene& sceneCalled(std::string_view name) {
    const auto found = std::ranges::find(windowScenes(), name, [](const WindowScene& scene) { return scene.name; });
    Q_ASSERT(found != windowScenes().end());
    return *found;
}

} // namespace

class TestEveryLanguage : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() { undress(); }
    void noWordsAreCutOffAndNothingIsOutOfReach_data();
    void noWordsAreCutOffAndNothingIsOutOfReach();
    void theNamesAndValuesOfAllSettingsFit_data() { languages(); }
    void theNamesAndValuesOfAllSettingsFit();
    void theWordsAreThoseOfTheLanguage();
    void theKeysAreThoseOfTheKeyboard_data();
    void theKeysAreThoseOfTheKeyboard();

private:
    static void languages();
};

void TestEveryLanguage::languages() {
    QTest::addColumn<Language>("language");
    for (const Language language : wornLanguages)
        QTest::newRow(qPrintable(codeOf(language))) << language;
}

void TestEveryLanguage::noWordsAreCutOffAndNothingIsOutOfReach_data() {
    QTest::addColumn<int>("scene");
    QTest::addColumn<Language>("language");
    QTest::addColumn<LookChoice>("look");
    QTest::addColumn<QSize>("screen");
    for (const Worn& worn : tried())
        for (int scene = 0; const WindowScene& each : windowScenes())
            QTest::addRow("%s, %s", qPrintable(nameOf(worn)), each.name)
                << scene++ << worn.language << worn.look << worn.screen;
}

void TestEveryLanguage::noWordsAreCutOffAndNothingIsOutOfReach() {
    QFETCH(int, scene);
    QFETCH(Language, language);
    QFETCH(LookChoice, look);
    QFETCH(QSize, screen);
    const ShownWindow shown = show(windowScenes().at(static_cast<std::size_t>(scene)), {language, look, screen});
    const QSize size = shown.window->size();
    QVERIFY2(size.width() <= screen.width() && size.height() <= smallestRoom.height() + screen.height() - 768,
             qPrintable(u"%1 x %2"_s.arg(size.width()).arg(size.height())));
    const QStringList complaints =
        controlsOutOfReach(*shown.window) + overlappingControls(*shown.window) + cutWords(*shown.window);
    QVERIFY2(complaints.isEmpty(), qPrintable(u"\n  "_s + complaints.join(u"\n  "_s)));
}

void TestEveryLanguage::theNamesAndValuesOfAllSettingsFit() {
    QFETCH(Language, language);
    const ShownWindow shown =
        show(sceneCalled("rulebook: a number"), {language, LookChoice::Light, wornScreens.front()});
    const auto* table = shown.window->findChild<QTableView*>(u"settings"_s);
    const QFontMetrics metrics(windowFont(14, QFont::Medium));
    const QFontMetrics values(windowFont(13, QFont::Bold));
    constexpr int source = 18; // the line under the name
    QStringList cut;
    for (int row = 0; row < table->model()->rowCount(); ++row) {
        const QString name = table->model()->index(row, 0).data().toString();
        const QRect lines = metrics.boundingRect({0, 0, table->columnWidth(0) - 20, 1}, Qt::TextWordWrap, name);
        if (table->columnSpan(row, 0) == 1 && lines.height() + source > table->rowHeight(row))
            cut << name;
        for (const int column : {1, 2}) {
            const QString value = table->model()->index(row, column).data().toString();
            const QRect room(0, 0, table->columnWidth(column) - 20, 1);
            if (values.boundingRect(room, Qt::TextWordWrap, value).height() > table->rowHeight(row))
                cut << value;
        }
    }
    QVERIFY2(cut.isEmpty(), qPrintable(u"\n  "_s + cut.join(u"\n  "_s)));
}

void TestEveryLanguage::theWordsAreThoseOfTheLanguage() {
    const auto helpIn = [&](Language language) {
        return show(sceneCalled("start page"), {language, LookChoice::Light, wornScreens.front()})
            .window->findChild<QPushButton*>(u"help"_s)
            ->text();
    };
    QCOMPARE(helpIn(Language::Spanish), u"Ayuda…"_s);
    QCOMPARE(helpIn(Language::French), u"Aide…"_s);
    QCOMPARE(helpIn(Language::English), u"Help…"_s);
}

void TestEveryLanguage::theKeysAreThoseOfTheKeyboard_data() {
    QTest::addColumn<Language>("language");
    QTest::addColumn<QString>("caps");
    QTest::addColumn<QString>("strange"); // words of the other languages' keyboards
    QTest::newRow("English") << Language::English
                             << u"Enter, ←, Space, Shift+Y, Alt+Y, Backspace, Ctrl+Z, Home, Page up, F7"_s
                             << u"May|Maj|Esp|Entr.e|Inicio|D.but|Pág|Ret"_s;
    QTest::newRow("Spanish") << Language::Spanish
                             << u"Enter, ←, Espacio, Mayús+Y, Alt+Y, Borrar, Ctrl+Z, Inicio, Re Pág, F7"_s
                             << u"Shift|Maj|Space|Entr|Back|Home|Origine|Page|Pg|Del|Ins"_s;
    QTest::newRow("French") << Language::French
                            << u"Entrée, ←, Espace, Maj+Y, Alt+Y, Ret. arr., Ctrl+Z, Début, Page préc., F7"_s
                            << u"Shift|May|Space|Enter|Intro|Back|Home|Inicio|Pág|Pg|Del|Ins"_s;
}

void TestEveryLanguage::theKeysAreThoseOfTheKeyboard() {
    QFETCH(Language, language);
    QFETCH(QString, strange);
    speak(language);
    QStringList all;
    for (const CommandInfo& info : allCommands())
        for (const QKeySequence& key : keysOf(info.command))
            all << capOf(key);
    QCOMPARE(all.filter(QRegularExpression(strange)), QStringList());
    using enum TableCommand;
    const QStringList some{keyCapOf(NextStep),
                           keyCapOf(LeftWins),
                           keyCapOf(ServeContacted),
                           keyCapOf(ReServe),
                           keyCapOf(ReplayBecause),
                           keyCapOf(Undo),
                           capOf(QKeySequence(QKeySequence::Undo)),
                           keyCapOf(GoToLive),
                           keyCapOf(PageBack),
                           keyCapOf(LiveBand)};
    QTEST(some.join(u", "_s), "caps");
}

QTEST_MAIN(TestEveryLanguage)
#include "tst_everylanguage.moc"
