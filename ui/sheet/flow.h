// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How wide the round columns are and how large the marks: decided from widths alone, with nothing drawn.
#pragma once

#include <array>
#include <span>
#include <vector>

namespace setfolio {

/// The sizes a term of service can be written in, from the largest down. The first nine stand on one line; the last two
/// are folded into two.
struct SizeStep {
    int value = 0;

    static constexpr int count = 11;
    static constexpr int oneLine = 9; ///< how many stand on one line
    static constexpr int eased = 5;   ///< how many of them are tried before smaller ones are thought of
    [[nodiscard]] constexpr bool isFolded() const { return value >= oneLine; }
    /// Of a one-line size: 1.00, 0.97 ... 0.76.
    [[nodiscard]] constexpr double scale() const { return 1.0 - 0.03 * value; }
    auto operator<=>(const SizeStep&) const = default;
};
inline constexpr SizeStep smallestOneLine{SizeStep::oneLine - 1};
inline constexpr SizeStep foldedMedium{SizeStep::oneLine};
inline constexpr SizeStep foldedSmall{SizeStep::oneLine + 1};

/// A term to be placed: its column, counted from 0, and the narrowest column that holds it in each size.
struct FlowTerm {
    int column = 0;
    std::array<double, SizeStep::count> need{};
};

/// The columns of one page.
struct FlowPage {
    int firstColumn = 0;
    std::vector<double> widths; ///< they fill the page's width
    SizeStep size;              ///< what its marks are drawn in, but for the terms that say otherwise
    bool operator==(const FlowPage&) const = default;
};

struct Flow {
    std::vector<FlowPage> pages;
    std::vector<SizeStep> steps; ///< one a term, in the order given
    bool operator==(const Flow&) const = default;
};

/// What is asked of the flow.
struct FlowQuestion {
    std::span<const FlowTerm> terms;
    int columns = 1;
    double width = 0;             ///< of a page
    double narrowest = 0;         ///< no column is narrower
    int pages = 1;                ///< no fewer pages than this
    const Flow* former = nullptr; ///< while a set is written: sizes only fall, and widths stay as long as all terms fit
};

/// The largest sizes that fit, in this order: all terms on one line down to 0.88; a tenth of them folded; smaller on
/// one line with a tenth folded; more folded; more pages, their columns shared out evenly. Columns are equal unless a
/// term needs more. A term too wide for a whole page in the smallest size sticks out: the caller divides it before.
[[nodiscard]] Flow flowTerms(const FlowQuestion& question);

/// The widths that fill `width` as water fills a vessel: all equal, except that none is less than its need.
[[nodiscard]] std::vector<double> filled(const std::vector<double>& needs, double width);

} // namespace setfolio
