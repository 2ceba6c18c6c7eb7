// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the tests of the front desk do with its windows and dialogs.
#pragma once

#include "ui/dialogs/newmatchdialog.h"
#include "ui/dialogs/startpage.h"
#include "ui/table/clock.h"
#include "ui/table/tablewindow.h"

#include <QApplication>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTest>
#include <QTimer>

namespace setfolio::testing {

inline Clock stoppedClock() {
    return {[] { return QDateTime(QDate(2026, 10, 14), QTime(22, 0), Qt::UTC); }, [] { return QTime(18, 0); }};
}

inline std::vector<TableWindow*> tables() {
    std::vector<TableWindow*> found;
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* table = qobject_cast<TableWindow*>(widget); table && table->isVisible())
            found.push_back(table);
    return found;
}

/// Answers the next message box by the button of that role, and keeps what it said.
class Answering : public QObject {
public:
    explicit Answering(QMessageBox::ButtonRole role) : m_role(role) {
        connect(&m_timer, &QTimer::timeout, this, &Answering::answer);
        m_timer.start(20);
    }
    [[nodiscard]] QString said() const { return m_said; }
    [[nodiscard]] Qt::TextFormat format() const { return m_format; }
    [[nodiscard]] QMessageBox::Icon icon() const { return m_icon; }

private:
    void answer() {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        if (!box)
            return;
        m_said = box->text();
        m_format = box->textFormat();
        m_icon = box->icon();
        for (QAbstractButton* button : box->buttons())
            if (box->buttonRole(button) == m_role)
                button->click();
    }
    QTimer m_timer;
    QMessageBox::ButtonRole m_role;
    QString m_said;
    Qt::TextFormat m_format = Qt::AutoText;
    QMessageBox::Icon m_icon = QMessageBox::NoIcon;
};

/// Works the next dialog of its kind that opens, once.
template <typename Dialog = NewMatchDialog>
class Working : public QObject {
public:
    explicit Working(std::function<void(Dialog&)> work) : m_work(std::move(work)) {
        connect(&m_timer, &QTimer::timeout, this, &Working::begin);
        m_timer.start(20);
    }
    [[nodiscard]] bool isDone() const { return !m_timer.isActive(); }

private:
    void begin() {
        auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
        if (!dialog)
            return;
        m_timer.stop();
        m_work(*dialog);
    }
    QTimer m_timer;
    std::function<void(Dialog&)> m_work;
};

inline StartPage* startPage() {
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* page = qobject_cast<StartPage*>(widget); page && page->isVisible())
            return page;
    qFatal("no start page");
}

/// Types a team's name on its page, from the first page on.
inline void typeNames(NewMatchDialog& dialog) {
    for (const char* name : {"Saltmarsh Herons", "Quarry Ridge Larks"}) {
        QTest::mouseClick(dialog.findChild<QPushButton*>(QStringLiteral("next")), Qt::LeftButton);
        QTest::keyClicks(dialog.focusWidget(), QLatin1String(name));
    }
}

} // namespace setfolio::testing
