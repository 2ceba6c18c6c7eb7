// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/print/viewbar.h"

#include "ui/dialogs/pieces.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/print/pageview.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int labelWidth = 76;

QPushButton* small(const QString& text, const QString& name, const QString& called) {
    auto* button = pieces::button(text, name);
    button->setProperty("chip", true);
    button->setFixedWidth(scaled(targetHeight));
    button->setAccessibleName(called);
    button->setToolTip(called);
    return button;
}

QLabel* figure(const QString& name) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setAlignment(Qt::AlignCenter);
    label->setMinimumWidth(scaled(labelWidth));
    return label;
}

} // namespace

ViewBar::ViewBar(PageView& view, QWidget* parent) : QWidget(parent), m_view(view) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    addTurning(*row);
    row->addStretch();
    addZoom(*row);
    addFits(*row);
    connect(&m_view, &PageView::changed, this, &ViewBar::showWhere);
}

void ViewBar::addTurning(QBoxLayout& row) {
    m_back = small(u"‹"_s, u"back"_s, tr("Page before"));
    m_forward = small(u"›"_s, u"forward"_s, tr("Next page"));
    m_where = figure(u"where"_s);
    for (QWidget* part : std::initializer_list<QWidget*>{m_back, m_where, m_forward})
        row.addWidget(part);
    connect(m_back, &QPushButton::clicked, this, [this] { m_view.setCurrent(m_view.current() - 1); });
    connect(m_forward, &QPushButton::clicked, this, [this] { m_view.setCurrent(m_view.current() + 1); });
}

void ViewBar::addZoom(QBoxLayout& row) {
    auto* smaller = small(u"−"_s, u"smaller"_s, tr("Smaller"));
    auto* larger = small(u"+"_s, u"larger"_s, tr("Larger"));
    m_scale = figure(u"scale"_s);
    for (QWidget* part : std::initializer_list<QWidget*>{smaller, m_scale, larger})
        row.addWidget(part);
    connect(smaller, &QPushButton::clicked, this, [this] { m_view.zoom(-1); });
    connect(larger, &QPushButton::clicked, this, [this] { m_view.zoom(1); });
}

void ViewBar::addFits(QBoxLayout& row) {
    m_whole = pieces::button(tr("Whole page"), u"wholePage"_s);
    m_wide = pieces::button(tr("Page width"), u"pageWidth"_s);
    for (QPushButton* button : {m_whole, m_wide}) {
        button->setCheckable(true);
        row.addWidget(button);
    }
    connect(m_whole, &QPushButton::clicked, this, [this] { m_view.setFit(PageView::Fit::WholePage); });
    connect(m_wide, &QPushButton::clicked, this, [this] { m_view.setFit(PageView::Fit::PageWidth); });
}

void ViewBar::showWhere() {
    const int count = static_cast<int>(m_view.pages().size());
    m_where->setText(tr("%1 of %2").arg(m_view.current() + 1).arg(count));
    m_back->setEnabled(m_view.current() > 0);
    m_forward->setEnabled(m_view.current() + 1 < count);
    m_scale->setText(tr("%1 %").arg(qRound(100 * m_view.scale())));
    m_whole->setChecked(m_view.fit() == PageView::Fit::WholePage);
    m_wide->setChecked(m_view.fit() == PageView::Fit::PageWidth);
}

} // namespace setfolio
