// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Who is at the line? The number seen there, and the ruling when it was the wrong one.
#pragma once

#include "ui/table/entrybar.h"

namespace setfolio {

/// Before the contact the number is only noted. After it the ruling is offered: point and serve to the opponents, and
/// the points of the present term to be taken back.
class ServerBar : public EntryBar {
    Q_OBJECT

public:
    explicit ServerBar(Recorder& recorder, QWidget* parent = nullptr);

    void open();

protected:
    [[nodiscard]] std::optional<Entry> drafted() const override;
    [[nodiscard]] QString prompt() const override;
    void goToMissing() override;
    void settled(const Entry& entry) override;

private:
    [[nodiscard]] Team team() const;
    [[nodiscard]] bool isRuling() const;
    [[nodiscard]] ShirtNumber expected() const;
    void offerRuling();
    void teamChanged();
    void ruledChanged();
    void offerPoints();
    [[nodiscard]] std::optional<EntryNumber> takenBackFrom() const;

    NumberPick* m_number;
    OptionPick* m_ruled;
    OptionPick* m_team;
    NumberPick* m_back;
};

} // namespace setfolio
