// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/languages.h"

#include <QCoreApplication>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

} // namespace

QString nameOf(Language language) {
    switch (language) {
    case Language::AsSystem:
        return Table::tr("Language of the system");
    case Language::English:
        return u"English"_s;
    case Language::Spanish:
        return u"Español"_s;
    case Language::French:
        return u"Français"_s;
    }
    return {};
}

QString codeOf(Language language) {
    switch (language) {
    case Language::AsSystem:
        return {};
    case Language::English:
        return u"en"_s;
    case Language::Spanish:
        return u"es"_s;
    case Language::French:
        return u"fr"_s;
    }
    return {};
}

Language languageOf(const QString& code) {
    for (const Language language : allLanguages)
        if (codeOf(language) == code)
            return language;
    return Language::AsSystem;
}

QLocale localeFor(Language language, const QLocale& system) {
    if (language == Language::AsSystem)
        return system;
    const QLocale::Language spoken = QLocale(codeOf(language)).language();
    return spoken == system.language() ? system : QLocale(spoken, system.territory());
}

} // namespace setfolio
