// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A wide button with a line of text and a second, smaller one under it.
#pragma once

#include <QPushButton>

namespace setfolio {

class TwoLineButton : public QPushButton {
    Q_OBJECT

public:
    TwoLineButton(const QString& title, const QString& detail, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setDetail(const QString& detail);
    /// A word at the right end, such as how many things need mending; empty for none.
    void setBadge(const QString& badge);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void describe();

    QString m_title;
    QString m_detail;
    QString m_badge;
};

} // namespace setfolio
