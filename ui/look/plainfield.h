// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

class QLineEdit;

namespace setfolio {

/// Makes a field leave out what it cannot show, however it comes in: the scorer reads what will be recorded, in the
/// order in which it stands. Every field for words gets this; fields for numbers and times have a check of their own.
void takePlainWords(QLineEdit& field);

} // namespace setfolio
