// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/signerpage.h"

#include "core/ledger/limits.h"
#include "core/match/signoff.h"
#include "ui/dialogs/pieces.h"
#include "ui/dialogs/verdictview.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/signoff/signaturepad.h"
#include "ui/signoff/wrappedlines.h"
#include "ui/wording/signoffwords.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

SignerPage::SignerPage(Recorder& recorder, std::optional<int> set, QWidget* parent)
    : QWidget(parent),
      m_recorder(recorder),
      m_set(set),
      m_signers(signatoriesOf(recorder.state().rulebook())),
      m_list(new QListWidget(this)),
      m_role(pieces::heading({}, 22)),
      m_name(pieces::lineEdit({}, limits::nameCharacters)),
      m_hows(new QButtonGroup(this)),
      m_pad(new SignaturePad(this)),
      m_lineLabel(new QLabel(this)),
      m_line(pieces::lineEdit({}, limits::textCharacters)),
      m_verdict(new VerdictView(this)) {
    m_list->setObjectName(u"signers"_s);
    m_list->setAccessibleName(tr("Who signs, in the rulebook's order"));
    m_list->setFixedWidth(300);
    wrapLines(*m_list);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(16);
    row->addWidget(m_list);
    row->addWidget(makeForm(), 1);
    connect(m_list, &QListWidget::currentRowChanged, this, &SignerPage::signerChanged);
    connect(m_hows, &QButtonGroup::idClicked, this, &SignerPage::howChanged);
    connect(m_pad, &SignaturePad::changed, this, &SignerPage::changed);
    connect(m_line, &QLineEdit::textChanged, this, &SignerPage::judge);
    connect(m_verdict, &VerdictView::changed, this, &SignerPage::changed);
    refresh();
}

QWidget* SignerPage::makeForm() {
    auto* form = new QWidget(this);
    auto* column = new QVBoxLayout(form);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->setSpacing(14);
    m_role->setObjectName(u"signerRole"_s);
    head->addWidget(m_role);
    head->addWidget(makeHows(), 1);
    column->addLayout(head);
    pieces::addField(*column, tr("Printed name"), *m_name, u"printedName"_s);
    column->addWidget(m_pad, 1);
    auto* clear = pieces::button(tr("Clear the signature"), u"clearSignature"_s);
    connect(clear, &QPushButton::clicked, m_pad, &SignaturePad::clear);
    m_lineLabel->setFont(windowFont(13, QFont::DemiBold));
    m_lineLabel->setTextFormat(Qt::PlainText);
    m_lineLabel->setBuddy(m_line);
    m_line->setObjectName(u"signerLine"_s);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(10);
    foot->addWidget(clear);
    foot->addWidget(m_lineLabel);
    foot->addWidget(m_line, 1);
    foot->addStretch();
    column->addLayout(foot);
    column->addWidget(m_verdict);
    return form;
}

QWidget* SignerPage::makeHows() {
    auto* hows = new QWidget(this);
    auto* row = new QHBoxLayout(hows);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    row->addStretch(1);
    const auto add = [&](How how, const QString& words, const QString& name) {
        QPushButton* button = pieces::button(words, name);
        button->setCheckable(true);
        m_hows->addButton(button, static_cast<int>(how));
        row->addWidget(button);
    };
    add(How::Signs, tr("Signs"), u"signs"_s);
    add(How::UnderProtest, tr("Signs under protest"), u"underProtest"_s);
    add(How::LeftUnsigned, tr("Left unsigned"), u"leftUnsigned"_s);
    return hows;
}

void SignerPage::refresh() {
    const std::vector<Signatory> due = signaturesDue(m_recorder.state(), m_set);
    const auto next = due.empty() ? m_signers.end() : std::ranges::find(m_signers, due.front());
    fillList(next == m_signers.end() ? m_current : static_cast<std::size_t>(next - m_signers.begin()));
    signerChanged();
}

void SignerPage::fillList(std::size_t current) {
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const Signatory& who : m_signers) {
        auto* item = new QListWidgetItem(stateWords(who), m_list);
        item->setFont(windowFont(16, QFont::DemiBold));
    }
    m_list->setCurrentRow(static_cast<int>(current));
}

/// "Scorer: signed", "SAL captain: still to sign".
QString SignerPage::stateWords(const Signatory& who) const {
    const MatchState& state = m_recorder.state();
    const SignOff* signOff = signOffOf(state, m_set);
    const QString role = signatoryWords(who, state.opened->teams);
    const auto given = [&]() -> const SignatureGiven* {
        if (!signOff)
            return nullptr;
        const auto found = std::ranges::find(signOff->signatures, who, &SignatureGiven::who);
        return found == signOff->signatures.end() ? nullptr : &*found;
    }();
    if (!given)
        return signerLine(role, SignerStands::ToSign);
    const Entry& entry = m_recorder.file().ledger().entries()[given->entry.value - 1].entry;
    const auto* with = std::get_if<Signed>(&entry);
    return signerLine(role, !with           ? SignerStands::LeftUnsigned
                            : with->protest ? SignerStands::SignedUnderProtest
                                            : SignerStands::HasSigned);
}

void SignerPage::signerChanged() {
    if (m_list->currentRow() < 0)
        return;
    m_current = static_cast<std::size_t>(m_list->currentRow());
    const MatchState& state = m_recorder.state();
    m_role->setText(signatoryWords(signer(), state.opened->teams));
    m_name->setText(printedNameOf(state.officials.officials, state.rosters, signer()));
    m_line->clear();
    m_hows->button(static_cast<int>(How::Signs))->setChecked(true);
    m_pad->clear();
    howChanged();
}

void SignerPage::howChanged() {
    const bool isLeft = how() == How::LeftUnsigned;
    m_pad->setEnabled(!isLeft);
    m_name->setEnabled(!isLeft);
    m_lineLabel->setText(isLeft ? tr("Why") : tr("Remark of the protest"));
    m_line->setAccessibleName(m_lineLabel->text());
    m_line->setPlaceholderText(isLeft ? tr("such as: agreed by word") : QString());
    const bool asked = how() != How::Signs;
    m_lineLabel->setVisible(asked);
    m_line->setVisible(asked);
    if (asked)
        m_line->setFocus(Qt::OtherFocusReason);
    judge();
}

void SignerPage::judge() {
    Findings findings = m_recorder.judge(drafted());
    // That the reason is still missing is seen: the field is empty.
    std::erase_if(findings, [](const Finding& finding) { return finding.kind == FindingKind::ReasonMissing; });
    m_verdict->setFindings(findings, m_recorder.state());
    m_verdict->setVisible(!findings.empty());
    Q_EMIT changed();
}

SignerPage::How SignerPage::how() const {
    return static_cast<How>(m_hows->checkedId());
}

Entry SignerPage::drafted() const {
    const QString line = m_line->text().simplified();
    if (how() == How::LeftUnsigned)
        return LeftUnsigned{m_set, signer(), line};
    const bool protest = how() == How::UnderProtest;
    return Signed{m_set, signer(), m_name->text().simplified(), m_pad->strokes(),
                  protest ? std::optional(line) : std::nullopt};
}

bool SignerPage::mayRecord() const {
    const bool whole = how() == How::LeftUnsigned ? !m_line->text().simplified().isEmpty() : !m_pad->isEmpty();
    return whole && m_verdict->mayRecord();
}

Outcome SignerPage::record() {
    const Entry entry = drafted();
    const std::optional<QString> word = m_verdict->overruled();
    return word ? m_recorder.overrule(entry, *word) : m_recorder.attempt(entry);
}

QString SignerPage::recordWords() const {
    return how() == How::LeftUnsigned ? tr("Leave unsigned") : tr("Record the signature");
}

} // namespace setfolio
