// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/sheetpane.h"

#include "ui/look/colours.h"
#include "ui/sheet/paint.h"
#include "ui/wording/fill.h"

#include <QPainter>

#include <algorithm>

namespace setfolio {

namespace {

constexpr double nearness = 2.4;  ///< times the scale of a whole page, when a mark is shown
constexpr double roomRound = 1.4; ///< of the ring round a mark, in millimetres

/// Marks in the terms of service come before those in counters and remarks.
bool isInTerms(const Item& item) {
    return item.zone == Zone::BlockHome || item.zone == Zone::BlockVisitors;
}

const Item* markOf(const Page& page, EntryNumber entry, bool inTerms) {
    const auto found = std::ranges::find_if(
        page.items, [&](const Item& item) { return item.entry == entry && (!inTerms || isInTerms(item)); });
    return found == page.items.end() ? nullptr : &*found;
}

double clampedCorner(double middle, double room, double paper) {
    return room >= paper ? (paper - room) / 2 : std::clamp(middle - room / 2, 0.0, paper - room);
}

} // namespace

SheetPane::SheetPane(const MatchRecord& record, SheetFonts fonts, QWidget* parent)
    : QWidget(parent),
      m_record(record),
      m_fonts(std::move(fonts)) {
    setObjectName(QStringLiteral("sheetPane"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(300, 200);
}

void SheetPane::show(std::size_t sheet, EntryNumber entry) {
    if (m_sheet != sheet)
        compose(sheet);
    find(entry);
    update();
}

QRectF SheetPane::marked() const {
    if (m_mark.isEmpty())
        return {};
    const Sight seen = sight();
    return {(m_mark.topLeft() - seen.corner) * seen.scale, m_mark.size() * seen.scale};
}

void SheetPane::compose(std::size_t sheet) {
    m_sheet = sheet;
    m_pages.clear();
    m_page = 0;
    if (sheet >= m_record.sets.size())
        return;
    const SetRecord& set = m_record.sets[sheet];
    m_pages = composeSet(m_record.heading, set,
                         {.fonts = m_fonts, .paper = PaperSize::Letter, .locale = QLocale(), .former = std::nullopt});
    setAccessibleName(fill(tr("Sheet of set %1"), {QString::number(set.number)}));
}

void SheetPane::find(EntryNumber entry) {
    m_mark = {};
    m_whole = true;
    m_page = 0;
    if (entry.value == 0)
        return;
    for (const bool inTerms : {true, false})
        for (std::size_t page = 0; page < m_pages.size(); ++page)
            if (const Item* mark = markOf(m_pages[page], entry, inTerms)) {
                m_mark = boundingBox(*mark).adjusted(-roomRound, -roomRound, roomRound, roomRound);
                m_page = page;
                m_whole = false;
                return;
            }
}

SheetPane::Sight SheetPane::sight() const {
    const Page& page = m_pages[m_page];
    const double whole = std::min(width() / page.widthMm, height() / page.heightMm);
    const double scale = m_whole ? whole : whole * nearness;
    const QPointF middle = m_whole ? QPointF(page.widthMm, page.heightMm) / 2 : m_mark.center();
    return {scale,
            {clampedCorner(middle.x(), width() / scale, page.widthMm),
             clampedCorner(middle.y(), height() / scale, page.heightMm)}};
}

void SheetPane::paintEvent(QPaintEvent*) {
    const Colours& colours = coloursOf(themeOf(palette()));
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), colours.panel);
    if (!m_pages.empty()) {
        const Page& page = m_pages[m_page];
        const Sight seen = sight();
        painter.save();
        painter.scale(seen.scale, seen.scale);
        painter.translate(-seen.corner);
        painter.fillRect(QRectF(0, 0, page.widthMm, page.heightMm), Qt::white);
        paint(page, painter, {.paperFill = false, .clipMm = {}});
        painter.restore();
    }
    if (const QRectF mark = marked(); !mark.isEmpty()) { // on paper, which is white in every theme
        painter.setPen(QPen(coloursOf(Theme::Light).focus, 3));
        painter.drawRoundedRect(mark, 6, 6);
    }
    painter.setPen(QPen(colours.edge, 1));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
}

/// A press shows the whole page, another one the mark again.
void SheetPane::mousePressEvent(QMouseEvent*) {
    m_whole = m_mark.isEmpty() || !m_whole;
    update();
}

} // namespace setfolio
