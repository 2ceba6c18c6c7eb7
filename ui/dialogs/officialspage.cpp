// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/officialspage.h"

#include "ui/dialogs/pieces.h"
#include "ui/wording/sheetwords.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr std::array roles{Role::FirstReferee, Role::SecondReferee, Role::Scorer,    Role::AssistantScorer, Role::Timer,
                           Role::LineJudge,    Role::LineJudge,     Role::LineJudge, Role::LineJudge};
constexpr int rowsOfFields = 5;

} // namespace

OfficialsPage::OfficialsPage(const std::vector<Official>& officials, QWidget* parent)
    : QWidget(parent),
      m_rest(officials) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(20);
    grid->setVerticalSpacing(10);
    int lineJudge = 0;
    for (const Role role : roles) {
        auto* name = pieces::lineEdit();
        if (const auto given = std::ranges::find(m_rest, role, &Official::role); given != m_rest.end()) {
            name->setText(given->name);
            m_rest.erase(given);
        }
        const int place = static_cast<int>(m_places.size());
        auto* cell = new QVBoxLayout;
        const QString label = roleWords(role, role == Role::LineJudge ? ++lineJudge : 0);
        pieces::addField(*cell, label, *name, u"official%1"_s.arg(place));
        grid->addLayout(cell, place % rowsOfFields, place / rowsOfFields);
        m_places.push_back({role, name});
        connect(name, &QLineEdit::textChanged, this, &OfficialsPage::changed);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(grid);
    m_column = column;
    column->addWidget(pieces::explanation(tr("Every name may be left out, and written by pen on the printed sheet.")));
    column->addStretch();
    setFocusProxy(m_places.front().name);
}

void OfficialsPage::offerLast(const std::vector<Official>& officials) {
    auto* again = pieces::button(tr("As in the last match"), u"asLast"_s);
    auto* row = new QHBoxLayout;
    row->addWidget(again);
    row->addStretch();
    m_column->insertLayout(m_column->count() - 1, row);
    connect(again, &QPushButton::clicked, this, [this, officials] {
        std::vector<Official> rest = officials;
        for (const Place& place : m_places) {
            const auto given = std::ranges::find(rest, place.role, &Official::role);
            if (given == rest.end())
                continue;
            if (place.name->text().trimmed().isEmpty())
                place.name->setText(given->name);
            rest.erase(given);
        }
    });
}

std::vector<Official> OfficialsPage::officials() const {
    std::vector<Official> officials;
    for (const Place& place : m_places) {
        if (!place.name->text().trimmed().isEmpty())
            officials.push_back({place.role, place.name->text()});
    }
    officials.insert(officials.end(), m_rest.begin(), m_rest.end());
    return officials;
}

QString OfficialsPage::summary() const {
    const int count = static_cast<int>(officials().size());
    return count == 0 ? tr("none named") : tr("%n named", nullptr, count);
}

} // namespace setfolio
