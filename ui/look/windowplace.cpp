// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/look/windowplace.h"

#include <QEvent>
#include <QSettings>
#include <QWidget>

namespace setfolio {

namespace {

/// Writes down where its window is when that closes.
class PlaceKeeper : public QObject {
public:
    PlaceKeeper(QWidget& window, QString key) : QObject(&window), m_key(std::move(key)) {
        window.installEventFilter(this);
    }
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Close)
            QSettings().setValue(m_key, static_cast<QWidget*>(watched)->saveGeometry());
        return QObject::eventFilter(watched, event);
    }

private:
    QString m_key;
};

} // namespace

void keepPlace(QWidget& window, const QString& name) {
    const QString key = QStringLiteral("windows/") + name;
    if (!window.restoreGeometry(QSettings().value(key).toByteArray()))
        window.setWindowState(Qt::WindowMaximized);
    new PlaceKeeper(window, key);
}

} // namespace setfolio
