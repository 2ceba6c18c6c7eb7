// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/signatureplaces.h"

#include "core/match/signoff.h"
#include "core/record/sealtext.h"
#include "ui/sheet/sealmark.h"
#include "ui/sheet/signaturemark.h"
#include "ui/wording/pagewords.h"
#include "ui/wording/signoffwords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr Tag body{Zone::Body, ItemRole::Label, {}, {}};
constexpr double top = 164.2;
constexpr double sealLeft = 210;
constexpr double titleRoom = 4.4;
constexpr double gap = 3;

/// The sign-offs of the match as a whole, void ones among them.
std::vector<SignOffRecord> signOffsOfMatch(const MatchRecord& record) {
    std::vector<SignOffRecord> signOffs;
    std::ranges::copy_if(record.signOffs, std::back_inserter(signOffs),
                         [](const SignOffRecord& signOff) { return !signOff.set; });
    return signOffs;
}

void drawPlace(Draft& draft, const MatchHeading& heading, const std::vector<SignOffRecord>& signOffs,
               const SignaturePlace& place) {
    const QRectF& area = place.area;
    const std::vector<GivenSignature> signatures = signaturesOf(signOffs, place.who);
    const QString team = place.who.team ? heading.opened.teams[*place.who.team].code : QString();
    const QString role = signerWords(place.who.role, team);
    const QString name =
        signatures.empty() ? printedNameOf(heading.officials, heading.rosters, place.who) : nameIn(signatures);
    draft.fitted(body, {area.left(), area.top() + 2.2}, isProtest(signatures) ? protestWords(role) : role, labelStyle,
                 area.width());
    draft.named(body.as(ItemRole::OfficialName), {area.left(), area.top() + 5.3}, name, {7.2, FontWeight::Medium},
                area.width(), {.first = -0.8, .pitch = 2.2});
    drawSignatureMarks(draft, body, place.stroke(), signatures);
    draft.ruleAcross(body.as(ItemRole::SignatureLine), area.left(), area.right(), area.bottom(), 0.2, soot);
}

/// The code in three lines of two groups, and the QR code beside it, which says the result in sets.
void drawSeal(Draft& draft, const MatchHeading& heading, const SignOffRecord& signOff, const QRectF& box) {
    const Tag tag = body.of(signOff.seal->entry);
    const double side = box.height() - 1;
    const double left = box.left() + 1.2, room = box.width() - side - 2;
    const QStringList groups = sealCode(signOff.seal->digest).split(u' ');
    for (qsizetype i = 0; i + 1 < groups.size(); i += 2)
        draft.fitted(tag.as(ItemRole::SealCode), {left, box.top() + 9 + 2 * static_cast<double>(i)},
                     groups.at(i) + u' ' + groups.at(i + 1), {8, FontWeight::Bold, soot, TextAlign::Left, 0.08}, room);
    drawQr(draft, tag, {box.right() - side - 0.5, box.top() + 0.5}, side, sealText(heading, signOff, heading.setsWon));
}

} // namespace

std::vector<SignaturePlace> signaturePlaces(const Rulebook& rulebook) {
    std::vector<SignaturePlace> places;
    for (const Signatory& who : signatoriesOf(rulebook))
        places.push_back({who, {}});
    const int rows = places.size() <= 4 ? 1 : 2;
    const int columns = std::max(1, (static_cast<int>(places.size()) + rows - 1) / rows);
    const double width = (sealLeft - gap - gap * (columns - 1)) / columns;
    const double height = (liveBottom - top - titleRoom) / rows;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const int column = static_cast<int>(i) % columns, row = static_cast<int>(i) / columns;
        places[i].area = {(width + gap) * column, top + titleRoom + height * row, width, height - 1.2};
    }
    return places;
}

QRectF sealPlace() {
    return {sealLeft, top + titleRoom + 0.4, ladderRight - sealLeft, liveBottom - top - titleRoom - 1.2};
}

void drawSignaturePlaces(Draft& draft, const MatchRecord& record) {
    const std::vector<SignOffRecord> signOffs = signOffsOfMatch(record);
    draft.ruleAcross(body.as(ItemRole::Rule), 0, ladderRight, top, 0.5, soot);
    draft.fitted(body.as(ItemRole::Title), {0, top + 3.4}, words(PageLabel::SignaturesAndSeal), {7.2, FontWeight::Bold},
                 sealLeft);
    for (const SignaturePlace& place : signaturePlaces(record.heading.opened.rulebook))
        drawPlace(draft, record.heading, signOffs, place);
    const QRectF box = sealPlace();
    draft.rect(body.as(ItemRole::Box), box, std::nullopt, {rule, 0.2, {}, false});
    const SignOffRecord* sealed = sealIn(signOffs);
    const bool ofOriginal = sealed && sealed->seal->of == SealOf::Original;
    draft.fitted(body, {box.left() + 1.2, box.top() + 3},
                 ofOriginal ? words(SignOffLabel::SealOfOriginal) : words(PageLabel::Seal), labelStyle,
                 box.width() - box.height() - 2);
    if (sealed)
        drawSeal(draft, record.heading, *sealed, box);
}

} // namespace setfolio::sheet
