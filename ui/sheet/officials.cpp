// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"
#include "ui/wording/notewords.h"
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
constexpr int mostLines = 3; ///< of a very long name
constexpr TextStyle smallName{smallestPoints, FontWeight::Medium};

QString nameOf(const std::vector<Official>& officials, Role role) {
    const auto found = std::ranges::find(officials, role, &Official::role);
    return found == officials.end() ? QString() : found->name.simplified();
}

/// A name that takes three lines has them close under its role, and the rule below lower; high letters may leave room
/// for two only.
void drawSigner(Draft& draft, double top, const QString& role, const QString& name, bool last) {
    const double room = signersRight - signersLeft;
    constexpr NameLines close{mostLines, -2.1, 2.1}, usual{mostLines - 1, -1.1, 2.4};
    const NameBlock block = nameBlock(draft, {}, name, smallName, room, close);
    const bool high = block.lines.size() == mostLines;
    draft.fitted(foot, {signersLeft, top + (high ? 7.8 : 8.2)}, role, labelStyle, room);
    draft.named(foot.as(ItemRole::OfficialName), {signersLeft, top + 12.1}, name, {7.8, FontWeight::Medium}, room,
                high ? close : usual);
    draft.ruleAcross(foot.as(ItemRole::SignatureLine), signatureLeft, signatureRight, top + 13.2, 0.2, soot);
    if (!last)
        draft.ruleAcross(foot.as(ItemRole::Rule), signersLeft, signersRight, top + (high ? 15.1 : 14.4), 0.15,
                         paleRule);
}

void drawSigners(Draft& draft, const std::vector<Official>& officials) {
    double top = footTop;
    for (const Role role : {Role::FirstReferee, Role::SecondReferee, Role::Scorer}) {
        drawSigner(draft, top, roleWords(role, 0), nameOf(officials, role), role == Role::Scorer);
        top += 9.2;
    }
}

/// A line of the list of those who do not sign.
struct Line {
    enum class Kind : std::uint8_t { Role, Name, PartOfName, Empty };
    Kind kind = Kind::Role;
    QString text;
    QString full;         ///< with the role, where a name ends
    QStringList cutShort; ///< those of whom it shows a part or nothing
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

void addName(Lines& lines, const Draft& draft, const Group& group, const QString& name, int most) {
    if (name.isEmpty())
        return lines.push_back({Line::Kind::Empty, {}, {}, {}});
    const QStringList parts = nameLines(draft, name, smallName, right - othersLeft, most);
    for (const QString& part : parts)
        lines.push_back({Line::Kind::PartOfName, part, {}, {}});
    Line& last = lines.back();
    last.full = officialWords(group.role, name);
    if (isCut(parts, name))
        last.cutShort = {last.full};
    if (parts.size() == 1)
        last.kind = Line::Kind::Name;
}

Lines linesOf(const Draft& draft, const std::vector<Group>& groups, int most) {
    Lines lines;
    for (const Group& group : groups) {
        lines.push_back({Line::Kind::Role, group.role, {}, {}});
        for (const QString& name : group.names)
            addName(lines, draft, group, name, most);
    }
    return lines;
}

/// The room above a line, in lines.
double gapOf(const Line& line) {
    return line.kind == Line::Kind::Role ? groupGap : 1;
}

double pitchOf(const Lines& lines) {
    double units = -groupGap;
    for (const Line& line : lines)
        units += gapOf(line);
    return std::min(3.1, linesHeight / units);
}

TextShape shapeOf(const Draft& draft, const Line& line, double points) {
    const bool small = line.kind == Line::Kind::Role || line.kind == Line::Kind::PartOfName;
    return {{othersLeft, 0},
            small ? smallestPoints : points,
            soot,
            TextAlign::Left,
            draft.fonts().shape(line.text, FontWeight::Medium)};
}

/// Whether no line touches the one above it.
bool standClear(const Draft& draft, const Lines& lines, double pitch, double points) {
    for (std::size_t i = 1; i < lines.size(); ++i) {
        const TextShape line = shapeOf(draft, lines[i], points);
        if (clearPitch(shapeOf(draft, lines[i - 1], points), line, 0) > pitch * gapOf(lines[i]))
            return false;
    }
    return true;
}

bool fit(const Draft& draft, const Lines& lines) {
    const double pitch = pitchOf(lines);
    return pitch >= leastPitch && standClear(draft, lines, pitch, smallestPoints);
}

/// What fits: long names are shortened before anyone is left out.
Lines fittingLines(const Draft& draft, const std::vector<Group>& groups) {
    Lines lines;
    for (int most = mostLines; most > 0; --most) {
        lines = linesOf(draft, groups, most);
        if (fit(draft, lines))
            return lines;
    }
    Line more;
    for (lines.push_back(more); !fit(draft, lines); lines.back() = more) {
        const Line& last = lines[lines.size() - 2]; // the line after it says how many there are
        if (last.kind == Line::Kind::Name)
            more.cutShort.prepend(last.full);
        lines.erase(lines.end() - 2);
        more.text = moreOfficials(static_cast<int>(more.cutShort.size()));
    }
    return lines;
}

void drawOthers(Draft& draft, const std::vector<Official>& officials) {
    const Lines lines = fittingLines(draft, groupsOf(officials));
    const double pitch = pitchOf(lines);
    constexpr double usualPoints = 7.4;
    const bool large = pitch >= 2.9 && standClear(draft, lines, pitch, usualPoints);
    double baseline = footTop + firstDown;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Line& line = lines[i];
        draft.addCutShort(line.cutShort);
        if (i > 0)
            baseline += pitch * gapOf(line);
        const double points = line.kind != Line::Kind::PartOfName && large ? usualPoints : smallestPoints;
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
