// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/table.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::sheet;

/// What a table sets down, wherever it stands.
class TestTable : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aStruckRowIsStruckWithinTheTable();
    void nothingIsShortened();
    void aCellFromTheRightBeginsAtTheRight();

private:
    /// The items of a table that has all the room it wants.
    [[nodiscard]] std::vector<Item> drawn(Table table) const {
        Draft draft(m_fonts);
        TablePen pen(draft, std::move(table));
        pen.draw(draft, Zone::Body, {10, 20, 130, 100}, true);
        return draft.take();
    }

    SheetFonts m_fonts = SheetFonts::load().value();
};

void TestTable::aStruckRowIsStruckWithinTheTable() {
    TableRow row;
    row.cells = {QStringLiteral("2"), QStringLiteral("Saltmarsh Herons")};
    row.struck = true;
    const std::vector<Item> items = drawn({.title = {}, .columns = {{{}, 7}, {{}, 60}}, .rows = {row}});
    QRectF words, strike;
    for (const Item& item : items)
        if (item.role == ItemRole::Value)
            words |= boundingBox(item);
        else if (item.role == ItemRole::MarkStrike)
            strike |= boundingBox(item);
    QVERIFY(strike.left() >= 10);
    QVERIFY(strike.left() <= words.left());
    QVERIFY(strike.right() > words.right());
}

void TestTable::nothingIsShortened() {
    const QString code = QStringLiteral("WWWWWWWW");
    QString head, cell;
    for (const Item& item : drawn({.title = {}, .columns = {{code, 10}}, .rows = {{.cells = {code}}}}))
        if (const auto* text = std::get_if<TextShape>(&item.shape)) {
            (item.role == ItemRole::Label ? head : cell) += text->shaped->text;
            QVERIFY(text->points >= smallestPoints);
            QVERIFY(boundingBox(item).right() < 20);
        }
    QCOMPARE(head, code);
    QCOMPARE(cell, code);
}

void TestTable::aCellFromTheRightBeginsAtTheRight() {
    const QString name = QStringLiteral("فريق الكرة الطائرة لمنطقة المستنقعات الشمالية");
    std::vector<double> ends;
    for (const Item& item : drawn({.title = {}, .columns = {{{}, 40, true}}, .rows = {{.cells = {name}}}}))
        if (const auto* text = std::get_if<TextShape>(&item.shape))
            ends.push_back(text->left() + text->shaped->advance * text->em());
    QVERIFY(ends.size() > 1);
    for (const double end : ends)
        QVERIFY(std::abs(end - ends.front()) < 1e-6);
}

QTEST_MAIN(TestTable)
#include "tst_table.moc"
