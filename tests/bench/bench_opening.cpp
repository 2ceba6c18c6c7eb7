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

void bareCosts(const QList<QByteArray>& lines, bench::Timings& parsing, bench::Timings& hashing) {
    parsing = bench::time(turns, [&](int) {
        for (const QByteArray& line : lines)
            (void)QJsonDocument::fromJson(line);
    });
    hashing = bench::time(turns, [&](int) { hashAll(lines); });
    bench::print("bare: Qt's JSON parser on the same bytes", parsing);
    bench::print("bare: SHA-256 over the same chain", hashing);
}

void openings(const QByteArray& bytes, const bench::Timings& parsing, const bench::Timings& hashing) {
    const auto opening = bench::time(turns, [&](int) {
        if (!MatchFile::open(demo, Ledger::Access::ReadOnly))
            qFatal("the demo match cannot be opened");
    });
    const LedgerContent content = readLedger(bytes);
    const auto reading = bench::time(turns, [&](int) { (void)readLedger(bytes); });
    const auto writing = bench::time(turns, [&](int) { (void)writeUp(content.entries); });
    const auto reviewing = bench::time(turns, [&](int) { (void)review(content.entries); });
    bench::Timings both;
    for (std::size_t turn = 0; turn < parsing.size(); ++turn)
        both.push_back(parsing[turn] + hashing[turn]);
    bench::print("opening: read, check the chain, fold and write up", opening);
    bench::compare("  that is, beside the JSON parser alone", opening, parsing);
    bench::compare("  that is, beside both bare costs", opening, both);
    bench::print("  of it: read and check the chain", reading);
    bench::print("  of it: fold and write up", writing);
    bench::print("beyond it, for `setfolio check`: the judge's review", reviewing);
}

} // namespace

int main() {
    const QByteArray bytes = demoBytes();
    const QList<QByteArray> lines = bytes.split('\n');
    std::printf("the demo match: %d lines, %d bytes\n", static_cast<int>(lines.size()) - 1,
                static_cast<int>(bytes.size()));
    bench::Timings parsing;
    bench::Timings hashing;
    bareCosts(lines, parsing, hashing);
    openings(bytes, parsing, hashing);
    return 0;
}
