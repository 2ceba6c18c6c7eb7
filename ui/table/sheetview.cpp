// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/sheetview.h"

#include "ui/sheet/hit.h"
#include "ui/sheet/paint.h"
#include "ui/sheet/palette.h"
#include "ui/table/draw.h"
#include "ui/wording/fill.h"

#include <QApplication>
#include <QMouseEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QTouchEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr double rung = 4.9;    ///< of the ladder, in millimetres
constexpr int rungsInBand = 25; ///< beyond this the band follows the score

/// The sheet of a set; of one that was cancelled and played again, the newer.
const SetRecord* recordOf(const MatchRecord& record, int set) {
    const auto found = std::find_if(record.sets.rbegin(), record.sets.rend(),
                                    [set](const SetRecord& sheet) { return sheet.number == set; });
    return found == record.sets.rend() ? nullptr : &*found;
}

/// The page that play goes on on: that of the cell which is served in, else the last one with a team's block. Remarks
/// may fill pages after it.
int livePageOf(const std::vector<Page>& pages) {
    const auto lastWith = [&](auto is) {
        const auto found = std::find_if(pages.rbegin(), pages.rend(),
                                        [&](const Page& page) { return std::ranges::any_of(page.items, is); });
        return found == pages.rend() ? 0 : static_cast<int>(std::distance(found, pages.rend())) - 1;
    };
    const auto isLive = [](const Item& item) { return item.role == ItemRole::LiveCell; };
    const bool served =
        std::ranges::any_of(pages, [&](const Page& page) { return std::ranges::any_of(page.items, isLive); });
    return served ? lastWith(isLive) : lastWith([](const Item& item) { return item.zone == Zone::BlockHome; });
}

} // namespace

SheetView::SheetView(SheetFonts fonts, QWidget* parent) : QWidget(parent), m_fonts(std::move(fonts)) {
    setObjectName(u"sheetView"_s);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAttribute(Qt::WA_AcceptTouchEvents);
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
        showSet(liveSet, std::nullopt);
        return;
    }
    const double before = m_sight.followed();
    std::vector<Page> pages = compose(m_set, m_pages.front().flow);
    std::swap(pages, m_pages);
    m_livePage = livePageOf(m_pages);
    const bool turned = follows && m_page != m_livePage;
    m_page = follows ? m_livePage : std::min(m_page, static_cast<int>(m_pages.size()) - 1);
    followScore();
    const bool moved = follows && revealNewest();
    if (turned || moved || pages.size() != m_pages.size() || before != m_sight.followed()) {
        redrawAll();
        return;
    }
    const auto page = static_cast<std::size_t>(m_page);
    for (const QRectF& changed : changedRects(pages[page], m_pages[page]))
        redraw(changed);
}

void SheetView::setSight(Sight sight) {
    m_sight.setSight(sight);
    if (isLive())
        revealNewest();
    redrawAll();
}

void SheetView::zoom(int direction) {
    m_sight.zoom(direction, QRectF(rect()).center());
    sightMoved();
}

void SheetView::goToLive() {
    m_sight.begin();
    showSet(m_liveSet, std::nullopt);
    revealNewest();
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
    return m_set == m_liveSet && m_page == m_livePage;
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

bool SheetView::event(QEvent* event) {
    switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
        if (touch(*static_cast<QTouchEvent*>(event)))
            return true;
        break;
    case QEvent::TouchCancel:
        m_pressed.reset();
        m_fingers.reset();
        return true;
    default:
        break;
    }
    return QWidget::event(event);
}

void SheetView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        press(event->position());
}

void SheetView::mouseMoveEvent(QMouseEvent* event) {
    drag(event->position());
}

void SheetView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        release(event->position());
}

bool SheetView::touch(const QTouchEvent& event) {
    const QList<QTouchEvent::TouchPoint>& points = event.points();
    if (points.size() == 2) {
        m_moving = true; // the last finger to leave clicks nothing
        const QLineF now(points.at(0).position(), points.at(1).position());
        const QLineF before = m_fingers.value_or(now);
        m_fingers = now;
        m_sight.pan(now.center() - before.center());
        if (before.length() > 1 && now.length() > 1)
            m_sight.stretch(now.length() / before.length(), now.center());
        if (event.type() == QEvent::TouchEnd)
            m_fingers.reset();
        sightMoved();
        return true;
    }
    if (points.size() != 1)
        return false;
    const QPointF at = points.front().position();
    if (std::exchange(m_fingers, std::nullopt))
        m_dragged = at; // the finger that has stayed drags on from where it is
    if (event.type() == QEvent::TouchBegin)
        press(at);
    else if (event.type() == QEvent::TouchUpdate)
        drag(at);
    else
        release(at);
    return true;
}

void SheetView::press(QPointF at) {
    m_pressed = m_dragged = at;
    m_moving = false;
}

void SheetView::drag(QPointF to) {
    if (!m_pressed || m_pages.empty())
        return;
    m_moving = m_moving || QLineF(*m_pressed, to).length() >= QApplication::startDragDistance();
    if (!m_moving)
        return;
    m_sight.pan(to - m_dragged);
    m_dragged = to;
    redrawAll();
}

void SheetView::release(QPointF at) {
    const bool isClick = m_pressed && !m_moving && !m_pages.empty();
    m_pressed.reset();
    if (!isClick)
        return;
    if (!isLive() && placeBox().contains(at))
        return goToLive();
    const Item* item = itemAt(m_pages[static_cast<std::size_t>(m_page)], millimetreOf(at));
    if (item)
        Q_EMIT entryClicked(item->entry);
}

void SheetView::sightMoved() {
    redrawAll();
    Q_EMIT sightChanged(m_sight.sight());
}

void SheetView::resizeEvent(QResizeEvent*) {
    m_sight.setRoom(QSizeF(size()) - QSizeF(2, 2));
    redrawAll();
}

void SheetView::wheelEvent(QWheelEvent* event) {
    if (m_pages.empty())
        return;
    event->accept();
    if (event->modifiers().testFlag(Qt::ControlModifier) && event->angleDelta().y() != 0) {
        m_sight.zoom(event->angleDelta().y() > 0 ? 1 : -1, event->position());
        return sightMoved();
    }
    constexpr double turn = 120, moves = 12; // a turn of the wheel, and the millimetres it moves the page
    m_sight.pan(QPointF(event->angleDelta()) / turn * moves * m_sight.scale());
    redrawAll();
}

std::vector<Page> SheetView::compose(int set, const std::optional<Flow>& former) const {
    const SheetOptions options{m_fonts, PaperSize::Letter, true, QLocale(), former};
    if (const SetRecord* record = recordOf(*m_record, set))
        return composeSet(m_record->heading, *record, options);
    SetRecord blank;
    blank.number = set;
    return composeSet(m_record->heading, blank, options);
}

/// The page asked for; where none is, the one that play goes on on.
void SheetView::showSet(int set, std::optional<int> page) {
    m_set = set;
    m_pages = compose(set, std::nullopt);
    m_livePage = livePageOf(m_pages);
    m_page = std::clamp(page.value_or(m_livePage), 0, static_cast<int>(m_pages.size()) - 1);
    followScore();
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
    painter.scale(m_sight.scale(), m_sight.scale());
    paint(m_pages[static_cast<std::size_t>(m_page)], painter, {true, clip});
}

QPointF SheetView::pixelOf(QPointF millimetres) const {
    return m_sight.pixelOf(millimetres - m_pages.front().live);
}

QPointF SheetView::millimetreOf(QPointF pixels) const {
    return m_sight.placeOf(pixels) + m_pages.front().live;
}

void SheetView::followScore() {
    const SetRecord* record = m_record ? recordOf(*m_record, m_set) : nullptr;
    const int points = record ? std::max(record->score.home, record->score.visitors) : 0;
    m_sight.setFollowed((points - rungsInBand) * rung);
}

bool SheetView::revealNewest() {
    if (m_pages.empty())
        return false;
    const Page& page = m_pages[static_cast<std::size_t>(m_page)];
    const Item* newest = nullptr;
    for (const Item& item : page.items)
        if ((item.zone == Zone::BlockHome || item.zone == Zone::BlockVisitors) && item.entry.value != 0 &&
            (!newest || newest->entry.value <= item.entry.value))
            newest = &item;
    return newest && m_sight.reveal(boundingBox(*newest).center() - page.live);
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
