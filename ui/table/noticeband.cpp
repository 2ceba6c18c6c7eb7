// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/noticeband.h"

#include "ui/look/controls.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

QString nameFor(BandKind kind) {
    switch (kind) {
    case BandKind::NotRecorded:
        return u"bandNotRecorded"_s;
    case BandKind::ReadOnly:
        return u"bandReadOnly"_s;
    case BandKind::TailSetAside:
        return u"bandTailSetAside"_s;
    }
    return {};
}

} // namespace

NoticeBand::NoticeBand(QWidget* parent) : QWidget(parent) {
    setObjectName(u"noticeBand"_s);
    m_column = new QVBoxLayout(this);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(2);
    hide();
}

void NoticeBand::setLook(const Look& look) {
    m_look = look;
    for (const Line& line : m_lines)
        dressLine(line);
}

void NoticeBand::tell(BandKind kind, const QString& sentence) {
    auto line = std::ranges::find(m_lines, kind, &Line::kind);
    if (line == m_lines.end())
        line = m_lines.insert(m_lines.end(), makeLine(kind));
    showSentence(*line->label, sentence);
    line->box->show();
    show();
}

QString NoticeBand::sentenceOf(BandKind kind) const {
    const auto line = std::ranges::find(m_lines, kind, &Line::kind);
    return line == m_lines.end() || line->box->isHidden() ? QString() : line->label->accessibleName();
}

NoticeBand::Line NoticeBand::makeLine(BandKind kind) {
    Line line{kind, new QWidget(this), nullptr, nullptr};
    line.box->setObjectName(nameFor(kind));
    line.box->setAttribute(Qt::WA_StyledBackground);
    line.label = new QLabel(line.box);
    line.label->setTextFormat(Qt::PlainText);
    line.label->setWordWrap(true);
    auto* row = new QHBoxLayout(line.box);
    row->setContentsMargins(14, 2, 6, 2);
    row->addWidget(line.label, 1);
    if (kind != BandKind::ReadOnly) {
        line.close = new QPushButton(Table::tr("Understood"), line.box);
        line.close->setObjectName(nameFor(kind) + u"Close"_s);
        line.close->setFocusPolicy(Qt::TabFocus);
        row->addWidget(line.close);
        connect(line.close, &QPushButton::clicked, this, [this, box = line.box] {
            box->hide();
            setVisible(std::ranges::any_of(m_lines, [](const Line& l) { return !l.box->isHidden(); }));
        });
    }
    m_column->addWidget(line.box);
    dressLine(line);
    return line;
}

void NoticeBand::dressLine(const Line& line) const {
    const bool alarm = line.kind == BandKind::NotRecorded;
    const QString ground = (alarm ? m_look.alarm : amber()).name();
    const QString ink = (alarm ? m_look.onAlarm : onAmber()).name();
    line.box->setStyleSheet(u"QWidget { background: %1; color: %2; }"
                            u"QPushButton { border: 1px solid %2; border-radius: 7px; min-height: 42px;"
                            u" padding: 0 14px; font-weight: 600; }"
                            u"QPushButton:focus { border: 3px solid %2; }"_s.arg(ground, ink));
    line.label->setFont(m_look.font(14, QFont::DemiBold));
    if (line.close)
        line.close->setFont(m_look.font(13.5, QFont::DemiBold));
}

} // namespace setfolio
