// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/signoff.h"
#include "ui/sheet/scene.h"
#include "ui/sheet/signaturemark.h"
#include "ui/wording/signoffwords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr Tag foot{Zone::Foot, ItemRole::Label, {}, {}};
constexpr double left = 108, right = 162;
constexpr double top = footTop + 4.6, bottom = footTop + 32.2;
constexpr double gap = 2; ///< between two columns
constexpr TextStyle nameStyle{smallestPoints, FontWeight::Medium, soot, TextAlign::Left, 0};

/// Where one signs: the words at the left of a place of a column's own, at its top in one of two columns.
struct Place {
    QRectF words;
    QRectF signature;
};

/// Three places stand one below the other, as they do on paper that is signed in ink; more, in two columns.
Place placeOf(std::size_t index, std::size_t count) {
    if (count <= 3) {
        const double height = (bottom - top) / 3;
        const double y = top + height * static_cast<double>(index);
        return {{left, y, 25, height - 0.6}, {left + 27, y, right - left - 27, height - 0.6}};
    }
    const std::size_t rows = (count + 1) / 2;
    const double height = (bottom - top) / static_cast<double>(rows);
    const double width = (right - left - gap) / 2;
    const double x = left + (width + gap) * static_cast<double>(index / rows);
    const double y = top + height * static_cast<double>(index % rows);
    constexpr double wordsHeight = 2.4;
    return {{x, y, width, wordsHeight}, {x, y + wordsHeight, width, height - wordsHeight - 0.5}};
}

void drawWords(Draft& draft, const QRectF& place, const QString& role, const QString& name, bool protest) {
    const bool tall = place.height() > 5;
    const double first = tall ? place.top() + 3.2 : place.bottom() - 0.5;
    const double used = draft.fitted(foot, {place.left(), first}, role, labelStyle, place.width() * (tall ? 1 : 0.55));
    const Tag tag = foot.as(ItemRole::OfficialName);
    if (tall)
        draft.named(tag, {place.left(), first + 3.1}, name, {7.4, FontWeight::Medium}, place.width(),
                    {.first = -0.8, .pitch = 2.1});
    else
        draft.named(tag, {place.left() + used + 1, first}, name, nameStyle, place.width() - used - 1, {.most = 1});
    if (protest && tall)
        draft.fitted(foot.as(ItemRole::SignatureWord), {place.left() + used + 1, first},
                     words(SignOffLabel::UnderProtest), labelStyle, place.width() - used - 1);
}

void drawPlace(Draft& draft, const Scene& scene, const Place& place, const Signatory& who) {
    const std::vector<GivenSignature> signatures = signaturesOf(scene.set.signOffs, who);
    const QString role = signatoryWords(who, scene.heading.opened.teams);
    const bool protest = isProtest(signatures);
    const bool isShort = place.words.height() < 5;
    drawWords(draft, place.words, protest && isShort ? protestWords(role) : role, nameIn(signatures), protest);
    drawSignatureMarks(draft, foot, place.signature, signatures);
    draft.ruleAcross(foot.as(ItemRole::SignatureLine), place.signature.left(), place.signature.right(),
                     place.signature.bottom(), 0.2, soot);
}

/// Those whom the rulebook asks, and whoever has signed beside them.
std::vector<Signatory> allSignatories(const Scene& scene) {
    std::vector<Signatory> all = signatoriesOf(scene.heading.opened.rulebook);
    for (const SignOffRecord& signOff : scene.set.signOffs)
        for (const SignatureRecord& signature : signOff.signatures)
            if (std::ranges::find(all, signature.who) == all.end())
                all.push_back(signature.who);
    return all;
}

} // namespace

void drawSignatures(Draft& draft, const Scene& scene) {
    const std::vector<Signatory> all = allSignatories(scene);
    for (std::size_t i = 0; i < all.size(); ++i)
        drawPlace(draft, scene, placeOf(i, all.size()), all[i]);
}

} // namespace setfolio::sheet
