// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebookdraft.h"

#include "core/rules/rulebookcompare.h"

#include <QJsonArray>
#include <QTest>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

Rulebook published(const char* id = "high-school") {
    return publishedRulebook(QString::fromLatin1(id)).value();
}

RulebookDraft draft() {
    return {published(), copyToAdapt(published(), u"High school (NFHS), Estuary League"_s, {})};
}

} // namespace

class RulebookDraftTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aCopyDiffersInItsNameOnly();
    void aChangedValueHasTheSourceAdapted();
    void aNoteIsKeptWithTheSource_data();
    void aNoteIsKeptWithTheSource();
    void thePublishedValueHasItsOwnSourceAgain();
    void whatTheSettingCannotBeChangesNothing_data();
    void whatTheSettingCannotBeChangesNothing();
    void anOpenPointCanBeLookedUp();
    void whatDoesNotFitIsNamed_data();
    void whatDoesNotFitIsNamed();
    void theBaseIsFoundAgain_data();
    void theBaseIsFoundAgain();
    void anIdIsNeverGivenTwice();
};

void RulebookDraftTest::aCopyDiffersInItsNameOnly() {
    const RulebookDraft copy = draft();
    QCOMPARE(copy.own().name, u"High school (NFHS), Estuary League"_s);
    QCOMPARE(copy.own().id, u"high-school+high-school-nfhs-estuary-league"_s);
    QVERIFY(isAdapted(copy.own()) && !isAdapted(copy.published()));
    QCOMPARE(copy.differences(), 0);
    QVERIFY(copy.own().sources == copy.published().sources);
    QVERIFY(!copy.problem());
}

void RulebookDraftTest::aChangedValueHasTheSourceAdapted() {
    RulebookDraft copy = draft();
    QVERIFY(copy.setValue(u"time-outs"_s, 3));
    QVERIFY(copy.setValue(u"cap"_s, 27));
    QCOMPARE(copy.own().timeOuts, 3);
    QCOMPARE(copy.own().cap, std::optional(27));
    QVERIFY(copy.differs(u"time-outs"_s) && copy.differs(u"cap"_s) && !copy.differs(u"margin"_s));
    QCOMPARE(copy.differences(), 2);
    QVERIFY((copy.own().sources.value(u"cap"_s) == Source{u"adapted"_s, {}, false}));
}

void RulebookDraftTest::aNoteIsKeptWithTheSource_data() {
    QTest::addColumn<QString>("note");
    QTest::newRow("words") << u"Estuary League handbook, p. 4"_s;
    QTest::newRow("brackets") << u"handbook (2026), 4(b)"_s;
    QTest::newRow("none") << QString();
}

void RulebookDraftTest::aNoteIsKeptWithTheSource() {
    QFETCH(QString, note);
    RulebookDraft copy = draft();
    QVERIFY(copy.setValue(u"cap"_s, 27));
    copy.setNote(u"cap"_s, note);
    QVERIFY(copy.setValue(u"cap"_s, 28)); // a value changed again keeps its note
    QCOMPARE(copy.note(u"cap"_s), note);
    const RulebookDraft again(published(), rulebookFromJson(toJson(copy.own())).value());
    QCOMPARE(again.note(u"cap"_s), note);
    QVERIFY(again.own().sources.value(u"cap"_s).text.startsWith(u"adapted"_s));
}

void RulebookDraftTest::thePublishedValueHasItsOwnSourceAgain() {
    RulebookDraft copy = draft();
    QVERIFY(copy.setValue(u"time-outs"_s, 3) && copy.setValue(u"cap"_s, 27));
    QVERIFY(copy.setValue(u"time-outs"_s, 2));
    copy.putBack(u"cap"_s);
    QCOMPARE(copy.differences(), 0);
    QVERIFY(copy.own().sources == published().sources);
    QVERIFY(copy.own().cap == std::nullopt);
    copy.setNote(u"cap"_s, u"of no use"_s); // a published source is no place for notes
    QVERIFY(copy.own().sources == published().sources);
}

void RulebookDraftTest::whatTheSettingCannotBeChangesNothing_data() {
    QTest::addColumn<QString>("key");
    QTest::addColumn<QJsonValue>("value");
    QTest::newRow("out of range") << u"time-outs"_s << QJsonValue(5);
    QTest::newRow("another type") << u"time-outs"_s << QJsonValue(u"two"_s);
    QTest::newRow("none where there must be one") << u"time-outs"_s << QJsonValue(QJsonValue::Null);
    QTest::newRow("an unknown word") << u"protest"_s << QJsonValue(u"later"_s);
    QTest::newRow("a ladder without rungs") << u"delay-ladder"_s << QJsonValue(QJsonArray());
    QTest::newRow("an unknown setting") << u"shoes"_s << QJsonValue(1);
    QTest::newRow("a statement") << u"rotation-order"_s << QJsonValue(1);
}

void RulebookDraftTest::whatTheSettingCannotBeChangesNothing() {
    QFETCH(QString, key);
    QFETCH(QJsonValue, value);
    RulebookDraft copy = draft();
    QVERIFY(!copy.setValue(key, value));
    QVERIFY(copy.own() == draft().own());
}

void RulebookDraftTest::anOpenPointCanBeLookedUp() {
    RulebookDraft copy = draft();
    const QString key = u"protest"_s; // open in the published file, as its source is from memory
    QVERIFY(copy.isOpen(key) && copy.canBeLookedUp(key));
    const std::size_t open = openPoints(copy.own()).size();
    copy.setLookedUp(key, true);
    copy.setNote(key, u"state handbook"_s);
    QVERIFY(!copy.isOpen(key));
    QCOMPARE(openPoints(copy.own()).size(), open - 1);
    QCOMPARE(copy.own().sources.value(key).text, u"looked up (state handbook)"_s);
    QCOMPARE(copy.differences(), 0);
    copy.setLookedUp(key, false);
    QVERIFY(copy.own() == draft().own());
    QVERIFY(!copy.canBeLookedUp(u"margin"_s)); // it has its source
    QVERIFY(copy.setValue(key, u"at-once"_s));
    QVERIFY(!copy.isOpen(key) && !copy.canBeLookedUp(key)); // changed, it was looked up
}

void RulebookDraftTest::whatDoesNotFitIsNamed_data() {
    QTest::addColumn<QString>("key");
    QTest::addColumn<QJsonValue>("value");
    QTest::newRow("no number of sets") << u"best-of"_s << QJsonValue(QJsonArray());
    QTest::newRow("a cap below the points of a set") << u"cap"_s << QJsonValue(24);
    QTest::newRow("a warning after the end") << u"time-out-warning-seconds"_s << QJsonValue(61);
}

void RulebookDraftTest::whatDoesNotFitIsNamed() {
    QFETCH(QString, key);
    QFETCH(QJsonValue, value);
    RulebookDraft copy = draft();
    QVERIFY(copy.setValue(key, value));
    QVERIFY(copy.problem());
    QCOMPARE(copy.problem()->setting, key);
    copy.putBack(key);
    QVERIFY(!copy.problem());
}

void RulebookDraftTest::theBaseIsFoundAgain_data() {
    QTest::addColumn<QString>("id");
    for (const QString& id : publishedRulebookIds())
        QTest::newRow(qPrintable(id)) << id;
}

void RulebookDraftTest::theBaseIsFoundAgain() {
    QFETCH(QString, id);
    const Rulebook base = publishedRulebook(id).value();
    Rulebook copy = copyToAdapt(base, u"Ours"_s, {});
    copy.margin = 3;
    QCOMPARE(publishedBaseOf(copy).id, id);
    QCOMPARE(publishedBaseOf(copyToAdapt(copy, u"Ours again"_s, {})).id, id);
    copy.id = u"from elsewhere"_s; // then the nearest one
    QCOMPARE(publishedBaseOf(copy).id, id);
}

void RulebookDraftTest::anIdIsNeverGivenTwice() {
    const QString first = copyToAdapt(published(), u"Ligue côtière"_s, {}).id;
    QCOMPARE(first, u"high-school+ligue-cotiere"_s);
    const QString second = copyToAdapt(published(), u"Ligue Côtière!"_s, {first}).id;
    QCOMPARE(second, first + u"-2"_s);
    QCOMPARE(copyToAdapt(published(), u"Ligue Côtière"_s, {first, second}).id, first + u"-3"_s);
}

} // namespace setfolio

QTEST_APPLESS_MAIN(setfolio::RulebookDraftTest)
#include "tst_rulebookdraft.moc"
