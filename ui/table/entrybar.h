// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A bar from whose rows an entry is made, judged while it is drafted, and recorded.
#pragma once

#include "ui/table/inlinebar.h"
#include "ui/table/recorder.h"

#include <vector>

class QLineEdit;

namespace setfolio {

class NumberPick;
class OptionPick;

/// What is not lawful is said before Enter; the referee's word, with its reason, lets it stand all the same. A letter
/// that belongs to an option chooses it, unless a line of text has the keyboard.
class EntryBar : public InlineBar {
    Q_OBJECT

public:
    explicit EntryBar(Recorder& recorder, QWidget* parent = nullptr);

Q_SIGNALS:
    /// While a correction is to be placed: what was drafted, to be looked at before it is recorded.
    void drawnUp(const setfolio::Entry& entry);

public:
    void setLook(const Look& look) override;
    void setRoom(int width) override;

protected:
    // Rows, from the top; call them from the constructor.
    [[nodiscard]] NumberPick* addNumbers(const QString& label, const QString& name, const QString& prefix);
    [[nodiscard]] OptionPick* addOptions(const QString& label, const QString& name);
    [[nodiscard]] QLineEdit* addLine(const QString& prompt, const QString& name);
    /// The last row: for the referee's word. `name` is the field's.
    void addReason(const QString& name);

    /// The entry as far as the rows give it; none while something is missing.
    [[nodiscard]] virtual std::optional<Entry> drafted() const = 0;
    /// Whether corrections are recorded by this very bar.
    [[nodiscard]] virtual bool corrects() const { return false; }
    /// What is missing, or what Enter will do.
    [[nodiscard]] virtual QString prompt() const = 0;
    /// What is to be said against the draft.
    [[nodiscard]] virtual Findings findings(const Entry& entry) const;
    /// What can be said already against a draft in which something is missing.
    [[nodiscard]] virtual Findings early() const { return {}; }
    /// Brings the keyboard to what is missing.
    virtual void goToMissing() = 0;
    virtual void settled(const Entry& entry);
    [[nodiscard]] virtual Outcome record(const Entry& entry, const QString& reason);

    /// Says what is to be said about the draft as it is now.
    void showDraft();
    void recordPressed() override;
    void askForReason(bool ask);
    /// Shows the bar anew.
    void present(QWidget* first);
    void setShown(QWidget* row, bool shown);

    [[nodiscard]] Recorder& recorder() const { return m_recorder; }
    [[nodiscard]] const MatchState& state() const { return m_recorder.state(); }
    [[nodiscard]] QString inWords(const Findings& findings) const;

    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] bool isOptionKey(const QKeyEvent& event) const;
    bool pressOption(const QKeyEvent& event);
    bool typeDigit(QKeyEvent& event);
    void settle(const Entry& entry, const Outcome& outcome);

    Recorder& m_recorder;
    std::vector<NumberPick*> m_numbers;
    std::vector<OptionPick*> m_options;
    std::vector<QLineEdit*> m_lines;
    QLineEdit* m_reason = nullptr;
};

} // namespace setfolio
