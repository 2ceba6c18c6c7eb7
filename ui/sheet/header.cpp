// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/masthead.h"
#include "ui/wording/pagewords.h"

#include <QTextBoundaryFinder>

#include <algorithm>
#include <array>

namespace setfolio::sheet {

namespace {

constexpr double labelBaseline = 9.7;
constexpr Tag header{Zone::Header, ItemRole::Label, {}, {}};

void drawPips(Draft& draft, int number, int bestOf) {
    constexpr double pitch = 2.3;
    constexpr QSizeF size(1.8, 1.2);
    const double left = 8 - (pitch * (bestOf - 1) + size.width()) / 2;
    for (int set = 1; set <= bestOf; ++set) {
        const std::optional<QRgb> fill = set == number ? std::optional(white) : std::nullopt;
        draft.rect(header.as(ItemRole::Plate), QRectF(QPointF(left + pitch * (set - 1), 13.7), size), fill,
                   {white, 0.2, {}, false});
    }
}

void drawSetPlate(Draft& draft, int number, int bestOf) {
    drawHeadPlate(draft, header, words(SheetLabel::Set), number > 0 ? QString::number(number) : QString());
    drawPips(draft, number, bestOf);
}

/// That a set in play has been printed, and when.
QString standsOf(const Scene& scene) {
    const PerTeam<int>& score = scene.set.score;
    const QString time = timeWords(scene.options.standsAt, scene.options.locale);
    return time.isEmpty() ? QString() : asItStands(time, scoreWords(score.home, score.visitors));
}

std::vector<Field> fieldsOf(const Scene& scene) {
    const SetRecord& set = scene.set;
    const QLocale& locale = scene.options.locale;
    const QString first = set.servesFirst ? scene.name(*set.servesFirst).code : QString();
    std::vector<Field> fields = placeFields(scene.heading.opened, locale);
    fields.push_back({words(SheetLabel::Started), timeWords(set.startedAt, locale), 17});
    fields.push_back({words(SheetLabel::Finished), timeWords(set.endedAt, locale), 17});
    fields.push_back({words(SheetLabel::Format), formatWords(scene.heading.opened.bestOf), 19});
    fields.push_back({words(SheetLabel::FirstServe), first, 17});
    return fields;
}

/// Two lines of about the same length.
std::array<QString, 2> halves(const Draft& draft, const QString& words, const TextStyle& style) {
    std::array<QString, 2> best{words, {}};
    double longest = draft.width(words, style);
    QTextBoundaryFinder finder(QTextBoundaryFinder::Grapheme, words);
    while (finder.toNextBoundary() != -1) {
        const QString first = words.left(finder.position()).trimmed(), second = words.mid(finder.position()).trimmed();
        if (const double longer = std::max(draft.width(first, style), draft.width(second, style)); longer < longest) {
            longest = longer;
            best = {first, second};
        }
    }
    return best;
}

/// In the middle of a plate: smaller where the plate is too narrow, and in two lines where it is too narrow for the
/// smallest type.
void drawCode(Draft& draft, const Tag& tag, const QRectF& plate, const QString& code, const TextStyle& style) {
    constexpr double edge = 0.7, lineStep = 2.15;
    const double wanted = std::max(draft.width(code, style), 0.01);
    const TextStyle fitting =
        style.sized(std::clamp(style.points * (plate.width() - 2.4) / wanted, smallestPoints, style.points));
    const double room = plate.width() - 2 * edge;
    if (draft.width(code, fitting) <= room)
        return draft.textAt(tag, plate.center(), code, fitting);
    double down = -lineStep / 2;
    for (const QString& half : halves(draft, code, fitting)) {
        draft.textAt(tag, plate.center() + QPointF(0, down), shortened(draft, half, fitting, room), fitting);
        down += lineStep;
    }
}

/// The court as the scorer sees it: which team is on which side of the net.
void drawCourt(Draft& draft, const Scene& scene) {
    constexpr double left = 192.5;
    constexpr double net = (left + mainRight) / 2;
    const Tag box = header.as(ItemRole::Box);
    draft.fitted(header, {left, labelBaseline}, words(SheetLabel::Court), labelStyle, mainRight - left);
    const auto half = [&](Team team, double from) {
        const QRectF area(from, 10.8, net - left, 4.6);
        if (team == Team::Home)
            draft.rect(header.as(ItemRole::Plate).of({}), area, soot);
        const TextStyle code{8, FontWeight::Bold, team == Team::Home ? white : soot, TextAlign::Centre};
        drawCode(draft, header.as(ItemRole::PlateText), area, scene.name(team).code, code);
    };
    if (scene.set.left) {
        half(*scene.set.left, left);
        half(opponentsOf(*scene.set.left), net);
    }
    draft.rect(box, {left + 0.15, 10.95, mainRight - left - 0.3, 4.3}, std::nullopt, {soot, 0.3, {}, false});
    draft.ruleDown(header.as(ItemRole::Rule), net, 10.2, 16.0, 0.5, soot);
    draft.ruleDown(header.as(ItemRole::Rule), net, 10.95, 15.25, 0.18, white);
}

} // namespace

void drawPlate(Draft& draft, const Tag& tag, const QRectF& box, const TeamName& name, double points) {
    const bool solid = tag.team == Team::Home;
    if (solid)
        draft.rect(tag.as(ItemRole::Plate), box, soot);
    else
        draft.rect(tag.as(ItemRole::Plate), box.adjusted(0.25, 0.25, -0.25, -0.25), std::nullopt,
                   {soot, 0.5, {}, false});
    drawCode(draft, tag.as(ItemRole::PlateText), box, name.code,
             {points, FontWeight::Bold, solid ? white : soot, TextAlign::Centre});
}

void drawTeamName(Draft& draft, const Tag& tag, QPointF corner, const QString& said, const QString& name, double room) {
    constexpr TextStyle style{10.5, FontWeight::SemiBold};
    const bool inLines = draft.width(name, style.sized(smallestPoints)) > room; // which come closer to the label
    draft.fitted(tag, corner + QPointF(0, inLines ? 2.6 : 3), said, labelStyle, room);
    draft.named(tag.as(ItemRole::Value), corner + QPointF(0, 7.1), name, style, room, underLabel);
}

void drawHeader(Draft& draft, const Scene& scene, PageNumber page) {
    drawSetPlate(draft, scene.set.number, scene.heading.opened.bestOf);
    drawTitles(draft, header, scene.heading.opened, page, mainRight, scene.options.named, standsOf(scene));
    drawFields(draft, header, fieldsOf(scene), 189.5);
    drawCourt(draft, scene);
}

} // namespace setfolio::sheet
