// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The line over the court, between the two scores: what to tell the second referee now, what was just recorded, or why
/// something was not.
#pragma once

#include "ui/table/look.h"

#include <QStringList>
#include <QWidget>

namespace setfolio {

struct StripView {
    QStringList points;      ///< "Set point SAL": beside everything else
    QStringList quietPoints; ///< likewise, where the rulebook does not have them told: only shown
    QString refused;         ///< why something cannot be recorded; comes before the rest
    QStringList told;        ///< sentences for the second referee, and what was recorded that needs her sign
    QString quiet;           ///< when there is nothing else to say
    bool operator==(const StripView&) const = default;
};

class NoticeStrip : public QWidget {
    Q_OBJECT

public:
    explicit NoticeStrip(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setView(const StripView& view);
    [[nodiscard]] const StripView& view() const { return m_view; }

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    /// Both return where what is to their left may end.
    double paintPoints(QPainter& painter) const;
    double paintPoint(QPainter& painter, const QString& point, bool told, double right) const;
    void paintSign(QPainter& painter, const QColor& ground, const QColor& ink) const;
    void paintRows(QPainter& painter, const QStringList& rows, const QColor& ink, double left, double right) const;

    StripView m_view;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
