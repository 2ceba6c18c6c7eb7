// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include <QDir>
#include <QTest>

class TestResources : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatLiesInTheFolderIsCompiledIn_data();
    void whatLiesInTheFolderIsCompiledIn();
};

void TestResources::whatLiesInTheFolderIsCompiledIn_data() {
    QTest::addColumn<QString>("folder");
    QTest::addColumn<QStringList>("patterns");
    QTest::newRow("rulebooks") << QStringLiteral("rulebooks") << QStringList{QStringLiteral("*.json")};
    QTest::newRow("schema") << QStringLiteral("schema") << QStringList{QStringLiteral("*.json")};
    QTest::newRow("demo") << QStringLiteral("demo") << QStringList{QStringLiteral("*.setfolio")};
    QTest::newRow("icons") << QStringLiteral("icons") << QStringList{QStringLiteral("*.svg"), QStringLiteral("*.png")};
}

// A linker drops a resource of a static library that nothing names; this notices.
void TestResources::whatLiesInTheFolderIsCompiledIn() {
    QFETCH(QString, folder);
    QFETCH(QStringList, patterns);
    const QDir source(QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/") + folder);
    const QDir compiled(QStringLiteral(":/") + folder);
    QVERIFY(!source.entryList(patterns, QDir::Files).isEmpty());
    QCOMPARE(compiled.entryList(patterns, QDir::Files), source.entryList(patterns, QDir::Files));
}

QTEST_GUILESS_MAIN(TestResources)
#include "tst_resources.moc"
