// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/hit.h"

#include "core/match/entry.h"

#include <QHash>

#include <algorithm>
#include <limits>
#include <unordered_map>

namespace setfolio {

namespace {

constexpr double reach = 0.5;    // how far beside a mark a click still means it
constexpr double edgeRoom = 0.3; // more than a pixel, on any screen that shows the sheet
constexpr std::size_t most = 12; // rectangles

std::size_t hashOf(const Item& item) {
    const QRectF box = boundingBox(item);
    const std::size_t place =
        qHashMulti(static_cast<std::size_t>(item.role), box.x(), box.y(), box.width(), box.height());
    const auto* text = std::get_if<TextShape>(&item.shape);
    return text ? qHashMulti(place, text->shaped->text, text->colour) : place;
}

struct Hash {
    std::size_t operator()(const Item* item) const { return hashOf(*item); }
};
struct Same {
    bool operator()(const Item* left, const Item* right) const { return *left == *right; }
};

/// The boxes of the items that one of the pages has and the other has not.
std::vector<QRectF> differences(const Page& before, const Page& after) {
    std::unordered_map<const Item*, int, Hash, Same> surplus;
    for (const Item& item : before.items)
        ++surplus[&item];
    for (const Item& item : after.items)
        --surplus[&item];
    std::vector<QRectF> boxes;
    for (const auto& [item, count] : surplus)
        if (count != 0)
            boxes.push_back(boundingBox(*item).adjusted(-edgeRoom, -edgeRoom, edgeRoom, edgeRoom));
    return boxes;
}

double areaOf(const QRectF& rect) {
    return rect.width() * rect.height();
}

/// The area that two rectangles cover only when they are made one.
double wasted(const QRectF& left, const QRectF& right) {
    return areaOf(left | right) - areaOf(left) - areaOf(right) + areaOf(left & right);
}

/// Makes one of the two rectangles that waste least; false if none are near enough and there are few already.
bool mergeNearest(std::vector<QRectF>& rects) {
    constexpr double worthwhile = 30; // square millimetres painted once more cost less than another pass
    std::size_t first = 0, second = 0;
    double least = std::numeric_limits<double>::max();
    for (std::size_t i = 0; i < rects.size(); ++i)
        for (std::size_t k = i + 1; k < rects.size(); ++k)
            if (const double waste = wasted(rects[i], rects[k]); waste < least) {
                least = waste;
                first = i;
                second = k;
            }
    if (rects.size() < 2 || (least > worthwhile && rects.size() <= most))
        return false;
    rects[first] |= rects[second];
    rects.erase(rects.begin() + static_cast<std::ptrdiff_t>(second));
    return true;
}

} // namespace

const Item* itemAt(const Page& page, QPointF mm) {
    const Item* nearest = nullptr;
    double least = std::numeric_limits<double>::max();
    for (const Item& item : page.items) {
        const QRectF box = boundingBox(item);
        if (item.entry.value == 0 || !box.adjusted(-reach, -reach, reach, reach).contains(mm))
            continue;
        const double distance = QLineF(box.center(), mm).length();
        if (distance < least) {
            least = distance;
            nearest = &item;
        }
    }
    return nearest;
}

std::vector<QRectF> changedRects(const Page& before, const Page& after) {
    if (before.paper != after.paper)
        return {QRectF(0, 0, after.widthMm, after.heightMm)};
    std::vector<QRectF> rects = differences(before, after);
    constexpr std::size_t tooMany = 150; // nearly all has moved: what holds them all will do
    if (rects.size() > tooMany) {
        QRectF all;
        for (const QRectF& rect : rects)
            all |= rect;
        return {all};
    }
    while (mergeNearest(rects)) {
    }
    return rects;
}

} // namespace setfolio
