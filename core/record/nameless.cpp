// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/nameless.h"

#include <QRegularExpression>
#include <QSet>

#include <algorithm>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr qsizetype leastWord = 3; ///< letters of a name's part that is looked for: "de" and "O" say nothing

/// Collects every name that is written in a place for names.
struct NameReader {
    QSet<QString>& names;

    template <typename Kind>
    void operator()(const Kind& entry) const {
        if constexpr (std::is_same_v<Kind, Roster>) {
            add(entry.coach);
            for (const RosterPlayer& player : entry.players)
                add(player.name);
        } else if constexpr (std::is_same_v<Kind, Officials>) {
            for (const Official& official : entry.officials)
                add(official.name);
        } else if constexpr (requires { entry.name; }) {
            add(entry.name);
        }
    }

private:
    void add(const QString& name) const {
        if (!name.simplified().isEmpty())
            names.insert(name.simplified());
    }
};

QSet<QString> namesIn(std::span<const Recorded> entries) {
    QSet<QString> names;
    for (const Recorded& recorded : entries)
        std::visit(NameReader{names}, recorded.entry);
    return names;
}

/// What finds the names, and the longer words of them, in a sentence; invalid where there are none.
QRegularExpression finderOf(const QSet<QString>& names) {
    QStringList parts(names.begin(), names.end());
    for (const QString& name : names)
        for (const QString& word : name.split(QRegularExpression(uR"([\s.,]+)"_s), Qt::SkipEmptyParts))
            if (word.size() >= leastWord)
                parts += word;
    if (parts.isEmpty())
        return {};
    std::ranges::sort(parts, [](const QString& a, const QString& b) { // the longest first, then by themselves
        return a.size() != b.size() ? a.size() > b.size() : a < b;
    });
    for (QString& part : parts)
        part = QRegularExpression::escape(part);
    return QRegularExpression(uR"((?<![\p{L}\p{N}])(?:%1)(?![\p{L}\p{N}]))"_s.arg(parts.join(u'|')),
                              QRegularExpression::UseUnicodePropertiesOption);
}

/// Leaves the names of one entry out.
class NameEraser {
public:
    explicit NameEraser(const QRegularExpression& finder) : m_finder(finder) {}

    template <typename Kind>
    void operator()(Kind& entry) const {
        if constexpr (std::is_same_v<Kind, MatchOpened>)
            entry.namesLeftOut = true;
        if constexpr (std::is_same_v<Kind, Roster>) {
            entry.coach.clear();
            for (RosterPlayer& player : entry.players)
                player.name.clear();
        }
        if constexpr (std::is_same_v<Kind, Officials>)
            for (Official& official : entry.officials)
                official.name.clear();
        if constexpr (std::is_same_v<Kind, Signed>) {
            entry.strokes.clear();
            if (entry.protest)
                clean(*entry.protest);
        }
        if constexpr (std::is_same_v<Kind, Sealed>)
            entry.of = SealOf::Original;
        if constexpr (requires { entry.name; })
            entry.name.clear();
        cleanSentences(entry);
    }
    void clean(QString& text) const {
        if (!m_finder.pattern().isEmpty())
            text.replace(m_finder, u"…"_s);
    }

private:
    template <typename Kind>
    void cleanSentences(Kind& entry) const {
        if constexpr (requires { entry.reason; })
            clean(entry.reason);
        if constexpr (requires { entry.text; })
            clean(entry.text);
        if constexpr (requires { entry.what; })
            clean(entry.what);
        if constexpr (requires { entry.differs; })
            clean(entry.differs);
    }

    const QRegularExpression& m_finder;
};

} // namespace

std::vector<Recorded> withoutNames(std::span<const Recorded> entries) {
    const QRegularExpression finder = finderOf(namesIn(entries));
    const NameEraser eraser(finder);
    std::vector<Recorded> nameless(entries.begin(), entries.end());
    for (Recorded& recorded : nameless) {
        std::visit(eraser, recorded.entry);
        if (recorded.overruled)
            eraser.clean(*recorded.overruled);
        if (recorded.placed)
            eraser.clean(recorded.placed->reason);
    }
    return nameless;
}

bool holdNames(std::span<const Recorded> entries) {
    return !namesIn(entries).isEmpty();
}

} // namespace setfolio
