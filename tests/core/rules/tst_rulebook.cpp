// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/entry.h"
#include "core/rules/settingvalue.h"
#include "core/rules/settingwords.h"

#include <QtTest>

#include <QJsonArray>
#include <QJsonDocument>

using namespace setfolio;

namespace {

QJsonObject published() {
    return toJson(publishedRulebook(QStringLiteral("high-school")).value());
}

/// One whose settings do not stand in each other's way.
QJsonObject roomy() {
    Rulebook book = publishedRulebook(QStringLiteral("high-school")).value();
    book.setPoints = 1;
    book.timeOutSeconds = 600;
    book.timeOutWarningSeconds = 0;
    book.lowestNumber = 0;
    book.highestNumber = 99;
    return toJson(book);
}

QJsonObject withSetting(QJsonObject json, const QString& key, const QJsonValue& value) {
    QJsonObject settings = json.value(u"settings").toObject();
    QJsonObject setting = settings.value(key).toObject();
    setting.insert(u"value", value);
    settings.insert(key, setting);
    json.insert(u"settings", settings);
    return json;
}

QJsonValue ladderOf(const char* level, const char* cards) {
    return QJsonArray{QJsonObject{{QStringLiteral("level"), QLatin1String(level)},
                                  {QStringLiteral("cards"), QLatin1String(cards)},
                                  {QStringLiteral("point"), true}}};
}

/// Values that a setting may have: the ends of its range, each of its words.
const auto valuesToTry = Overloaded{[](const NumberSetting& number) {
                                        return QList<QJsonValue>{number.lowest, number.highest};
                                    },
                                    [](const OptionalSetting& number) {
                                        return QList<QJsonValue>{QJsonValue::Null, number.lowest, number.highest};
                                    },
                                    [](const ListSetting& list) {
                                        return QList<QJsonValue>{QJsonArray{list.lowest, list.highest}};
                                    },
                                    [](const FlagSetting&) {
                                        return QList<QJsonValue>{true, false};
                                    },
                                    [](const WordSetting& word) {
                                        QList<QJsonValue> words;
                                        for (const char* text : word.words)
                                            words += QLatin1String(text);
                                        return words;
                                    },
                                    [](const LadderSetting&) {
                                        QList<QJsonValue> ladders;
                                        for (const char* level : wordsOf<SanctionLevel>)
                                            for (const char* cards : wordsOf<CardsShown>)
                                                ladders += ladderOf(level, cards);
                                        return ladders;
                                    },
                                    [](const SignersSetting&) {
                                        QJsonArray all;
                                        for (const char* signer : wordsOf<Signer>)
                                            all.append(QLatin1String(signer));
                                        return QList<QJsonValue>{QJsonArray(), all};
                                    }};

} // namespace

class TestRulebook : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readingWhatWasWrittenGivesTheSameRulebook() {
        for (const QString& id : publishedRulebookIds()) {
            const Rulebook book = publishedRulebook(id).value();
            QCOMPARE(rulebookFromJson(toJson(book)).value(), book);
        }
    }

    void everyValueOfEverySettingIsWrittenAndRead() {
        for (const Setting& setting : rulebookSettings()) {
            const auto key = QString::fromLatin1(setting.key);
            for (const QJsonValue& value : std::visit(valuesToTry, setting.how)) {
                const auto book = rulebookFromJson(withSetting(roomy(), key, value));
                QVERIFY2(book, setting.key);
                QCOMPARE(valueOf(*book, setting), value);
                QCOMPARE(rulebookFromJson(toJson(*book)).value(), *book);
            }
        }
    }

    void theDefaultsAreTheHighSchoolValues() {
        Rulebook book = publishedRulebook(QStringLiteral("high-school")).value();
        for (const Setting& setting : rulebookSettings())
            QVERIFY2(valueOf(Rulebook(), setting) == valueOf(book, setting), setting.key);
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
        const auto json = [](const char* text) { return QJsonValue(QJsonDocument::fromJson(text).array()); };
        QTest::newRow("an even longer wait")  << QStringLiteral("roster-seconds")     << QJsonValue(7201)                 << int(Code::OutOfRange);
        QTest::newRow("below the range")      << QStringLiteral("roster-seconds")     << QJsonValue(-1)                   << int(Code::OutOfRange);
        QTest::newRow("a number for yes")     << QStringLiteral("exit-scores")        << QJsonValue(1)                    << int(Code::WrongType);
        QTest::newRow("none for yes")         << QStringLiteral("exit-scores")        << QJsonValue(QJsonValue::Null)     << int(Code::WrongType);
        QTest::newRow("a number for a word")  << QStringLiteral("protest")            << QJsonValue(1)                    << int(Code::WrongType);
        QTest::newRow("a word of another")    << QStringLiteral("protest")            << QJsonValue(QStringLiteral("set")) << int(Code::OutOfRange);
        QTest::newRow("a list with too much") << QStringLiteral("best-of")            << json("[3,7]")                    << int(Code::OutOfRange);
        QTest::newRow("no number of sets")    << QStringLiteral("best-of")            << json("[]")                       << int(Code::OutOfRange);
        QTest::newRow("a cap below the set")  << QStringLiteral("cap")                << QJsonValue(24)                   << int(Code::OutOfRange);
        QTest::newRow("a warning too late")   << QStringLiteral("time-out-warning-seconds") << QJsonValue(61)             << int(Code::OutOfRange);
        QTest::newRow("nobody known signs")   << QStringLiteral("signing-order")      << json(R"(["mascot"])")            << int(Code::OutOfRange);
        QTest::newRow("one signs twice")      << QStringLiteral("signing-order")      << json(R"(["scorer","scorer"])")   << int(Code::OutOfRange);
        QTest::newRow("no cards at all")      << QStringLiteral("conduct-ladder")     << json("[]")                       << int(Code::OutOfRange);
        QTest::newRow("a card of no level")   << QStringLiteral("conduct-ladder")     << json(R"([{"cards":"red","point":true}])")                     << int(Code::WrongType);
        QTest::newRow("a card of no colour")  << QStringLiteral("conduct-ladder")     << json(R"([{"level":"penalty","cards":"blue","point":true}])")  << int(Code::OutOfRange);
        QTest::newRow("a card with more")     << QStringLiteral("conduct-ladder")     << json(R"([{"level":"penalty","cards":"red","point":true,"loud":true}])") << int(Code::WrongType);
        QTest::newRow("a ladder that falls")  << QStringLiteral("delay-ladder")       << json(R"([{"level":"penalty","cards":"red","point":true},{"level":"warning","cards":"yellow","point":false}])") << int(Code::OutOfRange);
        QTest::newRow("a level given twice")  << QStringLiteral("delay-ladder")       << json(R"([{"level":"warning","cards":"yellow","point":false},{"level":"warning","cards":"red","point":true}])") << int(Code::OutOfRange);
        QTest::newRow("an unknown setting")   << QStringLiteral("moon-phase")         << QJsonValue(1)                    << int(Code::UnknownSetting);
        // clang-format on
    }
    void whatIsWrongIsNamed() {
        QFETCH(QString, setting);
        QFETCH(QJsonValue, value);
        const auto book = rulebookFromJson(withSetting(published(), setting, value));
        QVERIFY(!book);
        QTEST(int(book.error().code), "code");
        QVERIFY(book.error().setting.startsWith(setting));
    }

    void theNumbersAllowedMustNotBeNone() {
        Rulebook book = publishedRulebook(QStringLiteral("high-school")).value();
        book.lowestNumber = 21;
        book.highestNumber = 20;
        QCOMPARE(rulebookFromJson(toJson(book)).error().setting, QStringLiteral("highest-number"));
    }

    void anyMissingSettingIsNamed() {
        for (const Setting& setting : rulebookSettings()) {
            const auto key = QString::fromLatin1(setting.key);
            QJsonObject json = published();
            QJsonObject settings = json.value(u"settings").toObject();
            settings.remove(key);
            json.insert(u"settings", settings);
            const auto book = rulebookFromJson(json);
            QVERIFY(!book);
            QCOMPARE(book.error().code, RulebookError::Code::MissingSetting);
            QCOMPARE(book.error().setting, key);
        }
    }

    void whatIsWrongWithASourceIsNamed_data() {
        QTest::addColumn<QString>("member");
        QTest::addColumn<QJsonValue>("value");
        QTest::addColumn<int>("code");
        using Code = RulebookError::Code;
        // clang-format off
        QTest::newRow("no source")        << QStringLiteral("source") << QJsonValue(QJsonValue::Undefined)  << int(Code::MissingSetting);
        QTest::newRow("a number")         << QStringLiteral("source") << QJsonValue(7)                      << int(Code::WrongType);
        QTest::newRow("a grade too low")  << QStringLiteral("grade")  << QJsonValue(QStringLiteral("C"))    << int(Code::OutOfRange);
        QTest::newRow("a grade as number") << QStringLiteral("grade") << QJsonValue(1)                      << int(Code::WrongType);
        QTest::newRow("open in words")    << QStringLiteral("open")   << QJsonValue(QStringLiteral("yes"))  << int(Code::WrongType);
        QTest::newRow("a member unknown") << QStringLiteral("mood")   << QJsonValue(true)                   << int(Code::UnknownSetting);
        // clang-format on
    }
    void whatIsWrongWithASourceIsNamed() {
        QFETCH(QString, member);
        QFETCH(QJsonValue, value);
        QJsonObject json = published();
        QJsonObject settings = json.value(u"settings").toObject();
        QJsonObject setting = settings.value(u"margin").toObject();
        setting.insert(member, value);
        settings.insert(u"margin", setting);
        json.insert(u"settings", settings);
        const auto book = rulebookFromJson(json);
        QVERIFY(!book);
        QTEST(int(book.error().code), "code");
        QCOMPARE(book.error().setting, QStringLiteral("margin.") + member);
    }

    void thereIsNoRulebookOfAnUnknownId() {
        QVERIFY(!publishedRulebook(QStringLiteral("../secret")));
        QVERIFY(!publishedRulebook({}));
    }
};

QTEST_APPLESS_MAIN(TestRulebook)
#include "tst_rulebook.moc"
