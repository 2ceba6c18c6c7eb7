// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook's settings of the serve and of a wrong server.
#pragma once

namespace setfolio {

/// What becomes of a serve that is contacted before the signal.
enum class EarlyServe { ReServe, Replay };

/// When the scorer speaks of a wrong server.
enum class WrongServerNotice { AfterContact, BeforeServe };

/// Which of its points a team at fault loses.
enum class TakenBack {
    PresentTerm, ///< those of the term of service in which the fault is found
    SinceFault,  ///< all since the fault, as far as its moment is known
    NoPoints,
};

/// How long points may be taken back.
enum class TakenBackUntil {
    NextServeContact,    ///< until the opponents contact their next serve
    WheneverEstablished, ///< as long as the moment of the fault can be established
};

/// The serve, and what follows when the wrong player has served.
struct ServiceRules {
    int serveSeconds = 5;                        ///< from the signal
    int reServesPerTerm = 1;                     ///< dropped tosses that may be taken again in a term of service
    EarlyServe earlyServe = EarlyServe::ReServe; ///< a serve before the signal
    /// Whether time-outs and substitutions may be asked for between a re-serve's signal and the serve.
    bool requestsInReServe = false;
    bool requestsInReplay = false; ///< and between a replay's signal and the serve
    WrongServerNotice wrongServerNotice = WrongServerNotice::AfterContact; ///< when the scorer speaks
    TakenBack wrongServerPoints = TakenBack::PresentTerm;
    TakenBackUntil wrongServerUntil = TakenBackUntil::NextServeContact;
    bool wrongServerRequests = true; ///< time-outs and substitutions of the time that is taken back go too
    /// How long a point given to the wrong team is put right.
    TakenBackUntil wrongPointUntil = TakenBackUntil::NextServeContact;
    bool operator==(const ServiceRules&) const = default;
};

} // namespace setfolio
