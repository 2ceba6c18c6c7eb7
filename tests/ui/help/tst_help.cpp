// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/help/helpdialog.h"
#include "ui/help/helptext.h"
#include "ui/table/keys.h"

#include <QAccessible>
#include <QPageLayout>
#include <QPrinter>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTextBrowser>

using namespace Qt::Literals::StringLiterals;
using namespace setfolio;
using namespace setfolio::testing;

class TestHelp : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() { setChangedKeys({}); }
    void everyKeyStandsOnThePage();
    void everythingThatIsEnteredIsTold();
    void theKeysAreThoseInForce();
    void aCommandWithoutAKeyIsFoundInItsMenu();
    void theWholePageIsHeard();
    void itIsOneSheetOfPaper_data();
    void itIsOneSheetOfPaper();
    void itIsReadAndClosedByTheKeyboard();
};

void TestHelp::everyKeyStandsOnThePage() {
    HelpDialog dialog;
    const QString page = childOf<QTextBrowser>(dialog, "helpPage")->toPlainText();
    for (const CommandInfo& info : allCommands()) {
        for (const QKeySequence& key : info.keys)
            QVERIFY2(page.contains(capOf(key)), qPrintable(info.id));
        if (!info.keys.isEmpty())
            QVERIFY2(page.contains(nameOf(info.command).remove(u'…')), qPrintable(info.id));
    }
}

void TestHelp::everythingThatIsEnteredIsTold() {
    QStringList titles;
    for (const HelpPart& part : helpParts()) {
        titles << part.title;
        QVERIFY2(!part.how.contains(u'%'), qPrintable(part.how)); // every key is filled in
    }
    for (const char* title :
         {"A rally", "A substitution", "A time-out", "A libero", "A card or a delay", "A correction", "Signing"})
        QVERIFY2(titles.contains(QLatin1String(title)), title);
}

void TestHelp::theKeysAreThoseInForce() {
    setChangedKeys({{TableCommand::LeftWins, QKeySequence(Qt::Key_F2)}});
    QVERIFY(helpParts()[1].how.contains(u"F2 if the side on your left"_s));
    QVERIFY(helpPage().contains(u"<b>F2</b>"_s));
}

void TestHelp::aCommandWithoutAKeyIsFoundInItsMenu() {
    setChangedKeys({{TableCommand::NoServe, QKeySequence()}});
    QVERIFY(helpParts()[1].how.contains(u"the Rally menu a serve that did not come"_s));
}

void TestHelp::theWholePageIsHeard() {
    HelpDialog dialog;
    showActive(dialog);
    auto* page = childOf<QTextBrowser>(dialog, "helpPage");
    QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(page);
    QCOMPARE(heard->text(QAccessible::Name), u"How things are entered"_s);
    QVERIFY(heard->textInterface());
    const QString text = heard->textInterface()->text(0, heard->textInterface()->characterCount());
    QVERIFY(text.contains(u"Space when the serve is contacted"_s));
}

void TestHelp::itIsOneSheetOfPaper_data() {
    QTest::addColumn<int>("paper");
    QTest::newRow("Letter") << int(QPageSize::Letter);
    QTest::newRow("A4") << int(QPageSize::A4);
}

void TestHelp::itIsOneSheetOfPaper() {
    QFETCH(int, paper);
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"help.pdf"_s);
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setPageSize(QPageSize(static_cast<QPageSize::PageSizeId>(paper)));
    printer.setOutputFileName(path);
    HelpDialog().printOn(printer);
    QProcess about;
    about.start(u"pdfinfo"_s, {path});
    QVERIFY(about.waitForFinished());
    QVERIFY2(about.readAllStandardOutput().contains("Pages:           1\n"), "more than a sheet");
}

void TestHelp::itIsReadAndClosedByTheKeyboard() {
    HelpDialog dialog;
    showActive(dialog);
    QCOMPARE(dialog.focusWidget()->objectName(), u"helpPage"_s);
    QVERIFY(tabTo(dialog, u"print"_s));
    QVERIFY(tabTo(dialog, u"close"_s));
    pressIn(dialog, Qt::Key_Escape);
    QVERIFY(!dialog.isVisible());
}

QTEST_MAIN(TestHelp)
#include "tst_help.moc"
