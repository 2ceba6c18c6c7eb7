// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/pdfobjects.h"

#include <QCryptographicHash>

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr qsizetype entryLength = 20; // of a line of the table, its end of line included

struct Place {
    int number = 0;
    qsizetype begin = 0;
};

/// Where the table begins; -1 where the file does not say.
qsizetype tableOf(const QByteArray& pdf) {
    const QByteArray word = "\nstartxref\n";
    const qsizetype at = pdf.lastIndexOf(word);
    if (at < 0)
        return -1;
    const qsizetype begin = at + word.size();
    bool isNumber = false;
    const qsizetype table = pdf.mid(begin, pdf.indexOf('\n', begin) - begin).trimmed().toLongLong(&isNumber);
    return isNumber && pdf.mid(table, 7) == "xref\n0 " ? table : -1;
}

/// The objects in use that the table lists, in the order of the file, and where the table ends.
struct Table {
    std::vector<Place> places;
    qsizetype end = 0;
};

std::optional<Table> readTable(const QByteArray& pdf, qsizetype at) {
    const qsizetype first = pdf.indexOf('\n', at + 7) + 1;
    bool isNumber = false;
    const int count = pdf.mid(at + 7, first - 1 - at - 7).trimmed().toInt(&isNumber);
    Table table{{}, first + count * entryLength};
    if (!isNumber || count < 1 || table.end > pdf.size())
        return std::nullopt;
    for (int number = 0; number < count; ++number) {
        const QByteArray line = pdf.mid(first + number * entryLength, entryLength);
        if (line.at(17) == 'n')
            table.places.push_back({number, line.left(10).toLongLong()});
    }
    std::ranges::sort(table.places, {}, &Place::begin);
    return table;
}

bool areInside(const std::vector<Place>& places, const QByteArray& pdf, qsizetype end) {
    return !places.empty() && places.back().begin < end && std::ranges::all_of(places, [&](const Place& place) {
        return pdf.mid(place.begin).startsWith(QByteArray::number(place.number) + " 0 obj");
    });
}

} // namespace

std::optional<PdfObjects> PdfObjects::read(const QByteArray& pdf) {
    const qsizetype at = tableOf(pdf);
    const auto table = at < 0 ? std::nullopt : readTable(pdf, at);
    if (!table || !areInside(table->places, pdf, at))
        return std::nullopt;
    PdfObjects read;
    read.m_head = pdf.left(table->places.front().begin);
    for (std::size_t i = 0; i < table->places.size(); ++i) {
        const Place& place = table->places[i];
        const qsizetype end = i + 1 < table->places.size() ? table->places[i + 1].begin : at;
        read.m_objects.push_back({place.number, pdf.mid(place.begin, end - place.begin)});
    }
    read.m_trailer = pdf.mid(table->end, pdf.lastIndexOf("startxref\n") - table->end);
    return read;
}

QByteArray PdfObjects::write() const {
    QByteArray pdf = m_head;
    std::vector<Place> places;
    for (const Object& object : m_objects) {
        places.push_back({object.number, pdf.size()});
        pdf += object.bytes;
    }
    const qsizetype table = pdf.size();
    std::ranges::sort(places, {}, &Place::number);
    pdf += "xref\n0 " + QByteArray::number(places.back().number + 1) + "\n0000000000 65535 f \n";
    for (const Place& place : places)
        pdf += QByteArray::number(place.begin).rightJustified(10, '0') + " 00000 n \n";
    return pdf + m_trailer + "startxref\n" + QByteArray::number(table) + "\n%%EOF\n";
}

PdfObjects::Object* PdfObjects::named(const QByteArray& key) {
    const qsizetype at = m_trailer.indexOf('/' + key + ' ');
    const int number = at < 0 ? 0 : m_trailer.mid(at + key.size() + 2).split(' ').front().toInt();
    const auto found = std::ranges::find(m_objects, number, &Object::number);
    return found == m_objects.end() ? nullptr : &*found;
}

void PdfObjects::setIdentifier() {
    const qsizetype begin = m_trailer.indexOf("/ID [");
    const qsizetype end = m_trailer.indexOf(']', begin);
    if (begin < 0 || end < 0)
        return;
    QCryptographicHash hash(QCryptographicHash::Sha256);
    for (const Object& object : m_objects)
        hash.addData(object.bytes);
    const QByteArray name = '<' + hash.result().left(16).toHex() + '>';
    m_trailer.replace(begin, end + 1 - begin, "/ID [ " + name + ' ' + name + " ]");
}

} // namespace setfolio::sheet
