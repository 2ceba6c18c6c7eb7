// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/look/placeholders.h"

#include "ui/look/colours.h"

#include <QEvent>
#include <QGuiApplication>
#include <QLineEdit>

namespace setfolio {

namespace {

void inkPlaceholder(QLineEdit& field) {
    QPalette palette = field.palette();
    const QColor ink = coloursOf(themeOf(QGuiApplication::palette())).secondary;
    if (palette.color(QPalette::PlaceholderText) == ink)
        return;
    palette.setColor(QPalette::PlaceholderText, ink);
    field.setPalette(palette);
}

/// Sees to the fields of a window: the style gives them a palette when they are shown, and with each change of theirs.
class FieldDresser : public QObject {
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        auto* field = qobject_cast<QLineEdit*>(watched);
        if (field && (event->type() == QEvent::PaletteChange || event->type() == QEvent::Show))
            inkPlaceholder(*field);
        if (!field && event->type() == QEvent::Show)
            for (auto* child : static_cast<QWidget*>(watched)->findChildren<QLineEdit*>()) {
                child->removeEventFilter(this);
                child->installEventFilter(this);
                inkPlaceholder(*child);
            }
        return QObject::eventFilter(watched, event);
    }
};

} // namespace

void inkPlaceholders(QWidget& window) {
    window.installEventFilter(new FieldDresser(&window));
}

} // namespace setfolio
