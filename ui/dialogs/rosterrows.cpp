// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rosterrows.h"

#include "core/ledger/limits.h"
#include "core/record/shown.h"

#include <map>

namespace setfolio {

namespace {

QString bareNumber(const QString& text) {
    const QString bare = text.trimmed();
    return bare.startsWith(u'#') ? bare.mid(1).trimmed() : bare;
}

/// Goes through the rows once and keeps in mind what was met before.
class Checker {
public:
    Checker(const Rulebook& rulebook, std::vector<RosterProblem>& problems)
        : m_rulebook(rulebook),
          m_problems(problems) {}

    void check(const RosterRow& row, int line) {
        checkNumber(row, line);
        if (row.captain && m_captain > 0)
            add({.code = Code::SecondCaptain, .line = line, .other = m_captain});
        else if (row.captain)
            m_captain = line;
        if (row.name.toUcs4().size() > limits::nameCharacters)
            add({.code = Code::NameTooLong, .line = line, .highest = static_cast<int>(limits::nameCharacters)});
    }

private:
    using Code = RosterProblem::Code;

    void checkNumber(const RosterRow& row, int line) {
        const QString bare = bareNumber(row.number);
        const ShirtNumber number = numberFromText(row.number);
        if (bare.isEmpty())
            return add({.code = Code::NumberMissing, .line = line, .text = row.name});
        if (!number.isValid())
            return add({.code = bare == u"00" ? Code::DoubleZero : Code::NotANumber, .line = line, .text = bare});
        if (number.value < m_rulebook.lowestNumber || number.value > m_rulebook.highestNumber)
            add({.code = Code::NumberNotAllowed,
                 .line = line,
                 .text = QString::number(number.value),
                 .lowest = m_rulebook.lowestNumber,
                 .highest = m_rulebook.highestNumber});
        const auto [first, isNew] = m_lineOf.emplace(number, line);
        if (!isNew)
            add({.code = Code::Doubled, .line = line, .text = QString::number(number.value), .other = first->second});
    }

    void add(RosterProblem problem) { m_problems.push_back(std::move(problem)); }

    const Rulebook& m_rulebook;
    std::vector<RosterProblem>& m_problems;
    std::map<ShirtNumber, int> m_lineOf;
    int m_captain = 0;
};

} // namespace

QString plainLine(const QString& text) {
    QString plain;
    for (const char32_t sign : asTaken(text).simplified().toUcs4()) { // toUcs4 turns half a pair into U+FFFD
        if (sign != QChar::ReplacementCharacter)
            plain += QString::fromUcs4(&sign, 1);
    }
    return plain;
}

ShirtNumber numberFromText(const QString& text) {
    const QString bare = bareNumber(text);
    if (bare.isEmpty() || bare.size() > 2 || bare == u"00")
        return {};
    int value = 0;
    for (const QChar sign : bare) {
        if (!sign.isDigit())
            return {};
        value = value * 10 + sign.digitValue();
    }
    return ShirtNumber(value);
}

std::vector<RosterProblem> problemsOf(std::span<const RosterRow> rows, const Rulebook& rulebook) {
    std::vector<RosterProblem> problems;
    Checker checker(rulebook, problems);
    int line = 0;
    for (const RosterRow& row : rows) {
        ++line;
        if (!row.isEmpty())
            checker.check(row, line);
    }
    return problems;
}

std::vector<RosterPlayer> playersOf(std::span<const RosterRow> rows) {
    std::vector<RosterPlayer> players;
    for (const RosterRow& row : rows) {
        const ShirtNumber number = numberFromText(row.number);
        if (number.isValid())
            players.push_back({number, plainLine(row.name), row.captain, row.libero});
    }
    return players;
}

std::vector<RosterRow> rowsOf(std::span<const RosterPlayer> players) {
    std::vector<RosterRow> rows;
    for (const RosterPlayer& player : players)
        rows.push_back({QString::number(player.number.value), player.name, player.captain, player.libero});
    return rows;
}

} // namespace setfolio
