// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/settingpanel.h"

#include "ui/dialogs/pieces.h"
#include "ui/dialogs/settingeditor.h"
#include "ui/look/plate.h"
#include "ui/wording/fill.h"
#include "ui/wording/rulebooklabels.h"
#include "ui/wording/rulebookwords.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

/// The controls of an editor are made after all others, yet Tab shall come to them where they stand.
void tabThrough(const SettingEditor& editor, QWidget* before) {
    for (auto* control : editor.findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        if (control->focusPolicy() & Qt::TabFocus) {
            QWidget::setTabOrder(before, control);
            before = control;
        }
}

} // namespace

SettingPanel::SettingPanel(RulebookDraft& draft, QWidget& before, QWidget* parent)
    : QFrame(parent),
      m_draft(draft),
      m_before(before),
      m_title(pieces::heading({})),
      m_place(new QVBoxLayout),
      m_published(pieces::explanation({})),
      m_putBack(pieces::button(tr("Put back"), u"putBack"_s)),
      m_source(pieces::explanation({})),
      m_lookedUp(pieces::button(tr("Looked up: it is so"), u"lookedUp"_s)),
      m_note(pieces::lineEdit()) {
    setObjectName(u"panel"_s);
    m_title->setWordWrap(true);
    m_title->setObjectName(u"settingTitle"_s);
    m_published->setObjectName(u"publishedValue"_s);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->setSpacing(10);
    column->addWidget(m_title);
    column->addLayout(m_place);
    auto* back = new QHBoxLayout;
    back->setSpacing(12);
    back->addWidget(m_published, 1);
    back->addWidget(m_putBack);
    column->addLayout(back);
    makeSource(*column);
    column->addStretch();
    connect(m_putBack, &QPushButton::clicked, this, &SettingPanel::putBack);
}

void SettingPanel::showSetting(const QString& key) {
    m_key = key;
    m_title->setText(settingLabel(key));
    makeEditor();
    showSource();
}

bool SettingPanel::isGood() const {
    return !m_editor || m_editor->isGood();
}

void SettingPanel::takeKeyboard() {
    if (m_editor)
        m_editor->takeKeyboard();
}

void SettingPanel::makeSource(QVBoxLayout& column) {
    m_source->setObjectName(u"settingSource"_s);
    m_lookedUp->setCheckable(true);
    column.addWidget(m_source);
    column.addWidget(m_lookedUp, 0, Qt::AlignLeft);
    pieces::addField(column, tr("Where it comes from (may be empty)"), *m_note, u"note"_s);
    for (auto* label : findChildren<QLabel*>())
        if (label->buddy() == m_note)
            m_noteLabel = label;
    connect(m_note, &QLineEdit::textEdited, this, [this](const QString& note) {
        m_draft.setNote(m_key, note);
        Q_EMIT changed();
    });
    connect(m_lookedUp, &QPushButton::clicked, this, [this](bool lookedUp) {
        m_draft.setLookedUp(m_key, lookedUp);
        showSource();
        Q_EMIT changed();
    });
}

void SettingPanel::makeEditor() {
    delete m_editor;
    m_editor = nullptr;
    const Setting* setting = settingOf(m_key);
    if (!setting)
        return;
    m_editor = makeSettingEditor(*setting, m_draft.own());
    m_place->addWidget(m_editor);
    if (isVisible())
        m_editor->show(); // the layout would do so later, and a hidden control takes no keyboard
    tabThrough(*m_editor, &m_before);
    connect(m_editor, &SettingEditor::changed, this, [this](const QJsonValue& value) {
        if (m_draft.setValue(m_key, value)) {
            showSource();
            Q_EMIT changed();
        }
    });
    connect(m_editor, &SettingEditor::goodnessChanged, this, &SettingPanel::changed);
}

void SettingPanel::putBack() {
    m_draft.putBack(m_key);
    showSetting(m_key);
    takeKeyboard();
    Q_EMIT changed();
}

void SettingPanel::showSource() {
    const Source& source = m_draft.own().sources.value(m_key);
    const bool isSetting = settingOf(m_key) != nullptr;
    m_published->setText(tr("Published: %1").arg(valueWords(m_key, m_draft.published())));
    m_published->setVisible(isSetting);
    m_putBack->setVisible(isSetting);
    m_putBack->setEnabled(m_draft.differs(m_key));
    const QString open =
        source.open ? u' ' + tr("It differs between leagues or is not published: look it up before the season.")
                    : QString();
    const QString grade = gradeWords(source).isEmpty() ? QString() : u". "_s + gradeWords(source);
    m_source->setText(fill(tr("Source: %1"), {source.text}) + (grade.isEmpty() && !open.isEmpty() ? u"."_s : grade) +
                      open);
    const bool canBeLookedUp = m_draft.canBeLookedUp(m_key);
    m_lookedUp->setVisible(canBeLookedUp);
    m_lookedUp->setChecked(canBeLookedUp && !source.open);
    const bool hasNote = m_draft.differs(m_key) || (canBeLookedUp && !source.open);
    m_note->setVisible(hasNote);
    m_noteLabel->setVisible(hasNote);
    if (m_note->text().simplified() != m_draft.note(m_key))
        m_note->setText(m_draft.note(m_key));
}

} // namespace setfolio
