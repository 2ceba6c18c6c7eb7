// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/rulebookwords.h"

#include "core/record/shown.h"
#include "core/rules/rulebooksettings.h"
#include "core/rules/settingwords.h"
#include "ui/wording/fill.h"
#include "ui/wording/rulebooklabels.h"

#include <QCoreApplication>
#include <QDir>
#include <QStringList>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::RulebookWords)
};

/// "3 min", "1 min 30 s", "45 s"
QString duration(int seconds) {
    QStringList parts;
    if (seconds >= 120)
        parts << Say::tr("%1 min").arg(seconds / 60);
    if (seconds < 120 || seconds % 60 != 0)
        parts << Say::tr("%1 s").arg(seconds < 120 ? seconds : seconds % 60);
    return parts.join(u' ');
}

QString listed(const QStringList& words) {
    return words.isEmpty() ? Say::tr("none") : words.join(QStringLiteral(", "));
}

template <typename Enum>
QString phraseFor(Enum value) {
    return settingPhrase(QLatin1String(wordsOf<Enum>[static_cast<std::size_t>(value)]));
}

/// "penalty (red, point)"
QString step(const CardStep& step) {
    const QString cards = phraseFor(step.cards);
    return QStringLiteral("%1 (%2)").arg(phraseFor(step.level), step.point ? Say::tr("%1, point").arg(cards) : cards);
}

struct Value {
    const Rulebook& rulebook;
    QString key;

    QString operator()(int number) const {
        return key.endsWith(QLatin1String("seconds")) ? duration(number) : QString::number(number);
    }
    QString operator()(const NumberSetting& number) const { return (*this)(rulebook.*number.field); }
    QString operator()(const OptionalSetting& number) const {
        const std::optional<int>& value = rulebook.*number.field;
        return value ? (*this)(*value) : settingWithoutNumber(key);
    }
    QString operator()(const ListSetting& list) const {
        QStringList words;
        for (const int number : rulebook.*list.field)
            words << QString::number(number);
        return listed(words);
    }
    QString operator()(const FlagSetting& flag) const { return rulebook.*flag.field ? Say::tr("yes") : Say::tr("no"); }
    QString operator()(const WordSetting& word) const {
        return settingPhrase(QLatin1String(word.words[word.get(rulebook)]));
    }
    QString operator()(const LadderSetting& ladder) const {
        QStringList words;
        for (const CardStep& rung : rulebook.*ladder.field)
            words << step(rung);
        return listed(words);
    }
    QString operator()(const SignersSetting& signers) const {
        QStringList words;
        for (const Signer signer : rulebook.*signers.field)
            words << phraseFor(signer);
        return listed(words);
    }
};

QString valueWords(const Setting& setting, const Rulebook& rulebook) {
    return std::visit(Value{rulebook, QString::fromLatin1(setting.key)}, setting.how);
}

} // namespace

std::vector<SettingWords> wordsFor(const Rulebook& rulebook) {
    std::vector<SettingWords> words;
    QStringList rest = rulebook.sources.keys();
    for (const Setting& setting : rulebookSettings()) {
        const QString key = QString::fromLatin1(setting.key);
        rest.removeAll(key);
        const Source source = rulebook.sources.value(key);
        words.push_back({key, settingLabel(key), valueWords(setting, rulebook), source.text, source.open});
    }
    for (const QString& key : rest)
        words.push_back(
            {key, settingLabel(key), {}, rulebook.sources.value(key).text, rulebook.sources.value(key).open});
    return words;
}

QString sourceWords(const SettingWords& setting) {
    return setting.open ? fill(Say::tr("%1. Look it up before the season."), {setting.source})
                        : asShown(setting.source);
}

QString valueWords(const QString& key, const Rulebook& rulebook) {
    const Setting* setting = settingOf(key);
    return setting ? valueWords(*setting, rulebook) : QString();
}

QString gradeWords(const Source& source) {
    if (source.grade == QLatin1String("A"))
        return Say::tr("Grade A: the rule-making body's own text.");
    return source.grade == QLatin1String("B") ? Say::tr("Grade B: teaching text of an association.") : QString();
}

QString openPointsWords(std::size_t count) {
    if (count == 0)
        return Say::tr("No open points: everything has its source.");
    if (count == 1)
        return Say::tr("Nothing has to be done now: the match can start with this rulebook as it is. One setting "
                       "differs between leagues or is not published; look it up before the season. It stands under "
                       "“Open points”.");
    return Say::tr("Nothing has to be done now: the match can start with this rulebook as it is. %1 settings differ "
                   "between leagues or are not published; look them up before the season. They stand under “Open "
                   "points”.")
        .arg(count);
}

QString adaptingProblem(const RulebookError& error) {
    const std::pair<QLatin1String, QString> reasons[] = {
        {QLatin1String("best-of"), Say::tr("choose at least one number.")},
        {QLatin1String("cap"), Say::tr("it cannot be below the points that win a set.")},
        {QLatin1String("time-out-warning-seconds"), Say::tr("it cannot come after the end of the time-out.")},
        {QLatin1String("highest-number"), Say::tr("it cannot be below the lowest one.")},
    };
    for (const auto& [key, reason] : reasons)
        if (error.setting == key)
            return QStringLiteral("%1: %2").arg(settingLabel(error.setting), reason);
    return Say::tr("%1: this value cannot be used. Put it back, or choose another one.")
        .arg(settingLabel(error.setting));
}

QString rulebookFileProblem(const QString& path, const RulebookError& error) {
    const QString file = QDir::toNativeSeparators(path);
    const QString label = settingLabel(error.setting);
    const QString setting = label == error.setting ? QStringLiteral("“%1”").arg(label)
                                                   : QStringLiteral("“%1” (%2)").arg(label, error.setting);
    using enum RulebookError::Code;
    switch (error.code) {
    case NotJson:
        return Say::tr("%1 is not a rulebook: choose a file that was written as one.").arg(file);
    case UnknownSetting:
        return fill(Say::tr("%1 cannot be used: this version does not know %2. Take it out of the file, or have the "
                            "file written anew."),
                    {file, setting});
    case MissingSetting:
        return fill(Say::tr("%1 cannot be used: %2 is missing. Put it into the file, or adapt a published rulebook "
                            "instead."),
                    {file, setting});
    case WrongType:
    case OutOfRange:
        return fill(Say::tr("%1 cannot be used: %2 has a value that it cannot have. Put it right in the file, or adapt "
                            "a published rulebook instead."),
                    {file, setting});
    }
    Q_UNREACHABLE();
}

QString titleOf(const Rulebook& rulebook) {
    return rulebook.season.isEmpty() ? asShown(rulebook.name)
                                     : fill(QStringLiteral("%1, %2"), {rulebook.name, rulebook.season});
}

QString rulesDiffer() {
    return Say::tr("Rules differ by state and league, and the referee is right.");
}

} // namespace setfolio
