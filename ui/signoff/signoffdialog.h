// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The sign-off of a set or of the match: the review for the referee, the signatures, the seal.
#pragma once

#include "core/record/signoffreview.h"
#include "ui/sheet/fonts.h"
#include "ui/table/recorder.h"

#include <QDialog>

class QLabel;
class QPushButton;
class QStackedWidget;

namespace setfolio {

class ReviewPage;
class SealPage;
class SignerPage;

/// Each signature is recorded as it is given, so that the dialog may be closed at any time and gone on with later. What
/// is sealed already is shown with its seal.
class SignOffDialog : public QDialog {
    Q_OBJECT

public:
    SignOffDialog(Recorder& recorder, std::optional<int> set, const SheetFonts& fonts, QWidget* parent = nullptr);

private:
    enum class Page : std::uint8_t { Review, Signers, Seal };

    void build();
    void turnTo(Page page);
    void goOn();
    void goBack();
    void recordSignature();
    void recordSeal();
    /// Says so if nothing was recorded; whether it was.
    bool settle(const Outcome& outcome);
    void showButtons();
    [[nodiscard]] QString nextWords() const;
    [[nodiscard]] Page page() const;
    [[nodiscard]] bool allAnswered() const;
    [[nodiscard]] bool sealed() const;
    void fillSeal();

    Recorder& m_recorder;
    std::optional<int> m_set;
    MatchRecord m_reviewed; ///< as it stood when the review was opened
    QStackedWidget* m_pages;
    ReviewPage* m_review;
    SignerPage* m_signers;
    SealPage* m_seal;
    QLabel* m_problem;
    QPushButton* m_later;
    QPushButton* m_back;
    QPushButton* m_next;
};

} // namespace setfolio
