// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// One line of JSON, and nothing that two readers could take for two different things.
#pragma once

#include "core/ledger/members.h"

#include <QByteArray>

#include <optional>

namespace setfolio {

/// The members of the object, if the line is one: UTF-8 without a byte-order mark (in strings it must be escaped), no
/// member twice in any object, no lone surrogate in any string or member name. The line must outlive the members.
[[nodiscard]] std::optional<Members> membersOfLine(const QByteArray& line);
/// The same of a line of the plainest kind only: members that are texts in ASCII without escapes, or integers from 0 to
/// 999,999,999, without any space. Nothing for any other, be it good or not.
[[nodiscard]] std::optional<Members> membersOfPlainLine(const QByteArray& line);
/// The same of any line, by Qt's parser.
[[nodiscard]] std::optional<Members> membersOfAnyLine(const QByteArray& line);
/// An object, or a string, as a line would have it: without any space.
[[nodiscard]] QByteArray compactJson(const QJsonObject& json);
[[nodiscard]] QByteArray compactJson(const QString& text);

} // namespace setfolio
