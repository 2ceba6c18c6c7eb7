// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/look/controls.h"

#include "core/record/shown.h"
#include "ui/look/appearance.h"
#include "ui/look/placeholders.h"
#include "ui/look/plate.h"

#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QScreen>
#include <QStyle>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

QString fieldStyle() {
    return u"QLineEdit, QComboBox, QTimeEdit, QDateEdit, QPlainTextEdit {"
           u" background: @button; color: @text; border: 1px solid @edge; border-radius: 7px; padding: 0 10px;"
           u" selection-background-color: @amber; selection-color: @onAmber; }"
           u"QLineEdit, QComboBox, QTimeEdit, QDateEdit { min-height: 42px; }"
           u"QLineEdit:focus, QComboBox:focus, QTimeEdit:focus, QDateEdit:focus, QPlainTextEdit:focus {"
           u" border: 2px solid @focus; padding: 0 9px; }"
           u"QLineEdit[problem=\"true\"] { border: 2px solid @problem; padding: 0 9px; }"
           u"QLineEdit:focus, QComboBox:focus, QTimeEdit:focus, QDateEdit:focus, QLineEdit[problem=\"true\"] {"
           u" min-height: 40px; }"
           u"QLineEdit[problem=\"true\"]:focus { border: 3px solid @problem; padding: 0 8px; min-height: 38px; }"
           u"QComboBox::drop-down, QDateEdit::drop-down { border: none; width: 34px; }"
           u"QComboBox QAbstractItemView { background: @button; color: @text; border: 1px solid @edge; }"
           u"QComboBox QAbstractItemView::item { min-height: 44px; }"_s;
}

QString buttonStyle() {
    return u"QPushButton { background: @button; color: @text; border: 1px solid @edge; border-radius: 7px;"
           u" min-height: 42px; padding: 0 16px; font-weight: 600; }"
           u"QPushButton:hover { background: @panel; }"
           u"QPushButton:pressed { background: @bar; }"
           u"QPushButton:checked { background: @text; color: @ground; border-color: @text; }"
           u"QPushButton[primary=\"true\"] { background: @amber; color: @onAmber; border-color: @onAmber; }"
           u"QPushButton[primary=\"true\"]:pressed { background: @pressedAmber; }"
           u"QPushButton:disabled { background: @ground; color: @secondary; border: 1px dashed @edge; }"
           u"QPushButton:focus { border: 3px solid @focus; padding: 0 14px; min-height: 38px; }"
           u"QPushButton[twoLine=\"true\"] { min-height: 58px; }"
           u"QPushButton[twoLine=\"true\"]:focus { min-height: 54px; }"
           u"QPushButton[chip=\"true\"] { padding: 0; min-width: 42px; }"
           u"QCheckBox, QRadioButton { min-height: 44px; spacing: 10px; }"
           u"QCheckBox::indicator { width: 22px; height: 22px; }"_s;
}

QString viewStyle() {
    return u"QWidget { color: @text; }"
           u"QDialog, QMainWindow, QWidget#page { background: @ground; }"
           u"QFrame#panel, QWidget#panel { background: @panel; border: 1px solid @rule; border-radius: 8px; }"
           u"QLabel[secondary=\"true\"] { color: @secondary; }"
           u"QLabel[problem=\"true\"] { color: @problem; }"
           u"QTableView, QListView, QScrollArea { background: @button; border: 1px solid @edge; border-radius: 7px;"
           u" gridline-color: @rule; selection-background-color: @amber; selection-color: @onAmber; }"
           u"QTableView:focus, QListView:focus { border: 2px solid @focus; }"
           u"QTextBrowser { background: @button; color: @text; border: 1px solid @edge; border-radius: 7px; padding: "
           u"8px;"
           u" selection-background-color: @amber; selection-color: @onAmber; }"
           u"QTextBrowser:focus { border: 2px solid @focus; padding: 7px; }"
           u"QMenu { background: @panel; color: @text; border: 1px solid @edge; }"
           u"QMenu::item { padding: 10px 24px; min-height: 24px; }"
           u"QMenu::item:selected { background: @amber; color: @onAmber; }"
           u"QScrollArea > QWidget > QWidget { background: transparent; }"
           u"QHeaderView, QTableCornerButton::section { background: @panel; border: none; }"
           u"QHeaderView::section { background: @panel; color: @secondary; border: none;"
           u" border-bottom: 1px solid @edge; padding: 0 8px; font-weight: 600; }"
           u"QFrame#place { background: @court; border: 1px solid @rule; border-radius: 6px; }"
           u"QLabel#net { background: @text; color: @panel; border-radius: 3px; }"
           u"QScrollArea[bare=\"true\"] { background: transparent; border: none; }"
           u"QScrollBar:vertical { background: transparent; width: 14px; margin: 0; }"
           u"QScrollBar:horizontal { background: transparent; height: 14px; margin: 0; }"
           u"QScrollBar::handle { background: @edge; border: 4px solid transparent; border-radius: 7px; }"
           u"QScrollBar::handle:vertical { min-height: 40px; } QScrollBar::handle:horizontal { min-width: 40px; }"
           u"QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }"
           u"QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }"
           u"QToolTip { background: @panel; color: @text; border: 1px solid @edge; }"_s;
}

/// Heights and widths of things with words in them grow with the words; lines and corners do not.
QString withLargerMeasures(const QString& style) {
    static const QRegularExpression measure(u"((?:min-height|min-width|height|width): )(\\d\\d)px"_s);
    QString larger;
    qsizetype done = 0;
    for (auto found = measure.globalMatch(style); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        larger += QStringView(style).mid(done, match.capturedStart() - done);
        larger += match.captured(1) + QString::number(scaled(match.captured(2).toInt())) + u"px"_s;
        done = match.capturedEnd();
    }
    larger += QStringView(style).mid(done);
    return larger;
}

/// Sets what the style sheet asks for.
void mark(QWidget& control, const char* property, bool marked) {
    if (control.property(property).toBool() == marked)
        return;
    const QFont font = control.font(); // polishing anew forgets a font that was inherited
    control.setProperty(property, marked);
    control.style()->unpolish(&control);
    control.style()->polish(&control);
    control.setFont(font);
}

} // namespace

void dress(QWidget& window) {
    const Theme theme = themeOf(window.palette());
    window.setFont(windowFont(15));
    window.setPalette(paletteOf(theme));
    window.setStyleSheet(controlStyle(theme));
    inkPlaceholders(window);
}

QString controlStyle(Theme theme) {
    const Colours& colours = coloursOf(theme);
    QString style = viewStyle() + fieldStyle() + buttonStyle();
    const std::pair<QLatin1String, QColor> names[] = {
        {"@amber"_L1, amber()},
        {"@onAmber"_L1, onAmber()},
        {"@pressedAmber"_L1, amber().darker(115)},
        {"@ground"_L1, colours.ground},
        {"@bar"_L1, colours.bar},
        {"@panel"_L1, colours.panel},
        {"@button"_L1, colours.button},
        {"@text"_L1, colours.text},
        {"@edge"_L1, colours.edge},
        {"@rule"_L1, colours.rule},
        {"@court"_L1, colours.court},
        {"@focus"_L1, colours.focus},
        {"@problem"_L1, colours.problem},
        {"@secondary"_L1, colours.secondary},
    };
    for (const auto& [name, colour] : names) {
        style.replace(name, colour.name());
    }
    return withLargerMeasures(style);
}

void giveRoom(QWidget& window, QSize wanted) {
    const QSize frame(8, 40); // that the desktop puts round it
    const QSize most = wanted.expandedTo(window.screen()->availableSize() - frame);
    window.resize(QSize(scaled(wanted.width()), scaled(wanted.height())).boundedTo(most));
}

QString asButtonWords(const QString& name) {
    return asShown(name).replace(u'&', u"&&"_s);
}

QString plainTip(const QString& text) {
    return u"<p style=\"white-space: pre\">%1</p>"_s.arg(asShown(text).toHtmlEscaped());
}

void showSentence(QLabel& label, const QString& sentence) {
    label.setMinimumWidth(1);
    label.setAccessibleName(sentence);
    label.setText(QString(sentence).replace(u'/', u"/\u200b"_s));
}

void makePrimary(QPushButton& button, bool primary) {
    mark(button, "primary", primary);
}

void setProblem(QWidget& control, bool problem) {
    mark(control, "problem", problem);
}

} // namespace setfolio
