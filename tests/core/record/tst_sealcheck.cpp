// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/sealcheck.h"
#include "core/record/sealtext.h"
#include "tests/support/signoffs.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

/// The lines of a ledger with these entries, each with its line feed.
QList<QByteArray> linesOf(const std::vector<Recorded>& entries) {
    QList<QByteArray> lines;
    QByteArray digest = firstDigest();
    for (Recorded recorded : entries) {
        recorded.entry = withSeal(std::move(recorded.entry), digest);
        lines += ledgerLine(recorded, digest);
        digest = digestOfLine(lines.back());
    }
    return lines;
}

/// The digest of the line before the seal of a line.
QString sealIn(const QList<QByteArray>& lines, qsizetype line) {
    return QString::fromLatin1(digestOfLine(lines.at(line - 2)));
}

/// The line of the last seal.
qsizetype lastSeal(const std::vector<Recorded>& entries) {
    for (auto entry = entries.rbegin(); entry != entries.rend(); ++entry)
        if (std::holds_alternative<Sealed>(entry->entry))
            return entry->number.value;
    return 0;
}

SealCheck checked(const QList<QByteArray>& lines, const QString& seal) {
    return checkSeal(lines.join(), digitsOfSeal(sealCode(seal)).value());
}

} // namespace

class TestSealCheck : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aCodeIsReadBackHoweverItIsTyped_data();
    void aCodeIsReadBackHoweverItIsTyped();
    void theTextForAPhoneHoldsAllOfTheSeal();
    void whatWasSignedIsFound();
    void everyByteThatIsAlteredIsFoundAndItsLineNamed();
    void linesRemovedSwappedDoubledOrCutAreFound_data();
    void linesRemovedSwappedDoubledOrCutAreFound();
    void aFileWrittenAnewIsNotWhatWasSigned();
    void aSealThatIsNotOverItsLinesIsDamage();
    void aSealOfTheOriginalIsDamageInAFileWithNames();
    void bothStatesOfAReopenedSetAreToldApart();
    void theSheetKeepsWhatIsVoid();
    void entriesThatLeaveTheSealAloneAreCounted();
};

void TestSealCheck::aCodeIsReadBackHoweverItIsTyped_data() {
    QTest::addColumn<QString>("typed");
    QTest::addColumn<bool>("good");
    const QString digest = u"0123456789abcdef01234567"_s + QString(40, u'8');
    QTest::newRow("as printed") << sealCode(digest) << true;
    QTest::newRow("in small letters") << sealCode(digest).toLower() << true;
    QTest::newRow("without spaces") << sealCode(digest).remove(u' ') << true;
    QTest::newRow("with hyphens") << sealCode(digest).replace(u' ', u'-') << true;
    QTest::newRow("in two lines") << sealCode(digest).insert(14, u'\n') << true;
    QTest::newRow("the digest") << digest << true;
    QTest::newRow("the digest in capitals") << digest.toUpper() << true;
    QTest::newRow("a group short") << sealCode(digest).chopped(5) << false;
    QTest::newRow("a sign too many") << sealCode(digest) + u'3' << false;
    QTest::newRow("a sign that is none") << sealCode(digest).replace(0, 1, u"O"_s) << false;
    QTest::newRow("nothing") << QString() << false;
}

void TestSealCheck::aCodeIsReadBackHoweverItIsTyped() {
    QFETCH(QString, typed);
    const auto digits = digitsOfSeal(typed);
    QTEST(digits.has_value(), "good");
    if (digits)
        QVERIFY(digits->startsWith("0123456789abcdef01234567"_L1));
}

void TestSealCheck::theTextForAPhoneHoldsAllOfTheSeal() {
    MatchBuilder match = oneSetPlayed();
    signOff(match, 1);
    MatchRecord record = match.record();
    SignOffRecord& signOff = record.signOffs.front();
    signOff.seal->digest = QString(64, u'a');
    record.heading.opened.id = u"7f1c2a54-3f0e-4b5e-9c0d-2f6c1a9b8e77"_s;
    record.heading.opened.date = QDate(2026, 10, 10);
    QCOMPARE(sealText(record.heading, signOff, record.sets.front().score),
             u"Setfolio seal\n"_s + QString(64, u'a') +
                 u"\nmatch 7f1c2a54-3f0e-4b5e-9c0d-2f6c1a9b8e77\n2026-10-10\nset 1: SAL 25-0 QRL"_s);
}

void TestSealCheck::whatWasSignedIsFound() {
    const MatchBuilder match = matchSealed();
    const QList<QByteArray> lines = linesOf(match.entries());
    QVERIFY(!readLedger(lines.join()).damage);
    const SealCheck check = checked(lines, sealIn(lines, lines.size()));
    QCOMPARE(check.line, static_cast<int>(lines.size()) - 1);
    QVERIFY(check.seal.has_value());
    QVERIFY(check.reachBack.empty());
    QCOMPARE(check.after, 0);
}

void TestSealCheck::everyByteThatIsAlteredIsFoundAndItsLineNamed() {
    const QList<QByteArray> lines = linesOf(oneSetSealed().entries());
    const QByteArray whole = lines.join();
    const QString digits = digitsOfSeal(sealIn(lines, lines.size())).value();
    int line = 1;
    for (qsizetype place = 0; place < whole.size(); ++place) {
        QByteArray altered = whole;
        altered[place] = static_cast<char>(altered[place] ^ 1);
        const SealCheck check = checkSeal(altered, digits);
        const bool asSigned = check.line > 0 && check.seal && !check.damage && !check.torn;
        if (asSigned)
            QFAIL(qPrintable(u"byte %1 of line %2 was altered, and nothing is said"_s.arg(place).arg(line)));
        // A line feed that is none joins two lines: the first of them is named. The last one's leaves a torn tail.
        const int named = check.damage ? check.damage->line : check.torn ? check.torn->line : 0;
        if (named != line)
            QFAIL(
                qPrintable(u"byte %1 of line %2 was altered, and line %3 is named"_s.arg(place).arg(line).arg(named)));
        if (whole[place] == '\n')
            ++line;
    }
    QCOMPARE(whole, lines.join());
}

void TestSealCheck::linesRemovedSwappedDoubledOrCutAreFound_data() {
    QTest::addColumn<QList<QByteArray>>("altered");
    QTest::addColumn<int>("damaged"); // the line that is named; 0: no line is damaged
    const QList<QByteArray> lines = linesOf(oneSetSealed().entries());
    const auto with = [&](auto&& change) {
        QList<QByteArray> list = lines;
        change(list);
        return list;
    };
    using Lines = QList<QByteArray>;
    QTest::newRow("a line removed") << with([](Lines& l) { l.removeAt(9); }) << 10;
    QTest::newRow("two lines swapped") << with([](Lines& l) { l.swapItemsAt(9, 10); }) << 10;
    QTest::newRow("a line doubled") << with([](Lines& l) { l.insert(10, l[9]); }) << 11;
    QTest::newRow("the seal doubled") << with([](Lines& l) { l += l.back(); }) << static_cast<int>(lines.size()) + 1;
    QTest::newRow("the last lines cut off") << with([](Lines& l) { l.resize(20); }) << 0;
    QTest::newRow("a signature cut off") << with([](Lines& l) {
        l.removeLast();
        l.removeLast();
    }) << 0;
}

void TestSealCheck::linesRemovedSwappedDoubledOrCutAreFound() {
    const QList<QByteArray> lines = linesOf(oneSetSealed().entries());
    QFETCH(QList<QByteArray>, altered);
    const SealCheck check = checked(altered, sealIn(lines, lines.size()));
    QVERIFY(check.line == 0 || check.damage);
    QTEST(check.damage ? check.damage->line : 0, "damaged");
}

void TestSealCheck::aFileWrittenAnewIsNotWhatWasSigned() {
    const MatchBuilder match = oneSetSealed();
    const QList<QByteArray> lines = linesOf(match.entries());
    std::vector<Recorded> entries = match.entries();
    const auto point = std::ranges::find_if(
        entries, [](const Recorded& recorded) { return std::holds_alternative<RallyWon>(recorded.entry); });
    point->time = point->time.addMSecs(1);
    const QList<QByteArray> anew = linesOf(entries);
    QVERIFY(!readLedger(anew.join()).damage);
    const SealCheck check = checked(anew, sealIn(lines, lines.size()));
    QCOMPARE(check.line, 0);
    QCOMPARE(check.otherSeals.size(), std::size_t(1));
    QCOMPARE(check.otherSeals.front().number.value, static_cast<std::uint32_t>(lines.size()));
}

/// The chain is written anew from a line on, and the seal is left as it was.
void TestSealCheck::aSealThatIsNotOverItsLinesIsDamage() {
    std::vector<Recorded> entries = oneSetSealed().entries();
    std::get<Sealed>(entries.back().entry).digest = QString(64, u'5');
    QByteArray bytes, digest = firstDigest();
    for (const Recorded& recorded : entries) {
        const QByteArray line = ledgerLine(recorded, digest);
        digest = digestOfLine(line);
        bytes += line;
    }
    const LedgerContent content = readLedger(bytes);
    QVERIFY(content.damage.has_value());
    QCOMPARE(content.damage->code, LedgerError::Code::WrongSeal);
    QCOMPARE(content.damage->line, static_cast<int>(entries.size()));
}

/// A seal is copied from another file, as that of an original; it stands so only where names were left out.
void TestSealCheck::aSealOfTheOriginalIsDamageInAFileWithNames() {
    for (const bool leftOut : {false, true}) {
        std::vector<Recorded> entries = oneSetSealed().entries();
        std::get<MatchOpened>(entries.front().entry).namesLeftOut = leftOut;
        std::get<Sealed>(entries.back().entry) = {1, QString(64, u'5'), SealOf::Original};
        const LedgerContent content = readLedger(linesOf(entries).join());
        QCOMPARE(content.damage.has_value(), !leftOut);
        if (content.damage) {
            QCOMPARE(content.damage->code, LedgerError::Code::WrongSeal);
            QCOMPARE(content.damage->line, static_cast<int>(entries.size()));
        }
    }
}

void TestSealCheck::bothStatesOfAReopenedSetAreToldApart() {
    MatchBuilder match = oneSetSealed();
    const qsizetype firstLine = lastSeal(match.entries());
    match.add(Reopened{1, u"Orla Vantage"_s, u"rally 12"_s});
    const EntryNumber last = match.last();
    match.place(Remark{u"rally 12 was replayed"_s}, Placed::How::Before, EntryNumber(20));
    QCOMPARE(match.last().value, last.value + 1);
    signOff(match, 1);
    const qsizetype secondLine = lastSeal(match.entries());
    const QList<QByteArray> lines = linesOf(match.entries());

    const SealCheck first = checked(lines, sealIn(lines, firstLine));
    QCOMPARE(first.line, static_cast<int>(firstLine) - 1);
    QCOMPARE(first.reachBack.size(), std::size_t(3));
    QVERIFY(std::holds_alternative<Reopened>(first.reachBack[0].entry));
    QVERIFY(std::holds_alternative<Remark>(first.reachBack[1].entry));
    QVERIFY(std::holds_alternative<Sealed>(first.reachBack[2].entry));

    const SealCheck second = checked(lines, sealIn(lines, secondLine));
    QCOMPARE(second.line, static_cast<int>(secondLine) - 1);
    QVERIFY(second.reachBack.empty());
    QVERIFY(sealCode(sealIn(lines, firstLine)) != sealCode(sealIn(lines, secondLine)));
}

void TestSealCheck::theSheetKeepsWhatIsVoid() {
    MatchBuilder match = oneSetSealed();
    match.add(Reopened{1, u"Orla Vantage"_s, u"rally 12"_s});
    signOff(match, 1);
    const SetRecord set = match.record().sets.front();
    QCOMPARE(set.signOffs.size(), std::size_t(2));
    QVERIFY(set.signOffs[0].reopened && set.signOffs[0].seal && set.signOffs[0].signatures.size() == 3);
    QVERIFY(!set.signOffs[1].reopened && set.signOffs[1].seal);
    QVERIFY(std::ranges::any_of(set.notes,
                                [](const Note& note) { return std::holds_alternative<ReopenedNote>(note.content); }));
}

void TestSealCheck::entriesThatLeaveTheSealAloneAreCounted() {
    MatchBuilder match = oneSetSealed();
    const qsizetype line = lastSeal(match.entries());
    playSet(match, Team::Home);
    match.add(Remark{u"net"_s}).undo();
    const QList<QByteArray> lines = linesOf(match.entries());
    const SealCheck check = checked(lines, sealIn(lines, line));
    QVERIFY(check.reachBack.empty());
    QCOMPARE(check.after, static_cast<int>(lines.size() - line));
}

QTEST_APPLESS_MAIN(TestSealCheck)
#include "tst_sealcheck.moc"
