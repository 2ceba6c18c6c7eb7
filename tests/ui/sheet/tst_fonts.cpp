// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/fonts.h"

#include <QProcess>
#include <QRawFont>
#include <QTemporaryDir>
#include <QTest>

#include <random>

using namespace setfolio;

class TestFonts : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void allWeightsAreOfOneFamily();
    void withoutTheTypefaceThereIsAnErrorAndNoOtherFont();
    void widthsAreThoseOfTheDesign_data();
    void widthsAreThoseOfTheDesign();
    void trackingIsNotAddedAfterTheLastLetter();
    void everyGlyphStandsForItsCharacter_data();
    void everyGlyphStandsForItsCharacter();
    void aScriptFromTheRightKeepsItsOrder();
    void lettersThatJoinAreJoined();
    void aTextStandsInItsOwnRoom_data();
    void aTextStandsInItsOwnRoom();
    void anyTextIsDrawnWholeOrWithBoxes();
    void aTextIsShapedOnce();

private:
    SheetFonts m_fonts = SheetFonts::load().value();
};

void TestFonts::allWeightsAreOfOneFamily() {
    for (const FontWeight weight : {FontWeight::Regular, FontWeight::Medium, FontWeight::SemiBold, FontWeight::Bold}) {
        const SharedText text = m_fonts.shape(QStringLiteral("Round 2"), weight);
        QCOMPARE(text->runs.size(), 1);
        QCOMPARE(text->runs.front().rawFont().familyName(), QStringLiteral("Inter"));
        QCOMPARE(text->runs.front().rawFont().weight(), 400 + 100 * static_cast<int>(weight));
    }
}

void TestFonts::withoutTheTypefaceThereIsAnErrorAndNoOtherFont() {
    const QTemporaryDir folder;
    QFile config(folder.filePath(QStringLiteral("fonts.conf")));
    QVERIFY(config.open(QIODevice::WriteOnly));
    config.write("<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig>"
                 "<dir>/usr/share/fonts/truetype/dejavu</dir></fontconfig>");
    config.close();
    QProcess probe;
    QProcessEnvironment surroundings = QProcessEnvironment::systemEnvironment();
    surroundings.insert(QStringLiteral("FONTCONFIG_FILE"), config.fileName());
    probe.setProcessEnvironment(surroundings);
    probe.start(QStringLiteral(FONTPROBE), QStringList());
    QVERIFY(probe.waitForFinished());
    QCOMPARE(probe.readAllStandardOutput().trimmed(), QByteArray("Inter of fonts-inter lacks 400 500 600 700"));
    QCOMPARE(probe.exitCode(), 1);
}

void TestFonts::widthsAreThoseOfTheDesign_data() {
    QTest::addColumn<QString>("words");
    QTest::addColumn<FontWeight>("weight");
    QTest::addColumn<double>("em");
    // Advances in the font files of Inter 4, summed, in em.
    // clang-format off
    QTest::newRow("figures") << QStringLiteral("10") << FontWeight::Medium << 0.47266 + 0.64595;
    QTest::newRow("bold")    << QStringLiteral("88") << FontWeight::Bold   << 0.66087 + 0.66087;
    QTest::newRow("nothing") << QString()            << FontWeight::Medium << 0.0;
    // clang-format on
}

void TestFonts::widthsAreThoseOfTheDesign() {
    QFETCH(QString, words);
    QFETCH(FontWeight, weight);
    QFETCH(double, em);
    QVERIFY2(std::abs(m_fonts.shape(words, weight)->advance - em) < 0.005,
             qPrintable(QString::number(m_fonts.shape(words, weight)->advance)));
}

void TestFonts::trackingIsNotAddedAfterTheLastLetter() {
    const double plain = m_fonts.shape(QStringLiteral("SET"), FontWeight::SemiBold)->advance;
    const double tracked = m_fonts.shape(QStringLiteral("SET"), FontWeight::SemiBold, 0.08)->advance;
    QVERIFY(std::abs(tracked - plain - 0.16) < 0.03); // kerning may differ
}

void TestFonts::everyGlyphStandsForItsCharacter_data() {
    QTest::addColumn<QString>("words");
    QTest::newRow("a colon between figures") << QStringLiteral("18:30");
    QTest::newRow("a dash between figures") << QStringLiteral("22–21");
    QTest::newRow("a hyphen between capitals") << QStringLiteral("PRE-SEASON (A)");
    QTest::newRow("what other fonts join") << QStringLiteral("official, fluffy, affix");
    QTest::newRow("kerned letters") << QStringLiteral("AVATAR To");
}

void TestFonts::everyGlyphStandsForItsCharacter() {
    QFETCH(QString, words);
    const SharedText text = m_fonts.shape(words, FontWeight::Medium);
    QCOMPARE(text->runs.size(), 1);
    const QGlyphRun& run = text->runs.front();
    QCOMPARE(run.glyphIndexes(), run.rawFont().glyphIndexesForString(words));
}

void TestFonts::aScriptFromTheRightKeepsItsOrder() {
    const QString name = QStringLiteral("\u05D0\u05E7\u05DE\u05D4"); // four letters of Hebrew
    const SharedText text = m_fonts.shape(name, FontWeight::Medium);
    QCOMPARE(text->runs.size(), 1);
    const QList<QPointF> places = text->runs.front().positions();
    QList<double> byCharacter; // of a run from right to left the first glyph may be the last character's
    for (const QPointF& place : places)
        byCharacter += place.x();
    const QList<quint32> own = text->runs.front().rawFont().glyphIndexesForString(name);
    for (qsizetype i = 1; i < own.size(); ++i) {
        const qsizetype before = text->runs.front().glyphIndexes().indexOf(own.at(i - 1));
        const qsizetype after = text->runs.front().glyphIndexes().indexOf(own.at(i));
        QVERIFY(byCharacter.at(after) < byCharacter.at(before));
    }
    QVERIFY(text->ink.left() >= -0.1);
    QVERIFY(text->ink.right() <= text->advance + 0.1);
}

void TestFonts::lettersThatJoinAreJoined() {
    const SharedText text = m_fonts.shape(QStringLiteral("\u0648\u0633\u0647\u0648\u0644"), FontWeight::Medium);
    QCOMPARE(text->runs.size(), 1);
    const QGlyphRun& run = text->runs.front();
    const QList<quint32> alone = run.rawFont().glyphIndexesForString(text->text);
    QCOMPARE(run.glyphIndexes().size(), alone.size());
    QVERIFY(run.glyphIndexes() != alone); // forms for the middle of a word, not those that stand alone
}

void TestFonts::aTextStandsInItsOwnRoom_data() {
    QTest::addColumn<QString>("words");
    QTest::newRow("Arabic, whose last letter reaches far left") << QStringLiteral("فريق الأنهار");
    QTest::newRow("Arabic and figures") << QStringLiteral("الأنهار 12");
    QTest::newRow("Hebrew") << QStringLiteral("עמק הנחלים");
    QTest::newRow("Chinese") << QStringLiteral("沼地排球");
}

void TestFonts::aTextStandsInItsOwnRoom() {
    QFETCH(QString, words);
    const SharedText text = m_fonts.shape(words, FontWeight::SemiBold);
    QVERIFY(!text->ink.isEmpty());
    QVERIFY2(text->ink.left() >= 0, qPrintable(QString::number(text->ink.left())));
    QVERIFY2(text->ink.right() <= text->advance + 1e-9, qPrintable(QString::number(text->ink.right())));
}

/// Letters of all planes, halves of pairs, controls, marks that stand on nothing: no glyph is missing, for a missing
/// one would be a gap in print.
void TestFonts::anyTextIsDrawnWholeOrWithBoxes() {
    std::mt19937 random(2026);
    int boxes = 0;
    for (int round = 0; round < 300; ++round) {
        QString name;
        for (int i = 0; i < 12; ++i) {
            const char32_t code = static_cast<char32_t>(random() % (i % 3 ? 0x3000 : 0x20000));
            name += i % 11 == 10 ? QString(QChar(char16_t(0xD800 + random() % 0x800))) : QString::fromUcs4(&code, 1);
        }
        const SharedText text = m_fonts.shape(name, FontWeight::Medium);
        QVERIFY(text->advance > 0);
        QVERIFY(!text->ink.isEmpty());
        for (const QGlyphRun& run : text->runs)
            QVERIFY2(!run.glyphIndexes().contains(0), qPrintable(name));
        boxes += static_cast<int>(text->text.count(u'\u25A1'));
    }
    QVERIFY(boxes > 0);
}

void TestFonts::aTextIsShapedOnce() {
    const SharedText first = m_fonts.shape(QStringLiteral("24"), FontWeight::Bold);
    const SheetFonts copy = m_fonts;
    QCOMPARE(copy.shape(QStringLiteral("24"), FontWeight::Bold), first);
}

QTEST_MAIN(TestFonts)
#include "tst_fonts.moc"
