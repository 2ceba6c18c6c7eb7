// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A bar that opens over the middle of the deck and leaves the rest of the table in use: no dialog, nothing waits for
/// it.
#pragma once

#include "ui/table/look.h"

#include <QWidget>

class QHBoxLayout;
class QPushButton;
class QVBoxLayout;

namespace setfolio {

/// Title, rows of its own, a sentence, and the two buttons that Enter and Esc stand for.
class InlineBar : public QWidget {
    Q_OBJECT

public:
    explicit InlineBar(QWidget* parent = nullptr);

    virtual void setLook(const Look& look);
    /// How wide the bar may be, in pixels.
    virtual void setRoom(int /*width*/) {}
    [[nodiscard]] const Look& look() const { return m_look; }
    /// Closes without recording.
    void dismiss();

    [[nodiscard]] QString title() const { return m_title; }
    [[nodiscard]] QString sentence() const { return m_sentence; }

Q_SIGNALS:
    void closed();
    void grown(); ///< it needs another height

protected:
    enum class Tone : std::uint8_t { Plain, Told, Problem };

    void setTitle(const QString& title);
    void setSentence(const QString& sentence, Tone tone);
    void setRecordWords(const QString& words);
    /// Rows are inserted above the foot.
    void addRow(QHBoxLayout* row);
    void addRow(QWidget* row);
    virtual void recordPressed() = 0;

    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QHBoxLayout* makeFoot();
    [[nodiscard]] QFont sentenceFont(int size) const;
    void makeRoom();
    void paintSentence(QPainter& painter) const;

    Look m_look = Look::of(Theme::Light, 1);
    QString m_title;
    QString m_sentence;
    Tone m_tone = Tone::Plain;
    QVBoxLayout* m_column;
    QWidget* m_sentencePlace;
    QPushButton* m_record;
    QPushButton* m_close;
};

} // namespace setfolio
