// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/tongue.h"

#include <QCoreApplication>
#include <QFile>
#include <QLibraryInfo>
#include <QSettings>
#include <QTranslator>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

const QString key = u"language"_s;

/// Takes a catalogue away, and puts another in its place if there is one.
void replace(QTranslator& translator, const QLocale& locale, const QString& name, const QString& folder) {
    QCoreApplication::removeTranslator(&translator);
    if (translator.load(locale, name, u"_"_s, folder))
        QCoreApplication::installTranslator(&translator);
}

} // namespace

std::vector<Language> languagesToChoose() {
    std::vector<Language> languages{Language::AsSystem, Language::English};
    for (const Language language : {Language::Spanish, Language::French})
        if (QFile::exists(u":/i18n/setfolio_"_s + codeOf(language) + u".qm"_s))
            languages.push_back(language);
    return languages.size() > 2 ? languages : std::vector<Language>();
}

Language chosenLanguage() {
    return languageOf(QSettings().value(key).toString());
}

void rememberLanguage(Language language) {
    QSettings().setValue(key, codeOf(language));
}

void speak(Language language) {
    static QTranslator ofQt;
    static QTranslator ours;
    const QLocale locale = localeFor(language, QLocale::system());
    QLocale::setDefault(locale);
    replace(ofQt, locale, u"qtbase"_s, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    replace(ours, locale, u"setfolio"_s, u":/i18n"_s);
    if (ours.isEmpty()) // the words are English then, and so are their plurals
        replace(ours, QLocale(QLocale::English), u"setfolio"_s, u":/i18n"_s);
}

} // namespace setfolio
