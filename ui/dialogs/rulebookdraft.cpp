// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebookdraft.h"

#include "core/rules/rulebookcompare.h"
#include "core/rules/settingvalue.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

// Words of the file, like the sources of the published rulebooks.
const QString adapted = u"adapted"_s;
const QString lookedUp = u"looked up"_s;
constexpr QChar afterBase = u'+'; ///< in an id, between the published rulebook's and what is added
constexpr qsizetype longestAddition = 60;

QString sourceText(const QString& word, const QString& note) {
    return note.isEmpty() ? word : u"%1 (%2)"_s.arg(word, note);
}

/// The word that such a source begins with; empty for any other source.
QString wordOf(const Source& source) {
    for (const QString& word : {adapted, lookedUp})
        if (source.text == word || (source.text.startsWith(word + u" ("_s) && source.text.endsWith(u')')))
            return word;
    return {};
}

/// What a name gives for an id: small letters and digits, joined by hyphens.
QString slugOf(const QString& name) {
    static const QRegularExpression others(u"[^a-z0-9]+"_s);
    const QString plain =
        name.normalized(QString::NormalizationForm_KD).toLower().remove(QRegularExpression(u"\\p{M}"_s));
    return QString(plain).replace(others, u" "_s).simplified().replace(u' ', u'-').left(longestAddition);
}

} // namespace

RulebookDraft::RulebookDraft(Rulebook published, Rulebook own)
    : m_published(std::move(published)),
      m_own(std::move(own)) {}

bool RulebookDraft::setValue(const QString& key, const QJsonValue& value) {
    const Setting* setting = settingOf(key);
    if (!setting || !readValue(m_own, *setting, value))
        return false;
    if (!differs(key))
        m_own.sources.insert(key, m_published.sources.value(key));
    else if (wordOf(m_own.sources.value(key)) != adapted)
        m_own.sources.insert(key, {adapted, {}, false});
    return true;
}

void RulebookDraft::putBack(const QString& key) {
    if (const Setting* setting = settingOf(key))
        static_cast<void>(readValue(m_own, *setting, valueOf(m_published, *setting))); // it could be read before
    m_own.sources.insert(key, m_published.sources.value(key));
}

bool RulebookDraft::differs(const QString& key) const {
    const Setting* setting = settingOf(key);
    return setting && valueOf(m_own, *setting) != valueOf(m_published, *setting);
}

int RulebookDraft::differences() const {
    return static_cast<int>(rulebookDifferences(m_published, m_own).size());
}

bool RulebookDraft::canBeLookedUp(const QString& key) const {
    return m_published.sources.value(key).open && !differs(key);
}

void RulebookDraft::setLookedUp(const QString& key, bool isSo) {
    if (canBeLookedUp(key))
        m_own.sources.insert(key, isSo ? Source{lookedUp, {}, false} : m_published.sources.value(key));
}

QString RulebookDraft::note(const QString& key) const {
    const Source source = m_own.sources.value(key);
    const QString word = wordOf(source);
    return word.isEmpty() || source.text == word ? QString() : source.text.mid(word.size() + 2).chopped(1);
}

void RulebookDraft::setNote(const QString& key, const QString& note) {
    if (const QString word = wordOf(m_own.sources.value(key)); !word.isEmpty())
        m_own.sources[key].text = sourceText(word, note.simplified());
}

std::optional<RulebookError> RulebookDraft::problem() const {
    const auto read = rulebookFromJson(toJson(m_own));
    return read ? std::nullopt : std::optional(read.error());
}

Rulebook publishedBaseOf(const Rulebook& own) {
    std::vector<Rulebook> published;
    for (const QString& id : publishedRulebookIds())
        if (const auto read = publishedRulebook(id))
            published.push_back(*read);
    const QString base = own.id.section(afterBase, 0, 0);
    if (const auto found = std::ranges::find(published, base, &Rulebook::id); found != published.end())
        return *found;
    const auto distance = [&own](const Rulebook& rulebook) { return rulebookDifferences(rulebook, own).size(); };
    const auto nearest = std::ranges::min_element(published, {}, distance);
    return nearest == published.end() ? own : *nearest;
}

Rulebook copyToAdapt(const Rulebook& rulebook, const QString& name, const QSet<QString>& taken) {
    Rulebook copy = rulebook;
    copy.name = name;
    const QString stem = publishedBaseOf(rulebook).id + afterBase + slugOf(name);
    copy.id = stem;
    for (int count = 2; taken.contains(copy.id); ++count)
        copy.id = u"%1-%2"_s.arg(stem).arg(count);
    return copy;
}

bool isAdapted(const Rulebook& rulebook) {
    return rulebook.id.contains(afterBase);
}

} // namespace setfolio
