// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The last page of a new match: referees and crew. Every name may be left out.
#pragma once

#include "core/match/entry.h"

#include <QWidget>

#include <vector>

class QBoxLayout;
class QLineEdit;

namespace setfolio {

class OfficialsPage : public QWidget {
    Q_OBJECT

public:
    explicit OfficialsPage(const std::vector<Official>& officials, QWidget* parent = nullptr);

    [[nodiscard]] std::vector<Official> officials() const;
    [[nodiscard]] QString summary() const;
    /// A button that names those of the last match again, in the places that are empty.
    void offerLast(const std::vector<Official>& officials);

Q_SIGNALS:
    void changed();

private:
    struct Place {
        Role role;
        QLineEdit* name;
    };
    std::vector<Place> m_places;
    std::vector<Official> m_rest; ///< for whom there is no place here; they stay
    QBoxLayout* m_column = nullptr;
};

} // namespace setfolio
