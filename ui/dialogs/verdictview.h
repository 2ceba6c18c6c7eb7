// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the judge says about the entry that is being typed, and the referee's word that lets it stand.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace setfolio {

class VerdictView : public QWidget {
    Q_OBJECT

public:
    explicit VerdictView(QWidget* parent = nullptr);

    /// Shows the sentences. When all of them may be overruled, a button offers the referee's word.
    void setFindings(const Findings& findings, const MatchState& state);

    /// Whether the entry may be recorded: nothing is against it, or the referee lets it stand and the reason is given.
    [[nodiscard]] bool mayRecord() const;
    /// The reason, when it is recorded on the referee's word.
    [[nodiscard]] std::optional<QString> overruled() const;

Q_SIGNALS:
    void changed();

private:
    void showSentences(const MatchState& state);
    void showReason();

    Findings m_findings;
    QLabel* m_sentences;
    QPushButton* m_letStand;
    QLineEdit* m_reason;
};

} // namespace setfolio
