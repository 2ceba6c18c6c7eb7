// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/practice/storyband.h"

#include "ui/practice/storyreader.h"
#include "ui/wording/storywords.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QStyle>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

QLabel* line(const QString& name) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

} // namespace

StoryBand::StoryBand(StoryReader& reader, QWidget* parent)
    : QWidget(parent),
      m_reader(reader),
      m_before(line(u"storyBefore"_s)),
      m_now(line(u"storyNow"_s)) {
    setObjectName(u"storyBand"_s);
    setAttribute(Qt::WA_StyledBackground);
    auto* sentences = new QVBoxLayout;
    sentences->setSpacing(0);
    sentences->addWidget(m_before);
    sentences->addWidget(m_now);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 4, 8, 4);
    row->setSpacing(8);
    row->addLayout(sentences, 1);
    m_next = makeButton(u"storyNext"_s, Qt::Key_F4, &StoryBand::next);
    m_hold = makeButton(u"storyHold"_s, Qt::Key_F5, &StoryBand::holdOrGoOn);
    m_compare = makeButton(u"storyCompare"_s, Qt::Key_F9, &StoryBand::compare);
    for (QPushButton* button : {m_next, m_hold, m_compare})
        row->addWidget(button);
    m_hold->setVisible(reader.pace() != Pace::StepByStep);
    connect(&reader, &StoryReader::changed, this, &StoryBand::tell);
    tell();
}

void StoryBand::setLook(const Look& look) {
    const Colours& colours = look.colours;
    setStyleSheet(u"#storyBand { background: %1; border: 2px solid %2; border-radius: 8px; }"
                  u"QLabel { color: %2; background: transparent; }"
                  u"#storyBefore { color: %3; }"
                  u"QPushButton { color: %2; background: %4; border: 1px solid %5; border-radius: 7px;"
                  u" min-height: 42px; padding: 0 12px; }"
                  u"QPushButton:focus { border: 3px solid %2; }"
                  u"QPushButton[due=\"true\"] { color: %6; background: %7; border-color: %6; }"
                  u"QPushButton:disabled { color: %3; }"_s.arg(colours.panel.name(), colours.text.name(),
                                                               colours.secondary.name(), colours.button.name(),
                                                               colours.edge.name(), onAmber().name(), amber().name()));
    m_before->setFont(look.font(13, QFont::Medium));
    m_now->setFont(look.font(18, QFont::DemiBold));
    for (QPushButton* button : {m_next, m_hold, m_compare})
        button->setFont(look.font(13.5, QFont::DemiBold));
}

void StoryBand::tell() {
    const std::vector<StoryStep>& steps = m_reader.story().steps;
    const std::size_t told = m_reader.told();
    m_before->setText(told > 1 ? storySentence(steps[told - 2]) : tr("Practice: enter what you are told here."));
    m_now->setText(told == 0 ? tr("The teams are on court. Ask for what happens next.")
                             : storySentence(steps[told - 1]));
    if (told > 0 && m_reader.isOver())
        m_now->setText(m_now->text() + u' ' + tr("That was all: compare your sheet with the right one."));
    m_next->setText(tr("Next (F4)"));
    m_next->setEnabled(!m_reader.isOver());
    m_hold->setText(m_reader.isRunning() ? tr("Hold (F5)") : tr("Go on (F5)"));
    m_hold->setEnabled(!m_reader.isOver());
    m_compare->setText(tr("Compare (F9)"));
    showWhatIsDue();
    QAccessibleEvent event(m_now, QAccessible::NameChanged);
    QAccessible::updateAccessibility(&event);
}

/// At first the table asks for the start of the set, and once the story is over for the next one: a button says that
/// there is something to do before.
void StoryBand::showWhatIsDue() {
    const bool isOver = m_reader.told() > 0 && m_reader.isOver();
    for (const auto& [button, isDue] : {std::pair(m_next, m_reader.told() == 0), std::pair(m_compare, isOver)}) {
        button->setProperty("due", isDue);
        style()->unpolish(button);
        style()->polish(button);
    }
}

QPushButton* StoryBand::makeButton(const QString& name, Qt::Key key, void (StoryBand::*pressed)()) {
    auto* button = new QPushButton(this);
    button->setObjectName(name);
    button->setFocusPolicy(Qt::TabFocus);
    connect(button, &QPushButton::clicked, this, pressed);
    auto* shortcut = new QShortcut(key, this);
    shortcut->setContext(Qt::WindowShortcut);
    connect(shortcut, &QShortcut::activated, button, [button] { button->click(); });
    return button;
}

void StoryBand::next() {
    m_reader.tellNext();
}

void StoryBand::holdOrGoOn() {
    if (!m_reader.isRunning() && m_reader.told() == 0)
        m_reader.tellNext();
    m_reader.setRunning(!m_reader.isRunning());
}

void StoryBand::compare() {
    m_reader.setRunning(false);
    Q_EMIT comparisonAsked();
}

} // namespace setfolio
