// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/shown.h"
#include "ui/wording/fill.h"

#include <QTest>

using namespace setfolio;
using namespace Qt::Literals::StringLiterals;

class TestShown : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Unicode Standard Annex 9, 2.1 to 2.4, names what turns words round without being a letter.
    void whatSteersIsABoxOrLeftOut_data() {
        QTest::addColumn<QString>("given");
        QTest::addColumn<QString>("shown");
        QTest::addColumn<QString>("taken");
        const auto row = [](const char* name, const QString& given, const QString& shown, const QString& taken) {
            QTest::newRow(name) << given << shown << taken;
        };
        // clang-format off
        row("plain",            u"Ada Lund"_s,                  u"Ada Lund"_s,                 u"Ada Lund"_s);
        row("embeddings",       u"a\u202Ab\u202Bc\u202C"_s,     u"a\u25A1b\u25A1c\u25A1"_s,    u"abc"_s);
        row("overrides",        u"a\u202Db\u202Ec"_s,           u"a\u25A1b\u25A1c"_s,          u"abc"_s);
        row("isolates",         u"\u2066a\u2067b\u2068c\u2069"_s, u"\u25A1a\u25A1b\u25A1c\u25A1"_s, u"abc"_s);
        row("line's ends",      u"a\u2028b\u2029c"_s,           u"a\u25A1b\u25A1c"_s,          u"a b c"_s);
        row("controls",         u"a\x1B[1mb\x7F\u0085"_s,       u"a\u25A1[1mb\u25A1\u25A1"_s,  u"a[1mb "_s);
        row("lines of a text",  u"a\n\tb"_s,                    u"a\n\tb"_s,                   u"a  b"_s);
        row("Hebrew",           u"\u05D0\u05D3\u05D4 \u05DC\u05D5\u05E0\u05D3"_s, u"\u05D0\u05D3\u05D4 \u05DC\u05D5\u05E0\u05D3"_s, u"\u05D0\u05D3\u05D4 \u05DC\u05D5\u05E0\u05D3"_s);
        row("Persian, joined",  u"\u0645\u06CC\u200C\u0634\u0648\u062F"_s, u"\u0645\u06CC\u200C\u0634\u0648\u062F"_s, u"\u0645\u06CC\u200C\u0634\u0648\u062F"_s);
        row("a mark on a letter", u"Ze\u0301"_s,                u"Ze\u0301"_s,                 u"Ze\u0301"_s);
        // clang-format on
    }
    void whatSteersIsABoxOrLeftOut() {
        QFETCH(QString, given);
        QTEST(asShown(given), "shown");
        QTEST(asTaken(given), "taken");
        QCOMPARE(asShown(asShown(given)), asShown(given));
        QCOMPARE(asTaken(asTaken(given)), asTaken(given));
    }

    void aSentenceIsFilledWithWhatIsShown() { QCOMPARE(fill(u"%2, %1"_s, {u"%1"_s, u"\u202Ea"_s}), u"\u25A1a, %1"_s); }
};

QTEST_MAIN(TestShown)
#include "tst_shown.moc"
