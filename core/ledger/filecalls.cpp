// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/filecalls.h"

#include <unistd.h>

namespace setfolio {

const FileCalls& systemCalls() {
    static const FileCalls calls{::write, ::fsync, ::ftruncate};
    return calls;
}

} // namespace setfolio
