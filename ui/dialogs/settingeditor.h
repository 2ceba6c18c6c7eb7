// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The control that a setting of a rulebook is changed by: each kind of value has one that fits it.
#pragma once

#include "core/rules/rulebooksettings.h"

#include <QJsonValue>
#include <QWidget>

namespace setfolio {

class SettingEditor : public QWidget {
    Q_OBJECT

public:
    /// Whether what stands in it can be the setting's value.
    [[nodiscard]] virtual bool isGood() const { return true; }
    /// Gives the keyboard to the control within it that is used first.
    void takeKeyboard();

Q_SIGNALS:
    /// The new value as it stands in the file; only values that the setting can have.
    void changed(const QJsonValue& value);
    /// What stands in it became, or is no longer, such a value.
    void goodnessChanged();

protected:
    using QWidget::QWidget;
    void setFirst(QWidget* first) { m_first = first; }

private:
    QWidget* m_first = nullptr; ///< no focus proxy, as Tab would skip what stands before it
};

/// Shows the rulebook's value of that setting. Never null.
[[nodiscard]] SettingEditor* makeSettingEditor(const Setting& setting, const Rulebook& rulebook);

} // namespace setfolio
