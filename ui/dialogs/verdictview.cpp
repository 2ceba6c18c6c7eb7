// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/verdictview.h"

#include "ui/dialogs/pieces.h"
#include "ui/dialogs/rosterrows.h"
#include "ui/look/appearance.h"
#include "ui/look/plate.h"
#include "ui/wording/findingwords.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

VerdictView::VerdictView(QWidget* parent)
    : QWidget(parent),
      m_sentences(new QLabel),
      m_letStand(pieces::button(tr("Referee lets it stand"), u"letStand"_s)),
      m_reason(pieces::lineEdit(tr("for this reason"))) {
    m_sentences->setObjectName(u"sentences"_s);
    m_sentences->setProperty("problem", true);
    m_sentences->setFont(windowFont(14, QFont::Medium));
    m_sentences->setTextFormat(Qt::PlainText);
    m_sentences->setWordWrap(true);
    m_sentences->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_reason->setObjectName(u"reason"_s);
    m_reason->setAccessibleName(tr("Reason for which the referee lets it stand"));
    m_letStand->setCheckable(true);
    auto* word = new QHBoxLayout;
    word->setSpacing(8);
    word->addWidget(m_letStand);
    word->addWidget(m_reason, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* scroll = new QScrollArea;
    scroll->setProperty("bare", true);
    scroll->setMinimumHeight(scaled(54));
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(m_sentences);
    column->addWidget(scroll, 1);
    column->addLayout(word);
    connect(m_letStand, &QPushButton::toggled, this, &VerdictView::showReason);
    connect(m_reason, &QLineEdit::textChanged, this, &VerdictView::changed);
    setFindings({}, {});
}

void VerdictView::setFindings(const Findings& findings, const MatchState& state) {
    if (findings == m_findings && !findings.empty())
        return;
    m_findings = findings;
    m_letStand->setChecked(false); // the word was given about other findings
    m_letStand->setVisible(!findings.empty() && !isRefused(findings));
    showSentences(state);
    showReason();
}

bool VerdictView::mayRecord() const {
    return m_findings.empty() || overruled().has_value();
}

std::optional<QString> VerdictView::overruled() const {
    const QString reason = plainLine(m_reason->text());
    if (!m_letStand->isChecked() || reason.isEmpty())
        return std::nullopt;
    return reason;
}

void VerdictView::showSentences(const MatchState& state) {
    QStringList sentences;
    for (const Finding& finding : m_findings)
        sentences << sentence(finding, state);
    sentences.removeDuplicates();
    m_sentences->setText(sentences.join(u'\n'));
    if (!m_findings.empty()) {
        QAccessibleEvent alert(m_sentences, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
}

void VerdictView::showReason() {
    m_reason->setVisible(m_letStand->isChecked());
    if (m_letStand->isChecked())
        m_reason->setFocus();
    Q_EMIT changed();
}

} // namespace setfolio
