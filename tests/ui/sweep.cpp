// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/sweep.h"

#include "tests/ui/drawnwords.h"
#include "ui/dialogs/numberchips.h"
#include "ui/dialogs/twolinebutton.h"
#include "ui/print/pageview.h"
#include "ui/signoff/sheetpane.h"
#include "ui/table/keybutton.h"
#include "ui/table/sheetview.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QButtonGroup>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSet>
#include <QTest>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio::testing {

namespace {

constexpr int fieldPadding = 10; ///< at each side of the text in a field
constexpr int dropDownWidth = 34;

template <typename... Kinds>
bool isOneOf(const QWidget* widget) {
    return ((qobject_cast<const Kinds*>(widget) != nullptr) || ...);
}

bool isPartOfAnother(const QWidget* widget) {
    const QWidget* parent = widget->parentWidget();
    return widget->objectName().startsWith(u"qt_"_s) || isOneOf<QHeaderView>(widget) ||
           qstrcmp(widget->metaObject()->className(), "QTableCornerButton") == 0 ||
           isOneOf<QComboBox, QAbstractSpinBox>(parent);
}

QString wordFor(const QWidget* widget) {
    return u"%1 “%2” %3x%4"_s.arg(QLatin1String(widget->metaObject()->className()), widget->objectName())
        .arg(widget->width())
        .arg(widget->height());
}

template <typename Child>
std::vector<Child*> visibleIn(QWidget& window) {
    std::vector<Child*> found;
    for (auto* child : window.findChildren<Child*>())
        if (child->isVisible() && child->window() == &window)
            found.push_back(child);
    return found;
}

/// Its number is typed into the field that has the keyboard.
bool standsForTyping(const QWidget* control) {
    for (const QWidget* widget = control->parentWidget(); widget; widget = widget->parentWidget())
        if (isOneOf<NumberChips>(widget))
            return true;
    return false;
}

bool showsKey(const QWidget* control) {
    const auto* button = qobject_cast<const KeyButton*>(control);
    return button && !button->accessibleDescription().isEmpty();
}

/// The arrow keys come to it from another button of its group.
bool isBesideOneOf(const QSet<QWidget*>& reached, const QWidget* control) {
    const auto* button = qobject_cast<const QAbstractButton*>(control);
    if (!button || !button->group() || !button->group()->exclusive())
        return false;
    return std::ranges::any_of(button->group()->buttons(),
                               [&](QAbstractButton* other) { return reached.contains(other); });
}

QSet<QWidget*> reachedByTab(QWidget& window) {
    QSet<QWidget*> reached;
    const std::size_t most = 2 * window.findChildren<QWidget*>().size();
    for (std::size_t pressed = 0; pressed < most; ++pressed) {
        QWidget* focus = window.focusWidget();
        QTest::keyClick(focus ? focus : &window, Qt::Key_Tab);
        if (window.focusWidget())
            reached.insert(window.focusWidget());
    }
    return reached;
}

QString cutIn(const QLabel& label) {
    if (label.text().isEmpty())
        return {};
    const bool cut = label.wordWrap() ? label.heightForWidth(label.width()) > label.height() ||
                                            label.minimumSizeHint().width() > label.width()
                                      : label.sizeHint().width() > label.width();
    return cut ? wordFor(&label) + u": "_s + label.text() : QString();
}

QString cutIn(const QPushButton& button) {
    if (button.text().isEmpty() || isOneOf<TwoLineButton>(&button) || button.sizeHint().width() <= button.width())
        return {};
    return wordFor(&button) + u": "_s + button.text();
}

QString cutIn(const QLineEdit& field) {
    const QString& text = field.text().isEmpty() ? field.placeholderText() : field.text();
    const bool isPart = isPartOfAnother(&field); // it begins within the other's padding
    const int room = field.width() - (isPart ? 4 : 2 * (fieldPadding + 2));
    return field.fontMetrics().horizontalAdvance(text) > room ? wordFor(&field) + u": "_s + text : QString();
}

QString cutIn(const QComboBox& choice) {
    const int room = choice.width() - dropDownWidth - 2 * fieldPadding;
    return choice.fontMetrics().horizontalAdvance(choice.currentText()) > room
               ? wordFor(&choice) + u": "_s + choice.currentText()
               : QString();
}

/// The heads of a table's columns.
QStringList cutIn(const QHeaderView& heads) {
    constexpr int beside = 16; // the padding of the style
    QStringList cut;
    for (int column = 0; heads.orientation() == Qt::Horizontal && column < heads.count(); ++column) {
        const QString text = heads.model()->headerData(column, Qt::Horizontal).toString();
        if (heads.fontMetrics().horizontalAdvance(text) + beside > heads.sectionSize(column))
            cut << u"head of a column %1: %2"_s.arg(heads.sectionSize(column)).arg(text);
    }
    return cut;
}

std::vector<const QWidget*> controlsIn(const QWidget& widget) {
    std::vector<const QWidget*> controls;
    for (const auto* child : widget.findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
        if (child->isVisible() && isOneOf<QAbstractButton, QLineEdit, QComboBox, QAbstractSpinBox>(child))
            controls.push_back(child);
    return controls;
}

/// Where the capitals of drawn words are, about.
QRectF coreOf(const DrawnWords& words) {
    return words.place.adjusted(1, words.place.height() * 0.3, -1, -words.place.height() * 0.25);
}

/// Whether drawn words run into other ones, or lie under a control.
bool isCovered(const DrawnWords& words, const std::vector<DrawnWords>& all, const QWidget& widget) {
    const QRectF core = coreOf(words);
    if (core.isEmpty() || words.text.trimmed().isEmpty())
        return false;
    for (const DrawnWords& other : all)
        if (&other != &words && !other.text.trimmed().isEmpty() && coreOf(other).intersects(core))
            return true;
    return std::ranges::any_of(controlsIn(widget),
                               [&](const QWidget* control) { return QRectF(control->geometry()).intersects(core); });
}

/// Whether drawn words stand partly out of the place that was left for them.
bool isSpilt(const DrawnWords& words, const QWidget& widget) {
    const auto* place = widget.findChild<QWidget*>(u"barSentence"_s, Qt::FindDirectChildrenOnly);
    const QRectF core = coreOf(words);
    return place && core.intersects(QRectF(place->geometry())) &&
           !QRectF(place->geometry()).adjusted(2, 2, -2, -2).contains(core);
}

/// What a widget that draws its own words has shortened, drawn beyond its edge or over one another.
QStringList cutInDrawingOf(QWidget& widget) {
    QStringList cut;
    const auto* button = qobject_cast<QAbstractButton*>(&widget);
    const QString whole = widget.accessibleName() + (button ? button->text() : QString());
    const std::vector<DrawnWords> all = wordsDrawnBy(widget);
    for (const DrawnWords& words : all) {
        const bool shortened = words.text.endsWith(u'…') && !whole.contains(words.text);
        const bool beyond = !QRectF(widget.rect()).adjusted(-1, -1, 1, 1).contains(coreOf(words));
        if (shortened || beyond || isSpilt(words, widget) || isCovered(words, all, widget))
            cut << wordFor(&widget) + u": "_s + words.text;
    }
    return cut;
}

bool drawsItsOwn(const QWidget* widget) {
    return QByteArrayView(widget->metaObject()->className()).startsWith("setfolio::") &&
           !isOneOf<QLineEdit, QComboBox, QAbstractSpinBox, QAbstractItemView, QAbstractScrollArea>(widget) &&
           !isOneOf<SheetView, SheetPane, PageCanvas>(widget); // the sheet has tests of its own
}

void addSmall(QStringList& small, const QString& words, QSize size, int smallest) {
    if (std::min(size.width(), size.height()) < smallest)
        small << u"in a menu: %1 %2x%3"_s.arg(words).arg(size.width()).arg(size.height());
}

template <typename Child>
void addCut(QStringList& cut, QWidget& window) {
    for (const Child* child : visibleIn<Child>(window))
        if (const QString complaint = cutIn(*child); !complaint.isEmpty())
            cut << complaint;
}

} // namespace

std::vector<QWidget*> controlsOf(QWidget& window) {
    std::vector<QWidget*> controls = visibleIn<QWidget>(window);
    std::erase_if(controls, [](const QWidget* widget) {
        return isPartOfAnother(widget) ||
               !isOneOf<QAbstractButton, QLineEdit, QComboBox, QAbstractSpinBox, QAbstractItemView>(widget);
    });
    return controls;
}

QStringList unnamedControls(QWidget& window) {
    QStringList unnamed;
    for (QWidget* control : controlsOf(window)) {
        const QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(control);
        if (!heard || heard->text(QAccessible::Name).trimmed().isEmpty())
            unnamed << wordFor(control);
    }
    return unnamed;
}

QStringList smallControls(QWidget& window, int smallest) {
    QStringList small;
    for (const QWidget* control : controlsOf(window))
        if (std::min(control->width(), control->height()) < smallest)
            small << wordFor(control);
    for (const QMenuBar* bar : visibleIn<QMenuBar>(window))
        for (QAction* menu : bar->actions())
            addSmall(small, menu->text(), bar->actionGeometry(menu).size(), smallest);
    for (QMenu* menu : window.findChildren<QMenu*>())
        for (QAction* item : menu->actions())
            if (!item->isSeparator())
                addSmall(small, item->text(), menu->actionGeometry(item).size(), smallest);
    for (const QComboBox* choice : visibleIn<QComboBox>(window))
        if (choice->count() > 0 && choice->view()->sizeHintForRow(0) < smallest)
            small << u"rows of "_s + wordFor(choice) + u": %1"_s.arg(choice->view()->sizeHintForRow(0));
    return small;
}

QStringList unreachedControls(QWidget& window) {
    QStringList unreached;
    const QSet<QWidget*> reached = reachedByTab(window);
    for (QWidget* control : controlsOf(window))
        if (control->isEnabled() && !reached.contains(control) && !showsKey(control) && !standsForTyping(control) &&
            !isBesideOneOf(reached, control))
            unreached << wordFor(control);
    return unreached;
}

QStringList overlappingControls(QWidget& window) {
    QStringList overlapping;
    const std::vector<QWidget*> controls = controlsOf(window);
    for (auto one = controls.begin(); one != controls.end(); ++one)
        for (auto other = std::next(one); other != controls.end(); ++other)
            if ((*one)->parentWidget() == (*other)->parentWidget() &&
                (*one)->geometry().intersects((*other)->geometry()))
                overlapping << u"one over the other: %1, %2"_s.arg(wordFor(*one), wordFor(*other));
    return overlapping;
}

QStringList controlsOutOfReach(QWidget& window) {
    QStringList lost;
    for (QWidget* control : controlsOf(window)) {
        QRect place = control->rect();
        QWidget* inside = control;
        bool reached = true;
        while (inside != &window) {
            QWidget* parent = inside->parentWidget();
            place.translate(inside->pos());
            auto* scroll = parent->parentWidget() ? qobject_cast<QScrollArea*>(parent->parentWidget()) : nullptr;
            if (scroll && parent == scroll->viewport()) { // how far it is scrolled does not matter
                reached = reached && inside->rect().contains(place.translated(-inside->pos()));
                place = scroll->rect();
                parent = scroll;
            }
            inside = parent;
        }
        if (!reached || !window.rect().contains(place))
            lost << u"out of reach: "_s + wordFor(control);
    }
    return lost;
}

QStringList cutWords(QWidget& window) {
    QStringList cut;
    addCut<QLabel>(cut, window);
    addCut<QPushButton>(cut, window);
    addCut<QLineEdit>(cut, window);
    addCut<QComboBox>(cut, window);
    for (const QHeaderView* heads : visibleIn<QHeaderView>(window))
        cut += cutIn(*heads);
    for (QWidget* widget : visibleIn<QWidget>(window))
        if (drawsItsOwn(widget))
            cut += cutInDrawingOf(*widget);
    return cut;
}

} // namespace setfolio::testing
