// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/errorwords.h"

#include <QTest>

using namespace setfolio;

class TestErrorWords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSentenceOfALedgerErrorIs_data();
    void theSentenceOfALedgerErrorIs();
    void beforeTheFirstLineThereIsNothingToGoOnIn();
    void theDetailStandsInBrackets();
    void aTornTailIsToldApart();
    void theSentenceOfAFileErrorIs_data();
    void theSentenceOfAFileErrorIs();
    void theSentenceOfAnEntryErrorIs_data();
    void theSentenceOfAnEntryErrorIs();
    void aLineThatIsTooLongIsSaidToBe();
    void theSentenceOfARulebookErrorIs_data();
    void theSentenceOfARulebookErrorIs();
};

// clang-format off
void TestErrorWords::theSentenceOfALedgerErrorIs_data() {
    using enum LedgerError::Code;
    QTest::addColumn<LedgerError::Code>("code");
    QTest::addColumn<QString>("expected");
    const auto row = [](LedgerError::Code code, const char* expected) { QTest::newRow(expected) << code << QString::fromUtf8(expected); };

    row(CannotOpen,    "a.setfolio cannot be opened: check that the file is there and that you may read it.");
    row(CannotCreate,  "a.setfolio cannot be made: choose another name, or a folder that you may write to.");
    row(CannotWrite,   "a.setfolio cannot be written: the last entry is not recorded, all before it are. Make room on the disk and enter it again.");
    row(ReadOnly,      "a.setfolio is open for reading only: close the window that holds it, or go on in a copy.");
    row(NotALedger,    "a.setfolio is not a match file: it does not begin with the opening of a match.");
    row(NewerVersion,  "a.setfolio was written by a newer version of Setfolio: open it with that version.");
    row(BrokenLine,    "Line 7 of a.setfolio is damaged: the lines before it are whole, go on in a copy of them.");
    row(UnknownKind,   "Line 7 of a.setfolio holds a kind of entry that this version does not know: open it with a newer version of Setfolio.");
    row(WrongSequence, "Line 7 of a.setfolio is not the one that belongs there: a line is missing, doubled or moved. The lines before it are whole, go on in a copy of them.");
    row(WrongDigest,   "Line 7 of a.setfolio was altered after it was written: the lines before it are whole, go on in a copy of them.");
    row(WrongSeal,     "The seal in line 7 of a.setfolio is not over the lines before it: they were altered after they were signed. Compare the file with another copy, and with the seal on the paper.");
    row(SavedAnew,     "From line 7 on, a.setfolio was saved anew by another program, and is no longer what was written: use the file as it was, or another copy of it.");
    row(TooLong,       "a.setfolio goes beyond what a match file may hold, in line 7: the lines before it are whole, go on in a copy of them.");
    row(Unrecordable,  "This entry cannot be recorded in a.setfolio: correct it and enter it again.");
    row(ChangedOutside, "a.setfolio was changed by another program, so the entry was not recorded: open the file again and look at its end.");
}
// clang-format on

void TestErrorWords::theSentenceOfALedgerErrorIs() {
    QFETCH(LedgerError::Code, code);
    QFETCH(QString, expected);
    QCOMPARE(sentence(LedgerError{code, 7, u"a.setfolio"_qs, {}}), expected);
}

void TestErrorWords::beforeTheFirstLineThereIsNothingToGoOnIn() {
    using enum LedgerError::Code;
    for (const LedgerError::Code code : {BrokenLine, WrongSequence, WrongDigest, TooLong}) {
        const QString said = sentence(LedgerError{code, 1, u"a.setfolio"_qs, {}});
        QVERIFY2(said.endsWith(u": look for another copy of the file."_qs), qPrintable(said));
    }
}

void TestErrorWords::theDetailStandsInBrackets() {
    QCOMPARE(sentence(LedgerError{LedgerError::Code::BrokenLine, 7, u"a%2.setfolio"_qs, u"%3 <b>"_qs}),
             u"Line 7 of a%2.setfolio is damaged (%3 <b>): the lines before it are whole, go on in a copy of them."_qs);
}

void TestErrorWords::aTornTailIsToldApart() {
    QCOMPARE(sentence(TornTail{12, "{", {}}, u"a.setfolio"_qs),
             u"Line 12 of a.setfolio was cut short while it was being written: it is left out, and nothing that was "
             "recorded is lost."_qs);
    QCOMPARE(sentence(TornTail{12, "{", u"a.torn"_qs}, u"a.setfolio"_qs),
             u"Line 12 of a.setfolio was cut short while it was being written: it was moved to a.torn, and nothing "
             "that was recorded is lost."_qs);
}

// clang-format off
void TestErrorWords::theSentenceOfAFileErrorIs_data() {
    using enum FileError::Code;
    QTest::addColumn<FileError::Code>("code");
    QTest::addColumn<QString>("expected");
    const auto row = [](FileError::Code code, const char* expected) { QTest::newRow(expected) << code << QString::fromUtf8(expected); };

    row(CannotOpen,     "a.pdf cannot be opened (why): check that the file is there and that you may read it.");
    row(CannotCreate,   "a.pdf cannot be made (why): choose another name, or a folder that you may write to.");
    row(CannotRead,     "a.pdf cannot be read to its end (why): copy it to another disk, if that can still be done.");
    row(CannotWrite,    "a.pdf cannot be written (why): make room on the disk, or choose another one, and try again.");
    row(CannotReplace,  "a.pdf cannot be replaced (why), and is as it was: choose another name or folder.");
    row(CannotSync,     "a.pdf is written, but might not outlast a power cut (why): write it once more, or to another disk.");
    row(TooLong,        "a.pdf is too long (why): choose another file.");
    row(ChangedOutside, "a.pdf was changed by another program (why): open it again.");
}
// clang-format on

void TestErrorWords::theSentenceOfAFileErrorIs() {
    QFETCH(FileError::Code, code);
    QFETCH(QString, expected);
    QCOMPARE(sentence(FileError{code, u"a.pdf"_qs, u"why"_qs}), expected);
}

// clang-format off
void TestErrorWords::theSentenceOfAnEntryErrorIs_data() {
    using enum EntryJsonError::Code;
    QTest::addColumn<EntryJsonError::Code>("code");
    QTest::addColumn<QString>("expected");
    const auto row = [](EntryJsonError::Code code, const char* expected) { QTest::newRow(expected) << code << QString::fromUtf8(expected); };

    row(NotJson,       "This is not a JSON object: write one entry to a line, in braces, each member once, as UTF-8.");
    row(UnknownKind,   "\"team\" names no kind of entry that this version knows: check how the kind is spelled.");
    row(UnknownMember, "\"team\" does not belong in this entry: check how it is spelled, or leave it out.");
    row(MissingMember, "\"team\" is missing from this entry: add it.");
    row(WrongType,     "\"team\" is not of the type it must have in this entry: a number, a word, a list or an object.");
    row(OutOfRange,    "\"team\" has a value that it cannot have in this entry: FORMAT.md lists those it can.");
    row(NewerVersion,  "\"team\" is of a newer version of the format: use a newer version of Setfolio.");
    row(BadRulebook,   "\"team\" is no rulebook: name a published one, or correct the setting.");
}
// clang-format on

void TestErrorWords::theSentenceOfAnEntryErrorIs() {
    QFETCH(EntryJsonError::Code, code);
    QFETCH(QString, expected);
    QCOMPARE(sentence(EntryJsonError{code, u"team"_qs}), expected);
}

void TestErrorWords::aLineThatIsTooLongIsSaidToBe() {
    QCOMPARE(sentence(EntryJsonError{EntryJsonError::Code::OutOfRange, {}}),
             u"This line is longer than any entry can be: shorten it."_qs);
}

// clang-format off
void TestErrorWords::theSentenceOfARulebookErrorIs_data() {
    using enum RulebookError::Code;
    QTest::addColumn<RulebookError::Code>("code");
    QTest::addColumn<QString>("expected");
    const auto row = [](RulebookError::Code code, const char* expected) { QTest::newRow(expected) << code << QString::fromUtf8(expected); };

    row(NotJson,        "The rulebook is not a JSON object: choose a rulebook file.");
    row(UnknownSetting, "The rulebook has a setting \"margin\" that this version does not know: check how it is spelled.");
    row(MissingSetting, "The rulebook has no setting \"margin\": add it, with its source.");
    row(WrongType,      "The rulebook's setting \"margin\" is not of the type it must have: compare it with a published rulebook.");
    row(OutOfRange,     "The rulebook's setting \"margin\" has a value that it cannot have: compare it with a published rulebook.");
}
// clang-format on

void TestErrorWords::theSentenceOfARulebookErrorIs() {
    QFETCH(RulebookError::Code, code);
    QFETCH(QString, expected);
    QCOMPARE(sentence(RulebookError{code, u"margin"_qs}), expected);
}

QTEST_GUILESS_MAIN(TestErrorWords)
#include "tst_errorwords.moc"
