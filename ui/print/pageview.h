// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Shows one page of several as it will be printed, whole, at the width of the window, or at a scale.
#pragma once

#include "ui/sheet/page.h"

#include <QScrollArea>

#include <vector>

namespace setfolio {

/// The page on its ground; it paints by the one call that the printer is painted by.
class PageCanvas : public QWidget {
    Q_OBJECT

public:
    explicit PageCanvas(QWidget* parent = nullptr);
    /// `page` must live on; nullptr for none. `pixels` are those of a millimetre.
    void show(const Page* page, double pixels);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Page* m_page = nullptr;
    double m_pixels = 1;
};

class PageView : public QScrollArea {
    Q_OBJECT

public:
    enum class Fit : std::uint8_t { WholePage, PageWidth, Scale };

    explicit PageView(QWidget* parent = nullptr);

    /// Shows these pages, the first one or, if there are as many, the one that was shown.
    void setPages(std::vector<Page> pages);
    [[nodiscard]] const std::vector<Page>& pages() const { return m_pages; }
    [[nodiscard]] int current() const { return m_current; } ///< from 0
    void setCurrent(int page);

    void setFit(Fit fit);
    [[nodiscard]] Fit fit() const { return m_fit; }
    /// 1: a millimetre on the screen is a millimetre, as far as the screen tells its resolution.
    [[nodiscard]] double scale() const;
    /// The next larger or smaller of the usual scales.
    void zoom(int direction);

Q_SIGNALS:
    void changed();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void turnOrScroll(int direction);
    void show();
    [[nodiscard]] double pixelsPerMm() const;

    PageCanvas* m_canvas;
    std::vector<Page> m_pages;
    int m_current = 0;
    Fit m_fit = Fit::WholePage;
    double m_scale = 1;
};

/// The usual scale after or before one, for direction 1 or -1; the largest and the smallest stay.
[[nodiscard]] double scaleAfter(double scale, int direction);

} // namespace setfolio
