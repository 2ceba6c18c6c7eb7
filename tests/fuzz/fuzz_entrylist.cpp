// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

// Any bytes as a plain list; what is read must be writable and read back the same.
#include "core/ledger/entrylist.h"

using namespace setfolio;

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size) {
    const auto list = readEntryList(QByteArray(reinterpret_cast<const char*>(data), static_cast<qsizetype>(size)));
    if (!list)
        return 0;
    for (const RecordMembers& members : *list) {
        const auto again = entryFromJson(toJson(members.entry));
        if (!again || *again != members.entry)
            __builtin_trap();
    }
    return 0;
}
