// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/help/helpdialog.h"

#include "ui/dialogs/pieces.h"
#include "ui/help/helptext.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"

#include <QHBoxLayout>
#include <QPageLayout>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QTextBrowser>
#include <QTextDocument>
#include <QVBoxLayout>

#include <memory>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QSize usual(940, 660);
constexpr double printedPoints = 7.5;
constexpr double margin = 12; ///< millimetres of the paper

} // namespace

HelpDialog::HelpDialog(QWidget* parent) : QDialog(parent), m_page(new QTextBrowser) {
    setObjectName(u"helpDialog"_s);
    setWindowTitle(tr("How things are entered"));
    dress(*this);
    m_page->setObjectName(u"helpPage"_s);
    m_page->setAccessibleName(windowTitle());
    m_page->setFont(windowFont(15));
    m_page->setHtml(helpPage());
    auto* print = pieces::button(tr("Print…"), u"print"_s);
    auto* close = pieces::button(tr("Close"), u"close"_s);
    makePrimary(*close);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(10);
    buttons->addStretch();
    buttons->addWidget(print);
    buttons->addWidget(close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 16);
    column->setSpacing(12);
    column->addWidget(m_page, 1);
    column->addLayout(buttons);
    connect(print, &QPushButton::clicked, this, &HelpDialog::askForPrinter);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    giveRoom(*this, usual);
    m_page->setFocus();
}

void HelpDialog::printOn(QPrinter& printer) const {
    printer.setPageMargins(QMarginsF(margin, margin, margin, margin), QPageLayout::Millimeter);
    const std::unique_ptr<QTextDocument> paper(m_page->document()->clone());
    QFont font = typeface(12);
    font.setPointSizeF(printedPoints);
    paper->setDefaultFont(font);
    paper->setDocumentMargin(0);
    paper->print(&printer);
}

void HelpDialog::askForPrinter() {
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(windowTitle());
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print"));
    if (dialog.exec() == QDialog::Accepted)
        printOn(printer);
}

} // namespace setfolio
