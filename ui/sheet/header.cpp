// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"

namespace setfolio::sheet {

namespace {

constexpr double textLeft = 19.5;
constexpr double labelBaseline = 9.7;
constexpr double valueBaseline = 14.3;
constexpr TextStyle valueStyle{9, FontWeight::Medium};
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
    draft.rect(header.as(ItemRole::Plate), {0, 0, 16, 16}, soot);
    const Tag tag = header.as(ItemRole::PlateText);
    draft.text(tag, {8, 4.2}, words(SheetLabel::Set), {6.5, FontWeight::SemiBold, white, TextAlign::Centre, 0.08});
    draft.text(tag, {8, 12.2}, QString::number(number), {21, FontWeight::Bold, white, TextAlign::Centre});
    drawPips(draft, number, bestOf);
}

void drawTitles(Draft& draft, const Scene& scene, PageNumber page) {
    QString right = matchWords(scene.heading.opened);
    if (page.of > 1)
        right += (right.isEmpty() ? QString() : QStringLiteral(" · ")) + pageWords(page.number, page.of);
    const double used = draft.fitted(header.as(ItemRole::Value), {mainRight, 4.7}, right, valueStyle.fromRight(), 80);
    const double room = std::min(130.0, mainRight - textLeft - used - 4) + std::max(0.0, 80 - used - 4);
    draft.fitted(header.as(ItemRole::Title), {textLeft, 4.7}, scene.heading.opened.competition,
                 {12.5, FontWeight::Bold}, std::min(room, mainRight - textLeft - used - 4));
    draft.ruleAcross(header.as(ItemRole::Rule), textLeft, mainRight, 6.7, 0.35, soot);
}

void drawFields(Draft& draft, const Scene& scene) {
    struct Field {
        SheetLabel label;
        QString value;
        double width;
    };
    const MatchOpened& opened = scene.heading.opened;
    const SetRecord& set = scene.set;
    const QLocale& locale = scene.options.locale;
    const QString first = set.servesFirst ? scene.name(*set.servesFirst).code : QString();
    const std::array<Field, 7> fields{{{SheetLabel::Venue, opened.venue, 54},
                                       {SheetLabel::Date, dateWords(opened.date, locale), 32},
                                       {SheetLabel::Scheduled, timeWords(opened.scheduled, locale), 17},
                                       {SheetLabel::Started, timeWords(set.startedAt, locale), 17},
                                       {SheetLabel::Finished, timeWords(set.endedAt, locale), 17},
                                       {SheetLabel::Format, formatWords(opened.bestOf), 19},
                                       {SheetLabel::FirstServe, first, 17}}};
    double x = textLeft;
    for (const Field& field : fields) {
        draft.fitted(header, {x, labelBaseline}, words(field.label), labelStyle, field.width - 1);
        draft.fitted(header.as(ItemRole::Value), {x, valueBaseline}, field.value, valueStyle, field.width - 2);
        x += field.width;
    }
    draft.ruleAcross(header.as(ItemRole::Rule), textLeft, 189.5, 16.4, 0.15, paleRule);
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
        const QString name = scene.name(team).code;
        const double wanted = draft.width(name, code);
        draft.textAt(header.as(ItemRole::PlateText), area.center(), name,
                     code.sized(std::clamp(8 * (area.width() - 3) / std::max(wanted, 0.01), smallestPoints, 8.0)));
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
    const TextStyle style{points, FontWeight::Bold, solid ? white : soot, TextAlign::Centre};
    const double wanted = std::max(draft.width(name.code, style), 0.01);
    const double fitting = std::clamp(points * (box.width() - 2.4) / wanted, smallestPoints, points);
    draft.textAt(tag.as(ItemRole::PlateText), box.center(),
                 shortened(draft, name.code, style.sized(fitting), box.width() - 1.4), style.sized(fitting));
}

void drawHeader(Draft& draft, const Scene& scene, PageNumber page) {
    drawSetPlate(draft, scene.set.number, scene.heading.opened.bestOf);
    drawTitles(draft, scene, page);
    drawFields(draft, scene);
    drawCourt(draft, scene);
}

} // namespace setfolio::sheet
