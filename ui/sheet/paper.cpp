// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/paper.h"

namespace setfolio {

QSizeF paperSize(Paper paper) {
    switch (paper) {
    case Paper::Letter:
        return {279.4, 215.9};
    case Paper::A4:
        return {297.0, 210.0};
    }
    Q_UNREACHABLE();
}

} // namespace setfolio
