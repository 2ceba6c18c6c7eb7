// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Times a piece of work many times and prints median and 99th percentile beside a bare baseline of the same run. It
/// judges nothing: timings differ from machine to machine.
#pragma once

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <vector>

namespace setfolio::bench {

/// Milliseconds, one for each turn.
using Timings = std::vector<double>;

/// Milliseconds since `start`.
inline double since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

/// How long `work()` takes.
template <typename Work>
double once(Work&& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return since(start);
}

/// Runs `work(turn)` `turns` times.
template <typename Work>
Timings time(int turns, Work&& work) {
    Timings timings;
    timings.reserve(static_cast<std::size_t>(turns));
    for (int turn = 0; turn < turns; ++turn)
        timings.push_back(once([&] { work(turn); }));
    return timings;
}

inline double percentile(Timings timings, double part) {
    std::sort(timings.begin(), timings.end());
    const auto last = static_cast<double>(timings.size() - 1);
    return timings[static_cast<std::size_t>(std::ceil(part * last))];
}

/// One line: "name   median   p99".
inline void print(const char* name, const Timings& timings) {
    std::printf("%-58s median %8.3f ms   p99 %8.3f ms   (%zu turns)\n", name, percentile(timings, 0.5),
                percentile(timings, 0.99), timings.size());
}

/// The line that sets a timing beside its baseline.
inline void compare(const char* name, const Timings& timings, const Timings& baseline) {
    std::printf("%-58s median %8.2f x    p99 %8.2f x\n", name, percentile(timings, 0.5) / percentile(baseline, 0.5),
                percentile(timings, 0.99) / percentile(baseline, 0.99));
}

} // namespace setfolio::bench
