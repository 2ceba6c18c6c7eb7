// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/print/printchoices.h"

#include <QSettings>
#include <QStringList>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

const QString paperKey = u"print/paper"_s;
const QString inksKey = u"print/inks"_s;
const QString formKey = u"print/pdf"_s;

// In the order of the values they stand for.
const QStringList paperNames{u"letter"_s, u"a4"_s};
const QStringList formNames{u"archive"_s, u"plain"_s};

/// The place of a setting among the known names; -1 if it is not there.
int placeIn(const QStringList& names, const QString& key) {
    return static_cast<int>(names.indexOf(QSettings().value(key).toString()));
}

} // namespace

PrintChoices rememberedChoices() {
    PrintChoices choices;
    if (const int paper = placeIn(paperNames, paperKey); paper >= 0)
        choices.paper = static_cast<PaperSize>(paper);
    choices.inks = inkSetNamed(QSettings().value(inksKey).toString()).value_or(choices.inks);
    choices.form = static_cast<PdfForm>(std::max(0, placeIn(formNames, formKey)));
    return choices;
}

void remember(const PrintChoices& choices) {
    QSettings settings;
    if (choices.paper)
        settings.setValue(paperKey, paperNames.at(static_cast<int>(*choices.paper)));
    settings.setValue(inksKey, nameOf(choices.inks));
    settings.setValue(formKey, formNames.at(static_cast<int>(choices.form)));
}

} // namespace setfolio
