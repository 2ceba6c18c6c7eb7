// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebookcompare.h"
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/newmatchdialog.h"
#include "ui/dialogs/rulebookdialog.h"
#include "ui/dialogs/rulebooktable.h"

#include <QComboBox>
#include <QJsonDocument>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTemporaryDir>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

const QLocale unitedStates(QLocale::English, QLocale::UnitedStates);

MatchDraft emptyDraft() {
    MatchDraft draft;
    draft.opened.date = QDate(2026, 10, 14);
    draft.opened.rulebook = highSchool();
    draft.opened.bestOf = 5;
    return draft;
}

/// The dialog of a new match, shown, with a folder for rulebooks.
class Shown {
public:
    Shown() : shelf(rulebooks.path()), dialog(emptyDraft(), folder.path(), unitedStates, shelf) { showActive(dialog); }
    void click(const char* button) { QTest::mouseClick(childOf<QPushButton>(dialog, button), Qt::LeftButton); }
    /// What the list of rulebooks offers.
    [[nodiscard]] QStringList offered() {
        const auto* list = childOf<QComboBox>(dialog, "rulebook");
        QStringList titles;
        for (int i = 0; i < list->count(); ++i)
            titles << list->itemText(i);
        return titles;
    }
    [[nodiscard]] MatchOpened opened() { return std::get<MatchOpened>(dialog.result().at(0)); }
    [[nodiscard]] Rulebook rulebook() { return opened().rulebook; }
    [[nodiscard]] QString rulebookProblem() {
        const auto* label = childOf<QLabel>(dialog, "rulebookProblem");
        return label->isVisible() ? label->text().remove(QChar(0x200b)) : QString();
    }

    QTemporaryDir folder;
    QTemporaryDir rulebooks;
    RulebookShelf shelf;
    NewMatchDialog dialog;
};

/// Works the next dialog for rulebooks that opens, once.
class Adapting : public QObject {
public:
    explicit Adapting(std::function<void(RulebookDialog&)> work) : m_work(std::move(work)) {
        connect(&m_timer, &QTimer::timeout, this, &Adapting::begin);
        m_timer.start(20);
    }

private:
    void begin() {
        auto* dialog = qobject_cast<RulebookDialog*>(QApplication::activeModalWidget());
        if (!dialog)
            return;
        m_timer.stop();
        m_work(*dialog);
    }
    QTimer m_timer;
    std::function<void(RulebookDialog&)> m_work;
};

Rulebook estuary() {
    Rulebook own = copyToAdapt(publishedRulebook(u"club"_s).value(), u"Club, Estuary League"_s, {});
    own.timeOuts = 1;
    own.sources[u"time-outs"_s] = {u"adapted"_s, {}, false};
    return own;
}

} // namespace

class RulebookChoiceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void openPointsAreCountedAndListed();
    void anAdaptedRulebookTravelsInTheMatch();
    void rulebooksOfThisMachineAreOffered();
    void aRulebookIsReadFromAFile();
    void aRulebookOfAFileWritesOverNoOther();
    void aBadRulebookFileIsSaid();
};

void RulebookChoiceTest::openPointsAreCountedAndListed() {
    Shown shown;
    const std::size_t open = openPoints(highSchool()).size();
    QVERIFY(open > 0);
    const QString words = childOf<QLabel>(shown.dialog, "openPointsWords")->text();
    QVERIFY2(words.startsWith(u"Nothing has to be done now"_s) && words.contains(u" %1 settings "_s.arg(open)) &&
                 words.endsWith(u"the referee is right."_s),
             qPrintable(words));
    const auto lines = [&shown] { return childOf<QScrollArea>(shown.dialog, "rulebookSays")->findChildren<QLabel*>(); };
    const auto all = lines().size();
    shown.click("openPoints");
    QVERIFY(lines().size() < all);
    const auto marked = std::ranges::count_if(
        lines(), [](const QLabel* label) { return label->text().contains(u"Look it up before the season"_s); });
    QCOMPARE(static_cast<std::size_t>(marked), open);
    shown.click("allSettings");
    QCOMPARE(lines().size(), all);
}

void RulebookChoiceTest::anAdaptedRulebookTravelsInTheMatch() {
    Shown shown;
    QVERIFY(tabTo(shown.dialog, u"competition"_s));
    typeInto(shown.dialog, u"Coastal League"_s);
    const Adapting adapting([](RulebookDialog& dialog) {
        QCOMPARE(childOf<QLineEdit>(dialog, "name")->text(), u"High school (NFHS), Coastal League"_s);
        childOf<RulebookTable>(dialog, "settings")->choose(u"time-outs"_s);
        QTest::mouseClick(childOf<QPushButton>(dialog, "less"), Qt::LeftButton);
        childOf<RulebookTable>(dialog, "settings")->choose(u"best-of"_s);
        QTest::mouseClick(childOf<QPushButton>(dialog, "number5"), Qt::LeftButton);
        QTest::mouseClick(childOf<QPushButton>(dialog, "record"), Qt::LeftButton);
    });
    shown.click("adapt");
    QCOMPARE(shown.rulebook().name, u"High school (NFHS), Coastal League"_s);
    QCOMPARE(shown.rulebook().timeOuts, 1);
    QCOMPARE(shown.opened().bestOf, 3); // best of five is no longer offered
    QCOMPARE(shown.shelf.content().rulebooks.size(), 1U);
    QVERIFY(shown.rulebook() == shown.shelf.content().rulebooks[0]);
    QVERIFY(shown.offered().contains(u"High school (NFHS), 2026-27"_s)); // the published one as it was
    const Adapting again([](RulebookDialog& dialog) {                    // it is changed, not copied once more
        QCOMPARE(childOf<QLineEdit>(dialog, "name")->text(), u"High school (NFHS), Coastal League"_s);
        QTest::mouseClick(childOf<QPushButton>(dialog, "remove"), Qt::LeftButton);
    });
    shown.click("adapt");
    QVERIFY(shown.rulebook() == highSchool());
    QVERIFY(shown.shelf.content().rulebooks.empty());
}

void RulebookChoiceTest::rulebooksOfThisMachineAreOffered() {
    const QTemporaryDir folder;
    const RulebookShelf shelf(folder.path());
    QVERIFY(shelf.keep(estuary()));
    MatchDraft draft = emptyDraft();
    draft.opened.rulebook = estuary();
    draft.opened.rulebook.timeOuts = 3; // the last match was played under an older edition
    const NewMatchDialog dialog(draft, folder.path(), unitedStates, shelf);
    QCOMPARE(dialog.findChild<QComboBox*>(u"rulebook"_s)->count(), int(publishedRulebookIds().size()) + 1);
    QVERIFY(std::get<MatchOpened>(dialog.result().at(0)).rulebook == estuary());
}

void RulebookChoiceTest::aRulebookIsReadFromAFile() {
    Shown shown;
    const QString path = shown.folder.filePath(u"estuary.json"_s);
    QVERIFY(writeRulebook(path, estuary()));
    const ChoosingFile choosing(path);
    shown.click("readRulebook");
    QVERIFY(choosing.hasChosen());
    QVERIFY(shown.rulebook() == estuary());
    QVERIFY(shown.shelf.has(estuary())); // for the next match too
}

void RulebookChoiceTest::aRulebookOfAFileWritesOverNoOther() {
    Shown shown;
    QVERIFY(shown.shelf.keep(estuary()));
    Rulebook other = estuary();
    other.timeOuts = 3;
    const QString path = shown.folder.filePath(u"estuary.json"_s);
    QVERIFY(writeRulebook(path, other));
    const ChoosingFile choosing(path);
    shown.click("readRulebook");
    QVERIFY(choosing.hasChosen());
    QCOMPARE(shown.shelf.content().rulebooks.size(), 2U);
    QVERIFY(shown.shelf.content().rulebooks[0] == estuary());
    QCOMPARE(shown.rulebook().name, u"Club, Estuary League, from a file"_s);
    QCOMPARE(shown.rulebook().timeOuts, 3);
}

void RulebookChoiceTest::aBadRulebookFileIsSaid() {
    Shown shown;
    const QString path = shown.folder.filePath(u"estuary.json"_s);
    QByteArray bytes = QJsonDocument(toJson(estuary())).toJson(QJsonDocument::Compact);
    bytes.replace("\"time-outs\":{\"source\":\"adapted\",\"value\":1}",
                  "\"time-outs\":{\"source\":\"adapted\",\"value\":9}");
    write(path, bytes);
    const ChoosingFile choosing(path);
    shown.click("readRulebook");
    QVERIFY(choosing.hasChosen());
    QVERIFY2(shown.rulebookProblem().contains(u"“Time-outs, a team in a set” (time-outs) has a value"_s),
             qPrintable(shown.rulebookProblem()));
    QVERIFY(shown.rulebook() == highSchool());
    QVERIFY(shown.shelf.content().rulebooks.empty());
}

} // namespace setfolio

QTEST_MAIN(setfolio::RulebookChoiceTest)
#include "tst_rulebookchoice.moc"
