// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/delimited.h"
#include "ui/dialogs/rostertext.h"

#include <QTest>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

/// "7 Ada Lund C; 12; 2 Bo L": the rows in one line, to compare and to read.
QString told(const std::vector<RosterRow>& rows) {
    QStringList lines;
    for (const RosterRow& row : rows) {
        QString line = row.number;
        line += row.name.isEmpty() ? QString() : u' ' + row.name;
        line += row.captain ? u" +C"_s : QString();
        line += row.libero ? u" +L"_s : QString();
        lines << line;
    }
    return lines.join(u" | "_s);
}

QString codeName(RosterProblem::Code code) {
    using enum RosterProblem::Code;
    switch (code) {
    case NumberMissing:
        return u"missing"_s;
    case NotANumber:
        return u"no number"_s;
    case DoubleZero:
        return u"00"_s;
    case NumberNotAllowed:
        return u"not allowed"_s;
    case Doubled:
        return u"doubled"_s;
    case SecondCaptain:
        return u"second captain"_s;
    case NameTooLong:
        return u"long name"_s;
    case TooManyLines:
        return u"too many lines"_s;
    case QuoteNotClosed:
        return u"quote"_s;
    }
    Q_UNREACHABLE();
}

/// "3 doubled 7 (1)": line, what, text and the other line.
QString told(const std::vector<RosterProblem>& problems) {
    QStringList lines;
    for (const RosterProblem& problem : problems) {
        QString line = u"%1 %2"_s.arg(QString::number(problem.line), codeName(problem.code));
        line += problem.text.isEmpty() ? QString() : u' ' + problem.text;
        line += problem.other == 0 ? QString() : u" (%1)"_s.arg(problem.other);
        lines << line;
    }
    return lines.join(u" | "_s);
}

} // namespace

class RosterTextTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aTextBecomesRows_data();
    void aTextBecomesRows();
    void problemsAreNamedWithTheirLine_data();
    void problemsAreNamedWithTheirLine();
    void theRulebookSaysWhichNumbersAreAllowed();
    void aTextOfFiveHundredLinesIsCutAndSaysSo();
    void aQuoteThatIsNeverClosedIsNamed();
    void rowsWithoutANumberAreNoPlayers();
    void playersComeBackAsRows();
    void aFileIsReadWhateverItsEncoding_data();
    void aFileIsReadWhateverItsEncoding();
};

void RosterTextTest::aTextBecomesRows_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("rows");
    // clang-format off
    // how spreadsheets write
    QTest::newRow("tabs")                        << u"4\tAda Lund\n7\tBea Moss"_s              << u"4 Ada Lund | 7 Bea Moss"_s;
    QTest::newRow("commas")                      << u"4,Ada Lund\n7,Bea Moss"_s                << u"4 Ada Lund | 7 Bea Moss"_s;
    QTest::newRow("semicolons")                  << u"4;Ada Lund\n7;Bea Moss"_s                << u"4 Ada Lund | 7 Bea Moss"_s;
    QTest::newRow("tab before comma")            << u"4\tLund, Ada\n7\tMoss, Bea"_s            << u"4 Lund, Ada | 7 Moss, Bea"_s;
    QTest::newRow("semicolon before comma")      << u"4;Lund, Ada"_s                           << u"4 Lund, Ada"_s;
    QTest::newRow("CRLF")                        << u"4,Ada\r\n7,Bea\r\n"_s                    << u"4 Ada | 7 Bea"_s;
    QTest::newRow("CR alone")                    << u"4,Ada\r7,Bea"_s                          << u"4 Ada | 7 Bea"_s;
    QTest::newRow("byte order mark")             << u"\uFEFF4,Ada"_s                           << u"4 Ada"_s;
    QTest::newRow("mark before heading")         << u"\uFEFFNumber,Name\n4,Ada"_s              << u"4 Ada"_s;
    QTest::newRow("blank lines between")         << u"\n\n4,Ada\n\n , \n7,Bea\n\n"_s           << u"4 Ada | 7 Bea"_s;
    QTest::newRow("nothing")                     << QString()                                  << QString();
    QTest::newRow("blanks only")                 << u" \n,,\n  , "_s                          << QString();
    // quoting: RFC 4180, 2.5 to 2.7
    QTest::newRow("quoted separator")            << u"4,\"Lund, Ada\""_s                       << u"4 Lund, Ada"_s;
    QTest::newRow("doubled quotes")              << u"4,\"Ada \"\"Ace\"\" Lund\""_s            << u"4 Ada \"Ace\" Lund"_s;
    QTest::newRow("quoted line end")             << u"4,\"Ada\nLund\"\n7,Bea"_s                << u"4 Ada Lund | 7 Bea"_s;
    QTest::newRow("quoted tab, comma rows")      << u"4,\"Ada\tLund\"\n7,Bea"_s                << u"4 Ada Lund | 7 Bea"_s;
    QTest::newRow("a stray tab") << u"4,Ada\n7,\tBea\n9,Cy"_s << u"4 Ada | 7 Bea | 9 Cy"_s;
    QTest::newRow("quoted number")               << u"\"4\",\"Ada\""_s                         << u"4 Ada"_s;
    QTest::newRow("quotation mark in the middle")<< u"4,Ada \"Ace\" Lund"_s                    << u"4 Ada \"Ace\" Lund"_s;
    // numbers
    QTest::newRow("numbers only")                << u"4\n7\n12"_s                              << u"4 | 7 | 12"_s;
    QTest::newRow("numbers with empty names")    << u"4,\n7,\n"_s                              << u"4 | 7"_s;
    QTest::newRow("zero")                        << u"0,Ada"_s                                 << u"0 Ada"_s;
    QTest::newRow("number sign")                 << u"#4,Ada"_s                                << u"4 Ada"_s;
    QTest::newRow("number and name in one")      << u"4 Ada Lund\n12. Bea Moss\n#7 - Cy"_s     << u"4 Ada Lund | 12 Bea Moss | 7 - Cy"_s;
    QTest::newRow("unlawful ones are kept")      << u"00,Ada\n7a,Bea\n,Cy\n123,Di"_s           << u"00 Ada | 7a Bea |  Cy | 123 Di"_s;
    // columns
    QTest::newRow("headings")                    << u"No.,Name\n4,Ada"_s                       << u"4 Ada"_s;
    QTest::newRow("headings in another order")   << u"Name,Year,Shirt number,C\nAda,10,4,x"_s  << u"4 Ada +C"_s;
    QTest::newRow("first and last name")         << u"#,First name,Last name\n4,Ada,Lund"_s    << u"4 Ada Lund"_s;
    QTest::newRow("last and first name")         << u"#,Last,First\n4,Lund,Ada"_s              << u"4 Ada Lund"_s;
    QTest::newRow("name before number")          << u"Ada,4\nBea,7"_s                          << u"4 Ada | 7 Bea"_s;
    QTest::newRow("further columns")             << u"4,Ada,,,grade 10,177"_s                  << u"4 Ada"_s;
    // captain and libero
    QTest::newRow("captain by column")           << u"4,Ada,x\n7,Bea,\n"_s                     << u"4 Ada +C | 7 Bea"_s;
    QTest::newRow("libero by column")            << u"4,Ada,,x"_s                              << u"4 Ada +L"_s;
    QTest::newRow("words that say no")           << u"4,Ada,no,0\n7,Bea,false,-"_s             << u"4 Ada | 7 Bea"_s;
    QTest::newRow("ones and zeros")              << u"4,Ada,1,0\n7,Bea,0,1"_s                  << u"4 Ada +C | 7 Bea +L"_s;
    QTest::newRow("letters in any column")       << u"4,Ada,L\n7,Bea,,C"_s                     << u"4 Ada +L | 7 Bea +C"_s;
    QTest::newRow("role column")                 << u"number,name,role\n4,Ada,Libero\n7,B,C"_s << u"4 Ada +L | 7 B +C"_s;
    QTest::newRow("marks behind the name")       << u"4,Ada Lund (C)\n7,Bea [L]\n9,Cy (Jr)"_s  << u"4 Ada Lund +C | 7 Bea +L | 9 Cy (Jr)"_s;
    QTest::newRow("libero who is captain")       << u"4,Ada,x,x"_s                             << u"4 Ada +C +L"_s;
    // names of the world
    QTest::newRow("right to left")               << u"4,\u05E0\u05D5\u05E2\u05D4 \u05DC\u05D5\u05D9"_s << u"4 \u05E0\u05D5\u05E2\u05D4 \u05DC\u05D5\u05D9"_s;
    QTest::newRow("accents")                     << u"4,Žofie Řeháková"_s                      << u"4 Žofie Řeháková"_s;
    QTest::newRow("beyond the basic plane")      << u"4,\U00020BB7\u91CE"_s                    << u"4 \U00020BB7\u91CE"_s;
    QTest::newRow("sixty characters")            << u"4,"_s + QString(60, u'm')                << u"4 "_s + QString(60, u'm');
    QTest::newRow("apostrophe")                  << u"4,O'Dell"_s                              << u"4 O'Dell"_s;
    // clang-format on
}

void RosterTextTest::aTextBecomesRows() {
    QFETCH(QString, text);
    QFETCH(QString, rows);
    const RosterText read = rosterFromText(text);
    QCOMPARE(told(read.rows), rows);
    QCOMPARE(told(read.problems), QString());
}

void RosterTextTest::problemsAreNamedWithTheirLine_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("problems");
    // clang-format off
    QTest::newRow("all well")               << u"4,Ada,C\n7,Bea,L\n0,Cy"_s       << QString();
    QTest::newRow("a number twice")         << u"4,Ada\n7,Bea\n4,Cy"_s           << u"3 doubled 4 (1)"_s;
    QTest::newRow("a number three times")   << u"4\n4\n4"_s                      << u"2 doubled 4 (1) | 3 doubled 4 (1)"_s;
    QTest::newRow("04 is 4")                << u"4,Ada\n04,Bea"_s                << u"2 doubled 4 (1)"_s;
    // common practice: 00 is not a number that may be worn beside 0
    QTest::newRow("double zero")            << u"4,Ada\n00,Bea"_s                << u"2 00 00"_s;
    QTest::newRow("letters in a number")    << u"7a,Ada"_s                       << u"1 no number 7a"_s;
    QTest::newRow("three digits")           << u"123,Ada"_s                      << u"1 no number 123"_s;
    QTest::newRow("minus")                  << u"-4,Ada"_s                       << u"1 no number -4"_s;
    QTest::newRow("a fraction")             << u"4.5,Ada"_s                      << u"1 no number 4.5"_s;
    QTest::newRow("a name without a number")<< u"4,Ada\n,Bea"_s                  << u"2 missing Bea"_s;
    QTest::newRow("two captains")           << u"4,Ada,C\n7,Bea,C"_s             << u"2 second captain (1)"_s;
    QTest::newRow("a name too long")        << u"4,"_s + QString(121, u'm')      << u"1 long name"_s;
    QTest::newRow("a name just in")         << u"4,"_s + QString(120, u'm')      << QString();
    // clang-format on
}

void RosterTextTest::problemsAreNamedWithTheirLine() {
    QFETCH(QString, text);
    QFETCH(QString, problems);
    QCOMPARE(told(problemsOf(rosterFromText(text).rows, Rulebook())), problems);
}

void RosterTextTest::theRulebookSaysWhichNumbersAreAllowed() {
    Rulebook rulebook;
    rulebook.lowestNumber = 1;
    rulebook.highestNumber = 20;
    QCOMPARE(told(problemsOf(rosterFromText(u"0\n1\n20\n21"_s).rows, rulebook)),
             u"1 not allowed 0 | 4 not allowed 21"_s);
}

void RosterTextTest::aTextOfFiveHundredLinesIsCutAndSaysSo() {
    QString text;
    for (int line = 1; line <= 500; ++line)
        text += u"%1,Player %2\n"_s.arg(line % 100).arg(line);
    const RosterText read = rosterFromText(text);
    QCOMPARE(std::ssize(read.rows), mostRosterLines);
    QCOMPARE(told(read.problems), u"61 too many lines"_s);
}

void RosterTextTest::aQuoteThatIsNeverClosedIsNamed() {
    const RosterText read = rosterFromText(u"4,Ada\n7,\"Bea\n9,Cy"_s);
    QCOMPARE(told(read.problems), u"2 quote"_s);
    QCOMPARE(told(read.rows), u"4 Ada | 7 Bea 9,Cy"_s);
}

void RosterTextTest::rowsWithoutANumberAreNoPlayers() {
    const std::vector<RosterPlayer> players = playersOf(rosterFromText(u"4,Ada,C\n00,Bea\n,Cy\n7,"_s).rows);
    QCOMPARE(players.size(), 2U);
    QCOMPARE(players.front(), (RosterPlayer{ShirtNumber(4), u"Ada"_s, true, false}));
}

void RosterTextTest::playersComeBackAsRows() {
    const std::vector<RosterPlayer> players{{ShirtNumber(0), u"Ada"_s, false, true},
                                            {ShirtNumber(12), {}, true, false}};
    QCOMPARE(playersOf(rowsOf(players)), players);
}

void RosterTextTest::aFileIsReadWhateverItsEncoding_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("text");
    // clang-format off
    QTest::newRow("UTF-8")             << QByteArray("4,\xC5\xBDofie")                               << u"4,Žofie"_s;
    QTest::newRow("UTF-8 with mark")   << QByteArray("\xEF\xBB\xBF" "4,\xC5\xBDofie")                << u"4,Žofie"_s;
    QTest::newRow("UTF-16 with mark")  << QByteArray("\xFF\xFE" "4\0,\0A\0", 8)                      << u"4,A"_s;
    QTest::newRow("big-endian UTF-16") << QByteArray("\xFE\xFF" "\0004\0,\0A", 8)                    << u"4,A"_s;
    QTest::newRow("UTF-16, no mark")   << QByteArray("4\0,\0A\0d\0a\0", 10)                           << u"4,Ada"_s;
    QTest::newRow("windows-1252")      << QByteArray("4,\x8Eofie O\x92Roe")                           << u"4,\u017Dofie O\u2019Roe"_s;
    QTest::newRow("Latin-1")           << QByteArray("4,Ren\xE9")                                    << u"4,René"_s;
    QTest::newRow("empty")             << QByteArray()                                               << QString();
    // clang-format on
}

void RosterTextTest::aFileIsReadWhateverItsEncoding() {
    QFETCH(QByteArray, bytes);
    QFETCH(QString, text);
    QCOMPARE(textOfFile(bytes), text);
}

} // namespace setfolio

QTEST_APPLESS_MAIN(setfolio::RosterTextTest)
#include "tst_rostertext.moc"
