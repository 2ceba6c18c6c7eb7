// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/terminal.h"

#include "ui/wording/commandwords.h"

#include <cstdio>

namespace setfolio {

namespace {

bool steers(QChar character) {
    const QChar::Category category = character.category();
    return category == QChar::Other_Control || category == QChar::Other_Format || category == QChar::Separator_Line ||
           category == QChar::Separator_Paragraph;
}

void writeTo(FILE* stream, const QByteArray& bytes) {
    // What failed is remembered by the stream, and asked for once at the end.
    (void)std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream);
}

} // namespace

QString plainly(const QString& text) {
    QString plain;
    for (const QChar character : text) {
        if (steers(character))
            plain += QStringLiteral("\\u%1").arg(character.unicode(), 4, 16, QLatin1Char('0'));
        else
            plain += character;
    }
    return plain;
}

void sayResult(const QString& line) {
    writeTo(stdout, plainly(line).toUtf8() + '\n');
}

void sayMessage(const QString& line) {
    writeTo(stderr, "setfolio: " + plainly(line).toUtf8() + '\n');
}

void writeResult(const QByteArray& bytes) {
    writeTo(stdout, bytes);
}

ExitCode withResultsWritten(ExitCode code) {
    if (std::fflush(stdout) == 0 && std::ferror(stdout) == 0)
        return code;
    sayMessage(standardOutputFailed());
    return worse(code, ExitCode::CannotWrite);
}

} // namespace setfolio
