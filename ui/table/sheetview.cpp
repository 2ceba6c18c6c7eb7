// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/sheetview.h"

#include "ui/sheet/hit.h"
#include "ui/sheet/paint.h"
#include "ui/sheet/palette.h"
#include "ui/table/draw.h"
#include "ui/wording/fill.h"

#include <QCoreApplication>
#include <QMouseEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

// The live band, in millimetres of the live area: both teams' blocks and the ladder beside them.
constexpr double margin = 1.5;
constexpr double bandTop = 18;
constexpr double bandHeight = 134;
constexpr double rung = 4.9;
constexpr int rungsInBand = 25; ///< beyond this the band follows the score

/// The sheet of a set; of one that was cancelled and played again, the newer.
const SetRecord* recordOf(const MatchRecord& record, int set) {
    const auto found = std::find_if(record.sets.rbegin(), record.sets.rend(),
                                    [set](const SetRecord& sheet) { return sheet.number == set; });
    return found == record.sets.rend() ? nullptr : &*found;
}

} // namespace

SheetView::SheetView(SheetFonts fonts, QWidget* parent) : QWidget(parent), m_fonts(std::move(fonts)) {
    setObjectName(u"sheetView"_s);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAttribute(Qt::WA_OpaquePaintEvent);
}

void SheetView::setLook(const Look& look) {
    m_look = look;
    update();
}

void SheetView::setRecord(const MatchRecord& record, int liveSet) {
    const bool follows = m_pages.empty() || isLive();
    const bool sameSet = m_record && follows && liveSet == m_set;
    m_record = &record;
    m_liveSet = liveSet;
    if (!sameSet && follows) {
        showSet(liveSet, 0);
        return;
    }
    const double before = followed();
    std::vector<Page> pages = compose(m_set, m_pages.front().flow);
    std::swap(pages, m_pages);
    const int last = static_cast<int>(m_pages.size()) - 1;
    const bool turned = follows && m_page != last;
    m_page = follows ? last : std::min(m_page, last);
    if (turned || pages.size() != m_pages.size() || before != followed()) {
        redrawAll();
        return;
    }
    const auto page = static_cast<std::size_t>(m_page);
    for (const QRectF& changed : changedRects(pages[page], m_pages[page]))
        redraw(changed);
}

void SheetView::setWholePage(bool whole) {
    m_whole = whole;
    m_scrolled = 0;
    redrawAll();
}

void SheetView::goToLive() {
    m_scrolled = 0;
    showSet(m_liveSet, 0);
    m_page = static_cast<int>(m_pages.size()) - 1;
    redrawAll();
}

void SheetView::turn(int forward) {
    const int page = m_page + forward;
    if (page >= 0 && page < static_cast<int>(m_pages.size())) {
        m_page = page;
        redrawAll();
        return;
    }
    const int set = m_set + forward;
    if (set < 1 || set > m_liveSet)
        return;
    showSet(set, 0);
    m_page = forward < 0 ? static_cast<int>(m_pages.size()) - 1 : 0;
    redrawAll();
}

bool SheetView::isLive() const {
    return m_set == m_liveSet && m_page == static_cast<int>(m_pages.size()) - 1;
}

void SheetView::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    if (m_canvas.isNull())
        redrawAll();
    for (const QRect& part : event->region())
        painter.drawPixmap(part, m_canvas,
                           QRectF(QPointF(part.topLeft()) * m_canvas.devicePixelRatio(),
                                  QSizeF(part.size()) * m_canvas.devicePixelRatio())
                               .toAlignedRect());
    painter.setPen(QPen(m_look.colours.edge, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    if (!isLive())
        paintPlace(painter);
}

void SheetView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || m_pages.empty())
        return;
    if (!isLive() && placeBox().contains(event->position()))
        return goToLive();
    const Item* item = itemAt(m_pages[static_cast<std::size_t>(m_page)], millimetreOf(event->position()));
    if (item)
        Q_EMIT entryClicked(item->entry);
}

void SheetView::resizeEvent(QResizeEvent*) {
    redrawAll();
}

void SheetView::wheelEvent(QWheelEvent* event) {
    if (m_whole || m_pages.empty())
        return;
    const double room = liveArea.height() + margin - bandTop - height() / pixelsPerMillimetre();
    const double target = m_scrolled - event->angleDelta().y() / 120.0 * 12;
    m_scrolled = std::clamp(target, -bandTop - margin - followed(), std::max(0.0, room - followed()));
    redrawAll();
    event->accept();
}

std::vector<Page> SheetView::compose(int set, const std::optional<Flow>& former) const {
    const SheetOptions options{m_fonts, PaperSize::Letter, true, QLocale(), former};
    if (const SetRecord* record = recordOf(*m_record, set))
        return composeSet(m_record->heading, *record, options);
    SetRecord blank;
    blank.number = set;
    return composeSet(m_record->heading, blank, options);
}

void SheetView::showSet(int set, int page) {
    m_set = set;
    m_pages = compose(set, std::nullopt);
    m_page = std::clamp(page, 0, static_cast<int>(m_pages.size()) - 1);
    setAccessibleName(fill(Table::tr("Sheet of set %1"), {QString::number(set)}));
    redrawAll();
}

void SheetView::redrawAll() {
    if (m_pages.empty() || width() < 8 || height() < 8)
        return;
    const double ratio = devicePixelRatioF();
    m_canvas = QPixmap((QSizeF(size()) * ratio).toSize());
    m_canvas.setDevicePixelRatio(ratio);
    drawOn(m_canvas, rect());
    update();
}

void SheetView::redraw(const QRectF& millimetres) {
    const QRectF pixels(pixelOf(millimetres.topLeft()), pixelOf(millimetres.bottomRight()));
    const QRect part = pixels.toAlignedRect().adjusted(-1, -1, 1, 1) & rect();
    if (part.isEmpty())
        return;
    drawOn(m_canvas, part);
    update(part);
}

void SheetView::drawOn(QPixmap& canvas, const QRect& pixels) const {
    QPainter painter(&canvas);
    painter.setClipRect(pixels);
    const QPointF topLeft = millimetreOf(pixels.topLeft());
    const QRectF clip(topLeft, millimetreOf(pixels.bottomRight() + QPoint(1, 1)));
    painter.fillRect(pixels, QColor::fromRgb(sheet::paper));
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(pixelOf({0, 0}));
    painter.scale(pixelsPerMillimetre(), pixelsPerMillimetre());
    paint(m_pages[static_cast<std::size_t>(m_page)], painter, {true, clip});
}

QRectF SheetView::source() const {
    const QPointF live = m_pages.front().live;
    const double wide = liveArea.width() + 2 * margin;
    if (m_whole)
        return {live.x() - margin, live.y() - margin, wide, liveArea.height() + 2 * margin};
    return {live.x() - margin, live.y() + bandTop + followed() + m_scrolled, wide, bandHeight};
}

double SheetView::pixelsPerMillimetre() const {
    const QRectF part = source();
    return std::min((width() - 2) / part.width(), (height() - 2) / part.height());
}

QPointF SheetView::pixelOf(QPointF millimetres) const {
    const QRectF part = source();
    const double scale = pixelsPerMillimetre();
    const double left = (width() - part.width() * scale) / 2;
    const double top = m_whole ? (height() - part.height() * scale) / 2 : 1;
    // Whole pixels, so that a part drawn again meets the rest.
    return QPointF(std::round(left), std::round(top)) + (millimetres - part.topLeft()) * scale;
}

QPointF SheetView::millimetreOf(QPointF pixels) const {
    return (pixels - pixelOf({0, 0})) / pixelsPerMillimetre();
}

double SheetView::followed() const {
    const SetRecord* record = m_record ? recordOf(*m_record, m_set) : nullptr;
    if (!record)
        return 0;
    const int points = std::max(record->score.home, record->score.visitors);
    const double lowest = liveArea.height() - bandTop - bandHeight + margin;
    return std::clamp((points - rungsInBand) * rung, 0.0, lowest);
}

QString SheetView::placeWords() const {
    return fill(Table::tr("Set %1, page %2 of %3. Press here or Home to go back to live."),
                {QString::number(m_set), QString::number(m_page + 1), QString::number(m_pages.size())});
}

QRectF SheetView::placeBox() const {
    const double wide = draw::widthOf(placeWords(), m_look.font(14, QFont::DemiBold)) + m_look.px(32);
    return {(width() - wide) / 2, height() - m_look.px(52), wide, m_look.px(44)};
}

void SheetView::paintPlace(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = placeBox();
    painter.setPen(QPen(onAmber(), 1));
    painter.setBrush(amber());
    painter.drawRoundedRect(box, m_look.px(7), m_look.px(7));
    draw::text(painter, box.center(), placeWords(), m_look.font(14, QFont::DemiBold), onAmber(), draw::From::Centre);
}

} // namespace setfolio
