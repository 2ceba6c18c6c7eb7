// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What happens when a match file cannot be opened.
#pragma once

#include "core/ledger/ledgererror.h"

#include <QString>

class QWidget;

namespace setfolio {

/// Whether there are lines before the damage to go on with, so that a copy of them is worth offering.
[[nodiscard]] bool hasGoodPart(const LedgerError& error);

/// A message about something gone wrong, as plain text; and one about something done.
void tell(const QString& text, QWidget* parent);
void tellDone(const QString& text, QWidget* parent);
/// Says what is wrong, and offers a copy of what is whole; the copy's path when it was wanted and made, else empty.
[[nodiscard]] QString tellOfDamage(const LedgerError& error, QWidget* parent);

} // namespace setfolio
