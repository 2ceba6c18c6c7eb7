// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/signatureplaces.h"

#include "ui/wording/pagewords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr Tag body{Zone::Body, ItemRole::Label, {}, {}};
constexpr double top = 164.2;
constexpr double sealLeft = 210;
constexpr double titleRoom = 4.4;
constexpr double gap = 3;

QString nameOfRole(const std::vector<Official>& officials, Role role) {
    const auto found = std::ranges::find(officials, role, &Official::role);
    return found == officials.end() ? QString() : found->name.simplified();
}

QString captainOf(const Roster& roster) {
    const auto found = std::ranges::find(roster.players, true, &RosterPlayer::captain);
    return found == roster.players.end() ? QString() : found->name.simplified();
}

/// Who is to sign, as far as the match says it.
QString nameOf(const MatchHeading& heading, const SignaturePlace& place) {
    switch (place.signer) {
    case Signer::Scorer:
        return nameOfRole(heading.officials, Role::Scorer);
    case Signer::AssistantScorer:
        return nameOfRole(heading.officials, Role::AssistantScorer);
    case Signer::SecondReferee:
        return nameOfRole(heading.officials, Role::SecondReferee);
    case Signer::FirstReferee:
        return nameOfRole(heading.officials, Role::FirstReferee);
    case Signer::Captains:
        return place.team ? captainOf(heading.rosters[*place.team]) : QString();
    case Signer::Coaches:
        return place.team ? heading.rosters[*place.team].coach.simplified() : QString();
    }
    Q_UNREACHABLE();
}

void drawPlace(Draft& draft, const MatchHeading& heading, const SignaturePlace& place) {
    const QRectF& area = place.area;
    const QString team = place.team ? heading.opened.teams[*place.team].code : QString();
    draft.fitted(body, {area.left(), area.top() + 2.2}, signerWords(place.signer, team), labelStyle, area.width());
    draft.named(body.as(ItemRole::OfficialName), {area.left(), area.top() + 5.3}, nameOf(heading, place),
                {7.2, FontWeight::Medium}, area.width(), {.first = -0.8, .pitch = 2.2});
    draft.ruleAcross(body.as(ItemRole::SignatureLine), area.left(), area.right(), area.bottom(), 0.2, soot);
}

} // namespace

std::vector<SignaturePlace> signaturePlaces(const Rulebook& rulebook) {
    std::vector<SignaturePlace> places;
    for (const Signer signer : rulebook.signingOrder) {
        if (signer != Signer::Captains && signer != Signer::Coaches) {
            places.push_back({signer, std::nullopt, {}});
            continue;
        }
        for (const Team team : bothTeams)
            places.push_back({signer, team, {}});
    }
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

void drawSignaturePlaces(Draft& draft, const MatchHeading& heading) {
    draft.ruleAcross(body.as(ItemRole::Rule), 0, ladderRight, top, 0.5, soot);
    draft.fitted(body.as(ItemRole::Title), {0, top + 3.4}, words(PageLabel::SignaturesAndSeal), {7.2, FontWeight::Bold},
                 sealLeft);
    for (const SignaturePlace& place : signaturePlaces(heading.opened.rulebook))
        drawPlace(draft, heading, place);
    const QRectF seal = sealPlace();
    draft.rect(body.as(ItemRole::Box), seal, std::nullopt, {rule, 0.2, {}, false});
    draft.text(body, {seal.left() + 1.2, seal.top() + 3}, words(PageLabel::Seal), labelStyle);
}

} // namespace setfolio::sheet
