// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The bars of the table: at most one is open, and it lies over the middle of the deck.
#pragma once

#include "ui/table/look.h"
#include "ui/table/recorder.h"

#include <QObject>
#include <QRect>

#include <array>

namespace setfolio {

class AskBar;
class CardBar;
class ChoiceBar;
class FormBar;
class InlineBar;
class LiberoBar;
class RepairBar;
class ServerBar;
class SubstitutionBar;

class InlineBars : public QObject {
    Q_OBJECT

public:
    /// The bars are children of `ground`.
    InlineBars(Recorder& recorder, QWidget& ground);

    void setLook(const Look& look);
    /// Where the middle of the deck lies in the ground; a bar that needs more room grows upwards.
    void setPlace(const QRect& middle);
    void dismiss();
    [[nodiscard]] bool isOpen() const;

    /// Each closes the others first.
    [[nodiscard]] SubstitutionBar& substitution();
    [[nodiscard]] AskBar& ask();
    [[nodiscard]] ChoiceBar& choice();
    [[nodiscard]] LiberoBar& libero();
    [[nodiscard]] ServerBar& server();
    [[nodiscard]] CardBar& card();
    [[nodiscard]] FormBar& form();
    [[nodiscard]] RepairBar& repair();

private:
    [[nodiscard]] std::array<InlineBar*, 8> all() const;
    void closeOthers(const InlineBar* but);
    template <typename Bar>
    [[nodiscard]] Bar& alone(Bar* bar) {
        closeOthers(bar);
        return *bar;
    }
    void arrange(InlineBar& bar);

    QWidget& m_ground;
    QRect m_middle;
    bool m_scrolls = false; ///< the ground may grow, for the window to scroll
    SubstitutionBar* m_substitution;
    AskBar* m_ask;
    ChoiceBar* m_choice;
    LiberoBar* m_libero;
    ServerBar* m_server;
    CardBar* m_card;
    FormBar* m_form;
    RepairBar* m_repair;
};

} // namespace setfolio
