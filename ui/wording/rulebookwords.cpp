// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/rulebookwords.h"

#include "core/rules/rulebooksettings.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::RulebookWords)
};

struct Label {
    const char* key;
    const char* words;
};

// clang-format off
constexpr Label labels[] = {
    {"set-points",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Points that win a set")},
    {"deciding-set-points",       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Points that win the deciding set")},
    {"margin",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Lead that is needed")},
    {"cap",                       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Cap: a set ends at this score")},
    {"best-of",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Best of")},
    {"substitution-limit",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Substitutions, a team in a set")},
    {"substitution-notices",      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Substitutions told to the second referee")},
    {"time-outs",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Time-outs, a team in a set")},
    {"time-out-seconds",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Length of a time-out")},
    {"time-out-warning-seconds",  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Warning in a time-out, after")},
    {"maximum-liberos",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Liberos, at most")},
    {"libero-serve",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The libero serves")},
    {"serve-seconds",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Time to serve after the signal")},
    {"re-serves-per-term",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Re-serves in a term of service")},
    {"lowest-number",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Lowest shirt number")},
    {"highest-number",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Highest shirt number")},
    {"written-order",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Slot I of the receiving team holds")},
    {"interval-seconds",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Interval between sets")},
    {"first-line-up-seconds",     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "First line-up due before the end of the warm-up by")},
    {"line-up-seconds",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Later line-ups due before the end of the interval by")},
    // rules without a value
    {"alternate-first-serve",     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The first serve alternates from set to set")},
    {"change-sides",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The teams change sides after each set")},
    {"deciding-set-toss",         QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A new toss before the deciding set")},
    {"line-up-numbers",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Six different numbers, all on the roster")},
    {"line-up-libero",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "No libero among the six")},
    {"rotation-order",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The serving order is kept through the set")},
    {"substitution-slot",         QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A player comes back only to her own slot")},
    {"substitution-roster",       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Only players of the roster come in")},
    {"substitution-before-start", QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Substitutions before the set starts")},
    {"set-point-notice",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Set and match point are told")},
    {"last-time-out-notice",      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The last time-out is told")},
    {"roster-numbers",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "No number stands twice on a roster")},
};
// clang-format on

QString labelOf(const QString& key) {
    const auto* found =
        std::ranges::find_if(labels, [&key](const Label& label) { return key == QLatin1String(label.key); });
    return found == std::end(labels) ? key : Say::tr(found->words);
}

/// "3 min", "1 min 30 s", "45 s"
QString duration(int seconds) {
    QStringList parts;
    if (seconds >= 120)
        parts << Say::tr("%1 min").arg(seconds / 60);
    if (seconds < 120 || seconds % 60 != 0)
        parts << Say::tr("%1 s").arg(seconds < 120 ? seconds : seconds % 60);
    return parts.join(u' ');
}

QString listed(const std::vector<int>& numbers) {
    QStringList words;
    for (const int number : numbers)
        words << QString::number(number);
    return words.isEmpty() ? Say::tr("none") : words.join(QStringLiteral(", "));
}

QString valueOf(const Setting& setting, const Rulebook& rulebook) {
    struct Value {
        const Rulebook& rulebook;
        bool isDuration;
        QString operator()(const NumberSetting& number) const {
            const int value = rulebook.*number.field;
            return isDuration ? duration(value) : QString::number(value);
        }
        QString operator()(const OptionalSetting& number) const {
            const auto& value = rulebook.*number.field;
            return value ? QString::number(*value) : Say::tr("none");
        }
        QString operator()(const ListSetting& list) const { return listed(rulebook.*list.field); }
        QString operator()(const WrittenOrderSetting& order) const {
            return rulebook.*order.field == WrittenOrder::Serving ? Say::tr("position 2") : Say::tr("position 1");
        }
        QString operator()(const LiberoServeSetting& serve) const {
            return rulebook.*serve.field == LiberoServeRule::OneSlot ? Say::tr("in one slot a set") : Say::tr("never");
        }
    };
    return std::visit(Value{rulebook, QLatin1String(setting.key).endsWith(QLatin1String("seconds"))}, setting.how);
}

} // namespace

std::vector<SettingWords> wordsFor(const Rulebook& rulebook) {
    std::vector<SettingWords> words;
    QStringList rest = rulebook.sources.keys();
    for (const Setting& setting : rulebookSettings()) {
        const QString key = QString::fromLatin1(setting.key);
        rest.removeAll(key);
        words.push_back({key, labelOf(key), valueOf(setting, rulebook), rulebook.sources.value(key).text});
    }
    for (const QString& key : rest)
        words.push_back({key, labelOf(key), {}, rulebook.sources.value(key).text});
    return words;
}

QString titleOf(const Rulebook& rulebook) {
    return rulebook.season.isEmpty() ? rulebook.name : QStringLiteral("%1, %2").arg(rulebook.name, rulebook.season);
}

QString rulesDiffer() {
    return Say::tr("Rules differ by state and league, and the referee is right.");
}

} // namespace setfolio
