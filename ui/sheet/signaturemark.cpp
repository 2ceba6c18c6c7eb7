// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/signaturemark.h"

#include "ui/sheet/geometry.h"
#include "ui/wording/signoffwords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr double penWidth = 0.22;

QRectF extentOf(const std::vector<PenStroke>& strokes) {
    QPolygonF points;
    for (const PenStroke& stroke : strokes)
        for (const PenPoint& point : stroke)
            points << QPointF(point.x, point.y);
    return points.boundingRect();
}

/// The strokes as large as the place allows, in their own proportion, in its middle.
std::vector<QPolygonF> drawnIn(const QRectF& place, const std::vector<PenStroke>& strokes) {
    const QRectF extent = extentOf(strokes);
    const double scale = std::min(
        {place.width() / std::max(extent.width(), 1.0), place.height() / std::max(extent.height(), 1.0), 0.02});
    std::vector<QPolygonF> lines;
    for (const PenStroke& stroke : strokes) {
        QPolygonF line;
        for (const PenPoint& point : stroke)
            line << place.center() + (QPointF(point.x, point.y) - extent.center()) * scale;
        lines.push_back(std::move(line));
    }
    return lines;
}

/// A signature, or the word for its absence; struck where its sign-off is void.
void drawSignature(Draft& draft, const Tag& base, const QRectF& place, const SignatureRecord& signature, bool isVoid) {
    const Tag tag = base.of(signature.entry);
    const auto* given = std::get_if<Signed>(&signature.how);
    const QRectF inner = place.adjusted(0.4, 0.5, -0.4, -0.8);
    const QPointF middle = inner.center() + QPointF(0, halfCap(labelStyle.points));
    const Tag word = tag.as(ItemRole::SignatureWord);
    if (!given)
        draft.fitted(word, middle, words(SignOffLabel::NotSigned), labelStyle.centred(), inner.width());
    else if (given->strokes.empty())
        draft.fitted(word, middle, words(SignOffLabel::NamesLeftOut), labelStyle.centred(), inner.width());
    else
        draft.strokes(tag.as(ItemRole::SignatureStroke), drawnIn(inner, given->strokes), {soot, penWidth, {}, true});
    if (isVoid)
        draft.line(tag.as(ItemRole::SignatureStrike), {inner.left(), inner.center().y() + 0.6},
                   {inner.right(), inner.center().y() - 0.6}, {soot, 0.3, {}, false});
}

} // namespace

std::vector<GivenSignature> signaturesOf(const std::vector<SignOffRecord>& signOffs, const Signatory& who) {
    std::vector<GivenSignature> all;
    for (const SignOffRecord& signOff : signOffs)
        for (const SignatureRecord& signature : signOff.signatures)
            if (signature.who == who)
                all.push_back({&signature, signOff.reopened.has_value()});
    constexpr std::size_t most = 3; // what was signed before those is told in the list of entries
    if (all.size() > most)
        all.erase(all.begin(), all.end() - most);
    return all;
}

QString nameIn(const std::vector<GivenSignature>& signatures) {
    if (signatures.empty())
        return {};
    const auto* given = std::get_if<Signed>(&signatures.back().record->how);
    return given ? given->name.simplified() : QString();
}

bool isProtest(const std::vector<GivenSignature>& signatures) {
    const auto* given = signatures.empty() ? nullptr : std::get_if<Signed>(&signatures.back().record->how);
    return given && given->protest;
}

void drawSignatureMarks(Draft& draft, const Tag& tag, const QRectF& place,
                        const std::vector<GivenSignature>& signatures) {
    const double width = place.width() / std::max(1.0, static_cast<double>(signatures.size()));
    for (std::size_t i = 0; i < signatures.size(); ++i)
        drawSignature(draft, tag, {place.left() + width * static_cast<double>(i), place.top(), width, place.height()},
                      *signatures[i].record, signatures[i].isVoid);
}

} // namespace setfolio::sheet
