// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/sealcheck.h"

namespace setfolio {
namespace {

/// The first line, from 1, whose digest begins with the digits; 0 if there is none among the first `lines`.
int lineOf(const QByteArray& bytes, std::size_t lines, const QByteArray& digits) {
    qsizetype start = 0;
    for (std::size_t line = 1; line <= lines; ++line) {
        const qsizetype end = bytes.indexOf('\n', start);
        if (digestOfLine(bytes.sliced(start, end - start)).startsWith(digits))
            return static_cast<int>(line);
        start = end + 1;
    }
    return 0;
}

/// Whether an entry reaches back to what stands in the lines up to `line`.
struct ReachesBack {
    int line;
    const std::optional<Placed>& placed;

    template <typename Kind>
    bool operator()(const Kind& entry) const {
        if constexpr (std::is_same_v<Kind, Strike>)
            return isSealed(entry.target);
        else if constexpr (std::is_same_v<Kind, Reopened>)
            return true;
        else
            return placed && isSealed(placed->target);
    }

private:
    [[nodiscard]] bool isSealed(EntryNumber number) const { return number.value <= static_cast<std::uint32_t>(line); }
};

/// Whether a later seal is over the same set, or over the match.
bool sealsAnew(const Recorded& later, const std::optional<Recorded>& seal) {
    const auto* sealed = std::get_if<Sealed>(&later.entry);
    const auto* former = seal ? std::get_if<Sealed>(&seal->entry) : nullptr;
    return sealed && former && sealed->set == former->set;
}

void sortLater(SealCheck& check, const std::vector<Recorded>& entries) {
    auto later = entries.begin() + check.line;
    if (later != entries.end() && std::holds_alternative<Sealed>(later->entry))
        check.seal = *later++;
    for (; later != entries.end(); ++later) {
        if (std::visit(ReachesBack{check.line, later->placed}, later->entry) || sealsAnew(*later, check.seal))
            check.reachBack.push_back(*later);
        else
            ++check.after;
    }
}

} // namespace

SealCheck checkSeal(const QByteArray& bytes, const QString& digits) {
    LedgerContent content = readLedger(bytes);
    SealCheck check;
    check.damage = content.damage;
    check.torn = content.torn;
    check.line = lineOf(bytes, content.entries.size(), digits.toLatin1());
    if (check.line > 0)
        sortLater(check, content.entries);
    else
        for (const Recorded& recorded : content.entries)
            if (std::holds_alternative<Sealed>(recorded.entry))
                check.otherSeals.push_back(recorded);
    return check;
}

} // namespace setfolio
