// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/page.h"

#include "ui/sheet/geometry.h"

namespace setfolio {

namespace sheet {

QRectF areaOf(Zone zone) {
    switch (zone) {
    case Zone::Header:
        return {0, 0, mainRight, headerBottom};
    case Zone::LadderHead:
        return {ladderLeft, 0, ladderRight - ladderLeft, ladderTop};
    case Zone::Ladder:
        return {ladderLeft, ladderTop, ladderRight - ladderLeft, ladderBottom - ladderTop};
    case Zone::BlockHome:
        return {0, topOf(Team::Home), mainRight, blockHeight};
    case Zone::BlockVisitors:
        return {0, topOf(Team::Visitors), mainRight, blockHeight};
    case Zone::Remarks:
        return {0, blockTop, ladderRight, topOf(Team::Visitors) + blockHeight - blockTop};
    case Zone::Foot:
        return {0, footTop, mainRight, legendTop - footTop};
    case Zone::Legend:
        return {0, legendTop, mainRight, liveBottom - legendTop};
    case Zone::Masthead:
        return {0, 0, ladderRight, headerBottom};
    case Zone::Body:
        return {0, blockTop, ladderRight, liveBottom - blockTop};
    case Zone::Whole:
        return {QPointF(), liveArea};
    }
    Q_UNREACHABLE();
}

} // namespace sheet

QSizeF sizeOf(PaperSize paper) {
    switch (paper) {
    case PaperSize::Letter:
        return {279.4, 215.9};
    case PaperSize::A4:
        return {297.0, 210.0};
    }
    Q_UNREACHABLE();
}

QRectF Page::zone(Zone zone) const {
    return sheet::areaOf(zone).translated(live);
}

} // namespace setfolio
