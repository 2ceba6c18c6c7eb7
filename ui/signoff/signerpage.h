// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// One signature after another: who, how, the printed name, and the pad.
#pragma once

#include "ui/table/recorder.h"

#include <QWidget>

#include <vector>

class QButtonGroup;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QListWidget;

namespace setfolio {

class SignaturePad;
class VerdictView;

class SignerPage : public QWidget {
    Q_OBJECT

public:
    /// For a set, or for the match where there is none.
    SignerPage(Recorder& recorder, std::optional<int> set, QWidget* parent = nullptr);

    /// Goes to whoever is next by the rulebook, if anybody is due; the lists show what is recorded.
    void refresh();
    /// Whether what is on the page can be recorded.
    [[nodiscard]] bool mayRecord() const;
    /// Records it; on the referee's word where that is given.
    Outcome record();
    /// What recording will do: "Record the signature".
    [[nodiscard]] QString recordWords() const;

    [[nodiscard]] SignaturePad& pad() const { return *m_pad; }

Q_SIGNALS:
    void changed();

private:
    enum class How : std::uint8_t { Signs, UnderProtest, LeftUnsigned };

    [[nodiscard]] QWidget* makeForm();
    [[nodiscard]] QWidget* makeHows();
    void fillList(std::size_t current);
    void signerChanged();
    void howChanged();
    void judge();
    [[nodiscard]] How how() const;
    [[nodiscard]] Entry drafted() const;
    [[nodiscard]] const Signatory& signer() const { return m_signers[m_current]; }
    [[nodiscard]] QString stateWords(const Signatory& who) const;

    Recorder& m_recorder;
    std::optional<int> m_set;
    std::vector<Signatory> m_signers;
    std::size_t m_current = 0;
    QListWidget* m_list;
    QLabel* m_role;
    QLineEdit* m_name;
    QButtonGroup* m_hows;
    SignaturePad* m_pad;
    QLabel* m_lineLabel;
    QLineEdit* m_line; ///< the protest's remark, or why it is left unsigned
    VerdictView* m_verdict;
};

} // namespace setfolio
