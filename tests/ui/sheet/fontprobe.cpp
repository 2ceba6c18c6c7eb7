// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/fonts.h"

#include <QGuiApplication>
#include <QTextStream>

int main(int argc, char** argv) {
    const QGuiApplication application(argc, argv);
    const auto fonts = setfolio::SheetFonts::load();
    QTextStream out(stdout);
    if (fonts) {
        out << "found" << Qt::endl;
        return 0;
    }
    out << fonts.error().family << " of " << fonts.error().package << " lacks";
    for (const int weight : fonts.error().missing)
        out << ' ' << weight;
    out << Qt::endl;
    return 1;
}
