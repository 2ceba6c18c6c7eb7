// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A whole number within a range, typed or stepped to by buttons and by the Up and Down keys; some may be absent.
#pragma once

#include "ui/dialogs/settingeditor.h"

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace setfolio {

class NumberStepper : public SettingEditor {
    Q_OBJECT

public:
    struct Kind {
        QString key; ///< the setting's, for what its absence means and whether it counts seconds
        int lowest;
        int highest;
        bool mayBeAbsent;
    };
    NumberStepper(Kind kind, const QJsonValue& value, QWidget* parent = nullptr);

    [[nodiscard]] bool isGood() const override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QString rangeWords() const;
    [[nodiscard]] QPushButton* stepButton(const QString& sign, const QString& name, int by);
    void makeAbsence();
    void step(int by);
    void setAbsent(bool absent);
    void review();

    Kind m_kind;
    QLineEdit* m_field;
    QPushButton* m_less;
    QPushButton* m_more;
    QPushButton* m_absence = nullptr;
    QLabel* m_range;
    int m_last; ///< the last good number
};

} // namespace setfolio
