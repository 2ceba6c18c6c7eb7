// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commandline.h"

#include <QFile>
#include <QRegularExpression>
#include <QTest>

using namespace setfolio;

class TestCommandLine : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void itAsksFor_data();
    void itAsksFor();
    void itIsRefused_data();
    void itIsRefused();
    void everyRefusalHasASentenceOfItsOwn();
    void theHelpAndTheManualNameTheSameOptionsAndCodes();
};

// clang-format off
void TestCommandLine::itAsksFor_data() {
    QTest::addColumn<QString>("line");
    QTest::addColumn<Command>("expected");
    const auto row = [](const char* line, const Command& expected) { QTest::newRow(line) << QString::fromUtf8(line) << expected; };
    const QString a = u"a.setfolio"_qs, b = u"b.setfolio"_qs, pdf = u"a.pdf"_qs;

    row("",                                            OpenWindow{});
    row("a.setfolio",                                  OpenWindow{a});
    row("-- -a",                                       OpenWindow{u"-a"_qs});
    row("-- print",                                    OpenWindow{u"print"_qs});
    row("./print",                                     OpenWindow{u"./print"_qs});
    row("print a.setfolio --to a.pdf",                 PrintSheets{{a}, pdf, std::nullopt, PdfForm::Archive});
    row("print --to a.pdf a.setfolio",                 PrintSheets{{a}, pdf, std::nullopt, PdfForm::Archive});
    row("print --to=a.pdf a.setfolio",                 PrintSheets{{a}, pdf, std::nullopt, PdfForm::Archive});
    row("print a.setfolio b.setfolio --to a.pdf",      PrintSheets{{a, b}, pdf, std::nullopt, PdfForm::Archive});
    row("print a.setfolio --to a.pdf --paper a4",      PrintSheets{{a}, pdf, PaperSize::A4, PdfForm::Archive});
    row("print a.setfolio --to a.pdf --paper=letter",  PrintSheets{{a}, pdf, PaperSize::Letter, PdfForm::Archive});
    row("print a.setfolio --to a.pdf --as archive",    PrintSheets{{a}, pdf, std::nullopt, PdfForm::Archive});
    row("print a.setfolio --to a.pdf --as plain",      PrintSheets{{a}, pdf, std::nullopt, PdfForm::Plain});
    row("print a.setfolio --to a.pdf --numbers-only",  PrintSheets{{a}, pdf, std::nullopt, PdfForm::Archive, {}, InkSet::CobaltAndRust, Names::LeftOut});
    row("print a.setfolio --numbers-only --to a.pdf",  PrintSheets{{a}, pdf, std::nullopt, PdfForm::Archive, {}, InkSet::CobaltAndRust, Names::LeftOut});
    row("print a.setfolio --to a.pdf --inks greys",    PrintSheets{{a}, pdf, std::nullopt, PdfForm::Archive, {}, InkSet::Greys});
    row("print a.setfolio --to -x",                    PrintSheets{{a}, u"-x"_qs, std::nullopt, PdfForm::Archive});
    row("print --to a.pdf -- -a --to",                 PrintSheets{{u"-a"_qs, u"--to"_qs}, pdf, std::nullopt, PdfForm::Archive});
    row("check a.setfolio",                            CheckFiles{{a}});
    row("check a.setfolio b.setfolio",                 CheckFiles{{a, b}});
    row("check a.setfolio --seal 3479-aceF-HKMN-PRTX-3333-4444", CheckFiles{{a}, u"0123456789abcdef00001111"_qs});
    row("check -- --help",                             CheckFiles{{u"--help"_qs}});
    row("enter - --to a.setfolio",                     EnterList{u"-"_qs, a});
    row("enter l.jsonl --to a.setfolio",               EnterList{u"l.jsonl"_qs, a});
    row("export a.setfolio --as json",                 ExportMatch{a, {}});
    row("export --to x --as json a.setfolio",          ExportMatch{a, u"x"_qs});
    row("export a.setfolio --as csv",                  ExportMatch{a, {}, ExportForm::Csv});
    row("export --numbers-only a.setfolio --as csv",   ExportMatch{a, {}, ExportForm::Csv, Names::LeftOut});
    row("export a.setfolio --as match-file --numbers-only --to b", ExportMatch{a, u"b"_qs, ExportForm::MatchFile, Names::LeftOut});
    row("--help",                                      ShowHelp{});
    row("--version",                                   ShowVersion{});
    row("print --help",                                ShowHelp{});
    row("check a.setfolio --nonsense --help",          ShowHelp{});
}

void TestCommandLine::itIsRefused_data() {
    using enum UsageError::Code;
    QTest::addColumn<QString>("line");
    QTest::addColumn<UsageError>("expected");
    const auto row = [](const char* line, UsageError::Code code, const char* word) {
        QTest::newRow(line) << QString::fromUtf8(line) << UsageError{code, QString::fromUtf8(word)};
    };

    row("a b",                                         TooManyFiles,   "b");
    row("-x",                                          UnknownOption,  "-x");
    row("a --to b",                                    UnknownOption,  "--to");
    row("print",                                       MissingFile,    "print");
    row("print --to x",                                MissingFile,    "print");
    row("print a",                                     MissingOption,  "--to");
    row("print a --to",                                MissingValue,   "--to");
    row("print a --to=",                               MissingValue,   "--to");
    row("print a --to --paper a4",                     MissingValue,   "--to");
    row("print a --to x --to y",                       RepeatedOption, "--to");
    row("print a --to x --paper a5",                   UnknownPaper,   "a5");
    row("print a --to x --paper A4",                   UnknownPaper,   "A4");
    row("print a --to x --inks pink",                  UnknownInks,    "pink");
    row("print a --to x --as json",                    UnknownPdfForm, "json");
    row("print a --to x --sheets set,page",            UnknownSheet,   "page");
    row("check",                                       MissingFile,    "check");
    row("check a --seal 3479ACEF",                     UnknownSeal,    "3479ACEF");
    row("check a --seal O479ACEFHKMNPRTX33334444",     UnknownSeal,    "O479ACEFHKMNPRTX33334444");
    row("check a --to x",                              UnknownOption,  "--to");
    row("enter --to x",                                MissingFile,    "enter");
    row("enter l",                                     MissingOption,  "--to");
    row("enter l m --to x",                            TooManyFiles,   "m");
    row("export a",                                    MissingOption,  "--as");
    row("export a --as xml",                           UnknownFormat,  "xml");
    row("export a --as match-file --to b",             MissingOption,  "--numbers-only");
    row("export a --as match-file --numbers-only",     MissingOption,  "--to");
    row("export a --as csv --numbers-only=1",          UnknownOption,  "--numbers-only=1");
    row("export a --numbers-only --numbers-only",      RepeatedOption, "--numbers-only");
    row("check a --numbers-only",                      UnknownOption,  "--numbers-only");
    row("export a b --as json",                        TooManyFiles,   "b");
    row("export --as json",                            MissingFile,    "export");
}
// clang-format on

void TestCommandLine::itAsksFor() {
    QFETCH(QString, line);
    QFETCH(Command, expected);
    const auto command = commandOf(line.split(u' ', Qt::SkipEmptyParts));
    QVERIFY2(command.has_value(), command ? "" : qPrintable(sentence(command.error())));
    QVERIFY(*command == expected);
}

void TestCommandLine::itIsRefused() {
    QFETCH(QString, line);
    QFETCH(UsageError, expected);
    const auto command = commandOf(line.split(u' ', Qt::SkipEmptyParts));
    QVERIFY(!command.has_value());
    QCOMPARE(static_cast<int>(command.error().code), static_cast<int>(expected.code));
    QCOMPARE(command.error().word, expected.word);
}

void TestCommandLine::everyRefusalHasASentenceOfItsOwn() {
    using enum UsageError::Code;
    QStringList sentences;
    for (const auto code : {UnknownOption, RepeatedOption, MissingValue, UnknownPaper, UnknownFormat, UnknownPdfForm,
                            UnknownSeal, UnknownSheet, UnknownInks, MissingOption, MissingFile, TooManyFiles}) {
        sentences += sentence(UsageError{code, u"word%1"_qs});
        QVERIFY2(sentences.last().contains(u"word%1"), qPrintable(sentences.last()));
    }
    QCOMPARE(sentences.removeDuplicates(), 0);
}

void TestCommandLine::theHelpAndTheManualNameTheSameOptionsAndCodes() {
    QFile file(QStringLiteral(SETFOLIO_SOURCE_DIR "/packaging/setfolio.1"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QString manual = QString::fromUtf8(file.readAll()).remove(u"\\"_qs);
    static const QRegularExpression pattern(QStringLiteral("--[a-z]+|(?<=^  )[0-9]+"),
                                            QRegularExpression::MultilineOption);
    auto match = pattern.globalMatch(helpText());
    QVERIFY(match.hasNext());
    while (match.hasNext()) {
        const QString word = match.next().captured();
        const QString asInManual = word.startsWith(u'-') ? word : u"\n.B "_qs + word + u'\n';
        QVERIFY2(manual.contains(asInManual), qPrintable(word));
    }
}

QTEST_GUILESS_MAIN(TestCommandLine)
#include "tst_commandline.moc"
