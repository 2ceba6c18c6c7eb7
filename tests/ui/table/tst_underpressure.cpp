// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A set at one event every two seconds, by real keys. Without SETFOLIO_LONG nobody waits between the events.
#include "core/practice/differences.h"
#include "core/rules/ways.h"
#include "tests/ui/table/tablehand.h"
#include "ui/table/tablewindow.h"

#include <QElapsedTimer>
#include <QSignalSpy>

#include <random>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

constexpr int everyMilliseconds = 2000;
const bool inRealTime =
    qEnvironmentVariableIsSet("SETFOLIO_LONG") && qputenv("QTEST_FUNCTION_TIMEOUT", QByteArray("3600000"));

constexpr Team H = Team::Home;
constexpr Team V = Team::Visitors;

/// What happens at once: two players of a team come in together.
using Event = std::vector<Entry>;

Substitution change(Team team, int in, int out) {
    return {team, ShirtNumber(in), ShirtNumber(out)};
}

/// What happens before the rally of that number, beside the rally itself.
std::vector<Event> before(int rally) {
    switch (rally) {
    case 4:
        return {{change(H, 7, 2), change(H, 8, 3)}};
    case 8:
        return {{TimeOut{V}}};
    case 12:
        return {{change(V, 17, 12), change(V, 18, 15)}, {Replay{Again::ReServe}}};
    case 17:
        return {{Sanction{H, ShirtNumber(5), SanctionLevel::Warning, {}}}};
    case 24:
        return {{TimeOut{H}}, {change(H, 2, 7), change(H, 3, 8)}};
    case 30:
        return {{Sanction{V, BenchRole::Coach, SanctionLevel::Penalty, {}}}};
    case 33:
        return {{change(V, 12, 17), change(V, 15, 18)}};
    default:
        return {};
    }
}

/// The right entries, and with which of them each event begins. The wrong server is whoever stands in the next slot.
class Story {
public:
    Story() {
        m_match.started();
        for (const Team team : bothTeams) {
            Roster roster{team, {}, {}};
            for (int number = 1; number <= 9; ++number)
                roster.players.push_back({ShirtNumber(number + (team == H ? 0 : 10)), {}, false, number == 9});
            m_match.add(roster);
        }
        m_given = m_match.entries();
        std::mt19937 chance(20261126);
        for (int rally = 1; !m_match.state().set().winner; ++rally) {
            for (const Event& event : before(rally))
                add(event);
            if (rally == 20)
                wrongServer();
            const Team serving = m_match.state().set().serving;
            if (!m_match.state().set().winner)
                add({RallyWon{chance() % 5 < 2 ? serving : opponentsOf(serving)}});
        }
    }
    [[nodiscard]] std::vector<Recorded> right() const { return m_match.entries(); }
    [[nodiscard]] const std::vector<Recorded>& given() const { return m_given; }
    [[nodiscard]] const std::vector<Event>& events() const { return m_events; }

private:
    void add(const Event& event) {
        m_events.push_back(event);
        for (const Entry& entry : event) {
            if (!judge(m_match.state(), entry).empty())
                qFatal("the story is not lawful");
            m_match.add(entry);
        }
    }
    void wrongServer() {
        const SetState set = m_match.state().set();
        const ShirtNumber other = onCourt(set.teams[set.serving], servingSlot(set, set.serving).next());
        add({ServerSeen{other}});
        add({ServeContacted{}});
        const auto back = pointsToTakeBack(m_match.state(), set.serving);
        add({WrongServer{set.serving, other, back ? std::optional(back->from) : std::nullopt}});
    }

    MatchBuilder m_match;
    std::vector<Recorded> m_given;
    std::vector<Event> m_events;
};

} // namespace

class TestUnderPressure : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingIsMissedInASetOfTwoSecondEvents();
};

void TestUnderPressure::nothingIsMissedInASetOfTwoSecondEvents() {
    const Story story;
    OpenTable table(std::span<const Recorded>(story.given()), QSize(1366, 768));
    TableHand hand(table);
    QSignalSpy painted(&table.window(), &TableWindow::painted);
    qint64 longest = 0;
    QElapsedTimer clock;
    clock.start();
    for (std::size_t at = 0; at < story.events().size(); ++at) {
        const qint64 due = static_cast<qint64>(at) * everyMilliseconds;
        while (inRealTime && clock.elapsed() < due)
            QTest::qWait(static_cast<int>(due - clock.elapsed()));
        QElapsedTimer taken;
        taken.start();
        for (const Entry& entry : story.events()[at]) {
            hand.enter(entry);
            QVERIFY2(table.newest().entry == entry, qPrintable(QStringLiteral("event %1").arg(at + 1)));
        }
        QTRY_VERIFY(!painted.isEmpty() && painted.back().front().value<EntryNumber>() == table.newest().number);
        longest = std::max(longest, taken.elapsed());
        QVERIFY(taken.elapsed() < everyMilliseconds);
    }
    const SetRecord right = writeUp(story.right()).sets.back();
    const SetRecord hers = table.window().file().record().sets.back();
    const MarksRight marks = marksRight(right, hers);
    QVERIFY(story.events().size() > 50);
    QCOMPARE(differencesOf(right, hers).size(), std::size_t(0));
    QCOMPARE(marks.right, marks.of);
    QCOMPARE(table.score().home, fold(story.right()).set().teams.home.points);
    QVERIFY(table.set().winner.has_value());
    qInfo("%d events %s: %d of %d marks right, %d inputs, the longest event entered and painted in %lld ms",
          static_cast<int>(story.events().size()), inRealTime ? "at one every two seconds" : "without waiting",
          marks.right, marks.of, hand.inputs(), static_cast<long long>(longest));
}

QTEST_MAIN(TestUnderPressure)
#include "tst_underpressure.moc"
