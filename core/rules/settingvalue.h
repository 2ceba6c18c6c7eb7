// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// One setting's value, between a rulebook and JSON.
#pragma once

#include "core/rules/rulebooksettings.h"

#include <QJsonValue>

namespace setfolio {

/// Puts the value into the rulebook, or says why it cannot be the setting's.
[[nodiscard]] tl::expected<void, RulebookError::Code> readValue(Rulebook& rulebook, const Setting& setting,
                                                                const QJsonValue& value);
/// The value as it stands in the file.
[[nodiscard]] QJsonValue valueOf(const Rulebook& rulebook, const Setting& setting);

} // namespace setfolio
