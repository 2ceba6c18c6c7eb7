// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A PDF in memory taken apart into its objects, so that what Qt's writer gets wrong or leaves out can be set right.
#pragma once

#include <QByteArray>

#include <optional>
#include <vector>

namespace setfolio::sheet {

/// Reads the one plain cross-reference table that Qt's writer makes (ISO 32000-1, 7.5.4); writes one anew, so that
/// objects may change their length.
class PdfObjects {
public:
    struct Object {
        int number = 0;
        QByteArray bytes; ///< from its number to the next object, its "endobj" included
    };

    /// None where the bytes are no such PDF.
    [[nodiscard]] static std::optional<PdfObjects> read(const QByteArray& pdf);
    [[nodiscard]] QByteArray write() const;

    [[nodiscard]] std::vector<Object>& objects() { return m_objects; }
    /// The object that the trailer names, such as "Info" or "Root"; nullptr if there is none.
    [[nodiscard]] Object* named(const QByteArray& key);
    /// Sets the trailer's pair of identifiers, where it has one, to a digest of all objects: what is the same inside
    /// has the same name.
    void setIdentifier();

private:
    QByteArray m_head;             ///< before the first object
    std::vector<Object> m_objects; ///< in the order of the file
    QByteArray m_trailer;          ///< from its dictionary to before "startxref"
};

} // namespace setfolio::sheet
