// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/pdfabout.h"

#include "ui/wording/about.h"
#include "ui/wording/sheetwords.h"

using namespace Qt::Literals::StringLiterals;

namespace setfolio::sheet {

namespace {

/// What Qt's writer calls itself, in the one dictionary as in the packet.
QString producer() {
    return u"Qt "_s + QString::fromLatin1(qVersion());
}

QString isoDate(const QDateTime& time) {
    return time.toUTC().toString(u"yyyy-MM-ddTHH:mm:ssZ"_s);
}

/// A text string in hexadecimal, which needs no escapes (ISO 32000-1, 7.9.2.2: UTF-16, the byte-order mark first).
QByteArray hexString(const QString& text) {
    QByteArray digits = "<FEFF";
    for (const QChar unit : text)
        digits += QByteArray::number(unit.unicode(), 16).rightJustified(4, '0').toUpper();
    return digits + '>';
}

QByteArray element(const char* name, const char* list, const QString& text) {
    if (text.isEmpty())
        return {};
    const QByteArray item = list == QByteArrayView("rdf:Alt") ? "<rdf:li xml:lang=\"x-default\">" : "<rdf:li>";
    const QByteArray open = QByteArray("<") + name + "><" + list + '>';
    const QByteArray close = QByteArray("</") + list + "></" + name + ">\n";
    return "      " + open + item + text.toHtmlEscaped().toUtf8() + "</rdf:li>" + close;
}

QByteArray attribute(const char* name, const QString& text) {
    return QByteArray(" ") + name + "=\"" + text.toHtmlEscaped().toUtf8() + '"';
}

} // namespace

QString plainWords(const QString& text) {
    QString plain;
    for (const uint character : text.toUcs4()) // half a surrogate pair becomes U+FFFD
        if (!QChar::isNonCharacter(character) && QChar::category(character) != QChar::Other_Control)
            plain += QChar::fromUcs4(character);
    return plain;
}

QByteArray xmpOf(const PdfInfo& info) {
    const QByteArray archive = info.form == PdfForm::Archive
                                   ? "    <rdf:Description xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\""
                                     " rdf:about=\"\" pdfaid:part=\"1\" pdfaid:conformance=\"B\"/>\n"
                                   : "";
    return "<?xpacket begin='' id='W5M0MpCehiHzreSzNTczkc9d'?>\n"
           "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
           "  <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
           "    <rdf:Description xmlns:dc=\"http://purl.org/dc/elements/1.1/\" rdf:about=\"\">\n" +
           element("dc:title", "rdf:Alt", plainWords(info.title)) +
           element("dc:description", "rdf:Alt", plainWords(info.subject)) +
           element("dc:creator", "rdf:Seq", plainWords(info.author)) +
           element("dc:language", "rdf:Bag", sheetLanguage()) +
           "    </rdf:Description>\n"
           "    <rdf:Description xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" rdf:about=\"\"" +
           attribute("xmp:CreatorTool", aboutLine()) + attribute("xmp:CreateDate", isoDate(info.created)) +
           attribute("xmp:ModifyDate", isoDate(info.created)) +
           "/>\n"
           "    <rdf:Description xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" rdf:about=\"\"" +
           attribute("pdf:Producer", producer()) + "/>\n" + archive +
           "  </rdf:RDF>\n"
           "</x:xmpmeta>\n"
           "<?xpacket end='w'?>\n";
}

bool describe(PdfObjects& pdf, const PdfInfo& info) {
    PdfObjects::Object* words = pdf.named("Info");
    PdfObjects::Object* root = pdf.named("Root");
    const QByteArray catalogue = "/Type /Catalog\n";
    const QByteArray created = "/CreationDate (D:";
    const qsizetype begin = words ? words->bytes.indexOf(created) : -1;
    const qsizetype end = begin < 0 ? -1 : words->bytes.indexOf(")\n", begin);
    if (end < 0 || !root || !root->bytes.contains(catalogue))
        return false;
    // Qt writes the time of the clock, and knows of no author and no subject
    const QByteArray date = info.created.toUTC().toString(u"yyyyMMddHHmmss"_s).toLatin1() + 'Z';
    QByteArray ours = created + date + ")\n/ModDate (D:" + date + ")\n";
    if (const QString author = plainWords(info.author); !author.isEmpty())
        ours += "/Author " + hexString(author) + '\n';
    if (const QString subject = plainWords(info.subject); !subject.isEmpty())
        ours += "/Subject " + hexString(subject) + '\n';
    words->bytes.replace(begin, end + 2 - begin, ours);
    root->bytes.replace(catalogue, catalogue + "/Lang (" + sheetLanguage().toLatin1() +
                                       ")\n/ViewerPreferences << /DisplayDocTitle true >>\n");
    return true;
}

} // namespace setfolio::sheet
