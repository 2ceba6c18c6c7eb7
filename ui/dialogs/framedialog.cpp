// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/framedialog.h"

#include "ui/dialogs/pieces.h"
#include "ui/look/controls.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

FrameDialog::FrameDialog(const QString& title, const QString& lead, const QString& record, QWidget* parent)
    : QDialog(parent),
      m_lead(pieces::explanation(lead)),
      m_body(new QVBoxLayout),
      m_foot(new QHBoxLayout),
      m_record(pieces::button(record, u"record"_s)) {
    setWindowTitle(title);
    dress(*this);
    auto* cancel = pieces::button(tr("Cancel"), u"cancel"_s);
    makePrimary(*m_record);
    m_record->setDefault(true);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(10);
    buttons->addLayout(m_foot, 1);
    m_foot->addStretch(1);
    buttons->addWidget(cancel);
    buttons->addWidget(m_record);
    m_lead->setObjectName(u"lead"_s);
    m_lead->setVisible(!lead.isEmpty());
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 16);
    column->setSpacing(12);
    auto* head = new QVBoxLayout;
    head->setSpacing(3);
    head->addWidget(pieces::heading(title, 22));
    head->addWidget(m_lead);
    auto* content = new QVBoxLayout;
    content->setContentsMargins(0, 0, 0, 0);
    content->setSpacing(12);
    content->addLayout(head);
    content->addLayout(m_body, 1);
    pieces::addContent(*column, content);
    column->addLayout(buttons);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_record, &QPushButton::clicked, this, &QDialog::accept);
}

void FrameDialog::addToFoot(QWidget* widget, bool wide) {
    m_foot->insertWidget(m_foot->count() - 1, widget, wide ? 100 : 0);
}

void FrameDialog::setLead(const QString& lead) {
    m_lead->setText(lead);
    m_lead->setVisible(!lead.isEmpty());
}

} // namespace setfolio
