// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/goldenfile.h"

#include <QFile>
#include <QStringList>

namespace setfolio::testing {

namespace {

QString firstDifference(const QString& approved, const QString& got) {
    const QStringList expected = approved.split(u'\n');
    const QStringList lines = got.split(u'\n');
    for (qsizetype i = 0; i < std::max(expected.size(), lines.size()); ++i)
        if (expected.value(i) != lines.value(i))
            return QStringLiteral("line %1\n  approved %2\n  got      %3")
                .arg(i + 1)
                .arg(expected.value(i), lines.value(i));
    return QStringLiteral("only at their ends");
}

} // namespace

QString differenceFrom(const QString& file, const QString& got) {
    QFile approved(file);
    const QString text = approved.open(QIODevice::ReadOnly) ? QString::fromUtf8(approved.readAll()) : QString();
    QFile actual(file + QStringLiteral(".actual"));
    if (text == got) {
        actual.remove();
        return {};
    }
    if (!actual.open(QIODevice::WriteOnly) || actual.write(got.toUtf8()) < 0)
        return QStringLiteral("%1 cannot be written").arg(actual.fileName());
    return QStringLiteral("%1 differs at %2").arg(file, firstDifference(text, got));
}

} // namespace setfolio::testing
