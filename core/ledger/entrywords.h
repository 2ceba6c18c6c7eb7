// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The words of FORMAT.md for values that are one of a few.
#pragma once

#include "core/match/entry.h"

#include <QLatin1StringView>

#include <algorithm>
#include <array>
#include <optional>

namespace setfolio {

template <typename T>
struct EntryWord {
    T value;
    QLatin1StringView word;
};

/// The table of words of a type.
template <typename T>
inline constexpr auto entryWords = nullptr;

template <>
inline constexpr auto entryWords<Team> = std::to_array<EntryWord<Team>>(
    {{Team::Home, QLatin1StringView("home")}, {Team::Visitors, QLatin1StringView("visitors")}});

template <>
inline constexpr auto
    entryWords<Role> = std::to_array<EntryWord<Role>>({{Role::FirstReferee, QLatin1StringView("first-referee")},
                                                       {Role::SecondReferee, QLatin1StringView("second-referee")},
                                                       {Role::Scorer, QLatin1StringView("scorer")},
                                                       {Role::AssistantScorer, QLatin1StringView("assistant-scorer")},
                                                       {Role::Timer, QLatin1StringView("timer")},
                                                       {Role::LineJudge, QLatin1StringView("line-judge")}});

template <>
inline constexpr auto entryWords<Again> = std::to_array<EntryWord<Again>>(
    {{Again::Replay, QLatin1StringView("replay")}, {Again::ReServe, QLatin1StringView("re-serve")}});

template <>
inline constexpr auto entryWords<LiberoServing> = std::to_array<EntryWord<LiberoServing>>(
    {{LiberoServing::Begins, QLatin1StringView("begins")}, {LiberoServing::Ends, QLatin1StringView("ends")}});

/// The word for a value.
template <typename T>
[[nodiscard]] QLatin1StringView entryWord(T value) {
    const auto& words = entryWords<T>;
    const auto found = std::find_if(words.begin(), words.end(), [&](const auto& word) { return word.value == value; });
    return found == words.end() ? QLatin1StringView() : found->word;
}

/// The value of a word, if it is one of them.
template <typename T>
[[nodiscard]] std::optional<T> valueOfEntryWord(const QString& text) {
    const auto& words = entryWords<T>;
    const auto found = std::find_if(words.begin(), words.end(), [&](const auto& word) { return word.word == text; });
    return found == words.end() ? std::nullopt : std::optional<T>(found->value);
}

} // namespace setfolio
