// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Over the pages of the preview: which one is shown, and how large.
#pragma once

#include <QWidget>

class QBoxLayout;
class QLabel;
class QPushButton;

namespace setfolio {

class PageView;

class ViewBar : public QWidget {
    Q_OBJECT

public:
    explicit ViewBar(PageView& view, QWidget* parent = nullptr);

private:
    void addTurning(QBoxLayout& row);
    void addZoom(QBoxLayout& row);
    void addFits(QBoxLayout& row);
    void showWhere();

    PageView& m_view;
    QPushButton* m_whole = nullptr;
    QPushButton* m_wide = nullptr;
    QPushButton* m_back = nullptr;
    QPushButton* m_forward = nullptr;
    QLabel* m_scale = nullptr;
    QLabel* m_where = nullptr;
};

} // namespace setfolio
