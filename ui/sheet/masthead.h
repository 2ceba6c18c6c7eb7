// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The head of a page, alike on every sheet: plate, competition, match, and a row of fields.
#pragma once

#include "ui/sheet/scene.h"

#include <span>

namespace setfolio::sheet {

/// A label and what is filled in under it.
struct Field {
    QString label;
    QString value;
    double width = 17; ///< millimetres, the gap after it included
};

/// A solid plate 16 mm square with a word over a large numeral; a white place to write in where there is none.
void drawHeadPlate(Draft& draft, const Tag& tag, const QString& word, const QString& numeral);

/// Competition and match over a rule, as far as `right`; before the match how far the sheet is written, if it says so,
/// and whether persons are named on it.
void drawTitles(Draft& draft, const Tag& tag, const MatchOpened& opened, PageNumber page, double right, bool named,
                const QString& stands = {});

/// The fields beside the plate, over a pale rule that ends at `right`.
void drawFields(Draft& draft, const Tag& tag, std::span<const Field> fields, double right);

/// Where and when the match is played: venue, date, scheduled time.
[[nodiscard]] std::vector<Field> placeFields(const MatchOpened& opened, const QLocale& locale);

/// The head of every sheet but a set's: as wide as the live area, with the name of the sheet at its right.
struct Masthead {
    QString plateWord; ///< "SET"; empty for no plate's word
    QString plateNumeral;
    QString title;             ///< "Libero tracking sheet"
    std::vector<Field> fields; ///< after the place and the time
};
/// That of a sheet of the match: the plate tells the sets won.
[[nodiscard]] Masthead mastheadOfMatch(const MatchHeading& heading, const QString& title);
void drawMasthead(Draft& draft, const MatchOpened& opened, const SheetOptions& options, const Masthead& masthead,
                  PageNumber page);

} // namespace setfolio::sheet
