// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Bands over the sheet for what concerns the file: not recorded, read-only, a tail set aside. None goes away by
/// itself.
#pragma once

#include "ui/table/look.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace setfolio {

enum class BandKind : std::uint8_t { NotRecorded, ReadOnly, TailSetAside };

class NoticeBand : public QWidget {
    Q_OBJECT

public:
    explicit NoticeBand(QWidget* parent = nullptr);

    void setLook(const Look& look);
    /// Shows a sentence; a second one of the same kind takes the place of the first.
    void tell(BandKind kind, const QString& sentence);
    [[nodiscard]] QString sentenceOf(BandKind kind) const; ///< empty when it is not shown

private:
    struct Line {
        BandKind kind;
        QWidget* box;
        QLabel* label;
        QPushButton* close; ///< none for what lasts as long as the window
    };
    [[nodiscard]] Line makeLine(BandKind kind);
    void dressLine(const Line& line) const;

    QVBoxLayout* m_column;
    std::vector<Line> m_lines;
    Look m_look = Look::of(Theme::Light, 1);
};

} // namespace setfolio
