// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/flow.h"

#include <QtGlobal>

#include <algorithm>
#include <numeric>
#include <optional>

namespace setfolio {

namespace {

constexpr double rounding = 1e-6; // sums of widths are compared

double sum(const std::vector<double>& widths) {
    return std::accumulate(widths.begin(), widths.end(), 0.0);
}

/// The columns of a page with their terms, while sizes are tried.
class Trial {
public:
    Trial(const FlowQuestion& question, int firstColumn, int columns)
        : m_question(question),
          m_first(firstColumn),
          m_terms(static_cast<std::size_t>(columns)) {
        for (std::size_t i = 0; i < question.terms.size(); ++i)
            if (const int column = question.terms[i].column - firstColumn; column >= 0 && column < columns) {
                m_terms[static_cast<std::size_t>(column)].push_back(i);
                ++m_count;
            }
    }

    /// Tries the sizes in their order from `largest` on; false if not even the smallest fits.
    bool fit(SizeStep largest, std::vector<SizeStep>& steps) {
        const int tenth = static_cast<int>(m_count / 10);
        const auto all = static_cast<int>(m_count);
        return tryRange(largest.value, SizeStep::eased, 0, steps) ||
               tryRange(largest.value, SizeStep::eased, tenth, steps) ||
               tryRange(std::max(largest.value, SizeStep::eased), SizeStep::oneLine, tenth, steps) ||
               tryRange(smallestOneLine.value, SizeStep::oneLine, all, steps) || foldSmaller(steps);
    }
    [[nodiscard]] FlowPage page(std::vector<SizeStep>& steps) const {
        FlowPage page{m_first, filled(needs(steps), m_question.width), m_size};
        unfold(page.widths, steps);
        return page;
    }
    [[nodiscard]] std::vector<double> needs(const std::vector<SizeStep>& steps) const {
        std::vector<double> widths;
        for (const std::vector<std::size_t>& terms : m_terms)
            widths.push_back(needOf(terms, steps));
        return widths;
    }

private:
    /// What makes a column narrower: its widest terms folded together.
    struct Fold {
        std::vector<std::size_t> terms;
        double gainPerTerm = 0;
    };

    [[nodiscard]] double need(std::size_t term, SizeStep step) const {
        return m_question.terms[term].need[static_cast<std::size_t>(step.value)];
    }
    [[nodiscard]] double needOf(const std::vector<std::size_t>& terms, const std::vector<SizeStep>& steps) const {
        double widest = m_question.narrowest;
        for (const std::size_t term : terms)
            widest = std::max(widest, need(term, steps[term]));
        return widest;
    }
    [[nodiscard]] bool fits(const std::vector<SizeStep>& steps) const {
        return sum(needs(steps)) <= m_question.width + rounding;
    }
    bool tryRange(int from, int to, int foldsAllowed, std::vector<SizeStep>& steps) {
        for (int value = from; value < to; ++value)
            if (tryAt(SizeStep{value}, foldsAllowed, steps))
                return true;
        return false;
    }
    bool tryAt(SizeStep size, int foldsAllowed, std::vector<SizeStep>& steps) {
        m_size = size;
        for (const std::vector<std::size_t>& terms : m_terms)
            for (const std::size_t term : terms)
                steps[term] = size;
        int folded = 0;
        while (!fits(steps)) {
            const std::optional<Fold> fold = bestFold(foldedMedium, steps);
            if (!fold || folded + static_cast<int>(fold->terms.size()) > foldsAllowed)
                return false;
            folded += static_cast<int>(fold->terms.size());
            for (const std::size_t term : fold->terms)
                steps[term] = foldedMedium;
        }
        return true;
    }
    /// After all folds to the medium size: the small one for as few terms as will do.
    bool foldSmaller(std::vector<SizeStep>& steps) {
        while (!fits(steps)) {
            const std::optional<Fold> fold = bestFold(foldedSmall, steps);
            if (!fold)
                return false;
            for (const std::size_t term : fold->terms)
                steps[term] = foldedSmall;
        }
        return true;
    }
    /// Of all columns, the fold to `step` that frees most width for each term folded.
    [[nodiscard]] std::optional<Fold> bestFold(SizeStep step, const std::vector<SizeStep>& steps) const {
        std::optional<Fold> best;
        for (const std::vector<std::size_t>& terms : m_terms)
            if (std::optional<Fold> fold = foldOf(terms, step, steps);
                fold && (!best || fold->gainPerTerm > best->gainPerTerm + rounding))
                best = std::move(fold);
        return best;
    }
    [[nodiscard]] std::optional<Fold> foldOf(const std::vector<std::size_t>& column, SizeStep step,
                                             const std::vector<SizeStep>& steps) const;
    void unfold(const std::vector<double>& widths, std::vector<SizeStep>& steps) const;
    [[nodiscard]] SizeStep largestThatFits(std::size_t term, double width, SizeStep otherwise) const;

    const FlowQuestion& m_question;
    int m_first;
    std::vector<std::vector<std::size_t>> m_terms; ///< by column of the page
    std::size_t m_count = 0;
    SizeStep m_size;
};

std::optional<Trial::Fold> Trial::foldOf(const std::vector<std::size_t>& column, SizeStep step,
                                         const std::vector<SizeStep>& steps) const {
    std::vector<std::size_t> widestFirst = column;
    std::ranges::stable_sort(widestFirst, std::greater(), [&](std::size_t term) { return need(term, steps[term]); });
    const double before = needOf(column, steps);
    std::vector<SizeStep> tried = steps;
    std::optional<Fold> best;
    std::vector<std::size_t> folded;
    for (const std::size_t term : widestFirst) {
        if (steps[term] >= step || need(term, step) >= need(term, steps[term]) - rounding)
            break; // the column stays as wide as this term
        tried[term] = step;
        folded.push_back(term);
        const double gain = (before - needOf(column, tried)) / static_cast<double>(folded.size());
        if (gain > rounding && (!best || gain > best->gainPerTerm + rounding))
            best = Fold{folded, gain};
    }
    return best;
}

/// A folded term goes back to the largest size that its final column allows.
void Trial::unfold(const std::vector<double>& widths, std::vector<SizeStep>& steps) const {
    for (std::size_t column = 0; column < m_terms.size(); ++column)
        for (const std::size_t term : m_terms[column])
            if (steps[term].isFolded())
                steps[term] = largestThatFits(term, widths[column], steps[term]);
}

SizeStep Trial::largestThatFits(std::size_t term, double width, SizeStep otherwise) const {
    for (SizeStep step = m_size; step < otherwise; ++step.value)
        if (need(term, step) <= width + rounding)
            return step;
    return otherwise;
}

std::optional<Flow> flowOnPages(const FlowQuestion& question, int pages, SizeStep largest) {
    Flow flow;
    flow.steps.assign(question.terms.size(), SizeStep{});
    int first = 0;
    bool fits = true;
    for (int page = 0; page < pages; ++page) {
        const int columns = (question.columns - first + pages - page - 1) / (pages - page);
        Trial trial(question, first, columns);
        fits = trial.fit(largest, flow.steps) && fits;
        flow.pages.push_back(trial.page(flow.steps));
        first += columns;
    }
    const bool last = pages >= question.columns; // with a column a page there is nothing left to share out
    return fits || last ? std::optional(flow) : std::nullopt;
}

/// The former flow with what has been added since, if all of it fits into the former columns.
std::optional<Flow> flowAsBefore(const FlowQuestion& question) {
    const Flow& former = *question.former;
    if (former.pages.size() != 1 || static_cast<int>(former.pages.front().widths.size()) != question.columns)
        return std::nullopt;
    Flow flow = former;
    flow.steps.resize(question.terms.size(), former.pages.front().size);
    for (std::size_t i = 0; i < question.terms.size(); ++i) {
        const FlowTerm& term = question.terms[i];
        const double width = former.pages.front().widths[static_cast<std::size_t>(term.column)];
        if (term.need[static_cast<std::size_t>(flow.steps[i].value)] > width + rounding)
            return std::nullopt;
    }
    return flow;
}

} // namespace

std::vector<double> filled(const std::vector<double>& needs, double width) {
    std::vector<double> sorted = needs;
    std::ranges::sort(sorted, std::greater());
    double rest = width;
    double level = 0;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        level = rest / static_cast<double>(sorted.size() - i);
        if (sorted[i] <= level)
            break;
        rest -= sorted[i];
        level = 0; // if this need is the last one, all of them are above the water
    }
    std::vector<double> widths;
    for (const double need : needs)
        widths.push_back(std::max(need, level));
    return widths;
}

Flow flowTerms(const FlowQuestion& question) {
    Q_ASSERT(question.columns >= 1);
    const bool onePage = question.pages == 1 && question.former && question.former->pages.size() == 1;
    if (onePage)
        if (std::optional<Flow> flow = flowAsBefore(question))
            return *flow;
    const SizeStep largest = onePage ? question.former->pages.front().size : SizeStep{};
    for (int pages = std::min(question.pages, question.columns);; ++pages)
        if (std::optional<Flow> flow = flowOnPages(question, pages, pages == 1 ? largest : SizeStep{}))
            return *flow;
}

} // namespace setfolio
