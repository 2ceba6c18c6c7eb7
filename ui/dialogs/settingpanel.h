// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// One setting of an adapted rulebook: its control, the published value with a way back to it, and where it comes from.
#pragma once

#include "ui/dialogs/rulebookdraft.h"

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace setfolio {

class SettingEditor;

class SettingPanel : public QFrame {
    Q_OBJECT

public:
    /// Changes the draft, which must outlive it. Tab goes from `before` to the control of the setting.
    SettingPanel(RulebookDraft& draft, QWidget& before, QWidget* parent = nullptr);

    /// Shows a setting or a statement; what stood in the control and could not be used is dropped.
    void showSetting(const QString& key);
    /// Whether what stands in the control can be used.
    [[nodiscard]] bool isGood() const;
    /// Gives the keyboard to the control.
    void takeKeyboard();

Q_SIGNALS:
    /// The draft was changed.
    void changed();

private:
    void makeSource(QVBoxLayout& column);
    void makeEditor();
    void putBack();
    void showSource();

    RulebookDraft& m_draft;
    QWidget& m_before;
    QString m_key;
    QLabel* m_title;
    QVBoxLayout* m_place;
    SettingEditor* m_editor = nullptr;
    QLabel* m_published;
    QPushButton* m_putBack;
    QLabel* m_source;
    QPushButton* m_lookedUp;
    QLabel* m_noteLabel = nullptr;
    QLineEdit* m_note;
};

} // namespace setfolio
