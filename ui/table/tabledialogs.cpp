// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/tabledialogs.h"

#include "ui/dialogs/copydialog.h"
#include "ui/dialogs/lineupdialog.h"
#include "ui/dialogs/officialsdialog.h"
#include "ui/dialogs/rosterdialog.h"
#include "ui/dialogs/setdialogs.h"
#include "ui/dialogs/tossdialog.h"
#include "ui/print/preview.h"
#include "ui/signoff/reopendialog.h"
#include "ui/signoff/signoffdialog.h"
#include "ui/table/interval.h"
#include "ui/wording/tablewords.h"

#include <QFileInfo>

namespace setfolio {

namespace {

template <typename Dialog>
std::optional<Answer> answerOf(Dialog&& dialog) {
    if (dialog.exec() != QDialog::Accepted)
        return std::nullopt;
    return Answer{dialog.result(), dialog.overruled()};
}

} // namespace

TableDialogs standardDialogs(const SheetFonts& fonts, const Clock& clock) {
    TableDialogs dialogs;
    dialogs.toss = [](QWidget* parent, const MatchState& state) { return answerOf(TossDialog(state, parent)); };
    dialogs.lineUp = [clock](QWidget* parent, const MatchState& state, Team team) {
        std::vector<Answer> answers;
        LineUpDialog dialog(state, team, parent);
        dialog.countDown([&] {
            const std::optional<Countdown> countdown = countdownNow(state, clock);
            return countdown ? LineUpDialog::Deadline{countdownWords(*countdown), countdown->late}
                             : LineUpDialog::Deadline{};
        });
        if (dialog.exec() == QDialog::Accepted)
            for (const LineUpGiven& given : dialog.result())
                answers.push_back({given.lineUp, given.overruled});
        return answers;
    };
    dialogs.roster = [](QWidget* parent, const MatchState& state, Team team) {
        return answerOf(RosterDialog(state, team, parent));
    };
    dialogs.officials = [](QWidget* parent, const MatchState& state) -> std::optional<Answer> {
        OfficialsDialog dialog(state, parent);
        return dialog.exec() == QDialog::Accepted ? std::optional(Answer{dialog.result(), {}}) : std::nullopt;
    };
    dialogs.setEnd = [](QWidget* parent, const MatchState& state, QTime now) {
        return answerOf(SetEndDialog(state, now, QLocale(), parent));
    };
    dialogs.closeMatch = [](QWidget* parent, const MatchState& state) {
        return answerOf(MatchCloseDialog(state, QLocale(), parent));
    };
    dialogs.signOff = [fonts](QWidget* parent, Recorder& recorder, std::optional<int> set) {
        SignOffDialog(recorder, set, fonts, parent).exec();
    };
    dialogs.reopen = [](QWidget* parent, const MatchState& state, std::optional<int> set) -> std::optional<Answer> {
        ReopenDialog dialog(state, set, parent);
        if (dialog.exec() != QDialog::Accepted)
            return std::nullopt;
        return Answer{dialog.result(), std::nullopt};
    };
    dialogs.print = [fonts, clock](QWidget* parent, const MatchFile& file) {
        PreviewOptions options;
        options.locale = QLocale();
        options.folder = QFileInfo(file.ledger().path()).absolutePath();
        options.utcNow = clock.utc;
        options.choices = rememberedChoices();
        options.remember = remember;
        Preview({file.record(), file.ledger().entries()}, fonts, options, parent).exec();
    };
    dialogs.saveCopy = [](QWidget* parent, const MatchFile& file) {
        const QString folder = QFileInfo(file.ledger().path()).absolutePath();
        CopyDialog(file.ledger().entries(), folder, systemCalls(), parent).exec();
    };
    return dialogs;
}

} // namespace setfolio
