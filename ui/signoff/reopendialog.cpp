// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/reopendialog.h"

#include "core/ledger/limits.h"
#include "core/match/signoff.h"
#include "ui/dialogs/pieces.h"
#include "ui/wording/signoffwords.h"

#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

ReopenDialog::ReopenDialog(const MatchState& state, std::optional<int> set, QWidget* parent)
    : FrameDialog(reopenWords(set), reopenMeans(set), reopenWords(set), parent),
      m_set(set),
      m_name(pieces::lineEdit({}, limits::nameCharacters)),
      m_reason(pieces::lineEdit({}, limits::textCharacters)) {
    setObjectName(u"reopen"_s);
    m_name->setText(printedNameOf(state.officials.officials, state.rosters, {Signer::FirstReferee, std::nullopt}));
    pieces::addField(*body(), tr("Who says so"), *m_name, u"reopenName"_s);
    pieces::addField(*body(), tr("Why"), *m_reason, u"reopenReason"_s);
    const auto allowOrNot = [this] {
        recordButton()->setEnabled(!m_name->text().simplified().isEmpty() && !m_reason->text().simplified().isEmpty());
    };
    connect(m_name, &QLineEdit::textChanged, this, allowOrNot);
    connect(m_reason, &QLineEdit::textChanged, this, allowOrNot);
    allowOrNot();
    setMinimumWidth(620);
    (m_name->text().isEmpty() ? m_name : m_reason)->setFocus(Qt::OtherFocusReason);
}

Reopened ReopenDialog::result() const {
    return {m_set, m_name->text().simplified(), m_reason->text().simplified()};
}

} // namespace setfolio
