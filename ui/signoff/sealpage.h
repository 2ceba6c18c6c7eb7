// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the seal does, and once it is made its code and the QR code as they are printed.
#pragma once

#include "core/record/record.h"

#include <QWidget>

class QLabel;

namespace setfolio {

/// A QR code in dark squares on white, with the quiet zone that a reader needs.
class QrView : public QWidget {
    Q_OBJECT

public:
    explicit QrView(QWidget* parent = nullptr);
    void setText(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<std::vector<bool>> m_dark;
};

class SealPage : public QWidget {
    Q_OBJECT

public:
    explicit SealPage(QWidget* parent = nullptr);

    void showBefore(std::optional<int> set);
    /// The seal must be in the sign-off; `result` is that of the set, or the sets of the match.
    void showSealed(const MatchHeading& heading, const SignOffRecord& signOff, const PerTeam<int>& result);

private:
    QLabel* m_sentence;
    QLabel* m_code;
    QrView* m_qr;
};

} // namespace setfolio
