// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/printservice.h"

#include <QDir>
#include <QFile>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr auto setting = "CUPS_SERVER";

bool namesAServer(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return false;
    while (!file.atEnd())
        if (file.readLine().trimmed().toLower().startsWith("servername"))
            return true;
    return false;
}

} // namespace

void keepPrintingLocal() {
    const QString socket = u"/run/cups/cups.sock"_s;
    const bool isChosen = qEnvironmentVariableIsSet(setting) || namesAServer(u"/etc/cups/client.conf"_s) ||
                          namesAServer(QDir::homePath() + u"/.cups/client.conf"_s);
    if (!isChosen && !QFile::exists(socket)) // else it is used anyway
        qputenv(setting, socket.toLocal8Bit());
}

} // namespace setfolio
