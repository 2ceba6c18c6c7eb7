// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/flow.h"

#include <QTest>

using namespace setfolio;

namespace {

/// A term whose marks are `marks` mm wide at full size: 3 mm of padding, and a bit more than a third of the width when
/// it is folded into two lines of smaller marks.
FlowTerm term(int column, double marks) {
    FlowTerm result{column, {}};
    for (int value = 0; value < SizeStep::oneLine; ++value)
        result.need[static_cast<std::size_t>(value)] = 3 + marks * SizeStep{value}.scale();
    result.need[SizeStep::oneLine] = 3 + 0.36 * marks;
    result.need[SizeStep::oneLine + 1] = 3 + 0.32 * marks;
    return result;
}

/// "0:97 2:40" is two terms, in the first and the third column; "1:20*9" is nine terms alike.
std::vector<FlowTerm> termsFrom(const QString& words) {
    std::vector<FlowTerm> terms;
    for (const QString& word : words.split(u' ', Qt::SkipEmptyParts)) {
        const int column = word.section(u':', 0, 0).toInt();
        const QString marks = word.section(u':', 1);
        const int times = marks.contains(u'*') ? marks.section(u'*', 1).toInt() : 1;
        for (int i = 0; i < times; ++i)
            terms.push_back(term(column, marks.section(u'*', 0, 0).toDouble()));
    }
    return terms;
}

QString sizeInWords(SizeStep step) {
    if (step == foldedMedium)
        return QStringLiteral("M");
    if (step == foldedSmall)
        return QStringLiteral("S");
    return QString::number(step.scale(), 'f', 2);
}

/// "1.00: 45.5 100.0 45.5" for a page; pages parted by |.
QString pagesInWords(const Flow& flow) {
    QStringList pages;
    for (const FlowPage& page : flow.pages) {
        QStringList widths;
        for (const double width : page.widths)
            widths += QString::number(width, 'f', 1);
        pages += sizeInWords(page.size) + QStringLiteral(": ") + widths.join(u' ');
    }
    return pages.join(QStringLiteral(" | "));
}

QString sizesInWords(const Flow& flow) {
    QStringList sizes;
    for (const SizeStep step : flow.steps)
        if (sizes.isEmpty() || !sizes.constLast().startsWith(sizeInWords(step)))
            sizes += sizeInWords(step);
    return sizes.join(u' ');
}

FlowQuestion questionOf(const std::vector<FlowTerm>& terms, int columns, int pages = 1) {
    FlowQuestion question;
    question.terms = terms;
    question.columns = columns;
    question.width = 191;
    question.narrowest = 24;
    question.pages = pages;
    return question;
}

} // namespace

class TestFlow : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void columnsShareThePage_data();
    void columnsShareThePage();
    void columnsFillTheWidthAndHoldTheirTerms();
    void whileASetIsWrittenColumnsStayAsLongAsAllFits();
    void whileASetIsWrittenSizesOnlyFall();
    void aNewRoundSharesThePageAnew();
    void waterFindsItsLevel_data();
    void waterFindsItsLevel();
};

// clang-format off
void TestFlow::columnsShareThePage_data() {
    QTest::addColumn<QString>("terms");
    QTest::addColumn<int>("columns");
    QTest::addColumn<int>("leastPages");
    QTest::addColumn<QString>("pages");
    QTest::addColumn<QString>("sizes"); // of the terms in their order, runs of the same told once

    // Nothing is written yet: three rounds of equal width wait for the pen.
    QTest::newRow("empty")            << ""                     << 3 << 1 << "1.00: 63.7 63.7 63.7" << "";
    // 100 mm are needed once; what is left is shared evenly, for no other term needs more.
    QTest::newRow("one long term")    << "0:30 1:97 2:20"       << 3 << 1 << "1.00: 45.5 100.0 45.5" << "1.00";
    // Columns keep 24 mm however little is in them, so the long term gets 143 mm: 0.91 of its size.
    QTest::newRow("least width")      << "0:150"                << 3 << 1 << "0.91: 139.5 25.8 25.8" << "0.91";
    // Both would fit at full size on their own; together the whole page steps down, not the one cell.
    QTest::newRow("page steps down")  << "0:95 1:95"            << 2 << 1 << "0.97: 95.5 95.5" << "0.97";
    // A tenth of three terms is none: rather than fold, all become smaller than 0.88.
    QTest::newRow("too few to fold")  << "0:70 1:70 2:70"       << 3 << 1 << "0.85: 63.7 63.7 63.7" << "0.85";
    // One term of ten may be folded: that keeps all the others at full size.
    QTest::newRow("one of ten folds") << "0:150 1:60 2:20*8"    << 3 << 1 << "1.00: 63.7 63.7 63.7" << "M 1.00";
    // Folding one of the two widest would not help: both are folded, for they free the most width a term.
    QTest::newRow("a pair folds")     << "0:150*2 1:60 2:20*17" << 3 << 1 << "1.00: 63.7 63.7 63.7" << "M 1.00";
    // Here a pair would free 38 mm for each of its terms, the single one 57: it is folded and the pair stays.
    QTest::newRow("a pair is spared") << "0:120*2 1:90 2:20*17" << 3 << 1 << "1.00: 123.0 35.4 32.6" << "1.00 M 1.00";
    // The folded term finds 91 mm in its column when all is shared out: it goes back to one line, a little smaller.
    QTest::newRow("unfolds again")    << "0:115.5 1:97 1:20*8"  << 2 << 1 << "1.00: 91.0 100.0" << "0.76 1.00";
    // More than a tenth folded only when all have become as small as may be.
    QTest::newRow("all fold")         << "0:200 1:200 2:100"    << 3 << 1 << "0.76: 75.0 75.0 41.0" << "M";
    // Two folded terms do not fit by 6 mm: one of them is folded into the smallest size.
    QTest::newRow("smallest size")    << "0:265 1:265"          << 2 << 1 << "0.76: 92.6 98.4" << "S M";
    // Four such rounds are too much for a page; two pages share them evenly.
    QTest::newRow("two pages")        << "0:250 1:250 2:250 3:250" << 4 << 1 << "0.76: 95.5 95.5 | 0.76: 95.5 95.5" << "M";
    // Each page steps down for itself.
    QTest::newRow("pages differ")     << "0:250 1:250 2:20 3:20" << 4 << 2 << "0.76: 95.5 95.5 | 1.00: 95.5 95.5" << "M 1.00";
    // The ladder needs a second page: the rounds are shared out with it, the odd one on the first.
    QTest::newRow("ladder's pages")   << "0:20 4:20"            << 5 << 2 << "1.00: 63.7 63.7 63.7 | 1.00: 95.5 95.5" << "1.00";
    // A page without a round makes no sense.
    QTest::newRow("too many pages")   << "0:20"                 << 1 << 3 << "1.00: 191.0" << "1.00";
}
// clang-format on

void TestFlow::columnsShareThePage() {
    QFETCH(QString, terms);
    QFETCH(int, columns);
    QFETCH(int, leastPages);
    QFETCH(QString, pages);
    QFETCH(QString, sizes);
    const std::vector<FlowTerm> asked = termsFrom(terms);
    const Flow flow = flowTerms(questionOf(asked, columns, leastPages));
    QCOMPARE(pagesInWords(flow), pages);
    QCOMPARE(sizesInWords(flow), sizes);
}

void TestFlow::columnsFillTheWidthAndHoldTheirTerms() {
    for (int marks = 0; marks < 250; marks += 7) {
        std::vector<FlowTerm> terms;
        for (int i = 0; i < 30; ++i)
            terms.push_back(term(i % 4, (marks * (i + 3) * 7) % 180));
        const Flow flow = flowTerms(questionOf(terms, 4));
        std::vector<double> widths;
        for (const FlowPage& page : flow.pages) {
            double sum = 0;
            for (const double width : page.widths)
                sum += width;
            QVERIFY(std::abs(sum - 191) < 1e-6);
            widths.insert(widths.end(), page.widths.begin(), page.widths.end());
        }
        for (std::size_t i = 0; i < terms.size(); ++i)
            QVERIFY(terms[i].need[static_cast<std::size_t>(flow.steps[i].value)] <=
                    widths[static_cast<std::size_t>(terms[i].column)] + 1e-6);
    }
}

void TestFlow::whileASetIsWrittenColumnsStayAsLongAsAllFits() {
    std::vector<FlowTerm> terms = termsFrom(QStringLiteral("0:30 1:97"));
    const Flow first = flowTerms(questionOf(terms, 3));
    QCOMPARE(pagesInWords(first), QStringLiteral("1.00: 45.5 100.0 45.5"));
    terms[1] = term(1, 50); // a correction made it shorter, and a new term was begun
    terms.push_back(term(0, 40));
    FlowQuestion question = questionOf(terms, 3);
    question.former = &first;
    const Flow second = flowTerms(question);
    QCOMPARE(pagesInWords(second), QStringLiteral("1.00: 45.5 100.0 45.5"));
    QCOMPARE(second.steps.size(), std::size_t(3));
    terms[2] = term(0, 70); // now it needs more than its column has
    question.terms = terms;
    QCOMPARE(pagesInWords(flowTerms(question)), QStringLiteral("1.00: 73.0 59.0 59.0"));
}

void TestFlow::whileASetIsWrittenSizesOnlyFall() {
    std::vector<FlowTerm> terms = termsFrom(QStringLiteral("0:150"));
    const Flow first = flowTerms(questionOf(terms, 3));
    QCOMPARE(first.pages.front().size.value, 3);
    terms = termsFrom(QStringLiteral("0:20 1:90")); // wider than its column, but all of it would fit at full size
    FlowQuestion question = questionOf(terms, 3);
    question.former = &first;
    QCOMPARE(flowTerms(question).pages.front().size.value, 3);
    question.former = nullptr;
    QCOMPARE(flowTerms(question).pages.front().size.value, 0);
}

void TestFlow::aNewRoundSharesThePageAnew() {
    const std::vector<FlowTerm> terms = termsFrom(QStringLiteral("0:20 1:20 2:20"));
    const Flow first = flowTerms(questionOf(terms, 3));
    FlowQuestion question = questionOf(terms, 4);
    question.former = &first;
    QCOMPARE(pagesInWords(flowTerms(question)), QStringLiteral("1.00: 47.8 47.8 47.8 47.8"));
}

// clang-format off
void TestFlow::waterFindsItsLevel_data() {
    QTest::addColumn<QList<double>>("needs");
    QTest::addColumn<QList<double>>("widths");
    QTest::newRow("flat ground")           << QList<double>{1, 1, 1}    << QList<double>{20, 20, 20};
    QTest::newRow("one rock stands out")   << QList<double>{1, 40, 1}   << QList<double>{10, 40, 10};
    QTest::newRow("a second rock by that") << QList<double>{1, 40, 15}  << QList<double>{5, 40, 15};
    QTest::newRow("full to the brim")      << QList<double>{10, 40, 10} << QList<double>{10, 40, 10};
    QTest::newRow("too little water")      << QList<double>{30, 40, 10} << QList<double>{30, 40, 10};
}
// clang-format on

void TestFlow::waterFindsItsLevel() {
    QFETCH(QList<double>, needs);
    QFETCH(QList<double>, widths);
    const std::vector<double> found = filled(std::vector<double>(needs.begin(), needs.end()), 60);
    QCOMPARE(QList<double>(found.begin(), found.end()), widths);
}

QTEST_MAIN(TestFlow)
#include "tst_flow.moc"
