// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/rulebookwords.h"

#include "core/rules/rulebooksettings.h"
#include "core/rules/settingwords.h"
#include "ui/wording/rulebooklabels.h"

#include <QCoreApplication>
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
    return setting.open ? Say::tr("%1. Look it up before the season.").arg(setting.source) : setting.source;
}

QString titleOf(const Rulebook& rulebook) {
    return rulebook.season.isEmpty() ? rulebook.name : QStringLiteral("%1, %2").arg(rulebook.name, rulebook.season);
}

QString rulesDiffer() {
    return Say::tr("Rules differ by state and league, and the referee is right.");
}

} // namespace setfolio
