// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include <QDirIterator>
#include <QTest>

class TestResources : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatLiesInTheFolderIsCompiledIn_data();
    void whatLiesInTheFolderIsCompiledIn();
};

void TestResources::whatLiesInTheFolderIsCompiledIn_data() {
    QTest::addColumn<QString>("folder");
    QTest::newRow("rulebooks") << QStringLiteral("rulebooks");
    QTest::newRow("schema") << QStringLiteral("schema");
}

// A linker drops a resource of a static library that nothing names; this notices.
void TestResources::whatLiesInTheFolderIsCompiledIn() {
    QFETCH(QString, folder);
    const QStringList pattern{QStringLiteral("*.json")};
    const QDir source(QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/") + folder);
    const QDir compiled(QStringLiteral(":/") + folder);
    QVERIFY(!source.entryList(pattern, QDir::Files).isEmpty());
    QCOMPARE(compiled.entryList(pattern, QDir::Files), source.entryList(pattern, QDir::Files));
}

QTEST_GUILESS_MAIN(TestResources)
#include "tst_resources.moc"
