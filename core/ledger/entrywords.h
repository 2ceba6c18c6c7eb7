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

template <>
inline constexpr auto entryWords<ForfeitKind> = std::to_array<EntryWord<ForfeitKind>>(
    {{ForfeitKind::Default, QLatin1StringView("default")}, {ForfeitKind::Incomplete, QLatin1StringView("incomplete")}});

template <>
inline constexpr auto entryWords<Scope> = std::to_array<EntryWord<Scope>>({{Scope::Set, QLatin1StringView("set")},
                                                                           {Scope::Match, QLatin1StringView("match")}});

template <>
inline constexpr auto entryWords<GoOn> = std::to_array<EntryWord<GoOn>>(
    {{GoOn::AsItStood, QLatin1StringView("as-it-stood")}, {GoOn::SetAgain, QLatin1StringView("set-again")}});

template <>
inline constexpr auto entryWords<SubstitutionKind> =
    std::to_array<EntryWord<SubstitutionKind>>({{SubstitutionKind::Regular, QLatin1StringView("regular")},
                                                {SubstitutionKind::Exceptional, QLatin1StringView("exceptional")}});

template <>
inline constexpr auto entryWords<BenchRole> =
    std::to_array<EntryWord<BenchRole>>({{BenchRole::Coach, QLatin1StringView("coach")},
                                         {BenchRole::AssistantCoach, QLatin1StringView("assistant-coach")},
                                         {BenchRole::SecondAssistantCoach, QLatin1StringView("second-assistant-coach")},
                                         {BenchRole::Therapist, QLatin1StringView("therapist")},
                                         {BenchRole::Doctor, QLatin1StringView("doctor")},
                                         {BenchRole::Other, QLatin1StringView("other")}});

template <>
inline constexpr auto entryWords<SanctionLevel> =
    std::to_array<EntryWord<SanctionLevel>>({{SanctionLevel::Warning, QLatin1StringView("warning")},
                                             {SanctionLevel::Penalty, QLatin1StringView("penalty")},
                                             {SanctionLevel::Expulsion, QLatin1StringView("expulsion")},
                                             {SanctionLevel::Disqualification, QLatin1StringView("disqualification")}});

template <>
inline constexpr auto entryWords<DelayLevel> = std::to_array<EntryWord<DelayLevel>>(
    {{DelayLevel::Warning, QLatin1StringView("warning")}, {DelayLevel::Penalty, QLatin1StringView("penalty")}});

template <>
inline constexpr auto entryWords<Signer> =
    std::to_array<EntryWord<Signer>>({{Signer::Scorer, QLatin1StringView("scorer")},
                                      {Signer::AssistantScorer, QLatin1StringView("assistant-scorer")},
                                      {Signer::Captains, QLatin1StringView("captain")},
                                      {Signer::Coaches, QLatin1StringView("coach")},
                                      {Signer::SecondReferee, QLatin1StringView("second-referee")},
                                      {Signer::FirstReferee, QLatin1StringView("first-referee")}});

template <>
inline constexpr auto entryWords<SealOf> = std::to_array<EntryWord<SealOf>>(
    {{SealOf::ThisFile, QLatin1StringView("this-file")}, {SealOf::Original, QLatin1StringView("original")}});

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
