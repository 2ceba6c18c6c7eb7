// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commandline.h"

#include "core/record/sealtext.h"

#include <QMap>

#include <optional>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

using Code = UsageError::Code;

/// A command line sorted out: what is a file, and what is an option with its value.
struct Sorted {
    QStringList files;
    QMap<QString, QString> options;
    [[nodiscard]] bool has(const QString& option) const { return options.contains(option); }
    [[nodiscard]] Names names() const { return has(u"--numbers-only"_s) ? Names::LeftOut : Names::Given; }
};

/// Options without a value.
const QStringList flags{u"--numbers-only"_s};

tl::unexpected<UsageError> wrong(Code code, const QString& word) {
    return tl::unexpected(UsageError{code, word});
}

/// Takes words from the front of a line.
class Sorter {
public:
    Sorter(QStringList words, QStringList known) : m_words(std::move(words)), m_known(std::move(known)) {}

    tl::expected<Sorted, UsageError> sort() {
        while (!m_words.isEmpty()) {
            if (const auto error = take(m_words.takeFirst()))
                return tl::unexpected(*error);
        }
        return m_sorted;
    }

private:
    std::optional<UsageError> take(const QString& word) {
        if (word == u"--") {
            m_sorted.files += std::exchange(m_words, {});
            return {};
        }
        if (word.startsWith(u'-') && word != u"-")
            return takeOption(word);
        m_sorted.files += word;
        return {};
    }

    std::optional<UsageError> takeOption(const QString& word) {
        const qsizetype equals = word.indexOf(u'=');
        const QString option = word.left(equals);
        if (!m_known.contains(option))
            return UsageError{Code::UnknownOption, word};
        if (m_sorted.options.contains(option))
            return UsageError{Code::RepeatedOption, option};
        if (flags.contains(option))
            return takeFlag(word, option);
        const bool valueFollows = equals < 0 && !m_words.isEmpty() && !m_words.first().startsWith("--"_L1);
        const QString value = valueFollows ? m_words.takeFirst() : equals < 0 ? QString() : word.mid(equals + 1);
        if (value.isEmpty())
            return UsageError{Code::MissingValue, option};
        m_sorted.options.insert(option, value);
        return {};
    }

    std::optional<UsageError> takeFlag(const QString& word, const QString& option) {
        if (word != option)
            return UsageError{Code::UnknownOption, word};
        m_sorted.options.insert(option, {});
        return {};
    }

    QStringList m_words;
    QStringList m_known;
    Sorted m_sorted;
};

/// That the number of files is right, and every option that must be there is.
std::optional<UsageError> faultIn(const Sorted& sorted, const QString& command, qsizetype most,
                                  const QStringList& needed) {
    if (sorted.files.isEmpty())
        return UsageError{Code::MissingFile, command};
    if (sorted.files.size() > most)
        return UsageError{Code::TooManyFiles, sorted.files.at(most)};
    for (const QString& option : needed)
        if (!sorted.options.contains(option))
            return UsageError{Code::MissingOption, option};
    return {};
}

constexpr qsizetype anyNumber = std::numeric_limits<qsizetype>::max();
using Read = tl::expected<Command, UsageError>;

Read readPrint(const Sorted& sorted) {
    if (const auto fault = faultIn(sorted, u"print"_s, anyNumber, {u"--to"_s}))
        return tl::unexpected(*fault);
    static const QMap<QString, PaperSize> papers{{u"letter"_s, PaperSize::Letter}, {u"a4"_s, PaperSize::A4}};
    static const QMap<QString, PdfForm> forms{{u"archive"_s, PdfForm::Archive}, {u"plain"_s, PdfForm::Plain}};
    PrintSheets print{sorted.files, sorted.options.value(u"--to"_s), std::nullopt, PdfForm::Archive};
    print.names = sorted.names();
    if (const QString paper = sorted.options.value(u"--paper"_s); !paper.isEmpty()) {
        if (!papers.contains(paper))
            return wrong(Code::UnknownPaper, paper);
        print.paper = papers.value(paper);
    }
    const QString form = sorted.options.value(u"--as"_s, u"archive"_s);
    if (!forms.contains(form))
        return wrong(Code::UnknownPdfForm, form);
    print.form = forms.value(form);
    for (const QString& name : sorted.options.value(u"--sheets"_s).split(u',', Qt::SkipEmptyParts)) {
        const auto kind = sheetKindNamed(name);
        if (!kind)
            return wrong(Code::UnknownSheet, name);
        print.sheets.insert(*kind);
    }
    if (const QString inks = sorted.options.value(u"--inks"_s); !inks.isEmpty()) {
        const auto named = inkSetNamed(inks);
        if (!named)
            return wrong(Code::UnknownInks, inks);
        print.inks = *named;
    }
    return print;
}

Read readCheck(const Sorted& sorted) {
    if (const auto fault = faultIn(sorted, u"check"_s, anyNumber, {}))
        return tl::unexpected(*fault);
    if (!sorted.options.contains(u"--seal"_s))
        return CheckFiles{sorted.files, {}};
    const QString typed = sorted.options.value(u"--seal"_s);
    const auto digits = digitsOfSeal(typed);
    return digits ? Read(CheckFiles{sorted.files, *digits}) : wrong(Code::UnknownSeal, typed);
}

Read readEnter(const Sorted& sorted) {
    if (const auto fault = faultIn(sorted, u"enter"_s, 1, {u"--to"_s}))
        return tl::unexpected(*fault);
    return EnterList{sorted.files.first(), sorted.options.value(u"--to"_s)};
}

Read readExport(const Sorted& sorted) {
    if (const auto fault = faultIn(sorted, u"export"_s, 1, {u"--as"_s}))
        return tl::unexpected(*fault);
    static const QMap<QString, ExportForm> forms{
        {u"json"_s, ExportForm::Json}, {u"csv"_s, ExportForm::Csv}, {u"match-file"_s, ExportForm::MatchFile}};
    const QString name = sorted.options.value(u"--as"_s);
    if (!forms.contains(name))
        return wrong(Code::UnknownFormat, name);
    const ExportMatch match{sorted.files.first(), sorted.options.value(u"--to"_s), forms.value(name), sorted.names()};
    if (match.form == ExportForm::MatchFile)
        for (const QString& needed : {u"--numbers-only"_s, u"--to"_s})
            if (!sorted.has(needed))
                return wrong(Code::MissingOption, needed);
    return match;
}

Read readWindow(const Sorted& sorted) {
    if (sorted.files.size() > 1)
        return wrong(Code::TooManyFiles, sorted.files.at(1));
    return OpenWindow{sorted.files.value(0)};
}

struct Reader {
    QString command; ///< empty: the window
    QStringList options;
    Read (*read)(const Sorted&);
};

const Reader& readerOf(const QStringList& words) {
    static const std::array<Reader, 5> readers{
        {{u"print"_s, {u"--to"_s, u"--paper"_s, u"--as"_s, u"--sheets"_s, u"--inks"_s, u"--numbers-only"_s}, readPrint},
         {u"check"_s, {u"--seal"_s}, readCheck},
         {u"enter"_s, {u"--to"_s}, readEnter},
         {u"export"_s, {u"--as"_s, u"--to"_s, u"--numbers-only"_s}, readExport},
         {{}, {}, readWindow}}};
    return *std::find_if(readers.begin(), readers.end() - 1,
                         [&](const Reader& reader) { return reader.command == words.value(0); });
}

} // namespace

tl::expected<Command, UsageError> commandOf(const QStringList& words) {
    const QStringList beforeFiles = words.mid(0, words.indexOf(u"--"_s));
    if (beforeFiles.contains(u"--help"_s))
        return ShowHelp{};
    if (beforeFiles.contains(u"--version"_s))
        return ShowVersion{};
    const Reader& reader = readerOf(words);
    return Sorter(reader.command.isEmpty() ? words : words.mid(1), reader.options).sort().and_then(reader.read);
}

} // namespace setfolio
