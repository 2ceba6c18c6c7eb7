// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebooksettings.h"

#include <array>

namespace setfolio {

std::span<const Setting> rulebookSettings() {
    // clang-format off
    static const std::array settings{
        Setting{"set-points",                    NumberSetting{&Rulebook::setPoints, 1, 99}},
        Setting{"deciding-set-points",           NumberSetting{&Rulebook::decidingSetPoints, 1, 99}},
        Setting{"margin",                        NumberSetting{&Rulebook::margin, 1, 9}},
        Setting{"cap",                           OptionalSetting{&Rulebook::cap, 1, 199}},
        Setting{"best-of",                       ListSetting{&Rulebook::bestOf, 1, 5}},
        Setting{"substitution-limit",            NumberSetting{&Rulebook::substitutionLimit, 0, 24}},
        Setting{"substitution-notices",          ListSetting{&Rulebook::substitutionNotices, 1, 24}},
        Setting{"time-outs",                     NumberSetting{&Rulebook::timeOuts, 0, 4}},
        Setting{"time-out-seconds",              NumberSetting{&Rulebook::timeOutSeconds, 1, 600}},
        Setting{"time-out-warning-seconds",      NumberSetting{&Rulebook::timeOutWarningSeconds, 0, 600}},
        Setting{"maximum-liberos",               NumberSetting{&Rulebook::maximumLiberos, 0, 2}},
        Setting{"libero-serve",                  LiberoServeSetting{&Rulebook::liberoServe}},
        Setting{"serve-seconds",                 NumberSetting{&Rulebook::serveSeconds, 1, 60}},
        Setting{"re-serves-per-term",            NumberSetting{&Rulebook::reServesPerTerm, 0, 9}},
        Setting{"lowest-number",                 NumberSetting{&Rulebook::lowestNumber, 0, 99}},
        Setting{"highest-number",                NumberSetting{&Rulebook::highestNumber, 0, 99}},
        Setting{"written-order",                 WrittenOrderSetting{&Rulebook::writtenOrder}},
        Setting{"interval-seconds",              NumberSetting{&Rulebook::intervalSeconds, 0, 3600}},
        Setting{"first-line-up-seconds",         NumberSetting{&Rulebook::firstLineUpSeconds, 0, 3600}},
        Setting{"line-up-seconds",               NumberSetting{&Rulebook::lineUpSeconds, 0, 3600}},
    };
    // clang-format on
    return settings;
}

} // namespace setfolio
