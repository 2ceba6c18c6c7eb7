// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/askbar.h"

#include "ui/look/controls.h"
#include "ui/look/plainfield.h"

#include <QHBoxLayout>
#include <QLineEdit>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int longestLine = 200;

} // namespace

AskBar::AskBar(QWidget* parent) : InlineBar(parent) {
    setObjectName(u"askBar"_s);
    m_line = new QLineEdit(this);
    m_line->setObjectName(u"askLine"_s);
    m_line->setMaxLength(longestLine);
    takePlainWords(*m_line);
    auto* row = new QHBoxLayout;
    row->addWidget(m_line);
    addRow(row);
}

void AskBar::setLook(const Look& look) {
    InlineBar::setLook(look);
    m_line->setStyleSheet(controlStyle(look.theme));
    m_line->setFont(look.font(15));
}

void AskBar::ask(const Question& question, std::function<void(const QString&)> answered) {
    m_answered = std::move(answered);
    m_mayBeEmpty = question.mayBeEmpty;
    setTitle(question.title);
    setSentence(question.sentence, question.warns ? Tone::Problem : Tone::Plain);
    setRecordWords(question.button);
    m_line->setText(question.line);
    m_line->setPlaceholderText(question.prompt);
    m_line->setAccessibleName(question.prompt);
    show();
    Q_EMIT grown();
    m_line->setFocus(Qt::ShortcutFocusReason);
}

void AskBar::recordPressed() {
    const QString line = m_line->text().simplified();
    if (line.isEmpty() && !m_mayBeEmpty) {
        m_line->setFocus(Qt::ShortcutFocusReason);
        return;
    }
    const auto answered = std::move(m_answered);
    dismiss();
    answered(line);
}

} // namespace setfolio
