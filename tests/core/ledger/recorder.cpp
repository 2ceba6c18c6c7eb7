// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

// A program to be killed: "recorder record FILE" records without end and prints each number once it is acknowledged;
// "recorder hold FILE" opens, prints "writing" or "reading, held by ...", and waits for its input to end.
#include "tests/core/ledger/recorder.h"
#include "core/ledger/ledger.h"

#include <QFile>

#include <cstdio>

#include <unistd.h>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// A few bytes at a time with a pause between, so that a kill is likely to come in the middle of a line.
FileCalls slowDisk() {
    FileCalls calls = systemCalls();
    calls.write = [](int file, const void* bytes, size_t count) {
        ::usleep(20);
        return ::write(file, bytes, std::min<size_t>(count, 24));
    };
    return calls;
}

int record(const QString& path) {
    auto ledger = QFile::exists(path) ? Ledger::open(path, Ledger::Access::ReadWrite, slowDisk())
                                      : Ledger::create(path, slowDisk());
    while (ledger) {
        const auto next = static_cast<std::uint32_t>(ledger->entries().size() + 1);
        const auto number = ledger->append(recordedEntry(next), noon(next));
        if (!number)
            break;
        std::printf("%u\n", number->value);
        std::fflush(stdout);
    }
    return 1;
}

int hold(const QString& path) {
    const auto ledger = Ledger::open(path, Ledger::Access::ReadWrite);
    if (!ledger)
        return 1;
    std::puts(ledger->isReadOnly() ? qPrintable(u"reading, held by "_qs + ledger->heldBy()) : "writing");
    std::fflush(stdout);
    while (std::getchar() != EOF) {
    }
    return 0;
}

} // namespace

int main(int count, char** words) {
    if (count != 3)
        return 2;
    const QString path = QFile::decodeName(words[2]);
    return QByteArray(words[1]) == "record" ? record(path) : hold(path);
}
