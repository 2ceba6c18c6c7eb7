// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/windowscenes.h"
#include "ui/dialogs/newmatchdialog.h"
#include "ui/dialogs/teambookdialog.h"
#include "ui/help/helpdialog.h"
#include "ui/help/keysdialog.h"

#include <QPushButton>
#include <QTemporaryDir>

namespace setfolio::testing {

namespace {

/// A window with the folder of its team book.
template <typename Window>
struct WithBook {
    QTemporaryDir folder;
    TeamBook book{folder.path()};
    std::unique_ptr<Window> window;
};

ShownWindow teamBook(bool filled) {
    auto scene = std::make_shared<WithBook<TeamBookDialog>>();
    const MatchState match = withRosters().state();
    for (const Team team : bothTeams)
        if (filled && !scene->book.keep(bookTeamOf(match, team)))
            qFatal("no team book");
    scene->window = std::make_unique<TeamBookDialog>(scene->book, filled ? match : MatchState());
    showActive(*scene->window);
    return {scene, scene->window.get()};
}

ShownWindow newMatchFromBook(int page) {
    auto scene = std::make_shared<WithBook<NewMatchDialog>>();
    const MatchState last = withRosters().state();
    scene->window = std::make_unique<NewMatchDialog>(draftAfter(last), QStringLiteral("/matches"), QLocale::c());
    MatchState withOfficials = last;
    const auto referee = MatchBuilder().add(Officials{{{Role::FirstReferee, QStringLiteral("R. Tarn")}}});
    withOfficials.officials = referee.state().officials;
    scene->window->offer(scene->book, withOfficials);
    showActive(*scene->window);
    for (int turned = 1; turned < page; ++turned)
        childOf<QPushButton>(*scene->window, "next")->click();
    return {scene, scene->window.get()};
}

template <typename Window, typename... Arguments>
ShownWindow make(Arguments&&... arguments) {
    auto window = std::make_shared<Window>(std::forward<Arguments>(arguments)...);
    showActive(*window);
    return {window, window.get()};
}

} // namespace

std::vector<WindowScene> bookScenes() {
    return {
        {"team book", [] { return teamBook(true); }},
        {"team book without teams", [] { return teamBook(false); }},
        {"new match: home team, with the team book", [] { return newMatchFromBook(2); }},
        {"new match: officials of the last match", [] { return newMatchFromBook(4); }},
        {"help", [] { return make<HelpDialog>(); }},
        {"keys", [] { return make<KeysDialog>(ChangedKeys()); }},
    };
}

} // namespace setfolio::testing
