// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/fill.h"

#include "core/record/shown.h"

namespace setfolio {

QString fill(const QString& pattern, std::initializer_list<QString> values) {
    QString filled;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
        const bool place = pattern.at(i) == u'%' && i + 1 < pattern.size();
        const int number = place ? pattern.at(i + 1).digitValue() : 0;
        if (number < 1 || number > static_cast<int>(values.size())) {
            filled += pattern.at(i);
            continue;
        }
        filled += asShown(values.begin()[number - 1]);
        ++i;
    }
    return filled;
}

} // namespace setfolio
