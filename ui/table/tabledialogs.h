// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The dialogs that the table asks for an entry. A test hands in its own answers.
#pragma once

#include "core/record/matchfile.h"
#include "ui/sheet/fonts.h"
#include "ui/table/clock.h"

#include <QString>
#include <QTime>

#include <functional>
#include <optional>
#include <vector>

class QWidget;

namespace setfolio {

class Recorder;

/// What a dialog asks to be recorded, with the referee's reason where it is against a finding.
struct Answer {
    Entry entry;
    std::optional<QString> overruled;
};

/// Each gives none when the scorer has thought better of it. `now` is the time of day.
struct TableDialogs {
    std::function<std::optional<Answer>(QWidget*, const MatchState&)> toss;
    std::function<std::vector<Answer>(QWidget*, const MatchState&, Team first)> lineUp; ///< of one team or of both
    std::function<std::optional<Answer>(QWidget*, const MatchState&, Team)> roster;
    std::function<std::optional<Answer>(QWidget*, const MatchState&)> officials;
    std::function<std::optional<Answer>(QWidget*, const MatchState&, QTime now)> setEnd;
    std::function<std::optional<Answer>(QWidget*, const MatchState&)> closeMatch;
    /// Of a set, or of the match; it records by itself.
    std::function<void(QWidget*, Recorder&, std::optional<int> set)> signOff;
    std::function<std::optional<Answer>(QWidget*, const MatchState&, std::optional<int> set)> reopen;
    std::function<void(QWidget*, const MatchFile&)> print;
    std::function<void(QWidget*, const MatchFile&)> saveCopy;
};

/// Those of ui/dialogs and ui/print. A PDF or a copy is first offered to the folder of the match file.
[[nodiscard]] TableDialogs standardDialogs(const SheetFonts& fonts, const Clock& clock);

} // namespace setfolio
