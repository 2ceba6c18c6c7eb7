// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/inkset.h"

#include <QCoreApplication>

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
    case InkSet::BlackOnly:
        return Inks::tr("Black only");
    }
    Q_UNREACHABLE();
}

} // namespace setfolio
