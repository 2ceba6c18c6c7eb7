// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebookcompare.h"

#include "core/rules/settingvalue.h"

namespace setfolio {

std::vector<RulebookDifference> rulebookDifferences(const Rulebook& published, const Rulebook& own) {
    std::vector<RulebookDifference> differences;
    for (const Setting& setting : rulebookSettings()) {
        const QJsonValue before = valueOf(published, setting);
        const QJsonValue after = valueOf(own, setting);
        if (before != after)
            differences.push_back({QString::fromLatin1(setting.key), before, after});
    }
    return differences;
}

std::vector<OpenPoint> openPoints(const Rulebook& rulebook) {
    std::vector<OpenPoint> points;
    for (const Setting& setting : rulebookSettings()) {
        const QString key = QString::fromLatin1(setting.key);
        if (const Source source = rulebook.sources.value(key); source.open)
            points.push_back({key, valueOf(rulebook, setting), source});
    }
    for (auto source = rulebook.sources.begin(); source != rulebook.sources.end(); ++source)
        if (source->open && !settingOf(source.key()))
            points.push_back({source.key(), QJsonValue(QJsonValue::Undefined), *source});
    return points;
}

} // namespace setfolio
