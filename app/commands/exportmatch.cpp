// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/exportmatch.h"

#include "app/commands/readmatch.h"
#include "app/newledger.h"
#include "app/terminal.h"
#include "core/ledger/wholefile.h"
#include "core/record/exportcsv.h"
#include "core/record/exportjson.h"
#include "core/record/nameless.h"
#include "ui/wording/errorwords.h"

#include <QJsonDocument>

namespace setfolio {

namespace {

/// The document's text, with every character that could steer a terminal as an escape: they only occur in strings.
QByteArray textOf(const QJsonObject& json) {
    const QString text = QString::fromUtf8(QJsonDocument(json).toJson(QJsonDocument::Indented));
    QStringList lines = text.split(u'\n');
    for (QString& line : lines)
        line = plainly(line);
    return lines.join(u'\n').toUtf8();
}

ExitCode saveCopy(const std::vector<Recorded>& nameless, const QString& to) {
    const auto bytes = ledgerOf(nameless);
    if (!bytes) {
        sayMessage(sentence(bytes.error()));
        return ExitCode::Damaged;
    }
    if (const auto written = writeNewFile(to, *bytes); !written) {
        sayMessage(sentence(written.error()));
        return exitCodeOf(written.error().code);
    }
    sayResult(namesLeftOut(to));
    return ExitCode::Done;
}

} // namespace

ExitCode run(const ExportMatch& command) {
    auto entries = readMatch(command.file);
    if (!entries)
        return entries.error();
    if (command.names == Names::LeftOut)
        *entries = withoutNames(*entries);
    if (command.form == ExportForm::MatchFile)
        return saveCopy(*entries, command.to);
    const QByteArray text = command.form == ExportForm::Csv ? csvOf(*entries) : textOf(exportOf(*entries));
    if (command.to.isEmpty()) {
        writeResult(text);
        return ExitCode::Done;
    }
    if (const auto written = writeWholeFile(command.to, text); !written) {
        sayMessage(sentence(written.error()));
        return exitCodeOf(written.error().code);
    }
    return ExitCode::Done;
}

} // namespace setfolio
