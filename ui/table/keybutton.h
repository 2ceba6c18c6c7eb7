// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A button that shows the key that does the same.
#pragma once

#include "ui/table/commands.h"
#include "ui/table/look.h"

#include <QAbstractButton>

namespace setfolio {

/// Words, a second line in smaller type, and a key cap. Space and the arrow keys belong to the rally wherever the focus
/// is, so a focused button is pressed with Enter.
class KeyButton : public QAbstractButton {
    Q_OBJECT

public:
    /// Takes its name, key and object name from the command.
    explicit KeyButton(TableCommand command, QWidget* parent = nullptr);

    [[nodiscard]] TableCommand command() const { return m_command; }
    void setLook(const Look& look);
    /// The words and the second line; an empty second line centres the words on the button.
    void setWords(const QString& words, const QString& second = {});
    /// Shows a sign alone, in the place of words and key cap; the words stay its name.
    void setSign(const QString& sign);
    /// Amber: the one thing to press now.
    void setPrimary(bool primary);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void setGround(QPainter& painter) const;
    [[nodiscard]] bool capStandsAbove() const;
    void paintWords(QPainter& painter, double capLeft) const;

    TableCommand m_command;
    QString m_cap;
    QString m_second;
    QString m_sign;
    Look m_look = Look::of(Theme::Light, 1);
    bool m_primary = false;
};

} // namespace setfolio
