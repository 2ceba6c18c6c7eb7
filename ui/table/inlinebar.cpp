// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/inlinebar.h"

#include "ui/look/controls.h"
#include "ui/table/draw.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <QtMath>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr double titleHeight = 26;
constexpr int largest = 13;  ///< pixels of the sentence at scale 1
constexpr int smallest = 12; ///< those of a long one

/// The part of a sentence's place that its words may fill.
QRectF roomIn(const QRectF& place, const Look& look) {
    return place.adjusted(look.px(7), look.px(3), -look.px(5), -look.px(2));
}

double heightOf(const QString& sentence, const QFont& font, double width) {
    return QFontMetricsF(font).boundingRect(QRectF(0, 0, width, 1), Qt::TextWordWrap, sentence).height();
}

/// Tells when it has another width: then the sentence may need another height.
class SentencePlace : public QWidget {
public:
    SentencePlace(std::function<void()> resized, QWidget* parent) : QWidget(parent), m_resized(std::move(resized)) {}

protected:
    void resizeEvent(QResizeEvent*) override { m_resized(); }

private:
    std::function<void()> m_resized;
};

} // namespace

InlineBar::InlineBar(QWidget* parent) : QWidget(parent) {
    m_column = new QVBoxLayout(this);
    m_column->addLayout(makeFoot());
    setFocusPolicy(Qt::ClickFocus); // a tap on one of its buttons leaves the keyboard here
    hide();
}

QHBoxLayout* InlineBar::makeFoot() {
    m_sentencePlace = new SentencePlace([this] { makeRoom(); }, this);
    m_sentencePlace->setObjectName(u"barSentence"_s);
    m_sentencePlace->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_record = new QPushButton(this);
    m_record->setObjectName(u"barRecord"_s);
    m_record->setFocusPolicy(Qt::TabFocus);
    makePrimary(*m_record);
    connect(m_record, &QPushButton::clicked, this, [this] { recordPressed(); });
    m_close = new QPushButton(Table::tr("Close  Esc"), this);
    m_close->setObjectName(u"barClose"_s);
    m_close->setFocusPolicy(Qt::TabFocus);
    connect(m_close, &QPushButton::clicked, this, &InlineBar::dismiss);
    setRecordWords(Table::tr("Record"));
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_sentencePlace, 1);
    foot->addWidget(m_record);
    foot->addWidget(m_close);
    return foot;
}

void InlineBar::setLook(const Look& look) {
    m_look = look;
    m_column->setContentsMargins(look.whole(10), look.whole(titleHeight + 6), look.whole(10), look.whole(8));
    m_column->setSpacing(look.whole(5));
    const QString style = controlStyle(look.theme) + u"QPushButton { padding: 0 10px; }"_s;
    for (QPushButton* button : {m_record, m_close}) {
        button->setStyleSheet(style);
        button->setFont(look.font(13.5, QFont::DemiBold));
    }
    update();
}

void InlineBar::dismiss() {
    if (isHidden())
        return;
    hide();
    Q_EMIT closed();
}

void InlineBar::setTitle(const QString& title) {
    m_title = title;
    setAccessibleName(title);
    update();
}

void InlineBar::setSentence(const QString& sentence, Tone tone) {
    m_sentence = sentence;
    m_tone = tone;
    setAccessibleDescription(sentence);
    makeRoom();
    update();
}

QFont InlineBar::sentenceFont(int size) const {
    return m_look.font(size, m_tone == Tone::Told ? QFont::Bold : QFont::DemiBold);
}

/// A sentence in more lines than there is room for beside the buttons makes the bar higher.
void InlineBar::makeRoom() {
    const QRectF place = m_sentencePlace->rect();
    const double width = roomIn(place, m_look).width();
    if (width <= 0)
        return;
    const double beside = place.height() - roomIn(place, m_look).height();
    const int needed = m_sentence.isEmpty() ? 0 : qCeil(heightOf(m_sentence, sentenceFont(smallest), width) + beside);
    if (needed == m_sentencePlace->minimumHeight())
        return;
    m_sentencePlace->setMinimumHeight(needed);
    Q_EMIT grown();
}

void InlineBar::setRecordWords(const QString& words) {
    m_record->setText(words + u"  "_s + Table::tr("Enter"));
}

void InlineBar::addRow(QHBoxLayout* row) {
    m_column->insertLayout(m_column->count() - 1, row);
}

void InlineBar::addRow(QWidget* row) {
    m_column->insertWidget(m_column->count() - 1, row);
}

bool InlineBar::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        event->setAccepted(key == Qt::Key_Escape || key == Qt::Key_Return || key == Qt::Key_Enter);
        return true;
    }
    return QWidget::event(event);
}

void InlineBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        dismiss();
    else if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter)
        QWidget::keyPressEvent(event);
    else if (!event->isAutoRepeat())
        recordPressed();
}

void InlineBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_look.colours.text, m_look.px(2)));
    painter.setBrush(m_look.colours.panel);
    painter.fillRect(rect(), m_look.colours.ground);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), m_look.px(8), m_look.px(8));
    draw::text(painter, {m_look.px(12), m_look.px(titleHeight / 2 + 4)}, m_title, m_look.font(14, QFont::Bold),
               m_look.colours.text, draw::From::Left, width() - m_look.px(24));
    paintSentence(painter);
}

void InlineBar::paintSentence(QPainter& painter) const {
    if (m_sentence.isEmpty())
        return;
    const QRectF place = m_sentencePlace->geometry();
    const bool told = m_tone == Tone::Told;
    const bool problem = m_tone == Tone::Problem;
    if (told || problem) {
        painter.setPen(QPen(told ? onAmber() : m_look.colours.problem, m_look.px(told ? 1 : 2)));
        painter.setBrush(told ? QBrush(amber()) : QBrush(Qt::NoBrush));
        painter.drawRoundedRect(place.adjusted(1, 1, -1, -1), m_look.px(5), m_look.px(5));
    }
    const QColor ink = told ? onAmber() : problem ? m_look.colours.text : m_look.colours.secondary;
    const QRectF room = roomIn(place, m_look);
    const bool isLong = heightOf(m_sentence, sentenceFont(largest), room.width()) > room.height();
    painter.setFont(sentenceFont(isLong ? smallest : largest));
    painter.setPen(ink);
    painter.drawText(room, static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter) | static_cast<int>(Qt::TextWordWrap),
                     m_sentence);
}

} // namespace setfolio
