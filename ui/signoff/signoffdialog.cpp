// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/signoffdialog.h"

#include "core/match/signoff.h"
#include "ui/dialogs/pieces.h"
#include "ui/look/controls.h"
#include "ui/sheet/sealmark.h"
#include "ui/signoff/reviewpage.h"
#include "ui/signoff/sealpage.h"
#include "ui/signoff/signerpage.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/findingwords.h"
#include "ui/wording/signoffwords.h"
#include "ui/wording/tablewords.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QStackedWidget>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QSize drawnFor(1240, 640);

SignOffReview reviewOf(const Recorder& recorder, std::optional<int> set) {
    return reviewFor(recorder.file().ledger().entries(), recorder.file().record(), set);
}

} // namespace

SignOffDialog::SignOffDialog(Recorder& recorder, std::optional<int> set, const SheetFonts& fonts, QWidget* parent)
    : QDialog(parent),
      m_recorder(recorder),
      m_set(set),
      m_reviewed(recorder.file().record()),
      m_pages(new QStackedWidget(this)),
      m_review(new ReviewPage(reviewOf(recorder, set), m_reviewed, recorder.state(), fonts)),
      m_signers(new SignerPage(recorder, set)),
      m_seal(new SealPage),
      m_problem(pieces::explanation({})),
      m_later(pieces::button({}, u"later"_s)),
      m_back(pieces::button(tr("Back"), u"back"_s)),
      m_next(pieces::button({}, u"next"_s)) {
    setObjectName(u"signOff"_s);
    setWindowTitle(signOffTitle(set));
    dress(*this);
    build();
    connect(m_signers, &SignerPage::changed, this, &SignOffDialog::showButtons);
    connect(m_later, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_back, &QPushButton::clicked, this, &SignOffDialog::goBack);
    connect(m_next, &QPushButton::clicked, this, &SignOffDialog::goOn);
    resize(drawnFor);
    turnTo(Page::Review);
}

void SignOffDialog::build() {
    makePrimary(*m_next);
    m_next->setDefault(true);
    m_problem->setProperty("problem", true);
    m_problem->setObjectName(u"problem"_s);
    m_problem->hide();
    for (QWidget* page :
         {static_cast<QWidget*>(m_review), static_cast<QWidget*>(m_signers), static_cast<QWidget*>(m_seal)})
        m_pages->addWidget(page);
    auto* foot = new QHBoxLayout;
    foot->setSpacing(10);
    foot->addWidget(m_later);
    foot->addWidget(m_problem, 1);
    foot->addStretch();
    foot->addWidget(m_back);
    foot->addWidget(m_next);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(18, 14, 18, 14);
    column->setSpacing(12);
    column->addWidget(pieces::heading(windowTitle(), 22));
    auto* pages = new QVBoxLayout;
    pages->setContentsMargins(0, 0, 0, 0);
    pages->addWidget(m_pages);
    pieces::addContent(*column, pages);
    column->addLayout(foot);
}

void SignOffDialog::turnTo(Page page) {
    if (page == Page::Seal)
        fillSeal();
    m_problem->hide();
    m_pages->setCurrentIndex(static_cast<int>(page));
    showButtons();
    if (page == Page::Review)
        m_review->list().setFocus(Qt::OtherFocusReason);
    else
        m_next->setFocus(Qt::OtherFocusReason);
}

void SignOffDialog::goOn() {
    switch (page()) {
    case Page::Review:
        return turnTo(allAnswered() ? Page::Seal : Page::Signers);
    case Page::Signers:
        return recordSignature();
    case Page::Seal:
        return sealed() ? accept() : recordSeal();
    }
}

void SignOffDialog::goBack() {
    turnTo(page() == Page::Seal && !sealed() ? Page::Signers : Page::Review);
}

void SignOffDialog::recordSignature() {
    if (!m_signers->mayRecord() || !settle(m_signers->record()))
        return;
    m_signers->refresh();
    turnTo(allAnswered() ? Page::Seal : Page::Signers);
}

void SignOffDialog::recordSeal() {
    if (settle(m_recorder.attempt(Sealed{m_set, {}, SealOf::ThisFile})))
        turnTo(Page::Seal);
}

bool SignOffDialog::settle(const Outcome& outcome) {
    QStringList why;
    if (const auto* objected = std::get_if<Objected>(&outcome))
        for (const Finding& finding : objected->findings)
            why += sentence(finding, m_recorder.state());
    if (const auto* failed = std::get_if<Failed>(&outcome))
        why += notRecorded(sentence(failed->error));
    m_problem->setText(why.join(u' '));
    m_problem->setVisible(!why.isEmpty());
    return std::holds_alternative<Acknowledged>(outcome);
}

void SignOffDialog::showButtons() {
    m_later->setText(sealed() ? tr("Close") : tr("Later"));
    m_later->setVisible(page() != Page::Seal || !sealed());
    m_back->setVisible(page() != Page::Review);
    m_next->setText(nextWords());
    m_next->setEnabled(page() != Page::Signers || m_signers->mayRecord());
}

QString SignOffDialog::nextWords() const {
    switch (page()) {
    case Page::Review:
        return sealed() ? tr("Show the seal") : allAnswered() ? tr("To the seal") : tr("To the signatures");
    case Page::Signers:
        return m_signers->recordWords();
    case Page::Seal:
        return sealed() ? tr("Done") : sealWords(m_set);
    }
    Q_UNREACHABLE();
}

SignOffDialog::Page SignOffDialog::page() const {
    return static_cast<Page>(m_pages->currentIndex());
}

bool SignOffDialog::sealed() const {
    return isSealed(m_recorder.state(), m_set);
}

bool SignOffDialog::allAnswered() const {
    return sealed() || signaturesDue(m_recorder.state(), m_set).empty();
}

void SignOffDialog::fillSeal() {
    const MatchRecord& record = m_recorder.file().record();
    std::vector<SignOffRecord> own;
    std::ranges::copy_if(record.signOffs, std::back_inserter(own),
                         [&](const SignOffRecord& signOff) { return signOff.set == m_set; });
    const SignOffRecord* seal = sheet::sealIn(own);
    if (!seal)
        seal = sheet::sealIn(record.signOffs); // the match's covers each set
    if (!sealed() || !seal)
        return m_seal->showBefore(m_set);
    PerTeam<int> result = record.heading.setsWon;
    for (const SetRecord& set : record.sets)
        if (seal->set == set.number && !set.cancelled)
            result = set.score;
    m_seal->showSealed(record.heading, *seal, result);
}

} // namespace setfolio
