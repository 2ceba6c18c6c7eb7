// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/settingeditor.h"

#include "core/rules/settingvalue.h"
#include "ui/dialogs/ladderfield.h"
#include "ui/dialogs/numberstepper.h"
#include "ui/dialogs/settingchoices.h"
#include "ui/wording/rulebooklabels.h"

namespace setfolio {

namespace {

struct Maker {
    const Rulebook& rulebook;
    QString key;
    QJsonValue value;

    SettingEditor* operator()(const NumberSetting& number) const {
        return new NumberStepper({key, number.lowest, number.highest, false}, value);
    }
    SettingEditor* operator()(const OptionalSetting& number) const {
        return new NumberStepper({key, number.lowest, number.highest, true}, value);
    }
    SettingEditor* operator()(const ListSetting& list) const { return new NumberToggles(list, value); }
    SettingEditor* operator()(const FlagSetting&) const {
        return new OneOfWords({{OneOfWords::tr("yes"), true}, {OneOfWords::tr("no"), false}}, value);
    }
    SettingEditor* operator()(const WordSetting& word) const {
        std::vector<OneOfWords::Choice> choices;
        for (const char* const one : word.words)
            choices.push_back({settingPhrase(QLatin1String(one)), QLatin1String(one)});
        return new OneOfWords(choices, value);
    }
    SettingEditor* operator()(const LadderSetting& ladder) const { return new LadderField(rulebook.*ladder.field); }
    SettingEditor* operator()(const SignersSetting& signers) const { return new SignersField(rulebook.*signers.field); }
};

} // namespace

void SettingEditor::takeKeyboard() {
    if (m_first)
        m_first->setFocus(Qt::TabFocusReason);
}

SettingEditor* makeSettingEditor(const Setting& setting, const Rulebook& rulebook) {
    return std::visit(Maker{rulebook, QString::fromLatin1(setting.key), valueOf(rulebook, setting)}, setting.how);
}

} // namespace setfolio
