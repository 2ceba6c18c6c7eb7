// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

namespace setfolio {

/// Lets the system's print library (CUPS) ask for its service by the socket of this machine alone. Where the service
/// does not run, it would try port 631 instead, which is a connection through the network. Whoever has named another
/// server, in CUPS_SERVER or a client.conf, keeps it. Call it before the first window.
void keepPrintingLocal();

} // namespace setfolio
