// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The sheet on the screen: the live band of the set in play, a whole page, or any part of it at any size.
#pragma once

#include "ui/sheet/compose.h"
#include "ui/table/look.h"
#include "ui/table/sheetsight.h"

#include <QLineF>
#include <QPixmap>
#include <QWidget>

#include <optional>

class QTouchEvent;

namespace setfolio {

/// Keeps the page drawn and repaints only what has changed.
class SheetView : public QWidget {
    Q_OBJECT

public:
    explicit SheetView(SheetFonts fonts, QWidget* parent = nullptr);

    void setLook(const Look& look);
    /// Shows the record as it is now; `liveSet` is the number of the present set.
    void setRecord(const MatchRecord& record, int liveSet);
    void setSight(Sight sight);
    [[nodiscard]] Sight sight() const { return m_sight.sight(); }
    [[nodiscard]] double scale() const { return m_sight.scale(); } ///< pixels of a millimetre
    /// A larger (1) or smaller (-1) scale, about the middle.
    void zoom(int direction);
    /// The newest page of the present set, and the play in sight.
    void goToLive();
    /// Turns pages; past the ends of a set to the set before or after it.
    void turn(int forward);
    [[nodiscard]] bool isLive() const;

    /// The pages of the set that is shown.
    [[nodiscard]] const std::vector<Page>& pages() const { return m_pages; }
    [[nodiscard]] int shownSet() const { return m_set; }
    [[nodiscard]] int shownPage() const { return m_page; } ///< from 0
    /// Where a place of the shown page, in millimetres of the paper, lies in the widget.
    [[nodiscard]] QPointF pixelOf(QPointF millimetres) const;

Q_SIGNALS:
    /// Another part or scale was chosen by hand.
    void sightChanged(setfolio::Sight sight);
    /// A mark was clicked that tells of this entry.
    void entryClicked(setfolio::EntryNumber entry);

protected:
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    [[nodiscard]] std::vector<Page> compose(int set, const std::optional<Flow>& former) const;
    void showSet(int set, std::optional<int> page);
    void redrawAll();
    void redraw(const QRectF& millimetres);
    void drawOn(QPixmap& canvas, const QRect& pixels) const;
    [[nodiscard]] QPointF millimetreOf(QPointF pixels) const;
    void followScore();
    /// Brings the mark of the newest entry on the page into sight; true if the page was moved for it.
    bool revealNewest();
    void press(QPointF at);
    void drag(QPointF to);
    void release(QPointF at);
    /// Two fingers move and stretch the page.
    bool touch(const QTouchEvent& event);
    void sightMoved();
    void paintPlace(QPainter& painter) const;
    [[nodiscard]] QString placeWords() const;
    [[nodiscard]] QRectF placeBox() const; ///< of the words that say which page is shown

    SheetFonts m_fonts;
    const MatchRecord* m_record = nullptr; ///< lives as long as the match file
    int m_liveSet = 1;
    int m_set = 1;
    int m_page = 0;
    int m_livePage = 0; ///< of the set that is shown
    SheetSight m_sight;
    std::optional<QPointF> m_pressed; ///< where a mouse button or finger went down
    QPointF m_dragged;                ///< how far it has been dragged to
    std::optional<QLineF> m_fingers;  ///< between two fingers, as they lay last
    bool m_moving = false;            ///< it moves the page, so that letting go is no click
    std::vector<Page> m_pages;
    QPixmap m_canvas;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
