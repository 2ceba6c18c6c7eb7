// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include <QApplication>
#include <QTextStream>

#include "ui/wording/about.h"

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    QTextStream(stdout) << setfolio::aboutLine() << Qt::endl;
    return 0;
}
