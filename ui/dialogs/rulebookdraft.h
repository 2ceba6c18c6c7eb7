// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A league's own copy of a published rulebook while it is being adapted: which values were changed, where they come
/// from, and what keeps the copy from being used.
#pragma once

#include "core/rules/rulebook.h"

#include <QJsonValue>
#include <QSet>

#include <optional>

namespace setfolio {

class RulebookDraft {
public:
    /// `own` is the copy as it stands; `published` what it is compared with.
    RulebookDraft(Rulebook published, Rulebook own);

    [[nodiscard]] const Rulebook& published() const { return m_published; }
    [[nodiscard]] const Rulebook& own() const { return m_own; }

    void setName(const QString& name) { m_own.name = name; }
    /// Changes a value. What is not the published value has the source "adapted"; the published one its own source.
    /// False, and nothing is changed, if the setting cannot have that value.
    bool setValue(const QString& key, const QJsonValue& value);
    /// Gives a setting, or a statement, the published value and source.
    void putBack(const QString& key);

    /// Whether the value is not the published one.
    [[nodiscard]] bool differs(const QString& key) const;
    /// How many values are not the published ones.
    [[nodiscard]] int differences() const;

    /// Whether it still has to be looked up before the season.
    [[nodiscard]] bool isOpen(const QString& key) const { return m_own.sources.value(key).open; }
    /// Whether it is an open point of the published rulebook, with the published value.
    [[nodiscard]] bool canBeLookedUp(const QString& key) const;
    /// Says of such a point that it was looked up and is as it stands, or that it was not.
    void setLookedUp(const QString& key, bool lookedUp);

    /// Where a changed or looked-up value comes from, in the words of the person who knows; may be empty.
    [[nodiscard]] QString note(const QString& key) const;
    void setNote(const QString& key, const QString& note);

    /// How the values do not fit one another; none if the copy can be used.
    [[nodiscard]] std::optional<RulebookError> problem() const;

private:
    Rulebook m_published;
    Rulebook m_own;
};

/// The published rulebook that an own one was made from: the one its id begins with, else the one it is nearest to.
[[nodiscard]] Rulebook publishedBaseOf(const Rulebook& own);
/// A copy of a rulebook to be adapted, under a name and with an id that none of `taken` is.
[[nodiscard]] Rulebook copyToAdapt(const Rulebook& rulebook, const QString& name, const QSet<QString>& taken);
/// Whether the id is that of an adapted copy.
[[nodiscard]] bool isAdapted(const Rulebook& rulebook);

} // namespace setfolio
