// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/sanctions.h"

#include "ui/sheet/term.h"
#include "ui/wording/sanctionwords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr double right = 48;
constexpr double linePitch = 4.8;
constexpr double teamLeft = 12.4, whoLeft = 24, setLeft = 34, scoreLeft = 39;
constexpr QRgb yellowCard = 0xFFFFD54A;
constexpr QRgb redCard = 0xFFA3161E;
constexpr QSizeF cardSize(2.7, 3.6);
constexpr TextStyle lineStyle{7.2, FontWeight::Medium};

/// The cards of a line, from left to right, and what stands beside them.
struct Shown {
    std::vector<QRgb> cards;
    double gap = 0; ///< between two cards
    QString words;
};

Shown cardsOf(CardsShown shown) {
    switch (shown) {
    case CardsShown::Yellow:
        return {{yellowCard}, 0, {}};
    case CardsShown::Red:
        return {{redCard}, 0, {}};
    case CardsShown::BothTogether:
        return {{redCard, yellowCard}, 0, {}};
    case CardsShown::BothApart:
        return {{redCard, yellowCard}, 1.4, {}};
    }
    Q_UNREACHABLE();
}

/// The cards of a step, as the rulebook shows them; a step that it does not know is written in words.
Shown stepOf(const std::vector<CardStep>& ladder, SanctionLevel level) {
    const auto step = std::ranges::find(ladder, level, &CardStep::level);
    return step == ladder.end() ? Shown{{}, 0, levelWords(level)} : cardsOf(step->cards);
}

Shown delayOf(const Rulebook& rulebook, DelayLevel level) {
    const bool warning = level == DelayLevel::Warning;
    if (rulebook.delayWritten == DelayWritten::YudRud)
        return {{}, 0, delayLetters(level)};
    Shown shown = stepOf(rulebook.delayLadder, warning ? SanctionLevel::Warning : SanctionLevel::Penalty);
    shown.words = delayLetter();
    return shown;
}

Shown shownFor(const Rulebook& rulebook, const SanctionLine& line) {
    if (!line.level)
        return {{}, 0, improperWords()};
    return std::visit(Overloaded{[&](SanctionLevel level) { return stepOf(rulebook.conductLadder, level); },
                                 [&](DelayLevel level) { return delayOf(rulebook, level); }},
                      *line.level);
}

class SanctionPen {
public:
    SanctionPen(Draft& draft, const Scene& scene) : m_draft(draft), m_scene(scene) {}

    /// Writes a line on the rule at `y`.
    void write(const SanctionLine& line, double y) {
        m_tag = {Zone::Foot, ItemRole::Value, line.team, line.entry};
        m_baseline = y - 1.4;
        cards(shownFor(m_scene.heading.opened.rulebook, line));
        cell(teamLeft, whoLeft, m_scene.name(line.team).code);
        cell(whoLeft, setLeft, line.who ? memberLetters(*line.who) : QString());
        cell(setLeft, scoreLeft, QString::number(line.set));
        cell(scoreLeft, right, scoreWords(line.score[line.team], line.score[opponentsOf(line.team)]));
        if (line.struck)
            drawStrike(m_draft, m_tag.as(ItemRole::MarkStrike), 0, right, m_baseline - halfCap(7.2), 0.3, 0.25, soot);
    }

private:
    void cell(double left, double next, const QString& words) {
        m_draft.named(m_tag, {left, m_baseline}, words, lineStyle, next - left - 0.8, {2, -1.6, 2.15});
    }
    void cards(const Shown& shown) {
        double left = 0;
        for (const QRgb colour : shown.cards) {
            const QRectF box({left, m_baseline - halfCap(7.2) - cardSize.height() / 2}, cardSize);
            m_draft.rect(m_tag.as(ItemRole::Card), box, colour, {soot, 0.15, {}, false});
            const bool red = colour == redCard;
            m_draft.textAt(m_tag.as(ItemRole::CardLetter), box.center(), cardLetter(red),
                           {6.6, FontWeight::Bold, red ? white : soot, TextAlign::Centre});
            left += cardSize.width() + shown.gap;
        }
        if (!shown.words.isEmpty())
            cell(left > 0 ? left + 1 : 0, teamLeft, shown.words);
    }

    Draft& m_draft;
    const Scene& m_scene;
    Tag m_tag{Zone::Foot, ItemRole::Value, {}, {}};
    double m_baseline = 0;
};

void drawHeads(Draft& draft) {
    constexpr Tag foot{Zone::Foot, ItemRole::Label, {}, {}};
    const std::array<std::pair<SheetLabel, double>, 5> heads{{{SheetLabel::Card, 0},
                                                              {SheetLabel::TeamHead, teamLeft},
                                                              {SheetLabel::Who, whoLeft},
                                                              {SheetLabel::SetHead, setLeft},
                                                              {SheetLabel::Score, scoreLeft}}};
    for (std::size_t i = 0; i < heads.size(); ++i) {
        const double next = i + 1 < heads.size() ? heads[i + 1].second : right;
        draft.fitted(foot, {heads[i].second, footTop + 6.9}, words(heads[i].first), labelStyle,
                     next - heads[i].second - 0.8);
    }
}

} // namespace

void drawSanctions(Draft& draft, const Scene& scene) {
    drawFootTitle(draft, 0, right, words(SheetLabel::Sanctions));
    drawHeads(draft);
    SanctionPen pen(draft, scene);
    for (std::size_t line = 0; line <= sanctionLines; ++line) {
        const double y = footTop + 8 + linePitch * static_cast<double>(line);
        draft.ruleAcross({Zone::Foot, ItemRole::Rule, {}, {}}, 0, right, y, 0.15, paleRule);
        if (line > 0 && line <= scene.set.sanctions.size())
            pen.write(scene.set.sanctions[line - 1], y);
    }
}

std::span<const SanctionLine> sanctionsBeyondFoot(const SetRecord& set) {
    const std::span<const SanctionLine> all(set.sanctions);
    return all.subspan(std::min(all.size(), sanctionLines));
}

} // namespace setfolio::sheet
