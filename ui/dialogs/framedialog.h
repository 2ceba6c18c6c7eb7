// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the dialogs have in common: a heading, a body, and at the foot the way out and the one button that records.
#pragma once

#include <QDialog>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace setfolio {

class FrameDialog : public QDialog {
    Q_OBJECT

protected:
    /// `record` is what the amber button says. Enter presses it, Escape cancels.
    FrameDialog(const QString& title, const QString& lead, const QString& record, QWidget* parent);

    [[nodiscard]] QVBoxLayout* body() const { return m_body; }
    /// Puts a word about what is still missing, or a button of the dialog's own, at the left of the foot.
    void addToFoot(QWidget* widget, bool wide = false);
    [[nodiscard]] QPushButton* recordButton() const { return m_record; }
    void setLead(const QString& lead);

private:
    QLabel* m_lead;
    QVBoxLayout* m_body;
    QHBoxLayout* m_foot;
    QPushButton* m_record;
};

} // namespace setfolio
