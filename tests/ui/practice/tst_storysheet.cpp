// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/storysheet.h"

#include <QTest>

namespace setfolio {

class StorySheetTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyStoryStandsOnItsPages_data();
    void everyStoryStandsOnItsPages();
};

void StorySheetTest::everyStoryStandsOnItsPages_data() {
    QTest::addColumn<QString>("id");
    QTest::addColumn<PaperSize>("paper");
    for (const QString& id : storyIds()) {
        QTest::addRow("%s, Letter", qPrintable(id)) << id << PaperSize::Letter;
        QTest::addRow("%s, A4", qPrintable(id)) << id << PaperSize::A4;
    }
}

void StorySheetTest::everyStoryStandsOnItsPages() {
    QFETCH(QString, id);
    QFETCH(PaperSize, paper);
    const auto fonts = SheetFonts::load();
    QVERIFY(fonts);
    const StoryText text = storyTextOf(practiceStory(id));
    const std::vector<Page> pages = composeStory(text, *fonts, paper);
    QString told;
    int numbers = 0;
    std::vector<QRectF> texts;
    for (const Page& page : pages) {
        QCOMPARE(page.of, static_cast<int>(pages.size()));
        texts.clear();
        const QRectF live(page.live, liveArea);
        for (const Item& item : page.items) {
            QVERIFY(live.adjusted(-0.01, -0.01, 0.01, 0.01).contains(boundingBox(item)));
            const auto* shape = std::get_if<TextShape>(&item.shape);
            if (!shape)
                continue;
            QVERIFY(shape->points >= 6);
            const QRectF ink = shape->ink();
            QVERIFY(std::none_of(texts.begin(), texts.end(), [&ink](const QRectF& o) { return o.intersects(ink); }));
            texts.push_back(ink);
            numbers += item.role == ItemRole::RemarkNumber;
            if (item.role == ItemRole::RemarkText)
                told += (told.isEmpty() ? QString() : QStringLiteral(" ")) + shape->shaped->text;
        }
    }
    QCOMPARE(numbers, static_cast<int>(text.told.size()));
    QCOMPARE(told, text.told.join(QLatin1Char(' ')));
}

} // namespace setfolio

QTEST_MAIN(setfolio::StorySheetTest)
#include "tst_storysheet.moc"
