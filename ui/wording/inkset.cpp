// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/inkset.h"

#include <QCoreApplication>

#include <algorithm>

namespace setfolio {

namespace {

struct Inks {
    Q_DECLARE_TR_FUNCTIONS(Inks)
};

} // namespace

QString words(InkSet inks) {
    switch (inks) {
    case InkSet::CobaltAndRust:
        return Inks::tr("Black, blue and rust");
    case InkSet::HeatherAndGorse:
        return Inks::tr("Black, purple and ochre");
    case InkSet::Greys:
        return Inks::tr("Shades of grey");
    case InkSet::BlackOnly:
        return Inks::tr("Black only");
    }
    Q_UNREACHABLE();
}

QString nameOf(InkSet inks) {
    static const std::array<QString, allInkSets.size()> names{QStringLiteral("cobalt-and-rust"),
                                                              QStringLiteral("heather-and-gorse"),
                                                              QStringLiteral("greys"), QStringLiteral("black-only")};
    return names.at(static_cast<std::size_t>(inks));
}

std::optional<InkSet> inkSetNamed(const QString& name) {
    const auto named = std::ranges::find(allInkSets, name, [](InkSet inks) { return nameOf(inks); });
    return named == allInkSets.end() ? std::nullopt : std::optional(*named);
}

} // namespace setfolio
