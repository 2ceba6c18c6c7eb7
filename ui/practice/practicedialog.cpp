// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/practice/practicedialog.h"

#include "ui/dialogs/pieces.h"
#include "ui/dialogs/twolinebutton.h"
#include "ui/look/appearance.h"
#include "ui/wording/storywords.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <array>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr std::array<Pace, 4> allPaces{Pace::StepByStep, Pace::Slow, Pace::Steady, Pace::AsPlayed};

} // namespace

PracticeDialog::PracticeDialog(QWidget* parent)
    : FrameDialog(tr("Practice"),
                  tr("A set is told to you as it would be seen from the table. Enter it; then compare your sheet with "
                     "the right one."),
                  tr("Begin"), parent),
      m_stories(new QButtonGroup(this)),
      m_paces(new QButtonGroup(this)) {
    setObjectName(u"practice"_s);
    addStories();
    addPaces();
    QPushButton* print = pieces::button(tr("Print the story…"), u"printStory"_s);
    addToFoot(print);
    connect(print, &QPushButton::clicked, this, [this] { Q_EMIT printAsked(storyId()); });
}

QString PracticeDialog::storyId() const {
    return storyIds().at(static_cast<std::size_t>(m_stories->checkedId()));
}

Pace PracticeDialog::pace() const {
    return allPaces.at(static_cast<std::size_t>(m_paces->checkedId()));
}

void PracticeDialog::addStories() {
    auto* column = new QVBoxLayout;
    column->setSpacing(8);
    for (std::size_t index = 0; index < storyIds().size(); ++index) {
        const QString& id = storyIds()[index];
        auto* button = new TwoLineButton(storyTitle(id), storyAbout(id));
        button->setObjectName(u"story%1"_s.arg(index + 1));
        button->setCheckable(true);
        button->setMinimumWidth(scaled(640));
        button->setAutoDefault(false);
        m_stories->addButton(button, static_cast<int>(index));
        column->addWidget(button);
    }
    m_stories->button(0)->setChecked(true);
    body()->addLayout(column);
}

void PracticeDialog::addPaces() {
    body()->addWidget(pieces::heading(tr("How fast")));
    const std::array<QString, 4> names{tr("Step by step"), tr("12 seconds each"), tr("7 seconds each"),
                                       tr("4 seconds each")};
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    for (std::size_t index = 0; index < allPaces.size(); ++index) {
        QPushButton* button = pieces::button(names[index], u"pace%1"_s.arg(index));
        button->setCheckable(true);
        button->setAutoDefault(false);
        m_paces->addButton(button, static_cast<int>(index));
        row->addWidget(button, 1);
    }
    m_paces->button(0)->setChecked(true);
    body()->addLayout(row);
}

} // namespace setfolio
