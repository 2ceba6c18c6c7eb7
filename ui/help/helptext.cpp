// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/help/helptext.h"

#include "ui/table/keys.h"
#include "ui/wording/fill.h"

#include <QCoreApplication>
#include <QStringList>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

using C = TableCommand;

struct Help {
    Q_DECLARE_TR_FUNCTIONS(Help)
};

/// The key of a command; the menu that it stands in where it has none.
QString keyOf(TableCommand command) {
    const QString cap = keyCapOf(command);
    return cap.isEmpty() ? Help::tr("the %1 menu").arg(titleOf(infoOf(command).menu).remove(u'&')) : cap;
}

HelpPart rally() {
    return {
        Help::tr("A rally"),
        fill(Help::tr("%1 when the serve is contacted, then %2 if the side on your left wins the rally, or %3 if the "
                      "side on your right does. The winner alone is enough. %4 is a replay, %5 a re-serve, %6 a "
                      "serve that did not come."),
             {keyOf(C::ServeContacted), keyOf(C::LeftWins), keyOf(C::RightWins), keyOf(C::Replay), keyOf(C::ReServe),
              keyOf(C::NoServe)})};
}

HelpPart wrongServer() {
    return {
        Help::tr("A wrong server"),
        fill(Help::tr("%1 as soon as another number than the one shown stands at the line; type that number. The bar "
                      "says what to do before and after the contact."),
             {keyOf(C::WhoServes)})};
}

HelpPart substitution() {
    return {Help::tr("A substitution"),
            fill(Help::tr("%1 for the left side, %2 for the right side, then the number that comes in. The number that "
                          "goes out is proposed. Enter records it; the next one begins with the same key."),
                 {keyOf(C::LeftSubstitution), keyOf(C::RightSubstitution)})};
}

HelpPart libero() {
    return {
        Help::tr("A libero"),
        fill(Help::tr("%1 for the left side, %2 for the right side: the bar says what is possible now, for whom she "
                      "comes in and who comes back."),
             {keyOf(C::LeftLibero), keyOf(C::RightLibero)})};
}

HelpPart timeOut() {
    return {Help::tr("A time-out"),
            fill(Help::tr("%1 for the left side, %2 for the right side. Its card counts down and shows what to compare "
                          "with the scoreboard. %3 puts the card away."),
                 {keyOf(C::LeftTimeOut), keyOf(C::RightTimeOut), keyOf(C::GoToLive)})};
}

HelpPart card() {
    return {Help::tr("A card or a delay"),
            fill(Help::tr("%1 for the left side, %2 for the right side, then the number or the letter of who it is "
                          "given to. The next step of the rulebook’s ladder is proposed with its consequence."),
                 {keyOf(C::LeftCard), keyOf(C::RightCard)})};
}

HelpPart correction() {
    return {
        Help::tr("A correction"),
        fill(Help::tr("%1 takes back the last entry, %2 puts it in again. For an earlier one press %3, or click its "
                      "mark on the sheet: strike it, change it, or put in what was missed before it. What that "
                      "changes is shown before Enter records it."),
             {keyOf(C::Undo), keyOf(C::Redo), keyOf(C::Correct)})};
}

HelpPart nextStep() {
    return {Help::tr("Before and after a set"),
            fill(Help::tr("%1 does what the amber card asks for: the toss, the line-ups, the start and the end of the "
                          "set, the close of the match."),
                 {keyOf(C::NextStep)})};
}

HelpPart signing() {
    return {Help::tr("Signing"),
            fill(Help::tr("%1 shows what the referee looks over and signs on the screen, of a set or of the match. %2 "
                          "prints the sheets, also at any time during a match."),
                 {keyOf(C::SignOff), keyOf(C::Print)})};
}

HelpPart copy() {
    return {
        Help::tr("A copy for others"),
        fill(Help::tr("%1 saves the match once more: as a match file, as a table for a spreadsheet or as data, with "
                      "all names or with the numbers only. What is in it is said before it is saved."),
             {keyOf(C::SaveCopy)})};
}

HelpPart bars() {
    return {Help::tr("In a bar"),
            Help::tr("The letters on its buttons choose, Tab goes on, Enter records, Esc closes it. Everything can be "
                     "clicked or tapped too.")};
}

QString rows(TableMenu menu) {
    QString html;
    for (const HelpKey& key : helpKeys(menu))
        html += u"<tr><td>%1</td><td><b>%2</b></td></tr>"_s.arg(key.command.toHtmlEscaped(), key.keys.toHtmlEscaped());
    return html;
}

QString table(TableMenu menu) {
    const QString title = titleOf(menu).remove(u'&').toHtmlEscaped();
    return u"<h3>%1</h3><table cellpadding=\"0\">%2</table>"_s.arg(title, rows(menu));
}

} // namespace

std::vector<HelpPart> helpParts() {
    return {nextStep(), rally(),      wrongServer(), substitution(), libero(), timeOut(),
            card(),     correction(), signing(),     copy(),         bars()};
}

std::vector<HelpKey> helpKeys(TableMenu menu) {
    std::vector<HelpKey> keys;
    for (const CommandInfo& info : allCommands()) {
        QStringList caps;
        for (const QKeySequence& key : keysOf(info.command))
            if (const QString cap = capOf(key); !caps.contains(cap))
                caps << cap;
        if (info.menu == menu && !caps.isEmpty())
            keys.push_back({nameOf(info.command).remove(u'…'), caps.join(u", "_s)});
    }
    return keys;
}

QString helpPage() {
    QString html = u"<h2>%1</h2>"_s.arg(Help::tr("How things are entered").toHtmlEscaped());
    for (const HelpPart& part : helpParts())
        html += u"<p><b>%1.</b> %2</p>"_s.arg(part.title.toHtmlEscaped(), part.how.toHtmlEscaped());
    html += u"<h2>%1</h2>"_s.arg(Help::tr("All keys").toHtmlEscaped());
    html += u"<table width=\"100%\"><tr><td width=\"50%\">"_s + table(TableMenu::Rally) + table(TableMenu::Set) +
            u"</td><td>"_s;
    for (const TableMenu menu : {TableMenu::Sheet, TableMenu::View, TableMenu::Match, TableMenu::Help})
        html += table(menu);
    return html + u"</td></tr></table>"_s;
}

} // namespace setfolio
