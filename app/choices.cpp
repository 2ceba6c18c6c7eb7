// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/choices.h"

#include <QFileInfo>
#include <QMap>
#include <QSettings>
#include <QStandardPaths>

#include <algorithm>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

const QString lookKey = u"look"_s;
const QString textSizeKey = u"text-size"_s;
const QString keysGroup = u"keys"_s;
const QString sightKey = u"sight"_s;
const QString folderKey = u"match-folder"_s;

/// Words in a settings file, since numbers there would say nothing to who reads it.
constexpr std::array lookNames{"system"_L1, "light"_L1, "dark"_L1, "high-contrast"_L1};
constexpr std::array sightNames{"live-band"_L1, "page-width"_L1, "whole-page"_L1};

/// The place of a name in a list; the first one for a name that is not in it.
template <std::size_t Count>
std::size_t placeOf(const QString& name, const std::array<QLatin1String, Count>& names) {
    const auto found = std::ranges::find(names, name);
    return found == names.end() ? 0 : static_cast<std::size_t>(found - names.begin());
}

ChangedKeys keptKeys() {
    QSettings settings;
    settings.beginGroup(keysGroup);
    QMap<QString, QString> written;
    for (const QString& id : settings.childKeys())
        written.insert(id, settings.value(id).toString());
    return readKeys(written);
}

} // namespace

void wearChoices() {
    const QSettings settings;
    setProgramLook(allLookChoices.at(placeOf(settings.value(lookKey).toString(), lookNames)));
    const int percent = settings.value(textSizeKey).toInt();
    setProgramTextSize(std::ranges::count(textSizes, percent) ? percent : textSizes.front());
    setChangedKeys(keptKeys());
}

void rememberLook(LookChoice look) {
    QSettings().setValue(lookKey, QString(lookNames.at(static_cast<std::size_t>(look))));
}

void rememberTextSize(int percent) {
    QSettings().setValue(textSizeKey, percent);
}

void rememberKeys(const ChangedKeys& keys) {
    QSettings settings;
    settings.remove(keysGroup);
    settings.beginGroup(keysGroup);
    const QMap<QString, QString> written = writtenKeys(keys);
    for (auto line = written.begin(); line != written.end(); ++line)
        settings.setValue(line.key(), line.value());
}

Sight chosenSight() {
    return static_cast<Sight>(placeOf(QSettings().value(sightKey).toString(), sightNames));
}

void rememberSight(Sight sight) {
    if (const auto place = static_cast<std::size_t>(sight); place < sightNames.size())
        QSettings().setValue(sightKey, QString(sightNames.at(place)));
}

QString matchFolder() {
    const QString kept = QSettings().value(folderKey).toString();
    return QFileInfo(kept).isDir() ? kept : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void rememberMatchFolder(const QString& folder) {
    QSettings().setValue(folderKey, folder);
}

} // namespace setfolio
