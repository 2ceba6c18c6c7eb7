// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebookshelf.h"

#include "core/ledger/wholefile.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QRegularExpression>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr qint64 largest = 1024 * 1024; ///< bytes; a published rulebook has about 15000

} // namespace

RulebookShelf::Content RulebookShelf::content() const {
    Content content;
    if (m_folder.isEmpty())
        return content;
    const QDir folder(m_folder);
    for (const QString& name : folder.entryList({u"*.json"_s}, QDir::Files, QDir::Name)) {
        if (auto read = readRulebook(folder.filePath(name)))
            content.rulebooks.push_back(std::move(*read));
        else
            content.unread.push_back(read.error());
    }
    std::ranges::stable_sort(content.rulebooks, {}, &Rulebook::name);
    return content;
}

tl::expected<void, FileError> RulebookShelf::keep(const Rulebook& rulebook) const {
    if (m_folder.isEmpty() || !QDir().mkpath(m_folder))
        return tl::unexpected(FileError{FileError::Code::CannotCreate, m_folder, {}});
    return writeRulebook(pathOf(rulebook), rulebook);
}

bool RulebookShelf::remove(const Rulebook& rulebook) const {
    return !has(rulebook) || QFile::remove(pathOf(rulebook));
}

bool RulebookShelf::has(const Rulebook& rulebook) const {
    return !m_folder.isEmpty() && QFile::exists(pathOf(rulebook));
}

QString RulebookShelf::pathOf(const Rulebook& rulebook) const {
    return QDir(m_folder).filePath(rulebookFileName(rulebook));
}

tl::expected<Rulebook, RulebookFileError> readRulebook(const QString& path) {
    const auto unread = [&path](auto error) { return tl::unexpected(RulebookFileError{path, error}); };
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return unread(FileError{FileError::Code::CannotOpen, path, file.errorString()});
    const QByteArray bytes = file.read(largest + 1);
    if (file.error() != QFileDevice::NoError)
        return unread(FileError{FileError::Code::CannotRead, path, file.errorString()});
    if (bytes.size() > largest)
        return unread(FileError{FileError::Code::TooLong, path, {}});
    const QJsonDocument document = QJsonDocument::fromJson(bytes);
    if (!document.isObject())
        return unread(RulebookError{RulebookError::Code::NotJson, {}});
    auto read = rulebookFromJson(document.object());
    if (!read)
        return unread(read.error());
    return std::move(*read);
}

tl::expected<void, FileError> writeRulebook(const QString& path, const Rulebook& rulebook) {
    return writeWholeFile(path, QJsonDocument(toJson(rulebook)).toJson(QJsonDocument::Indented));
}

QString rulebookFileName(const Rulebook& rulebook) {
    static const QRegularExpression others(u"[^A-Za-z0-9-]+"_s); // an id from a file may hold anything
    QString stem = QString(rulebook.id).replace(others, u"-"_s);
    while (stem.startsWith(u'-'))
        stem.remove(0, 1);
    return (stem.isEmpty() ? u"rulebook"_s : stem.left(120)) + u".json"_s;
}

} // namespace setfolio
