// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/picks.h"

#include "ui/look/controls.h"
#include "ui/table/commands.h"
#include "ui/table/draw.h"
#include "ui/table/numberfield.h"
#include "ui/table/presskeys.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QKeySequence>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>

#include <algorithm>
#include <numeric>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr int mostInARow = 8;
constexpr int fewestInARow = 3; // the six on court stand in two rows at most
constexpr int gap = 4;
constexpr int labelWidth = 58;

void dressLabel(QLabel& label, const Look& look) {
    label.setFont(look.font(13.5, QFont::DemiBold));
    label.setStyleSheet(controlStyle(look.theme));
    label.setFixedWidth(look.whole(labelWidth));
}

/// Later, because one of them may be the one that is pressed.
template <typename Button>
void dropLater(std::vector<Button*>& buttons) {
    for (Button* button : buttons) {
        button->hide();
        button->setObjectName({});
        button->deleteLater();
    }
    buttons.clear();
}

/// Showing one lays the window out, and that may find another room for all of them: then they have been made anew.
template <typename Button>
void showAll(const std::vector<Button*>& buttons) {
    const std::vector<Button*> made = buttons;
    for (std::size_t i = 0; i < made.size() && buttons == made; ++i)
        made[i]->show();
}

/// How many columns buttons of these widths stand in, so that each row fits the room.
int columnsFor(const std::vector<int>& widths, int room) {
    for (std::size_t columns = widths.size(); columns > 1; --columns) {
        std::vector<int> widest(columns, 0);
        for (std::size_t i = 0; i < widths.size(); ++i)
            widest[i % columns] = std::max(widest[i % columns], widths[i]);
        if (std::accumulate(widest.begin(), widest.end(), static_cast<int>(columns - 1) * gap) <= room)
            return static_cast<int>(columns);
    }
    return 1;
}

} // namespace

std::vector<OfferedNumber> countsUpTo(int most) {
    constexpr int handful = 5;
    std::vector<OfferedNumber> counts;
    for (int count = 0; count <= std::min(most, handful); ++count)
        counts.push_back({ShirtNumber(count)});
    if (most > handful)
        counts.push_back({ShirtNumber(most), Table::tr("all")});
    return counts;
}

NumberPick::NumberPick(const QString& label, const QString& name, const QString& prefix, QWidget* parent)
    : QWidget(parent),
      m_prefix(prefix),
      m_label(new QLabel(label, this)),
      m_field(new NumberField(this)),
      m_grid(new QGridLayout) {
    m_field->setObjectName(name);
    m_field->setAccessibleName(label);
    m_label->setBuddy(m_field);
    m_grid->setSpacing(gap);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap);
    row->addWidget(m_label);
    row->addWidget(m_field);
    row->addLayout(m_grid);
    row->addStretch(1);
    connect(m_field, &NumberField::textChanged, this, [this] {
        showChosen();
        Q_EMIT changed();
    });
}

void NumberPick::setLook(const Look& look) {
    m_look = look;
    dressLabel(*m_label, look);
    m_field->setLook(look);
    rebuild();
}

void NumberPick::setRoom(int width) {
    const int room = width - m_look.whole(labelWidth) - m_field->width() - 2 * gap;
    const int columns = std::clamp((room + gap) / (m_look.whole(numberButtonWidth) + gap), fewestInARow, mostInARow);
    if (columns == m_columns)
        return;
    m_columns = columns;
    rebuild();
}

void NumberPick::setLabel(const QString& label) {
    m_label->setText(label);
    m_field->setAccessibleName(label);
}

void NumberPick::offer(std::vector<OfferedNumber> numbers) {
    m_offered = std::move(numbers);
    rebuild();
}

std::optional<ShirtNumber> NumberPick::number() const {
    return m_field->number();
}

std::optional<ShirtNumber> NumberPick::numberOrProposed() const {
    return number() ? number() : m_field->proposed();
}

void NumberPick::propose(std::optional<ShirtNumber> number) {
    m_field->propose(number);
    showChosen();
}

void NumberPick::setNumber(std::optional<ShirtNumber> number) {
    const QSignalBlocker quiet(m_field);
    m_field->setNumber(number);
    showChosen();
}

void NumberPick::rebuild() {
    dropLater(m_buttons);
    for (const OfferedNumber& offered : m_offered) {
        auto* button = new NumberButton(offered.number, offered.word, m_look, this);
        button->setObjectName(m_prefix + QString::number(offered.number.value));
        button->setCheckable(true);
        connect(button, &NumberButton::clicked, this, [this, button] {
            m_field->setNumber(button->number());
            showChosen();
        });
        const int index = static_cast<int>(m_buttons.size());
        m_grid->addWidget(button, index / m_columns, index % m_columns);
        m_buttons.push_back(button);
    }
    showAll(m_buttons);
    showChosen();
}

void NumberPick::showChosen() {
    for (NumberButton* button : m_buttons)
        button->setChecked(numberOrProposed() == button->number());
}

OptionPick::OptionPick(const QString& label, const QString& name, QWidget* parent)
    : QWidget(parent),
      m_name(name),
      m_label(new QLabel(label, this)),
      m_grid(new QGridLayout) {
    m_grid->setSpacing(gap);
    m_label->setVisible(!label.isEmpty());
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap);
    row->addWidget(m_label);
    row->addLayout(m_grid, 1);
}

void OptionPick::setLook(const Look& look) {
    m_look = look;
    dressLabel(*m_label, look);
    rebuild();
}

void OptionPick::setRoom(int width) {
    const int room = width - (m_label->text().isEmpty() ? 0 : m_look.whole(labelWidth) + gap);
    if (room == m_room)
        return;
    m_room = room;
    rebuild();
}

void OptionPick::offer(std::vector<Option> options) {
    m_options = std::move(options);
    if (m_chosen >= static_cast<int>(m_options.size()))
        m_chosen = -1;
    rebuild();
}

void OptionPick::choose(int index) {
    m_chosen = index;
    for (int i = 0; i < static_cast<int>(m_buttons.size()); ++i)
        m_buttons[static_cast<std::size_t>(i)]->setChecked(i == index);
}

bool OptionPick::press(int key) {
    const auto found = std::ranges::find(m_options, key, &Option::key);
    if (found == m_options.end())
        return false;
    pressed(static_cast<int>(found - m_options.begin()));
    return true;
}

bool OptionPick::hasKey(int key) const {
    return std::ranges::find(m_options, key, &Option::key) != m_options.end();
}

void OptionPick::rebuild() {
    dropLater(m_buttons);
    std::vector<int> widths;
    for (const Option& option : m_options) {
        auto* button = new OptionButton(option, m_look, this);
        const int index = static_cast<int>(m_buttons.size());
        button->setObjectName(m_name + QString::number(index));
        connect(button, &OptionButton::clicked, this, [this, index] { pressed(index); });
        widths.push_back(button->sizeHint().width());
        m_buttons.push_back(button);
    }
    const int columns = columnsFor(widths, m_room);
    for (int index = 0; index < static_cast<int>(m_buttons.size()); ++index)
        m_grid->addWidget(m_buttons[static_cast<std::size_t>(index)], index / columns, index % columns);
    showAll(m_buttons);
    choose(m_chosen);
}

void OptionPick::pressed(int index) {
    choose(m_mayBeNone && m_chosen == index ? -1 : index);
    Q_EMIT changed();
}

OptionButton::OptionButton(const Option& option, const Look& look, QWidget* parent)
    : QAbstractButton(parent),
      m_second(option.second),
      m_cap(option.key == Qt::Key_unknown ? QString() : capOf(QKeySequence(option.key))),
      m_look(look) {
    setText(option.words);
    setAccessibleName(m_second.isEmpty() ? option.words : option.words + u", "_s + m_second);
    setAccessibleDescription(m_cap);
    setCheckable(true);
    setFocusPolicy(Qt::TabFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setFixedHeight(look.whole(44));
}

QSize OptionButton::sizeHint() const {
    const double words = draw::widthOf(text(), m_look.font(13.5, QFont::DemiBold));
    const double second = draw::widthOf(m_second, m_look.font(12));
    const double cap = m_cap.isEmpty() ? 0 : m_look.px(32);
    return {static_cast<int>(std::max(words, second) + cap + m_look.px(22)), m_look.whole(44)};
}

bool OptionButton::event(QEvent* event) {
    return claimsPressKey(event) || QAbstractButton::event(event);
}

void OptionButton::keyPressEvent(QKeyEvent* event) {
    if (!pressByKey(*this, *event))
        QAbstractButton::keyPressEvent(event);
}

void OptionButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& colours = m_look.colours;
    const QRectF box = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(QPen(colours.edge, 1));
    painter.setBrush(isChecked() ? colours.text : isDown() ? m_look.pressed : colours.button);
    painter.drawRoundedRect(box, m_look.px(7), m_look.px(7));
    double right = box.right() - m_look.px(6);
    if (!m_cap.isEmpty())
        right = draw::keyCap(painter, {box.right() - m_look.px(7), box.center().y()}, m_cap, m_look).left();
    const double left = m_look.px(9);
    const double room = right - left - m_look.px(3);
    const double shift = m_second.isEmpty() ? 0 : m_look.px(8.5);
    draw::text(painter, {left, box.center().y() - shift}, text(), m_look.font(13.5, QFont::DemiBold),
               isChecked() ? colours.ground : colours.text, draw::From::Left, room);
    if (!m_second.isEmpty())
        draw::text(painter, {left, box.center().y() + m_look.px(9.5)}, m_second, m_look.font(12),
                   isChecked() ? colours.ground : colours.secondary, draw::From::Left, room);
    if (hasFocus())
        draw::focusRing(painter, box, m_look.px(7), m_look);
}

} // namespace setfolio
