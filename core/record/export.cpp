// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/export.h"

#include "core/ledger/newledger.h"
#include "core/record/exportcsv.h"
#include "core/record/exportjson.h"
#include "core/record/shown.h"

#include <QJsonDocument>

namespace setfolio {

namespace {

/// Line by line: what has no ink only occurs in strings.
QByteArray textOf(const QJsonObject& json) {
    const QString text = QString::fromUtf8(QJsonDocument(json).toJson(QJsonDocument::Indented));
    QStringList lines = text.split(u'\n');
    for (QString& line : lines)
        line = withEscapes(line);
    return lines.join(u'\n').toUtf8();
}

} // namespace

tl::expected<QByteArray, LedgerError> exported(std::span<const Recorded> entries, ExportForm form) {
    switch (form) {
    case ExportForm::Json:
        return textOf(exportOf(entries));
    case ExportForm::Csv:
        return csvOf(entries);
    case ExportForm::MatchFile:
        return ledgerOf(entries);
    }
    Q_UNREACHABLE();
}

QString endingOf(ExportForm form) {
    switch (form) {
    case ExportForm::Json:
        return QStringLiteral("json");
    case ExportForm::Csv:
        return QStringLiteral("csv");
    case ExportForm::MatchFile:
        return QStringLiteral("setfolio");
    }
    Q_UNREACHABLE();
}

} // namespace setfolio
