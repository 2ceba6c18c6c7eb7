// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/look/appearancewords.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

} // namespace

QString nameOf(LookChoice look) {
    switch (look) {
    case LookChoice::AsSystem:
        return Table::tr("Look as the system");
    case LookChoice::Light:
        return Table::tr("Light look");
    case LookChoice::Dark:
        return Table::tr("Dark look");
    case LookChoice::HighContrast:
        return Table::tr("High contrast");
    }
    return {};
}

} // namespace setfolio
