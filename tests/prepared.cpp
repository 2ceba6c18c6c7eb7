// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
// Compiled for its prepared headers only: see setfolio_prepared in CMakeLists.txt.
