// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/ledger.h"

#include "core/ledger/appendfile.h"
#include "core/ledger/limits.h"
#include "core/ledger/wholefile.h"

#include <QFileInfo>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

struct Ledger::Private {
    AppendFile file;
    LedgerContent content;
    bool readOnly = false;
};

namespace {

LedgerError ledgerError(const FileError& error) {
    using enum FileError::Code;
    const auto withCode = [&](LedgerError::Code code) { return LedgerError{code, 0, error.path, error.detail}; };
    switch (error.code) {
    case CannotOpen:
    case CannotRead:
        return withCode(LedgerError::Code::CannotOpen);
    case CannotCreate:
        return withCode(LedgerError::Code::CannotCreate);
    case CannotWrite:
    case CannotReplace:
    case CannotSync:
        return withCode(LedgerError::Code::CannotWrite);
    case TooLong:
        return withCode(LedgerError::Code::TooLong);
    case ChangedOutside:
        return withCode(LedgerError::Code::ChangedOutside);
    }
    Q_UNREACHABLE();
}

tl::unexpected<LedgerError> failed(const FileError& error) {
    return tl::unexpected(ledgerError(error));
}

struct OpenFile {
    AppendFile file;
    bool readOnly = false;
};

/// For writing, with the lock, or else for reading.
tl::expected<OpenFile, FileError> openFor(Ledger::Access access, const QString& path, const FileCalls& calls) {
    if (access == Ledger::Access::ReadWrite && QFileInfo(path).isWritable()) {
        auto file = AppendFile::open(path, AppendFile::Mode::Append, calls);
        if (!file)
            return tl::unexpected(file.error());
        const bool held = file->lock() == LockOutcome::Held;
        return OpenFile{std::move(*file), held};
    }
    return AppendFile::open(path, AppendFile::Mode::Read, calls).map([](AppendFile&& file) {
        return OpenFile{std::move(file), true};
    });
}

/// Moves a torn tail to the first free name beside the file; cuts it off only when it is safe there.
tl::expected<void, FileError> setAside(TornTail& torn, AppendFile& file, qsizetype wholeBytes, const FileCalls& calls) {
    int number = 1;
    while (QFileInfo::exists(u"%1.torn-%2"_s.arg(file.path()).arg(number)))
        ++number;
    torn.setAsideTo = u"%1.torn-%2"_s.arg(file.path()).arg(number);
    return writeNewFile(torn.setAsideTo, torn.bytes, calls).and_then([&] { return file.cutTo(wholeBytes); });
}

tl::expected<LedgerContent, LedgerError> readContent(AppendFile& file) {
    const auto bytes = file.readAll(limits::fileBytes);
    if (!bytes)
        return failed(bytes.error());
    LedgerContent content = readLedger(*bytes);
    if (content.damage)
        content.damage->path = file.path();
    return content;
}

} // namespace

Ledger::Ledger(std::unique_ptr<Private> opened) : d(std::move(opened)) {}
Ledger::Ledger(Ledger&&) noexcept = default;
Ledger& Ledger::operator=(Ledger&&) noexcept = default;
Ledger::~Ledger() = default;

tl::expected<Ledger, LedgerError> Ledger::open(const QString& path, Access access, const FileCalls& calls) {
    auto opened = openFor(access, path, calls);
    if (!opened)
        return failed(opened.error());
    auto content = readContent(opened->file);
    if (!content)
        return tl::unexpected(content.error());
    if (content->damage)
        return tl::unexpected(*content->damage);
    if (content->torn && !opened->readOnly) {
        if (const auto moved = setAside(*content->torn, opened->file, content->wholeBytes, calls); !moved)
            return failed(moved.error());
    }
    return Ledger(std::make_unique<Private>(Private{std::move(opened->file), std::move(*content), opened->readOnly}));
}

tl::expected<Ledger, LedgerError> Ledger::create(const QString& path, const FileCalls& calls) {
    auto file = AppendFile::open(path, AppendFile::Mode::New, calls);
    if (!file)
        return failed(file.error());
    const bool held = file->lock() == LockOutcome::Held;
    return Ledger(std::make_unique<Private>(Private{std::move(*file), readLedger({}), held}));
}

tl::expected<EntryNumber, LedgerError> Ledger::append(const Entry& entry, const QDateTime& time,
                                                      std::optional<QString> overruled, std::optional<Placed> placed) {
    const EntryNumber number(static_cast<std::uint32_t>(d->content.entries.size() + 1));
    const auto refused = [&](LedgerError::Code code, const QString& detail) {
        return tl::unexpected(LedgerError{code, static_cast<int>(number.value), path(), detail});
    };
    if (d->readOnly)
        return refused(LedgerError::Code::ReadOnly, {});
    const QByteArray line =
        ledgerLine({number, time, withSeal(entry, d->content.lastDigest), std::move(overruled), std::move(placed)},
                   d->content.lastDigest);
    if (number.value > limits::entries || line.size() > limits::lineBytes ||
        d->content.wholeBytes + line.size() > limits::fileBytes)
        return refused(LedgerError::Code::TooLong, {});
    // What could not be read back is not written, and what stands in memory is what stands in the file.
    auto recorded = readLedgerLine(line.chopped(1), number, d->content.lastDigest);
    if (!recorded)
        return refused(LedgerError::Code::Unrecordable, recorded.error().detail);
    if (const auto written = d->file.append(line); !written)
        return failed(written.error());
    d->content.entries.push_back(std::move(*recorded));
    d->content.lastDigest = digestOfLine(line);
    d->content.wholeBytes += line.size();
    return number;
}

std::span<const Recorded> Ledger::entries() const {
    return d->content.entries;
}

QString Ledger::path() const {
    return d->file.path();
}

bool Ledger::isReadOnly() const {
    return d->readOnly;
}

QString Ledger::heldBy() const {
    return d->readOnly ? d->file.heldBy() : QString();
}

const std::optional<TornTail>& Ledger::torn() const {
    return d->content.torn;
}

QByteArray Ledger::lastDigest() const {
    return d->content.lastDigest;
}

tl::expected<LedgerContent, LedgerError> readLedgerFile(const QString& path) {
    auto file = AppendFile::open(path, AppendFile::Mode::Read, systemCalls());
    if (!file)
        return failed(file.error());
    return readContent(*file);
}

tl::expected<QByteArray, LedgerError> readLedgerBytes(const QString& path) {
    auto file = AppendFile::open(path, AppendFile::Mode::Read, systemCalls());
    auto bytes = file.and_then([](AppendFile& open) { return open.readAll(limits::fileBytes); });
    if (!bytes)
        return failed(bytes.error());
    return std::move(*bytes);
}

tl::expected<int, LedgerError> saveGoodPart(const QString& path, const QString& to) {
    const auto bytes = readLedgerBytes(path);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const LedgerContent content = readLedger(*bytes);
    if (const auto written = writeNewFile(to, bytes->first(content.wholeBytes), systemCalls()); !written)
        return failed(written.error());
    return static_cast<int>(content.entries.size());
}

} // namespace setfolio
