// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/entrylist.h"

#include "ui/table/draw.h"
#include "ui/wording/names.h"

#include <QCoreApplication>
#include <QMouseEvent>
#include <QPainter>

#include <cmath>
#include <ranges>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr double headHeight = 30;
constexpr double pitch = 26;

ShownEntry shown(const LoggedEntry& line, const MatchState& state) {
    return {line.number, line.words.rally > 0 ? QString::number(line.words.rally) : QString(),
            line.words.team ? codeOf(state, *line.words.team) : QString(), line.words.words, line.struck};
}

} // namespace

std::vector<ShownEntry> newestOf(const EntryLog& log, const MatchState& state, std::size_t most) {
    std::vector<ShownEntry> entries;
    for (const LoggedEntry& line : log.lines() | std::views::reverse | std::views::take(most))
        entries.push_back(shown(line, state));
    return entries;
}

EntryList::EntryList(QWidget* parent) : QWidget(parent) {
    setObjectName(u"entryList"_s);
}

void EntryList::setLook(const Look& look) {
    m_look = look;
    updateGeometry();
    update();
}

void EntryList::setEntries(std::vector<ShownEntry> entries) {
    if (entries == m_entries)
        return;
    m_entries = std::move(entries);
    QStringList words;
    for (const ShownEntry& entry : m_entries)
        words += u"%1 %2 %3"_s.arg(entry.rally, entry.code, entry.words).simplified();
    setAccessibleName(Table::tr("Last entries"));
    setAccessibleDescription(words.join(u". "_s));
    update();
}

QSize EntryList::minimumSizeHint() const {
    return {m_look.whole(200), m_look.whole(headHeight + pitch)};
}

void EntryList::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    draw::card(painter, QRectF(rect()), m_look);
    if (hasHead())
        draw::text(painter, {m_look.px(14), m_look.px(17)}, Table::tr("Last entries"), m_look.font(13, QFont::Bold),
                   m_look.colours.text);
    for (std::size_t i = 0; i < m_entries.size() && middleOf(i) + m_look.px(pitch / 2) <= height(); ++i)
        paintEntry(painter, m_entries[i], middleOf(i), i == 0);
}

/// An entry is worth more than the heading.
bool EntryList::hasHead() const {
    return height() >= m_look.px(headHeight + 2 * pitch);
}

double EntryList::middleOf(std::size_t line) const {
    return m_look.px((hasHead() ? headHeight : 2) + pitch / 2 + pitch * static_cast<double>(line));
}

void EntryList::mousePressEvent(QMouseEvent* event) {
    for (std::size_t i = 0; i < m_entries.size() && event->button() == Qt::LeftButton; ++i)
        if (std::abs(event->position().y() - middleOf(i)) <= m_look.px(pitch / 2))
            Q_EMIT entryPressed(m_entries[i].number);
}

void EntryList::paintEntry(QPainter& painter, const ShownEntry& entry, double middle, bool newest) const {
    if (newest) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_look.newest);
        const double high = m_look.px(24);
        painter.drawRoundedRect(QRectF(m_look.px(6), middle - high / 2, width() - m_look.px(12), high), m_look.px(5),
                                m_look.px(5));
    }
    const QColor quiet = newest && !entry.struck ? m_look.colours.text : m_look.colours.secondary;
    QFont plain = m_look.font(12.5);
    QFont bold = m_look.font(12.5, QFont::Bold);
    plain.setStrikeOut(entry.struck);
    draw::text(painter, {m_look.px(14), middle}, entry.rally, m_look.font(12.5), quiet);
    draw::text(painter, {m_look.px(40), middle}, entry.code, bold, m_look.colours.text, draw::From::Left,
               m_look.px(46));
    const double words = entry.code.isEmpty()
                             ? m_look.px(40)
                             : m_look.px(40) + std::max(m_look.px(36), draw::widthOf(entry.code, bold) + m_look.px(6));
    draw::text(painter, {words, middle}, entry.words, plain,
               entry.struck ? m_look.colours.secondary : m_look.colours.text, draw::From::Left,
               width() - words - m_look.px(10));
}

} // namespace setfolio
