// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What it costs to record an entry, beside a bare append and sync of the same bytes; to read a match, beside Qt's JSON
/// parser on the same bytes; and to fold.
#include "core/record/matchfile.h"
#include "tests/bench/timings.h"
#include "tests/support/randommatch.h"

#include <QFile>
#include <QJsonDocument>
#include <QTemporaryDir>

#include <unistd.h>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

QByteArray linesOf(const std::vector<Recorded>& entries, std::vector<QByteArray>* lines = nullptr) {
    QByteArray bytes;
    QByteArray digest(64, '0');
    for (const Recorded& recorded : entries) {
        const QByteArray line = ledgerLine(recorded, digest);
        digest = digestOfLine(line);
        bytes += line;
        if (lines)
            lines->push_back(line);
    }
    return bytes;
}

void recording(const QTemporaryDir& folder, const std::vector<Recorded>& entries) {
    std::vector<QByteArray> lines;
    linesOf(entries, &lines);
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

void opening(const std::vector<Recorded>& entries) {
    const QByteArray bytes = linesOf(entries);
    const QList<QByteArray> lines = bytes.split('\n');
    const auto baseline = bench::time(100, [&](int) {
        for (const QByteArray& line : lines)
            (void)QJsonDocument::fromJson(line);
    });
    const auto ours = bench::time(100, [&](int) {
        const LedgerContent content = readLedger(bytes);
        (void)writeUp(content.entries);
    });
    const LedgerContent content = readLedger(bytes);
    const auto reading = bench::time(100, [&](int) { (void)readLedger(bytes); });
    const auto writing = bench::time(100, [&](int) { (void)writeUp(content.entries); });
    std::printf("a match of %zu entries, %lld bytes\n", entries.size(), static_cast<long long>(bytes.size()));
    bench::print("Qt's JSON parser on the same bytes", baseline);
    bench::print("read, check the chain, fold and write up", ours);
    bench::compare("  that is", ours, baseline);
    bench::print("  of it: read and check the chain", reading);
    bench::print("  of it: fold and write up", writing);
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
    opening(entries);
    folding(entries);
    return 0;
}
