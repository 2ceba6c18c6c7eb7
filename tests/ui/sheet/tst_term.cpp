// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/term.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::sheet;

namespace {

Mark ring(int total) {
    return {MarkShape::Ring, ServedPoint{total}, {}, false, 0};
}
Mark triangle(int total) {
    return {MarkShape::Triangle, ServedPoint{total}, {}, false, 0};
}
Mark opening(int total) {
    return {MarkShape::None, OpeningPoint{total}, {}, false, 0};
}
Mark letter(MarkContent content) {
    return {MarkShape::None, std::move(content), {}, false, 0};
}
Mark square(int total) {
    return {MarkShape::Square, ServedPoint{total}, {}, false, 0};
}
Mark noted(Mark mark, int note) {
    mark.struck = true;
    mark.note = note;
    return mark;
}

} // namespace

class TestTerm : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void marksStandAsTheDesignSetsThem_data();
    void marksStandAsTheDesignSetsThem();
    void aPenaltysLetterStaysWithItsNumber();
    void aFoldedTermHasTwoLinesOfEvenLength();
    void oneRemarkOfTwoBoundMarksIsNumberedOnce();
    void theDoubleBarNeedsRoom();
    void smallerStepsNeedLess();
    void noTypeIsSmallerThanSixPoints();
    void aTriangleLiesWithinItsBaseAndHeight();

private:
    MeasuredMarks measure(const std::vector<Mark>& marks) {
        m_kept.push_back(std::make_unique<std::vector<Mark>>(marks));
        std::vector<const Mark*> pointers;
        for (const Mark& mark : *m_kept.back())
            pointers.push_back(&mark);
        return measured(m_draft, pointers, styleOf(Ink::First, InkSet::CobaltAndRust));
    }

    SheetFonts m_fonts = SheetFonts::load().value();
    Draft m_draft{m_fonts};
    std::vector<std::unique_ptr<std::vector<Mark>>> m_kept;
};

// clang-format off
void TestTerm::marksStandAsTheDesignSetsThem_data() {
    QTest::addColumn<int>("which");
    QTest::addColumn<double>("gap"); // between the two, at full size

    QTest::newRow("two rings")                  << 0 << 0.95;
    QTest::newRow("text and a ring")            << 1 << 0.95 * 1.55;
    QTest::newRow("two triangles")              << 2 << 0.95 * 0.2;
    QTest::newRow("a ring and a triangle")      << 3 << 0.95;
    QTest::newRow("a penalty and its square")   << 4 << 0.95 * 0.7;
    QTest::newRow("a penalty and its number")   << 5 << 0.95;
    QTest::newRow("two substitutions")          << 6 << 0.95 * 1.55;
}
// clang-format on

void TestTerm::marksStandAsTheDesignSetsThem() {
    QFETCH(int, which);
    QFETCH(double, gap);
    const SubstitutionMark change{false, ShirtNumber(10), ShirtNumber(7), {}};
    const std::array<std::vector<Mark>, 7> pairs{{{ring(1), ring(2)},
                                                  {opening(1), ring(2)},
                                                  {triangle(1), triangle(2)},
                                                  {ring(1), triangle(2)},
                                                  {letter(PenaltyLetter()), square(2)},
                                                  {letter(PenaltyLetter()), opening(2)},
                                                  {letter(change), letter(change)}}};
    const MeasuredMarks marks = measure(pairs.at(static_cast<std::size_t>(which)));
    const PlacedTerm term = placed(marks, SizeStep{});
    QCOMPARE(term.marks.at(0).left, 0.0);
    const double found = term.marks.at(1).left - term.marks.at(0).width;
    QVERIFY2(std::abs(found - gap) < 1e-9, qPrintable(QString::number(found)));
}

void TestTerm::aPenaltysLetterStaysWithItsNumber() {
    // However the marks before and after it weigh, no line begins with the square.
    for (int before = 0; before < 8; ++before) {
        std::vector<Mark> marks;
        for (int i = 0; i < before; ++i)
            marks.push_back(ring(i + 1));
        marks.push_back(letter(PenaltyLetter()));
        marks.push_back(square(before + 1));
        for (int i = 0; i < 7 - before; ++i)
            marks.push_back(ring(before + 2 + i));
        const MeasuredMarks measuredMarks = measure(marks);
        for (const SizeStep step : {foldedMedium, foldedSmall}) {
            const PlacedTerm term = placed(measuredMarks, step);
            for (std::size_t i = 1; i < term.marks.size(); ++i)
                if (std::holds_alternative<PenaltyLetter>(term.marks[i - 1].mark->mark->content))
                    QCOMPARE(term.marks[i].line, term.marks[i - 1].line);
        }
    }
}

void TestTerm::aFoldedTermHasTwoLinesOfEvenLength() {
    std::vector<Mark> marks;
    for (int total = 1; total <= 9; ++total)
        marks.push_back(ring(total));
    const MeasuredMarks measuredMarks = measure(marks);
    const PlacedTerm term = placed(measuredMarks, foldedMedium);
    QCOMPARE(term.lines, 2);
    int first = 0;
    for (const PlacedMark& mark : term.marks)
        first += mark.line == 0;
    QVERIFY(first == 4 || first == 5);
    QCOMPARE(placed(measuredMarks, smallestOneLine).lines, 1);
    QCOMPARE(placed(measure({ring(1)}), foldedMedium).lines, 1);
}

void TestTerm::oneRemarkOfTwoBoundMarksIsNumberedOnce() {
    const MeasuredMarks same = measure({noted(letter(PenaltyLetter()), 3), noted(square(5), 3)});
    QCOMPARE(same.at(0).note, 0);
    QCOMPARE(same.at(1).note, 3);
    const MeasuredMarks apart = measure({noted(ring(4), 3), noted(ring(5), 3)});
    QCOMPARE(apart.at(0).note, 3);
}

void TestTerm::theDoubleBarNeedsRoom() {
    const MeasuredMarks marks = measure({opening(24), ring(25)});
    const double plain = needOf(marks, TermEnd::None, SizeStep{});
    QCOMPARE(needOf(marks, TermEnd::DoubleBar, SizeStep{}), plain + 2.2);
    QVERIFY(needOf(marks, TermEnd::Ghost, SizeStep{}) > plain + 6.2);
}

void TestTerm::smallerStepsNeedLess() {
    std::vector<Mark> marks{opening(1), letter(SubstitutionMark{true, ShirtNumber(4), ShirtNumber(12), {}})};
    for (int total = 2; total <= 8; ++total)
        marks.push_back(triangle(total));
    const MeasuredMarks measuredMarks = measure(marks);
    for (int value = 1; value < SizeStep::count; ++value)
        QVERIFY(needOf(measuredMarks, TermEnd::None, SizeStep{value}) <
                needOf(measuredMarks, TermEnd::None, SizeStep{value - 1}));
}

void TestTerm::noTypeIsSmallerThanSixPoints() {
    for (int value = 0; value < SizeStep::count; ++value) {
        const MarkSize size = markSize(SizeStep{value});
        for (const double points :
             {size.numberPoints, size.wordPoints, size.changePoints, size.trianglePoints, size.notePoints})
            QVERIFY(points >= 6.0);
    }
}

void TestTerm::aTriangleLiesWithinItsBaseAndHeight() {
    const QPolygonF corners = triangleWithin({10, 20}, 9.2, 7.3, 0.52);
    const QRectF box = corners.boundingRect().adjusted(-0.26, -0.26, 0.26, 0.26);
    QVERIFY(QRectF(10 - 4.6, 20 - 7.3, 9.2, 7.3).contains(box));
    QVERIFY(std::abs(box.bottom() - 20) < 1e-9); // the line of the base lies on the bottom
}

QTEST_MAIN(TestTerm)
#include "tst_term.moc"
