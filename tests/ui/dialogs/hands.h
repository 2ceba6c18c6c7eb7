// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a person at the table does: presses keys, taps the screen, pastes, and chooses files.
#pragma once

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QPointer>
#include <QTest>
#include <QTimer>

namespace setfolio::testing {

/// A key goes to what has the keyboard.
inline void pressIn(QWidget& window, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QWidget* focus = window.focusWidget();
    QTest::keyClick(focus ? focus : &window, key, modifiers);
}

/// Tab until the child of that name has the keyboard; false if it never gets it.
[[nodiscard]] inline bool tabTo(QWidget& window, const QString& name) {
    for (int pressed = 0; pressed < 60; ++pressed) {
        if (window.focusWidget() && window.focusWidget()->objectName() == name)
            return true;
        pressIn(window, Qt::Key_Tab);
    }
    return false;
}

/// A finger, in the middle of the widget unless said otherwise. It must be within 800 x 800 pixels, the screen that Qt
/// makes up for tests.
inline void tap(QWidget& widget, QPoint place = {}) {
    static QPointingDevice* const screen = QTest::createTouchDevice();
    const QPoint at = place.isNull() ? widget.rect().center() : place;
    QTest::touchEvent(&widget, screen).press(0, at, &widget);
    QTest::touchEvent(&widget, screen).release(0, at, &widget);
}

inline void putOnClipboard(const QString& text) {
    QApplication::clipboard()->setText(text);
}

inline void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.flush())
        qFatal("%s cannot be written", qPrintable(path));
}

/// Chooses a path in the next file dialog; an empty one cancels it. Qt's own dialog, as the desktop's is out of reach.
class ChoosingFile : public QObject {
public:
    explicit ChoosingFile(const QString& path) : m_path(path) {
        QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
        connect(&m_timer, &QTimer::timeout, this, &ChoosingFile::choose);
        m_timer.start(20);
    }
    [[nodiscard]] bool hasChosen() const { return m_chosen; }
    /// What the dialog proposed.
    [[nodiscard]] QString proposed() const { return m_proposed; }

private:
    void choose() {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        if (!dialog || m_chosen)
            return;
        m_chosen = true;
        m_proposed = dialog->selectedFiles().value(0);
        if (m_path.isEmpty())
            return dialog->reject();
        auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        name->setText(m_path);
        QTest::keyClick(name, Qt::Key_Return);
    }

    QTimer m_timer;
    QString m_path;
    QString m_proposed;
    bool m_chosen = false;
};

} // namespace setfolio::testing
