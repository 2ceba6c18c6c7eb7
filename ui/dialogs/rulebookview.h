// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a rulebook says: each setting, its value, and where it comes from. Only to be read.
#pragma once

#include "core/rules/rulebook.h"

#include <QScrollArea>

namespace setfolio {

class RulebookView : public QScrollArea {
    Q_OBJECT

public:
    explicit RulebookView(QWidget* parent = nullptr);
    /// All it says, or only its open points.
    void setRulebook(const Rulebook& rulebook, bool onlyOpen);
};

} // namespace setfolio
