// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Saves every window and phase of the program as a picture, to be looked at.
#include "tests/ui/wornwindow.h"

#include <QApplication>
#include <QDir>
#include <QPixmap>
#include <QRegularExpression>
#include <QTest>
#include <QTextStream>

#include <algorithm>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

std::optional<LookChoice> lookCalled(const QString& name) {
    const auto found = std::ranges::find(wornLooks, name, &nameOfLook);
    return found == wornLooks.end() ? std::nullopt : std::optional(*found);
}

std::optional<QSize> sizeCalled(const QString& name) {
    const auto read = QRegularExpression(u"^(\\d+)x(\\d+)$"_s).match(name);
    return read.hasMatch() ? std::optional(QSize(read.captured(1).toInt(), read.captured(2).toInt())) : std::nullopt;
}

bool save(const WindowScene& scene, int number, const Worn& worn, const QDir& folder) {
    static const QRegularExpression notInNames(u"[^a-z0-9]+"_s);
    const ShownWindow shown = show(scene, worn);
    QTest::qWait(200); // a real screen takes its time
    const QString name = QString::fromLatin1(scene.name).replace(notInNames, u"-"_s);
    return shown.window->grab().save(
        folder.filePath(QString::number(number).rightJustified(2, u'0') + u'-' + name + u".png"_s));
}

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    const QStringList given = QApplication::arguments().mid(1);
    const auto look = lookCalled(given.value(2));
    const auto screen = sizeCalled(given.value(3));
    if (!look || !screen) {
        QTextStream(stderr)
            << "usage: windowpictures FOLDER en|es|fr light|dark|high-contrast WIDTHxHEIGHT [SCENE...]\n"
               "A SCENE is a word in the names of those wanted.\n";
        return 64;
    }
    const QStringList wanted = given.mid(4);
    for (int number = 0; const WindowScene& scene : windowScenes()) {
        const QString name = QString::fromLatin1(scene.name);
        const bool isWanted =
            wanted.isEmpty() || std::ranges::any_of(wanted, [&](const QString& word) { return name.contains(word); });
        if (isWanted && !save(scene, number, {languageOf(given.at(1)), *look, *screen}, QDir(given.front()))) {
            QTextStream(stderr) << "could not save " << name << '\n';
            return 1;
        }
        ++number;
    }
}
