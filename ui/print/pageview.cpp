// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/print/pageview.h"

#include "ui/look/colours.h"
#include "ui/sheet/paint.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <array>

namespace setfolio {

namespace {

constexpr double margin = 18; ///< of ground round the page, in pixels
constexpr double mmPerInch = 25.4;
constexpr std::array scales{0.5, 0.75, 1.0, 1.25, 1.5, 2.0, 3.0, 4.0};

} // namespace

PageCanvas::PageCanvas(QWidget* parent) : QWidget(parent) {}

void PageCanvas::show(const Page* page, double pixels) {
    m_page = page;
    m_pixels = pixels;
    const QSizeF size = page ? QSizeF(page->widthMm, page->heightMm) * pixels : QSizeF();
    setFixedSize(qRound(size.width() + 2 * margin), qRound(size.height() + 2 * margin));
    update();
}

void PageCanvas::paintEvent(QPaintEvent* event) {
    if (!m_page)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(margin, margin);
    const QRectF paper(0, 0, m_page->widthMm * m_pixels, m_page->heightMm * m_pixels);
    painter.fillRect(paper.translated(3, 4), coloursOf(themeOf(palette())).rule);
    painter.fillRect(paper, Qt::white);
    painter.setPen(coloursOf(themeOf(palette())).edge);
    painter.drawRect(paper);
    painter.scale(m_pixels, m_pixels);
    const QRectF dirty = QRectF(event->rect()).translated(-margin, -margin);
    paint(*m_page, painter,
          {.paperFill = false, .clipMm = QRectF(dirty.topLeft() / m_pixels, dirty.size() / m_pixels)});
}

PageView::PageView(QWidget* parent) : QScrollArea(parent), m_canvas(new PageCanvas) {
    setObjectName(u"pages"_qs);
    setAlignment(Qt::AlignCenter);
    setFocusPolicy(Qt::StrongFocus);
    setWidget(m_canvas);
}

void PageView::setPages(std::vector<Page> pages) {
    m_current = pages.size() == m_pages.size() ? m_current : 0;
    m_canvas->show(nullptr, 1);
    m_pages = std::move(pages);
    show();
}

void PageView::setCurrent(int page) {
    const int last = static_cast<int>(m_pages.size()) - 1;
    m_current = std::clamp(page, 0, std::max(0, last));
    show();
}

void PageView::setFit(Fit fit) {
    m_scale = scale();
    m_fit = fit;
    show();
}

double PageView::scale() const {
    return pixelsPerMm() * mmPerInch / logicalDpiX();
}

void PageView::zoom(int direction) {
    m_scale = scaleAfter(scale(), direction);
    m_fit = Fit::Scale;
    show();
}

void PageView::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    if (m_fit != Fit::Scale)
        show();
}

void PageView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_PageDown:
    case Qt::Key_PageUp:
        return turnOrScroll(event->key() == Qt::Key_PageDown ? 1 : -1);
    case Qt::Key_Home:
        return setCurrent(0);
    case Qt::Key_End:
        return setCurrent(static_cast<int>(m_pages.size()) - 1);
    default:
        QScrollArea::keyPressEvent(event);
    }
}

void PageView::wheelEvent(QWheelEvent* event) {
    if (event->modifiers().testFlag(Qt::ControlModifier) && event->angleDelta().y() != 0)
        return zoom(event->angleDelta().y() > 0 ? 1 : -1);
    QScrollArea::wheelEvent(event);
}

void PageView::turnOrScroll(int direction) {
    QScrollBar* bar = verticalScrollBar();
    const bool atEnd = direction > 0 ? bar->value() == bar->maximum() : bar->value() == bar->minimum();
    if (!atEnd)
        return bar->triggerAction(direction > 0 ? QAbstractSlider::SliderPageStepAdd
                                                : QAbstractSlider::SliderPageStepSub);
    const int before = m_current;
    setCurrent(m_current + direction);
    if (m_current != before)
        bar->setValue(direction > 0 ? bar->minimum() : bar->maximum());
}

void PageView::show() {
    const Page* page = m_pages.empty() ? nullptr : &m_pages.at(static_cast<std::size_t>(m_current));
    m_canvas->show(page, pixelsPerMm());
    m_canvas->setAccessibleName(tr("Page %1 of %2").arg(m_current + 1).arg(m_pages.size()));
    Q_EMIT changed();
}

double PageView::pixelsPerMm() const {
    if (m_pages.empty() || m_fit == Fit::Scale)
        return m_scale * logicalDpiX() / mmPerInch;
    const Page& page = m_pages.at(static_cast<std::size_t>(m_current));
    const QSize room = maximumViewportSize();
    const double wide = (room.width() - 2 * margin) / page.widthMm;
    const double tall = (room.height() - 2 * margin) / page.heightMm;
    if (m_fit == Fit::WholePage)
        return std::max(0.5, std::min(wide, tall));
    const double bar = wide > tall ? verticalScrollBar()->sizeHint().width() / page.widthMm : 0;
    return std::max(0.5, wide - bar);
}

double scaleAfter(double scale, int direction) {
    constexpr double same = 0.005; // half a percent is no other scale to the eye
    if (direction > 0) {
        const auto larger = std::ranges::find_if(scales, [scale](double usual) { return usual > scale + same; });
        return larger == scales.end() ? std::max(scale, scales.back()) : *larger;
    }
    const auto smaller =
        std::find_if(scales.rbegin(), scales.rend(), [scale](double usual) { return usual < scale - same; });
    return smaller == scales.rend() ? std::min(scale, scales.front()) : *smaller;
}

} // namespace setfolio
