// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/scorehead.h"

#include "ui/dialogs/pieces.h"
#include "ui/look/plate.h"
#include "ui/wording/names.h"
#include "ui/wording/reviewwords.h"

#include <QHBoxLayout>
#include <QLabel>

namespace setfolio {

QWidget* makeScoreHead(const SignOffReview& review, const MatchState& state) {
    const bool ofSet = review.set && !review.sets.empty();
    const PerTeam<int> result = ofSet ? review.sets.back().score : review.setsWon;
    QWidget* head = pieces::panel();
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(14, 8, 14, 8);
    row->setSpacing(12);
    auto* score =
        pieces::heading(QString::number(result.home) + QStringLiteral(" – ") + QString::number(result.visitors), 40);
    score->setObjectName(QStringLiteral("score"));
    auto* winner = pieces::heading(winnerWords(review, state), 18);
    winner->setObjectName(QStringLiteral("winner"));
    winner->setWordWrap(true);
    row->addWidget(new pieces::Plate(Team::Home, codeOf(state, Team::Home)));
    row->addWidget(score);
    row->addWidget(new pieces::Plate(Team::Visitors, codeOf(state, Team::Visitors)));
    row->addWidget(winner, 1);
    return head;
}

} // namespace setfolio
