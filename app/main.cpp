// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/checkfiles.h"
#include "app/commands/enterlist.h"
#include "app/commands/exportmatch.h"
#include "app/commands/openwindow.h"
#include "app/commands/printsheets.h"
#include "app/printservice.h"
#include "app/terminal.h"
#include "app/tongue.h"
#include "core/match/entry.h"
#include "ui/wording/about.h"

#include <QApplication>
#include <QDateTime>
#include <QHashSeed>

namespace {

using namespace setfolio;

/// Each command in the surroundings it needs: only the window has a screen, and only what draws has fonts.
struct Runner {
    int& argc;
    char** argv;

    ExitCode operator()(const ShowHelp&) const {
        const QCoreApplication application(argc, argv);
        speak(chosenLanguage());
        writeResult(helpText().toUtf8());
        return ExitCode::Done;
    }
    ExitCode operator()(const ShowVersion&) const {
        sayResult(aboutLine());
        return ExitCode::Done;
    }
    ExitCode operator()(const CheckFiles& command) const {
        const QCoreApplication application(argc, argv);
        speak(chosenLanguage());
        return run(command);
    }
    ExitCode operator()(const EnterList& command) const {
        const QCoreApplication application(argc, argv);
        speak(chosenLanguage());
        return run(command, QDateTime::currentDateTimeUtc());
    }
    ExitCode operator()(const ExportMatch& command) const {
        const QCoreApplication application(argc, argv);
        speak(chosenLanguage());
        return run(command);
    }
    ExitCode operator()(const PrintSheets& command) const {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        const QGuiApplication application(argc, argv);
        speak(chosenLanguage());
        return run(command);
    }
    ExitCode operator()(const OpenWindow& command) const {
        if (!isThereAScreen()) {
            const QCoreApplication application(argc, argv);
            speak(chosenLanguage());
            sayMessage(noScreen());
            return ExitCode::Unavailable;
        }
        keepPrintingLocal();
        const QApplication application(argc, argv);
        speak(chosenLanguage());
        return run(command);
    }
};

ExitCode carryOut(const QStringList& words, int& argc, char** argv) {
    const auto command = commandOf(words);
    if (command)
        return std::visit(Runner{argc, argv}, *command);
    const QCoreApplication application(argc, argv);
    speak(chosenLanguage());
    sayMessage(sentence(command.error()));
    sayMessage(seeHelp());
    return ExitCode::Usage;
}

} // namespace

int main(int argc, char** argv) {
    // The same match gives the same PDF: the order of fonts in it follows the seed of Qt's hashes.
    QHashSeed::setDeterministicGlobalSeed();
    QCoreApplication::setOrganizationName(QStringLiteral("Setfolio"));
    QCoreApplication::setApplicationName(QStringLiteral("setfolio"));
    QStringList words;
    for (int i = 1; i < argc; ++i)
        words += QString::fromLocal8Bit(argv[i]);
    return static_cast<int>(withResultsWritten(carryOut(words, argc, argv)));
}
