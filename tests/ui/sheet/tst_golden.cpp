// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/goldenfile.h"
#include "tests/support/pagedump.h"
#include "tests/support/sheetscenes.h"
#include "ui/sheet/compose.h"

#include <QDir>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

/// Each folder of tests/golden is a set, and what stands on its pages.
class TestGolden : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void thePagesAreAsApproved_data();
    void thePagesAreAsApproved();
};

void TestGolden::thePagesAreAsApproved_data() {
    QTest::addColumn<QString>("name");
    for (const QString& name : sheetSceneNames())
        QTest::newRow(qPrintable(name)) << name;
}

void TestGolden::thePagesAreAsApproved() {
    QFETCH(QString, name);
    const SheetScene scene = sheetScene(name);
    const std::vector<Page> pages = composeScene(scene, SheetFonts::load().value());
    const QDir folder(goldenFolder() + u'/' + name);
    QStringList differences;
    int number = 0; // over all sheets of the scene
    for (const Page& page : pages)
        differences += differenceFrom(folder.filePath(QStringLiteral("page-%1.txt").arg(++number)), dump(page));
    differences.removeAll(QString());
    QVERIFY2(differences.isEmpty(), qPrintable(differences.join(u'\n')));
    QCOMPARE(folder.entryList({QStringLiteral("page-*.txt")}).size(), static_cast<qsizetype>(pages.size()));
}

QTEST_MAIN(TestGolden)
#include "tst_golden.moc"
