// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/sealpage.h"

#include "core/record/sealtext.h"
#include "ui/dialogs/pieces.h"
#include "ui/look/colours.h"
#include "ui/look/plate.h"
#include "ui/sheet/sealmark.h"
#include "ui/wording/signoffwords.h"

#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace setfolio {

namespace {

constexpr int quietZone = 4; ///< in squares, on each side: ISO/IEC 18004
constexpr int qrSide = 280;  ///< in pixels

} // namespace

QrView::QrView(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("sealQr"));
    setFixedSize(qrSide, qrSide);
}

void QrView::setText(const QString& text) {
    m_dark = sheet::qrSquares(text);
    setAccessibleName(tr("QR code: %1").arg(text));
    update();
}

/// Whole pixels a square, so that a phone reads it off the screen.
void QrView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), Qt::white);
    if (m_dark.empty())
        return;
    const int squares = static_cast<int>(m_dark.size());
    const int size = std::max(1, std::min(width(), height()) / (squares + 2 * quietZone));
    const QPoint corner((width() - size * squares) / 2, (height() - size * squares) / 2);
    for (int row = 0; row < squares; ++row)
        for (int column = 0; column < squares; ++column)
            if (m_dark[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)])
                painter.fillRect(QRect(corner + QPoint(column, row) * size, QSize(size, size)), Qt::black);
}

SealPage::SealPage(QWidget* parent)
    : QWidget(parent),
      m_sentence(pieces::heading({}, 20)),
      m_code(pieces::heading({}, 34)),
      m_qr(new QrView(this)) {
    m_sentence->setObjectName(QStringLiteral("sealSentence"));
    m_sentence->setWordWrap(true);
    m_sentence->setAlignment(Qt::AlignHCenter);
    m_code->setObjectName(QStringLiteral("sealCode"));
    m_code->setAlignment(Qt::AlignHCenter);
    m_code->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(18);
    column->addStretch(1);
    column->addWidget(m_sentence);
    column->addWidget(m_code);
    column->addWidget(m_qr, 0, Qt::AlignHCenter);
    column->addStretch(1);
}

void SealPage::showBefore(std::optional<int> set) {
    m_sentence->setText(beforeSeal(set));
    m_code->hide();
    m_qr->hide();
}

void SealPage::showSealed(const MatchHeading& heading, const SignOffRecord& signOff, const PerTeam<int>& result) {
    m_sentence->setText(underSeal(signOff.set));
    m_code->setText(sealCode(signOff.seal->digest));
    m_code->show();
    m_qr->setText(sealText(heading, signOff, result));
    m_qr->show();
}

} // namespace setfolio
