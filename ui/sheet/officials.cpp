// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"
#include "ui/wording/signoffwords.h"

namespace setfolio::sheet {

namespace {

constexpr Tag foot{Zone::Foot, ItemRole::Label, {}, {}};
constexpr double signersLeft = 108, signersRight = 133;
constexpr double signatureLeft = 135, signatureRight = 162;
constexpr double othersLeft = 165, right = 190;

constexpr double firstDown = 7.5; ///< baselines of the others' lines, from the top of the foot
constexpr double linesHeight = 23.8;
constexpr double groupGap = 1.25; ///< before a role, in lines
constexpr double leastPitch = 2.2;

QString nameOf(const std::vector<Official>& officials, Role role) {
    const auto found = std::ranges::find(officials, role, &Official::role);
    return found == officials.end() ? QString() : found->name.simplified();
}

/// A name in lines of 6 pt: one or, where it is very long, two.
QStringList linesOf(const Draft& draft, const QString& name, double room) {
    const TextStyle small{smallestPoints, FontWeight::Medium};
    const QString first = wrapped(draft, name, small, room).value(0);
    if (first.size() == name.size())
        return {name};
    return {first, shortened(draft, name.mid(first.size()).trimmed(), small, room)};
}

void drawSigner(Draft& draft, double top, const QString& role, const QString& name) {
    const Tag tag = foot.as(ItemRole::OfficialName);
    const double room = signersRight - signersLeft;
    draft.fitted(foot, {signersLeft, top + 8.2}, role, labelStyle, room);
    const QStringList lines = linesOf(draft, name, room);
    if (lines.size() == 1)
        draft.fitted(tag, {signersLeft, top + 12.1}, name, {7.8, FontWeight::Medium}, room);
    else
        for (qsizetype i = 0; i < lines.size(); ++i)
            draft.text(tag, {signersLeft, top + 11.0 + 2.4 * double(i)}, lines.at(i),
                       {smallestPoints, FontWeight::Medium});
    draft.ruleAcross(foot.as(ItemRole::SignatureLine), signatureLeft, signatureRight, top + 13.2, 0.2, soot);
}

void drawSigners(Draft& draft, const std::vector<Official>& officials) {
    double top = footTop;
    for (const Role role : {Role::FirstReferee, Role::SecondReferee, Role::Scorer}) {
        drawSigner(draft, top, roleWords(role, 0), nameOf(officials, role));
        if (role != Role::Scorer)
            draft.ruleAcross(foot.as(ItemRole::Rule), signersLeft, signersRight, top + 14.4, 0.15, paleRule);
        top += 9.2;
    }
}

/// A line of the list of those who do not sign.
struct Line {
    enum class Kind : std::uint8_t { Role, Name, PartOfName, Empty };
    Kind kind = Kind::Role;
    QString text;
};
using Lines = std::vector<Line>;

/// A role and who holds it; a place without a name is filled in by pen.
struct Group {
    QString role;
    QStringList names;
};

std::vector<Group> groupsOf(const std::vector<Official>& officials) {
    std::vector<Group> groups;
    for (const Role role : {Role::AssistantScorer, Role::Timer, Role::LineJudge}) {
        QStringList names;
        for (const Official& official : officials)
            if (official.role == role)
                names += official.name.simplified();
        const qsizetype usual = role == Role::LineJudge ? 2 : 1;
        while (names.size() < usual)
            names += QString();
        if (names.size() > usual) {
            groups.push_back({role == Role::LineJudge ? words(SheetLabel::LineJudges) : roleWords(role, 0), names});
            continue;
        }
        for (qsizetype i = 0; i < names.size(); ++i)
            groups.push_back({roleWords(role, usual > 1 ? int(i) + 1 : 0), {names.at(i)}});
    }
    return groups;
}

Lines linesOf(const Draft& draft, const std::vector<Group>& groups, bool wrap) {
    Lines lines;
    for (const Group& group : groups) {
        lines.push_back({Line::Kind::Role, group.role});
        for (const QString& name : group.names) {
            const QStringList parts = wrap ? linesOf(draft, name, right - othersLeft) : QStringList{name};
            const Line::Kind kind = name.isEmpty()      ? Line::Kind::Empty
                                    : parts.size() == 1 ? Line::Kind::Name
                                                        : Line::Kind::PartOfName;
            for (const QString& part : parts)
                lines.push_back({kind, part});
        }
    }
    return lines;
}

double pitchOf(const Lines& lines) {
    double units = -groupGap;
    for (const Line& line : lines)
        units += line.kind == Line::Kind::Role ? groupGap : 1;
    return std::min(3.1, linesHeight / units);
}

/// What fits: long names are shortened before anyone is left out.
Lines fittingLines(const Draft& draft, const std::vector<Group>& groups) {
    Lines lines = linesOf(draft, groups, true);
    if (pitchOf(lines) < leastPitch)
        lines = linesOf(draft, groups, false);
    if (pitchOf(lines) >= leastPitch)
        return lines;
    lines.push_back({Line::Kind::Role, {}});
    for (int left = 1; pitchOf(lines) < leastPitch; ++left) {
        lines.erase(lines.end() - 2); // the last name; the line after it says how many there are
        lines.back().text = moreOfficials(left);
    }
    return lines;
}

void drawOthers(Draft& draft, const std::vector<Official>& officials) {
    const Lines lines = fittingLines(draft, groupsOf(officials));
    const double pitch = pitchOf(lines);
    double baseline = footTop + firstDown;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Line& line = lines[i];
        if (i > 0)
            baseline += pitch * (line.kind == Line::Kind::Role ? groupGap : 1);
        const double points = line.kind == Line::Kind::PartOfName || pitch < 2.9 ? smallestPoints : 7.4;
        if (line.kind == Line::Kind::Role)
            draft.fitted(foot, {othersLeft, baseline}, line.text, labelStyle, right - othersLeft);
        else if (line.kind == Line::Kind::Empty)
            draft.ruleAcross(foot.as(ItemRole::Rule), othersLeft, right, baseline + 0.6, 0.15, paleRule);
        else
            draft.fitted(foot.as(ItemRole::OfficialName), {othersLeft, baseline}, line.text,
                         {points, FontWeight::Medium}, right - othersLeft);
    }
}

} // namespace

void drawOfficials(Draft& draft, const Scene& scene) {
    draft.ruleAcross(foot.as(ItemRole::Rule), signersLeft, right, footTop, 0.5, soot);
    draft.text(foot.as(ItemRole::Title), {signersLeft, footTop + 3.4}, words(SheetLabel::Officials),
               {7.2, FontWeight::Bold});
    const bool inInk = scene.set.signOffs.empty();
    draft.fitted(foot, {signatureLeft, footTop + 3.4},
                 inInk ? words(SheetLabel::Signature) : words(SignOffLabel::SignedOnScreen), labelStyle,
                 signatureRight - signatureLeft);
    if (inInk)
        drawSigners(draft, scene.heading.officials);
    else
        drawSignatures(draft, scene);
    drawOthers(draft, scene.heading.officials);
}

} // namespace setfolio::sheet
