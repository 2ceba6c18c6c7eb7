// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// One line of JSON, and nothing that two readers could take for two different things.
#pragma once

#include <QByteArray>
#include <QJsonObject>

#include <optional>

namespace setfolio {

/// The object, if the line is one: UTF-8 without a byte-order mark (in strings it must be escaped), no member twice in
/// any object, no lone surrogate in any string or member name.
[[nodiscard]] std::optional<QJsonObject> objectOfLine(const QByteArray& line);
/// An object, or a string, as a line would have it: without any space.
[[nodiscard]] QByteArray compactJson(const QJsonObject& json);
[[nodiscard]] QByteArray compactJson(const QString& text);

} // namespace setfolio
