// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/signoffs.h"

#include "core/record/notes.h"

#include <algorithm>

namespace setfolio {
namespace {

/// Writes one entry into one sign-off, if it belongs there.
struct SignOffWriter {
    const SignOff& state;
    SignOffRecord& record;
    const Recorded& recorded;

    template <typename Kind>
    void operator()(const Kind& entry) const {
        if constexpr (std::is_same_v<Kind, Signed> || std::is_same_v<Kind, LeftUnsigned>)
            writeSignature(entry.who, entry);
        else if constexpr (std::is_same_v<Kind, Sealed>)
            writeSeal(entry);
        else if constexpr (std::is_same_v<Kind, Reopened>)
            writeReopening(entry);
    }

private:
    void writeSignature(const Signatory& who, std::variant<Signed, LeftUnsigned> how) const {
        if (std::ranges::find(state.signatures, recorded.number, &SignatureGiven::entry) == state.signatures.end())
            return;
        std::erase_if(record.signatures, [&](const SignatureRecord& signature) { return signature.who == who; });
        record.signatures.push_back({who, std::move(how), recorded.number, recorded.time});
    }
    void writeSeal(const Sealed& sealed) const {
        if (state.seal == recorded.number)
            record.seal = SealRecord{sealed.digest, sealed.of, recorded.number, recorded.time};
    }
    void writeReopening(const Reopened& reopened) const {
        if (state.reopened == recorded.number)
            record.reopened = ReopeningRecord{reopened.name, reopened.reason, recorded.number, recorded.time};
    }
};

/// The sheet that tells of an entry about a set, or about the match.
SetRecord* sheetFor(MatchRecord& record, std::optional<int> set) {
    const auto sheet = std::find_if(record.sets.rbegin(), record.sets.rend(), [set](const SetRecord& played) {
        return !played.cancelled && (!set || played.number == *set);
    });
    return sheet == record.sets.rend() ? nullptr : &*sheet;
}

/// What is told among the remarks: a protest, a place left unsigned, a reopening.
struct NoteOfSignOff {
    MatchRecord& record;
    const MatchState& state;
    const Recorded& recorded;

    template <typename Kind>
    void operator()(const Kind& entry) const {
        if constexpr (std::is_same_v<Kind, Signed>) {
            if (entry.protest)
                tell(entry.set);
        } else if constexpr (std::is_same_v<Kind, LeftUnsigned>) {
            tell(entry.set);
        } else if constexpr (std::is_same_v<Kind, Reopened>) {
            tellOfVoidSeals(entry);
        }
    }

private:
    void tell(std::optional<int> set) const {
        if (SetRecord* sheet = sheetFor(record, set))
            addNote(*sheet, EventNote{recorded, sheet->score, 0}, recorded.number);
    }
    void tellOfVoidSeals(const Reopened& reopened) const {
        for (std::size_t index = 0; index < state.signOffs.size(); ++index) {
            const SignOffRecord& signOff = record.signOffs[index];
            SetRecord* sheet = sheetFor(record, signOff.set);
            if (sheet && signOff.seal && state.signOffs[index].reopened == recorded.number)
                addNote(*sheet, ReopenedNote{reopened, signOff.seal->digest, sheet->score}, recorded.number);
        }
    }
};

/// What stands at the head and foot of a sealed sheet stays as it was signed.
void keepPeople(MatchRecord& record, const MatchState& state, int number, bool keep) {
    for (SetRecord& set : record.sets)
        if (set.number == number)
            set.people = keep ? std::optional(SheetPeople{state.officials.officials, state.rosters}) : std::nullopt;
}

/// What the sheet of a set shows, oldest first.
std::vector<SignOffRecord> signOffsOfSheet(const MatchRecord& record, const SetRecord& set) {
    const bool ofMatch = record.heading.opened.rulebook.signedFor == Scope::Match;
    std::vector<SignOffRecord> signOffs;
    for (const SignOffRecord& signOff : record.signOffs)
        if (signOff.set ? *signOff.set == set.number && !set.cancelled : ofMatch)
            signOffs.push_back(signOff);
    return signOffs;
}

} // namespace

void writeSignOff(MatchRecord& record, const MatchState& state, const Recorded& recorded) {
    while (record.signOffs.size() < state.signOffs.size())
        record.signOffs.push_back({state.signOffs[record.signOffs.size()].set, {}, std::nullopt, std::nullopt});
    for (std::size_t index = 0; index < state.signOffs.size(); ++index)
        std::visit(SignOffWriter{state.signOffs[index], record.signOffs[index], recorded}, recorded.entry);
    if (const auto* sealed = std::get_if<Sealed>(&recorded.entry); sealed && sealed->set)
        keepPeople(record, state, *sealed->set, true);
    if (const auto* reopened = std::get_if<Reopened>(&recorded.entry); reopened && reopened->set)
        keepPeople(record, state, *reopened->set, false);
    std::visit(NoteOfSignOff{record, state, recorded}, recorded.entry);
    for (SetRecord& set : record.sets)
        set.signOffs = signOffsOfSheet(record, set);
}

} // namespace setfolio
