// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Menus, the ways to see the sheet, the match's name, and whether it is saved.
#pragma once

#include "ui/table/look.h"
#include "ui/table/sight.h"

#include <QList>
#include <QWidget>

class QHBoxLayout;
class QMenuBar;

namespace setfolio {

class KeyButton;

class TopBar : public QWidget {
    Q_OBJECT

public:
    explicit TopBar(QWidget* parent = nullptr);

    void setLook(const Look& look);
    /// The shorter one is shown where there is no room for the whole.
    void setTitle(const QString& title, const QString& shorter);
    /// `good`: everything recorded is on disk.
    void setSaved(const QString& words, bool good);
    void setSight(Sight sight);
    [[nodiscard]] QString savedWords() const { return m_saved; }
    [[nodiscard]] QMenuBar& menus() const { return *m_menus; }
    /// The buttons that choose what is seen of the sheet.
    [[nodiscard]] QList<KeyButton*> sights() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double paintSaved(QPainter& painter) const;

    QMenuBar* m_menus;
    KeyButton* m_liveBand;
    KeyButton* m_pageWidth;
    KeyButton* m_wholePage;
    KeyButton* m_smaller;
    KeyButton* m_larger;
    QHBoxLayout* m_row;
    std::array<QString, 2> m_titles;
    QString m_saved;
    bool m_good = true;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
