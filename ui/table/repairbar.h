// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Corrections: an entry is chosen and struck, changed, or something is put in before it. What has no answer in the bar
/// itself is recorded at the table, which then stands as it did at that place, and is looked at here once more.
#pragma once

#include "ui/table/entrybar.h"
#include "ui/table/repair.h"

class QLabel;
class QListWidget;

namespace setfolio {

/// What the correction changes is said before it is recorded.
class RepairBar : public EntryBar {
    Q_OBJECT

public:
    explicit RepairBar(Recorder& recorder, QWidget* parent = nullptr);

    void setLook(const Look& look) override;
    void setRoom(int width) override;
    /// Opens at an entry, or at the newest one.
    void open(EntryNumber at = {});
    /// Opens with what was recorded at the table for the place that the recorder holds.
    void confirm(const Entry& entry);
    [[nodiscard]] EntryNumber target() const;
    [[nodiscard]] QString preview() const;

Q_SIGNALS:
    /// The entry chosen cannot be corrected, since it is sealed.
    void sealMet(setfolio::EntryNumber entry);

protected:
    [[nodiscard]] std::optional<Entry> drafted() const override;
    [[nodiscard]] QString prompt() const override;
    [[nodiscard]] Findings findings(const Entry& entry) const override;
    [[nodiscard]] Outcome record(const Entry& entry, const QString& reason) override;
    void goToMissing() override;
    [[nodiscard]] bool corrects() const override { return true; }

private:
    enum class How : std::uint8_t { Strike, Change, PutIn };
    enum class Missed : std::uint8_t {
        LeftRally,
        RightRally,
        LeftSubstitution,
        RightSubstitution,
        LeftTimeOut,
        RightTimeOut,
        SomethingElse
    };
    [[nodiscard]] How how() const;
    [[nodiscard]] const Recorded* chosen() const;
    [[nodiscard]] bool isStanding() const;
    [[nodiscard]] std::optional<Placed> placed() const;
    [[nodiscard]] std::optional<Team> substitutionTeam() const;
    [[nodiscard]] std::optional<Entry> changed() const;
    [[nodiscard]] std::optional<Entry> missed() const;
    [[nodiscard]] std::optional<Entry> substitution(Team team) const;
    [[nodiscard]] bool mayChange() const;
    [[nodiscard]] bool isChangedHere() const;
    void recordAtTheTable(Placed::How how);
    void showRow(bool listed);
    void fillList(EntryNumber at);
    void offerMissed();
    void targetChanged();
    void howChanged();
    void arrangeRows();
    void offerNumbers();
    void draftChanged();
    void showPreview(const QString& words);

    EntryLog m_log;
    std::optional<Entry> m_drawnUp; ///< at the table, to be confirmed
    int m_room = 500;
    std::vector<How> m_hows; ///< what is offered for the chosen entry
    QListWidget* m_list;
    OptionPick* m_how;
    OptionPick* m_missed;
    NumberPick* m_in;
    NumberPick* m_out;
    QLineEdit* m_why;
    QLabel* m_preview;
};

} // namespace setfolio
