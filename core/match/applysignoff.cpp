// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/applier.h"
#include "core/match/signoff.h"

#include <algorithm>

namespace setfolio {

SignOff& Applier::signOffBegun(std::optional<int> set) {
    const SignOff* begun = signOffOf(m_state, set);
    if (!begun)
        return m_state.signOffs.emplace_back(SignOff{set, {}, std::nullopt, std::nullopt});
    return m_state.signOffs[static_cast<std::size_t>(begun - m_state.signOffs.data())];
}

void Applier::answer(std::optional<int> set, const Signatory& who) {
    if (!canBeSigned(m_state, set) || isSealed(m_state, set))
        return;
    SignOff& signOff = signOffBegun(set);
    std::erase_if(signOff.signatures, [&](const SignatureGiven& given) { return given.who == who; });
    signOff.signatures.push_back({who, m_number});
}

void Applier::operator()(const Signed& given) {
    answer(given.set, given.who);
}

void Applier::operator()(const LeftUnsigned& left) {
    answer(left.set, left.who);
}

void Applier::operator()(const Sealed& sealed) {
    if (canBeSigned(m_state, sealed.set) && !isSealed(m_state, sealed.set))
        signOffBegun(sealed.set).seal = m_number;
}

void Applier::operator()(const Reopened& reopened) {
    if (!isSealed(m_state, reopened.set))
        return;
    for (SignOff& signOff : m_state.signOffs)
        if (signOff.seal && !signOff.reopened && (!signOff.set || signOff.set == reopened.set))
            signOff.reopened = m_number;
    m_state.closed = false;
}

} // namespace setfolio
