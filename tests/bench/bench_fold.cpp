// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What it costs to fold one entry early and late in a match, beside a bare copy of the state it is folded into.
#include "core/match/fold.h"
#include "core/rules/judge.h"
#include "tests/bench/timings.h"
#include "tests/support/randomplay.h"

using namespace setfolio;
using namespace setfolio::testing;

namespace {

constexpr int turns = 2000;
constexpr int inOneTurn = 50; ///< one is too short to be timed

/// A match with many entries: five sets with everything recorded.
std::vector<Recorded> longMatch(const Rulebook& rulebook, std::size_t wanted) {
    Habits habits;
    habits.contact = 1000;
    habits.replay = 600;
    habits.remark = habits.compared = habits.captain = 900;
    habits.libero = 800;
    habits.noRoster = habits.forfeit = 0;
    for (std::uint32_t seed = 1; seed < 5000; ++seed) {
        RandomPlay play(seed, rulebook, habits);
        play.playMatch();
        if (play.entries().size() > wanted)
            return play.entries();
    }
    qFatal("no match is long enough");
}

MatchState stateBefore(const std::vector<Recorded>& entries, std::size_t number) {
    return fold(std::span(entries).first(number - 1));
}

/// Microseconds for one, from timings of many in milliseconds.
double one(const bench::Timings& timings, double part) {
    return bench::percentile(timings, part) * 1000.0 / inOneTurn;
}

void line(const char* name, std::size_t number, const bench::Timings& timings) {
    std::printf("entry %5zu  %-38s median %7.3f us   p99 %7.3f us\n", number, name, one(timings, 0.5),
                one(timings, 0.99));
}

/// The fold takes its state by value: a caller who keeps the old one pays for a copy, one who gives it away does not.
void oneEntry(const std::vector<Recorded>& entries, std::size_t number) {
    const MatchState before = stateBefore(entries, number);
    const Recorded& entry = entries[number - 1];
    int sum = 0;
    const auto many = [&](auto&& work) {
        return bench::time(turns, [&](int) {
            for (int i = 0; i < inOneTurn; ++i)
                work();
        });
    };
    const auto copy = many([&] {
        const MatchState state = before;
        sum += static_cast<int>(state.sets.size());
    });
    const auto folded = many([&] { sum += static_cast<int>(apply(before, entry).sets.size()); });
    MatchState kept = before;
    const auto moved = many([&] {
        kept = apply(std::move(kept), Recorded{entry.number, entry.time, Remark{}, std::nullopt, std::nullopt});
        sum += static_cast<int>(kept.sets.size());
    });
    const auto judged = many([&] { sum += static_cast<int>(judge(before, entry.entry).size()); });
    line("bare copy of the state", number, copy);
    line("copy and fold", number, folded);
    line("a remark folded, the state given away", number, moved);
    line("judge", number, judged);
    if (sum == 0)
        qFatal("nothing was done");
}

void whole(const std::vector<Recorded>& entries) {
    const auto perSecond = [&](const bench::Timings& timings) {
        return static_cast<double>(entries.size()) / bench::percentile(timings, 0.5) * 1000.0;
    };
    std::printf("fold of the whole match    %10.0f entries a second\n",
                perSecond(bench::time(200, [&](int) { (void)fold(entries); })));
    std::printf("review of the whole match  %10.0f entries a second\n",
                perSecond(bench::time(50, [&](int) { (void)review(entries); })));
}

} // namespace

int main() {
    for (const QString& id : publishedRulebookIds()) {
        const std::vector<Recorded> entries = longMatch(*publishedRulebook(id), 2000);
        std::printf("%s, a match of %zu entries\n", qPrintable(id), entries.size());
        oneEntry(entries, 10);
        oneEntry(entries, 2000);
        whole(entries);
    }
    return 0;
}
