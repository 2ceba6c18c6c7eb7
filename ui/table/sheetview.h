// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The sheet on the screen: the live band of the set in play, or a whole page.
#pragma once

#include "ui/sheet/compose.h"
#include "ui/table/look.h"

#include <QPixmap>
#include <QWidget>

namespace setfolio {

/// Keeps the page drawn and repaints only what has changed.
class SheetView : public QWidget {
    Q_OBJECT

public:
    explicit SheetView(SheetFonts fonts, QWidget* parent = nullptr);

    void setLook(const Look& look);
    /// Shows the record as it is now; `liveSet` is the number of the present set.
    void setRecord(const MatchRecord& record, int liveSet);
    void setWholePage(bool whole);
    [[nodiscard]] bool showsWholePage() const { return m_whole; }
    void goToLive();
    /// Turns pages; past the ends of a set to the set before or after it.
    void turn(int forward);
    [[nodiscard]] bool isLive() const;

    /// The pages of the set that is shown.
    [[nodiscard]] const std::vector<Page>& pages() const { return m_pages; }
    [[nodiscard]] int shownSet() const { return m_set; }
    [[nodiscard]] int shownPage() const { return m_page; } ///< from 0

Q_SIGNALS:
    /// A mark was clicked that tells of this entry.
    void entryClicked(setfolio::EntryNumber entry);

protected:
    void mouseReleaseEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    [[nodiscard]] std::vector<Page> compose(int set, const std::optional<Flow>& former) const;
    void showSet(int set, int page);
    void redrawAll();
    void redraw(const QRectF& millimetres);
    void drawOn(QPixmap& canvas, const QRect& pixels) const;
    [[nodiscard]] QRectF source() const; ///< of the paper, in millimetres
    [[nodiscard]] double pixelsPerMillimetre() const;
    [[nodiscard]] QPointF pixelOf(QPointF millimetres) const;
    [[nodiscard]] QPointF millimetreOf(QPointF pixels) const;
    [[nodiscard]] double followed() const; ///< how far the band has moved down with the score, in millimetres
    void paintPlace(QPainter& painter) const;
    [[nodiscard]] QString placeWords() const;
    [[nodiscard]] QRectF placeBox() const; ///< of the words that say which page is shown

    SheetFonts m_fonts;
    const MatchRecord* m_record = nullptr; ///< lives as long as the match file
    int m_liveSet = 1;
    int m_set = 1;
    int m_page = 0;
    bool m_whole = false;
    double m_scrolled = 0; ///< millimetres, by the wheel
    std::vector<Page> m_pages;
    QPixmap m_canvas;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
