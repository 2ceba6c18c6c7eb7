// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/names.h"

#include "core/record/shown.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Names {
    Q_DECLARE_TR_FUNCTIONS(setfolio::Names)
};

} // namespace

QString codeOf(const MatchState& state, Team team) {
    const TeamName name = state.opened ? state.opened->teams[team] : TeamName{};
    if (!name.code.isEmpty())
        return asShown(name.code);
    if (!name.name.isEmpty())
        return asShown(name.name);
    return team == Team::Home ? Names::tr("home team") : Names::tr("visitors");
}

QString roman(Slot slot) {
    static const std::array<QString, 6> numerals{QStringLiteral("I"),  QStringLiteral("II"), QStringLiteral("III"),
                                                 QStringLiteral("IV"), QStringLiteral("V"),  QStringLiteral("VI")};
    Q_ASSERT(slot.value >= 1 && slot.value <= 6);
    return numerals.at(slot.index());
}

} // namespace setfolio
