// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/wornwindow.h"

#include "ui/table/tablewindow.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTest>
#include <QTranslator>

using namespace Qt::Literals::StringLiterals;

namespace setfolio::testing {

namespace {

const QSize aroundTheWindow(0, 72); ///< a panel of the desktop and a title bar

void put(QTranslator& translator, const QString& name, const QString& folder) {
    QCoreApplication::removeTranslator(&translator);
    if (!translator.load(name, folder))
        qFatal("no catalogue %s in %s", qPrintable(name), qPrintable(folder));
    QCoreApplication::installTranslator(&translator);
}

QList<QRect> placesIn(const QWidget& window) {
    QList<QRect> places{window.geometry()};
    for (const auto* child : window.findChildren<QWidget*>())
        places << child->geometry();
    return places;
}

/// Waits until what is laid out anew has come to rest.
void settle(QWidget& window) {
    constexpr int most = 50;
    QList<QRect> before;
    for (int waited = 0; waited < most && before != placesIn(window); ++waited) {
        before = placesIn(window);
        QTest::qWait(10);
        QCoreApplication::sendPostedEvents();
    }
}

} // namespace

QString nameOfLook(LookChoice look) {
    switch (look) {
    case LookChoice::AsSystem:
        return u"system"_s;
    case LookChoice::Light:
        return u"light"_s;
    case LookChoice::Dark:
        return u"dark"_s;
    case LookChoice::HighContrast:
        return u"high-contrast"_s;
    }
    return {};
}

QString nameOf(const Worn& worn) {
    return u"%1 %2 %3x%4"_s.arg(codeOf(worn.language), nameOfLook(worn.look))
        .arg(worn.screen.width())
        .arg(worn.screen.height());
}

void speak(Language language) {
    static QTranslator ofQt;
    static QTranslator ours;
    const QString catalogues = QStringLiteral(SETFOLIO_CATALOGUES);
    put(ours, u"setfolio_"_s + codeOf(language), catalogues);
    if (language == Language::English)
        QCoreApplication::removeTranslator(&ofQt);
    else
        put(ofQt, u"qtbase_"_s + codeOf(language), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    QLocale::setDefault(localeFor(language, QLocale(QLocale::English, QLocale::UnitedStates)));
}

ShownWindow show(const WindowScene& scene, const Worn& worn) {
    speak(worn.language);
    setProgramLook(worn.look);
    setProgramTextSize(100);
    const ShownWindow shown = scene.show();
    if (qobject_cast<TableWindow*>(shown.window))
        shown.window->resize(worn.screen - aroundTheWindow);
    settle(*shown.window);
    return shown;
}

void undress() {
    speak(Language::English);
    QLocale::setDefault(QLocale::c());
    setProgramLook(LookChoice::AsSystem);
}

} // namespace setfolio::testing
