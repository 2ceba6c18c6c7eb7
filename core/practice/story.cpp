// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/practice/story.h"

#include "core/ledger/entrylist.h"
#include "core/match/fold.h"

#include <QFile>

#include <algorithm>

static void loadPracticeResources() {
    Q_INIT_RESOURCE(practice);
}

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int msecsPerMinute = 60 * 1000;

std::vector<Recorded> numbered(std::vector<RecordMembers> list) {
    std::vector<Recorded> entries;
    for (RecordMembers& members : list) {
        const EntryNumber number(static_cast<std::uint32_t>(entries.size() + 1));
        entries.push_back({number, members.time.value_or(QDateTime()), std::move(members.entry),
                           std::move(members.overruled), std::move(members.placed)});
    }
    return entries;
}

/// What the table itself notes is not told: it is the learner's to find.
bool isSeenOnCourt(const Entry& entry) {
    return !std::holds_alternative<ServerSeen>(entry) && !std::holds_alternative<SheetCompared>(entry);
}

/// The steps of this term from the serve of the first rally that a ruling takes back, or from the last serve, were
/// served by the player who was found at the line.
void tellWrongServer(std::vector<StoryStep>& steps, const WrongServer& ruling) {
    bool first = !ruling.takenBackFrom.has_value();
    for (auto step = steps.rbegin(); step != steps.rend(); ++step) {
        step->server = ruling.served;
        if (step->told.number == ruling.takenBackFrom)
            first = true;
        else if (first && std::holds_alternative<ServeContacted>(step->told.entry))
            return;
    }
}

std::vector<StoryStep> stepsOf(const std::vector<Recorded>& entries, std::size_t given) {
    std::vector<StoryStep> steps;
    for (std::size_t index = given; index < entries.size(); ++index) {
        const Recorded& recorded = entries[index];
        if (!isSeenOnCourt(recorded.entry))
            continue;
        const MatchState before = fold(std::span(entries).first(index));
        if (const auto* ruling = std::get_if<WrongServer>(&recorded.entry))
            tellWrongServer(steps, *ruling);
        steps.push_back({recorded, before, serverOf(before.set())});
    }
    return steps;
}

} // namespace

const std::vector<QString>& storyIds() {
    static const std::vector<QString> ids{u"1-plain-set"_s, u"2-substitutions"_s, u"3-libero-serves"_s,
                                          u"4-wrong-server"_s, u"5-corrected-call"_s};
    return ids;
}

std::optional<Story> storyOf(const QString& id, const QByteArray& list) {
    auto read = readEntryList(list);
    if (!read)
        return std::nullopt;
    Story story{id, {}, numbered(std::move(*read)), {}};
    const auto start = std::find_if(story.right.begin(), story.right.end(), [](const Recorded& recorded) {
        return std::holds_alternative<SetStarted>(recorded.entry);
    });
    if (start == story.right.end())
        return std::nullopt;
    story.given.assign(story.right.begin(), start);
    story.steps = stepsOf(story.right, story.given.size());
    return story;
}

Story practiceStory(const QString& id) {
    loadPracticeResources();
    QFile file(u":/practice/"_s + id + u".list.jsonl"_s);
    const bool isOpen = file.open(QIODevice::ReadOnly);
    Q_ASSERT(isOpen);
    auto story = storyOf(id, isOpen ? file.readAll() : QByteArray());
    Q_ASSERT(story);
    return story ? std::move(*story) : Story{};
}

QTime timeOfDayAfter(const Story& story, std::size_t told) {
    if (story.steps.empty() || story.given.empty())
        return {};
    const Recorded& start = story.steps.front().told; // known by both clocks
    const QTime atStart = std::get<SetStarted>(start.entry).at;
    const Recorded& newest =
        told == 0 ? story.given.back() : story.steps.at(std::min(told, story.steps.size()) - 1).told;
    const int minutes = newest.time.time().msecsSinceStartOfDay() / msecsPerMinute -
                        start.time.time().msecsSinceStartOfDay() / msecsPerMinute;
    return atStart.addSecs(60 * minutes);
}

std::vector<Recorded> rightAfter(const Story& story, std::size_t told) {
    if (told >= story.steps.size())
        return story.right;
    const EntryNumber next = story.steps[told].told.number;
    return {story.right.begin(), story.right.begin() + static_cast<std::ptrdiff_t>(next.value - 1)};
}

} // namespace setfolio
