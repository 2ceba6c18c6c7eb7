// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebook.h"
#include "core/rules/rulebooksettings.h"

#include <QtTest>

#include <QJsonDocument>

using namespace setfolio;

namespace {

QJsonObject published() {
    return toJson(publishedRulebook(QStringLiteral("high-school")).value());
}

QJsonObject withSetting(const QString& key, const QJsonValue& value) {
    QJsonObject json = published();
    QJsonObject settings = json.value(u"settings").toObject();
    QJsonObject setting = settings.value(key).toObject();
    setting.insert(u"value", value);
    settings.insert(key, setting);
    json.insert(u"settings", settings);
    return json;
}

} // namespace

class TestRulebook : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theHighSchoolValuesAreThePublishedOnes() {
        const Rulebook book = publishedRulebook(QStringLiteral("high-school")).value();
        QCOMPARE(book.setPoints, 25);                                           // NFHS 2003 rule changes
        QCOMPARE(book.decidingSetPoints, 15);                                   // NFHS 2003 rule changes
        QCOMPARE(book.margin, 2);                                               // NFHS 2003 rule changes
        QCOMPARE(book.cap, std::optional<int>());                               // NFHS 2003 rule changes: no cap
        QCOMPARE(book.bestOf, (std::vector<int>{3, 5}));                        // NFHS 2003 rule changes
        QCOMPARE(book.substitutionLimit, 18);                                   // EOA clinic, citing NFHS Rule 5-6
        QCOMPARE(book.substitutionNotices, (std::vector<int>{15, 16, 17, 18})); // EOA clinic
        QCOMPARE(book.timeOuts, 2);                                             // NFHS 2003 rule changes
        QCOMPARE(book.timeOutSeconds, 60);                                      // Referee magazine, 5 rule differences
        QCOMPARE(book.maximumLiberos, 2);       // NFHS Comments on the Rules 2026-27, 6-4-2
        QCOMPARE(book.reServesPerTerm, 1);      // GTCCVO on NFHS 8-2-5
        QCOMPARE(book.intervalSeconds, 180);    // NFHS Comments on the Rules 2026-27
        QCOMPARE(book.firstLineUpSeconds, 120); // 2021-22 NFHS Rules PowerPoint, 7-1-4
        QCOMPARE(book.lineUpSeconds, 60);       // NFHS Rules Interpretations 2016-17
    }

    void everyPublishedSettingHasASource() {
        for (const QString& id : publishedRulebookIds()) {
            const auto book = publishedRulebook(id);
            QVERIFY2(book, qPrintable(id));
            for (const Setting& setting : rulebookSettings())
                QVERIFY2(!book->sources.value(QString::fromLatin1(setting.key)).text.isEmpty(), setting.key);
            for (const Source& source : book->sources)
                QVERIFY2(source.grade.isEmpty() || source.grade == u"A" || source.grade == u"B",
                         qPrintable(source.text));
        }
    }

    void readingWhatWasWrittenGivesTheSameRulebook() {
        Rulebook book = publishedRulebook(QStringLiteral("high-school")).value();
        QCOMPARE(rulebookFromJson(toJson(book)).value(), book);
        book.cap = 28;
        book.substitutionLimit = 12;
        book.writtenOrder = WrittenOrder::Floor;
        book.liberoServe = LiberoServeRule::Never;
        QCOMPARE(rulebookFromJson(toJson(book)).value(), book);
    }

    void whatIsWrongIsNamed_data() {
        QTest::addColumn<QString>("setting");
        QTest::addColumn<QJsonValue>("value");
        QTest::addColumn<int>("code");
        using Code = RulebookError::Code;
        // clang-format off
        QTest::newRow("a word for a number")  << QStringLiteral("set-points")         << QJsonValue(QStringLiteral("25")) << int(Code::WrongType);
        QTest::newRow("a fraction")           << QStringLiteral("set-points")         << QJsonValue(24.5)                 << int(Code::WrongType);
        QTest::newRow("nought points")        << QStringLiteral("set-points")         << QJsonValue(0)                    << int(Code::OutOfRange);
        QTest::newRow("too many")             << QStringLiteral("substitution-limit") << QJsonValue(1000)                 << int(Code::OutOfRange);
        QTest::newRow("an unknown word")      << QStringLiteral("written-order")      << QJsonValue(QStringLiteral("up")) << int(Code::OutOfRange);
        QTest::newRow("a number for a list")  << QStringLiteral("best-of")            << QJsonValue(5)                    << int(Code::WrongType);
        QTest::newRow("an unknown setting")   << QStringLiteral("moon-phase")         << QJsonValue(1)                    << int(Code::UnknownSetting);
        // clang-format on
    }
    void whatIsWrongIsNamed() {
        QFETCH(QString, setting);
        QFETCH(QJsonValue, value);
        const auto book = rulebookFromJson(withSetting(setting, value));
        QVERIFY(!book);
        QTEST(int(book.error().code), "code");
        QVERIFY(book.error().setting.startsWith(setting));
    }

    void aMissingSettingIsNamed() {
        QJsonObject json = published();
        QJsonObject settings = json.value(u"settings").toObject();
        settings.remove(u"time-outs");
        json.insert(u"settings", settings);
        const auto book = rulebookFromJson(json);
        QVERIFY(!book);
        QCOMPARE(book.error().code, RulebookError::Code::MissingSetting);
        QCOMPARE(book.error().setting, QStringLiteral("time-outs"));
    }

    void thereIsNoRulebookOfAnUnknownId() {
        QVERIFY(!publishedRulebook(QStringLiteral("../secret")));
        QVERIFY(!publishedRulebook({}));
    }
};

QTEST_APPLESS_MAIN(TestRulebook)
#include "tst_rulebook.moc"
