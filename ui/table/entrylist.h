// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The last entries, the newest on top: as many as there is room for.
#pragma once

#include "ui/table/look.h"
#include "ui/wording/entrylog.h"

#include <QWidget>

namespace setfolio {

/// A line as it is shown: the team by its code.
struct ShownEntry {
    EntryNumber number;
    QString rally;
    QString code;
    QString words;
    bool struck = false;
    bool operator==(const ShownEntry&) const = default;
};

/// The newest lines of the log, newest first, at most `most`.
[[nodiscard]] std::vector<ShownEntry> newestOf(const EntryLog& log, const MatchState& state, std::size_t most);

class EntryList : public QWidget {
    Q_OBJECT

public:
    explicit EntryList(QWidget* parent = nullptr);

    void setLook(const Look& look);
    void setEntries(std::vector<ShownEntry> entries);
    [[nodiscard]] const std::vector<ShownEntry>& entries() const { return m_entries; }

    [[nodiscard]] QSize minimumSizeHint() const override;
    /// The middle of a line, in this widget, counted from the newest, 0.
    [[nodiscard]] double middleOf(std::size_t line) const;

Q_SIGNALS:
    void entryPressed(setfolio::EntryNumber entry);

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] bool hasHead() const;
    void paintEntry(QPainter& painter, const ShownEntry& entry, double middle, bool newest) const;

    std::vector<ShownEntry> m_entries;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
