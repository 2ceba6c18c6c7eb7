// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What it costs to open the demo match, from the file to the sheets written up and reviewed by the judge, beside what
/// cannot be spared: Qt's JSON parser on the same bytes, and SHA-256 over the same chain.
#include "core/record/matchfile.h"
#include "tests/bench/timings.h"

#include <QCryptographicHash>
#include <QFile>
#include <QJsonDocument>

using namespace setfolio;

namespace {

constexpr int turns = 300;
const QString demo = QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/demo/herons-larks.setfolio");

QByteArray demoBytes() {
    QFile file(demo);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("the demo match cannot be read");
    return file.readAll();
}

/// The chain's digests, of lines that are split already and with one hash object for all.
void hashAll(const QList<QByteArray>& lines) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    QByteArray digest = firstDigest();
    for (const QByteArray& line : lines) {
        const qsizetype content = line.size() - (firstDigest().size() + 13);
        if (content <= 0)
            continue;
        hash.reset();
        hash.addData(digest);
        hash.addData(QByteArrayView(line).first(content));
        digest = hash.result().toHex();
    }
}

struct Costs {
    bench::Timings parsing;
    bench::Timings hashing;
    bench::Timings bare; ///< both together
    bench::Timings opening;
    bench::Timings reading;
    bench::Timings writing;
    bench::Timings reviewing;
};

/// In turns, so that a busy machine slows all of them alike.
Costs timeAll(const QByteArray& bytes) {
    const QList<QByteArray> lines = bytes.split('\n');
    const std::vector<Recorded> entries = readLedger(bytes).entries;
    Costs costs;
    for (int turn = 0; turn < turns; ++turn) {
        costs.parsing.push_back(bench::once([&] {
            for (const QByteArray& line : lines)
                (void)QJsonDocument::fromJson(line);
        }));
        costs.hashing.push_back(bench::once([&] { hashAll(lines); }));
        costs.bare.push_back(costs.parsing.back() + costs.hashing.back());
        costs.opening.push_back(bench::once([&] {
            if (!MatchFile::open(demo, Ledger::Access::ReadOnly))
                qFatal("the demo match cannot be opened");
        }));
        costs.reading.push_back(bench::once([&] { (void)readLedger(bytes); }));
        costs.writing.push_back(bench::once([&] { (void)writeUp(entries); }));
        costs.reviewing.push_back(bench::once([&] { (void)review(entries); }));
    }
    return costs;
}

void printAll(const Costs& costs) {
    bench::print("bare: Qt's JSON parser on the same bytes", costs.parsing);
    bench::print("bare: SHA-256 over the same chain", costs.hashing);
    bench::print("opening: read, check the chain, fold and write up", costs.opening);
    bench::compare("  that is, beside the JSON parser alone", costs.opening, costs.parsing);
    bench::compare("  that is, beside both bare costs", costs.opening, costs.bare);
    bench::print("  of it: read and check the chain", costs.reading);
    bench::print("  of it: fold and write up", costs.writing);
    bench::print("beyond it, for `setfolio check`: the judge's review", costs.reviewing);
}

} // namespace

int main() {
    const QByteArray bytes = demoBytes();
    std::printf("the demo match: %d lines, %d bytes\n", static_cast<int>(bytes.count('\n')),
                static_cast<int>(bytes.size()));
    printAll(timeAll(bytes));
    return 0;
}
