// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/openwindow.h"

#include "app/choices.h"
#include "app/frontdesk.h"
#include "app/terminal.h"

#include <QApplication>
#include <QIcon>

// Out of the namespace, as the macro wants it: a static library's resources are linked only when asked for.
static void loadWindowResources() {
    Q_INIT_RESOURCE(icons);
    Q_INIT_RESOURCE(demo);
}

namespace setfolio {

namespace {

QIcon programIcon() {
    QIcon icon;
    for (const int size : {16, 24, 32, 48, 64, 128, 256})
        icon.addFile(QStringLiteral(":/icons/setfolio-%1.png").arg(size), QSize(size, size));
    return icon;
}

Clock clockOfTheHall() {
    return {[] { return QDateTime::currentDateTimeUtc(); }, [] { return QTime::currentTime(); }};
}

} // namespace

bool isThereAScreen() {
    const char* const signs[] = {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"};
    return std::any_of(std::begin(signs), std::end(signs),
                       [](const char* sign) { return !qEnvironmentVariableIsEmpty(sign); });
}

ExitCode run(const OpenWindow& command) {
    loadWindowResources();
    QApplication::setWindowIcon(programIcon());
    QApplication::setDesktopFileName(QStringLiteral("org.setfolio.Setfolio"));
    auto fonts = SheetFonts::load();
    if (!fonts) {
        sayMessage(typefaceMissing(fonts.error().family, fonts.error().package));
        return ExitCode::Unavailable;
    }
    wearChoices();
    FrontDesk desk(std::move(*fonts), clockOfTheHall());
    if (command.file.isEmpty())
        desk.showStartPage();
    else if (!desk.open(command.file))
        return ExitCode::NoInput;
    QApplication::exec();
    return ExitCode::Done;
}

} // namespace setfolio
