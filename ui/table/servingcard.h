// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The largest words of the window: who serves now, and who serves if the rally is lost.
#pragma once

#include "ui/table/deckview.h"
#include "ui/table/look.h"

#include <QWidget>

namespace setfolio {

class ServingCard : public QWidget {
    Q_OBJECT

public:
    explicit ServingCard(QWidget* parent = nullptr);

    void setLook(const Look& look);
    /// `title` is the amber head's.
    void setView(const ServingView& view, const QString& title);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintServer(QPainter& painter) const;
    void paintNext(QPainter& painter) const;

    ServingView m_view;
    QString m_title;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
