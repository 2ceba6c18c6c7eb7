// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/officialsdialog.h"

#include "ui/dialogs/officialspage.h"

#include <QVBoxLayout>

namespace setfolio {

OfficialsDialog::OfficialsDialog(const MatchState& state, QWidget* parent)
    : FrameDialog(tr("Officials"), tr("They take the place of those named before."), tr("Record the officials"),
                  parent),
      m_page(new OfficialsPage(state.officials.officials)) {
    body()->addWidget(m_page, 1);
    resize(720, 560);
    m_page->setFocus();
}

Officials OfficialsDialog::result() const {
    return {m_page->officials()};
}

} // namespace setfolio
