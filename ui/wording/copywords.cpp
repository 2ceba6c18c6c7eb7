// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/copywords.h"

#include "ui/wording/signoffwords.h"

#include <QCoreApplication>
#include <QStringList>

namespace setfolio {

namespace {

struct Copy {
    Q_DECLARE_TR_FUNCTIONS(Copy)
};

QString whatItIs(ExportForm form, Names names) {
    switch (form) {
    case ExportForm::MatchFile:
        return names == Names::Given
                   ? Copy::tr("The match as it is, entry by entry, with its signatures: the codes of its seals, on "
                              "paper too, hold for the copy.")
                   : Copy::tr("A match file of its own: the same numbers, order and times, without anybody's name and "
                              "without the strokes of signatures. The codes of the seals on paper do not hold for it.");
    case ExportForm::Csv:
        return Copy::tr("The list of entries for a spreadsheet: a line for each, those that were struck too.");
    case ExportForm::Json:
        return Copy::tr("What stands on the sheets, for another program.");
    }
    Q_UNREACHABLE();
}

} // namespace

QString nameOf(ExportForm form) {
    switch (form) {
    case ExportForm::MatchFile:
        return Copy::tr("A match file");
    case ExportForm::Csv:
        return Copy::tr("A table (CSV)");
    case ExportForm::Json:
        return Copy::tr("Data (JSON)");
    }
    Q_UNREACHABLE();
}

QString filesFilter(ExportForm form) {
    switch (form) {
    case ExportForm::MatchFile:
        return Copy::tr("Matches (*.setfolio)");
    case ExportForm::Csv:
        return Copy::tr("Text with columns (*.csv)");
    case ExportForm::Json:
        return Copy::tr("Data (*.json)");
    }
    Q_UNREACHABLE();
}

QString aboutCopy(ExportForm form, Names names, bool holdsNames) {
    QStringList sentences{whatItIs(form, names), namesSentence(names == Names::LeftOut, holdsNames)};
    if (names == Names::LeftOut)
        sentences += Copy::tr("Names that the match knows are taken out of remarks and reasons too; what else is "
                              "written there stays: read it before you pass the copy on.");
    return sentences.join(u' ');
}

} // namespace setfolio
