// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Rows of an inline bar in which something is picked: a shirt number, or one of a few possibilities.
#pragma once

#include "core/match/ids.h"
#include "ui/table/look.h"

#include <QAbstractButton>
#include <QWidget>

#include <optional>
#include <vector>

class QGridLayout;
class QLabel;

namespace setfolio {

class NumberButton;
class NumberField;

/// A number to be tapped, with a small word under it.
struct OfferedNumber {
    ShirtNumber number;
    QString word{};
};

/// How many of something, to be tapped: none up to a handful, and all of them.
[[nodiscard]] std::vector<OfferedNumber> countsUpTo(int most);

/// A label, a field for a number, and the numbers to tap beside it.
class NumberPick : public QWidget {
    Q_OBJECT

public:
    /// The field is named `name`, the buttons `prefix` and their number.
    NumberPick(const QString& label, const QString& name, const QString& prefix, QWidget* parent = nullptr);

    void setLook(const Look& look);
    /// How wide the row may be, in pixels: the numbers stand in as many rows as that needs.
    void setRoom(int width);
    void setLabel(const QString& label);
    void offer(std::vector<OfferedNumber> numbers);
    [[nodiscard]] std::optional<ShirtNumber> number() const;
    /// The number in the field, or the one proposed while it is empty.
    [[nodiscard]] std::optional<ShirtNumber> numberOrProposed() const;
    /// Sets the number without a signal.
    void setNumber(std::optional<ShirtNumber> number);
    /// Proposes one without a signal, or takes the proposal back.
    void propose(std::optional<ShirtNumber> number);
    [[nodiscard]] NumberField& field() const { return *m_field; }

Q_SIGNALS:
    void changed();

private:
    void rebuild();
    void showChosen();

    QString m_prefix;
    QLabel* m_label;
    NumberField* m_field;
    QGridLayout* m_grid;
    std::vector<OfferedNumber> m_offered;
    std::vector<NumberButton*> m_buttons;
    int m_columns = 8;
    Look m_look = Look::of(Theme::Light, 1);
};

/// A possibility, and the key that chooses it while its bar is open.
struct Option {
    QString words;
    QString second{}; ///< a second line in smaller type
    Qt::Key key = Qt::Key_unknown;
};

class OptionButton;

/// A few possibilities side by side, of which one is chosen, or none.
class OptionPick : public QWidget {
    Q_OBJECT

public:
    /// The buttons are named `name` and their index.
    OptionPick(const QString& label, const QString& name, QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setRoom(int width);
    void offer(std::vector<Option> options);
    [[nodiscard]] int chosen() const { return m_chosen; } ///< the index, -1 for none
    /// Chooses without a signal.
    void choose(int index);
    /// A chosen one may be given up by pressing it again.
    void setMayBeNone(bool mayBeNone) { m_mayBeNone = mayBeNone; }
    /// Chooses the option of that key; false if none has it.
    bool press(int key);
    [[nodiscard]] bool hasKey(int key) const;

Q_SIGNALS:
    void changed();

private:
    void rebuild();
    void pressed(int index);

    QString m_name;
    QLabel* m_label;
    QGridLayout* m_grid;
    std::vector<Option> m_options;
    std::vector<OptionButton*> m_buttons;
    int m_chosen = -1;
    int m_room = 500;
    bool m_mayBeNone = false;
    Look m_look = Look::of(Theme::Light, 1);
};

/// Words, perhaps a second line, and a key cap. Pressed with Enter when it has the focus.
class OptionButton : public QAbstractButton {
    Q_OBJECT

public:
    OptionButton(const Option& option, const Look& look, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_second;
    QString m_cap;
    Look m_look;
};

} // namespace setfolio
