// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Prints the scenes of tests/golden for the eye: `scenepages FOLDER [SCENE...]` writes FOLDER/SCENE.pdf for each.
#include "tests/support/sheetscenes.h"
#include "ui/sheet/compose.h"
#include "ui/sheet/pdf.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QTextStream>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

bool print(const QDir& folder, const QString& name) {
    const SheetScene scene = sheetScene(name);
    const auto pdf =
        pdfOf(composeScene(scene, SheetFonts::load().value()), {name, {}, QDateTime::currentDateTimeUtc()});
    QFile file(folder.filePath(name + QLatin1String(".pdf")));
    return pdf && file.open(QIODevice::WriteOnly) && file.write(*pdf) == pdf->size() && file.flush();
}

} // namespace

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    QStringList names = QGuiApplication::arguments().mid(1);
    if (names.isEmpty()) {
        QTextStream(stderr) << "usage: scenepages FOLDER [SCENE...]\n";
        return 64;
    }
    const QDir folder(names.takeFirst());
    for (const QString& name : names.isEmpty() ? sheetSceneNames() : names)
        if (!print(folder, name)) {
            QTextStream(stderr) << "could not print " << name << " to " << folder.path() << '\n';
            return 1;
        }
}
