// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"

namespace setfolio::sheet {

namespace {

constexpr Tag foot{Zone::Foot, ItemRole::Label, {}, {}};
constexpr double signersLeft = 108, signersRight = 133;
constexpr double signatureLeft = 135, signatureRight = 162;
constexpr double othersLeft = 165, right = 190;

/// An official of the sheet, named or not: a place without a name is filled in by pen.
struct Place {
    Role role = Role::Scorer;
    int number = 0; ///< among several of the role
    QString name;
};

QString nameOf(const std::vector<Official>& officials, Role role) {
    const auto found = std::ranges::find(officials, role, &Official::role);
    return found == officials.end() ? QString() : found->name;
}

std::vector<Place> othersOf(const std::vector<Official>& officials) {
    std::vector<Place> places;
    for (const Role role : {Role::AssistantScorer, Role::Timer, Role::LineJudge}) {
        std::vector<Place> found;
        for (const Official& official : officials)
            if (official.role == role)
                found.push_back({role, static_cast<int>(found.size()) + 1, official.name});
        const std::size_t usual = role == Role::LineJudge ? 2 : 1;
        while (found.size() < usual)
            found.push_back({role, static_cast<int>(found.size()) + 1, {}});
        if (found.size() == 1)
            found.front().number = 0;
        places.insert(places.end(), found.begin(), found.end());
    }
    return places;
}

struct NameSpace {
    double left = 0;
    double room = 0;
    double points = 0;   ///< of a name that fits
    double baseline = 0; ///< of a name on one line
    double twoLines = 0; ///< of the first of two lines
    double linePitch = 2.4;
};

/// A name on one line, smaller if need be; a very long one on two.
void drawName(Draft& draft, const QString& name, const NameSpace& space) {
    const Tag tag = foot.as(ItemRole::OfficialName);
    const TextStyle style{space.points, FontWeight::Medium};
    const TextStyle small = style.sized(smallestPoints);
    QStringList lines = wrapped(draft, name, small, space.room);
    if (lines.size() < 2) {
        draft.fitted(tag, {space.left, space.baseline}, name.simplified(), style, space.room);
        return;
    }
    const QString second = QStringList(lines.mid(1)).join(u' ');
    draft.text(tag, {space.left, space.twoLines}, lines.front(), small);
    draft.text(tag, {space.left, space.twoLines + space.linePitch}, shortened(draft, second, small, space.room), small);
}

void drawSigners(Draft& draft, const std::vector<Official>& officials) {
    double top = footTop;
    for (const Role role : {Role::FirstReferee, Role::SecondReferee, Role::Scorer}) {
        draft.fitted(foot, {signersLeft, top + 8.2}, roleWords(role, 0), labelStyle, signersRight - signersLeft);
        drawName(draft, nameOf(officials, role),
                 {signersLeft, signersRight - signersLeft, 7.8, top + 12.1, top + 11.0, 2.4});
        draft.ruleAcross(foot.as(ItemRole::SignatureLine), signatureLeft, signatureRight, top + 13.2, 0.2, soot);
        if (role != Role::Scorer)
            draft.ruleAcross(foot.as(ItemRole::Rule), signersLeft, signersRight, top + 14.4, 0.15, paleRule);
        top += 9.2;
    }
}

void drawOthers(Draft& draft, std::vector<Place> others) {
    constexpr std::size_t most = 6;
    const std::size_t left = others.size() > most ? others.size() - most : 0;
    others.resize(others.size() - left);
    const bool close = others.size() > 4;
    const double pitch = close ? 27.6 / static_cast<double>(others.size()) : 6.9;
    double baseline = footTop + 7.5;
    for (const Place& place : others) {
        draft.fitted(foot, {othersLeft, baseline}, roleWords(place.role, place.number), labelStyle, right - othersLeft);
        if (close)
            draft.fitted(foot.as(ItemRole::OfficialName), {othersLeft, baseline + 2.3}, place.name,
                         {6.4, FontWeight::Medium}, right - othersLeft);
        else
            drawName(draft, place.name, {othersLeft, right - othersLeft, 7.4, baseline + 3.1, baseline + 2.3, 2.2});
        if (place.name.isEmpty())
            draft.ruleAcross(foot.as(ItemRole::Rule), othersLeft, right, baseline + (close ? 2.6 : 4.0), 0.15,
                             paleRule);
        baseline += pitch;
    }
    if (left > 0)
        draft.text(foot, {right, footTop + 3.4}, moreOfficials(static_cast<int>(left)),
                   TextStyle(labelStyle).fromRight());
}

} // namespace

void drawOfficials(Draft& draft, const Scene& scene) {
    draft.ruleAcross(foot.as(ItemRole::Rule), signersLeft, right, footTop, 0.5, soot);
    draft.text(foot.as(ItemRole::Title), {signersLeft, footTop + 3.4}, words(SheetLabel::Officials),
               {7.2, FontWeight::Bold});
    draft.fitted(foot, {signatureLeft, footTop + 3.4}, words(SheetLabel::Signature), labelStyle,
                 signatureRight - signatureLeft);
    drawSigners(draft, scene.heading.officials);
    drawOthers(draft, othersOf(scene.heading.officials));
}

} // namespace setfolio::sheet
