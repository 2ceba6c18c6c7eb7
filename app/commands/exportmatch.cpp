// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/exportmatch.h"

#include "app/commands/readmatch.h"
#include "app/terminal.h"
#include "core/ledger/wholefile.h"
#include "core/record/exportjson.h"
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

} // namespace

ExitCode run(const ExportMatch& command) {
    const auto entries = readMatch(command.file);
    if (!entries)
        return entries.error();
    const QByteArray text = textOf(exportOf(*entries));
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
