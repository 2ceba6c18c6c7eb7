// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The small pieces that the dialogs are put together from.
#pragma once

#include "core/match/ids.h"

#include <QLabel>
#include <QLineEdit>
#include <QString>
#include <QWidget>

class QBoxLayout;
class QFrame;
class QLayout;
class QPushButton;

namespace setfolio::pieces {

[[nodiscard]] QLabel* heading(const QString& text, int pixels = 17);
/// A sentence that explains; it wraps.
[[nodiscard]] QLabel* explanation(const QString& text);
/// A label over its field, and the field named by it for those who hear the screen. `name` is the field's objectName.
void addField(QBoxLayout& layout, const QString& label, QWidget& field, const QString& name);
[[nodiscard]] QLineEdit* lineEdit(const QString& placeholder = {}, int longest = 120);
[[nodiscard]] QPushButton* button(const QString& text, const QString& name);
/// A button that stays pressed in until it is pressed again.
[[nodiscard]] QPushButton* toggle(const QString& text, const QString& name);
/// Gives a window its content; where words are larger than usual, one that scrolls when the window is too small for it.
void fillWith(QWidget& window, QLayout* content);
/// The same for a part of a window that takes the room that is left.
void addContent(QBoxLayout& column, QLayout* content);
/// A group of things that belong together, with the panel's ground.
[[nodiscard]] QFrame* panel();

/// One line that is shortened in its middle when there is no room for it; whole in its tooltip.
class PathLabel : public QLabel {
    Q_OBJECT

public:
    explicit PathLabel(QWidget* parent = nullptr);
    void setPath(const QString& words);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QString m_words;
};

/// A team's plate: solid for the home team, outlined for the visitors.
class Plate : public QWidget {
    Q_OBJECT

public:
    Plate(Team team, const QString& code, QWidget* parent = nullptr);
    void setCode(const QString& code);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Team m_team;
    QString m_code;
};

} // namespace setfolio::pieces
