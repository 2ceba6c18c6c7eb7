// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What it costs to record an entry, beside a bare append and sync of the same bytes; and to fold.
#include "core/record/matchfile.h"
#include "tests/bench/timings.h"
#include "tests/support/randommatch.h"

#include <QFile>
#include <QTemporaryDir>

#include <unistd.h>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

std::vector<QByteArray> linesOf(const std::vector<Recorded>& entries) {
    std::vector<QByteArray> lines;
    QByteArray digest = firstDigest();
    for (const Recorded& recorded : entries) {
        lines.push_back(ledgerLine(recorded, digest));
        digest = digestOfLine(lines.back());
    }
    return lines;
}

void recording(const QTemporaryDir& folder, const std::vector<Recorded>& entries) {
    const std::vector<QByteArray> lines = linesOf(entries);
    const int turns = static_cast<int>(entries.size());

    QFile bare(folder.filePath(QStringLiteral("bare")));
    if (!bare.open(QIODevice::WriteOnly | QIODevice::Append | QIODevice::Unbuffered))
        qFatal("cannot write");
    const auto baseline = bench::time(turns, [&](int turn) {
        bare.write(lines[static_cast<std::size_t>(turn)]);
        if (::fdatasync(bare.handle()) != 0)
            qFatal("cannot sync");
    });
    auto file = MatchFile::create(folder.filePath(QStringLiteral("match.setfolio")));
    if (!file)
        qFatal("cannot create");
    const auto ours = bench::time(turns, [&](int turn) {
        const Recorded& recorded = entries[static_cast<std::size_t>(turn)];
        (void)file->judge(recorded.entry);
        if (!file->record(recorded.entry, recorded.time))
            qFatal("cannot record");
    });
    bench::print("bare append and sync of the same bytes", baseline);
    bench::print("judge, append, sync, fold and write up", ours);
    bench::compare("  that is", ours, baseline);
}

void folding(const std::vector<Recorded>& entries) {
    const auto timings = bench::time(200, [&](int) { (void)fold(entries); });
    const double perSecond = static_cast<double>(entries.size()) / bench::percentile(timings, 0.5) * 1000.0;
    std::printf("%-58s %.0f entries a second\n", "fold", perSecond);
}

} // namespace

int main() {
    QTemporaryDir folder;
    RandomMatch random(7);
    random.playMatch();
    const std::vector<Recorded>& entries = random.match().entries();
    recording(folder, entries);
    folding(entries);
    return 0;
}
