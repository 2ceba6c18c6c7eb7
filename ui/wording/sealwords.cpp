// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/sealwords.h"

#include "core/record/sealtext.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/fill.h"
#include "ui/wording/signoffwords.h"

#include <QCoreApplication>
#include <QDir>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::SealWords)
};

QString number(int value) {
    return QString::number(value);
}

/// "set 2, 3K7T HAMX …" of a seal that stands in the file.
QString sealInFile(const Recorded& recorded) {
    const auto* sealed = std::get_if<Sealed>(&recorded.entry);
    if (!sealed)
        return {};
    const QString pattern =
        sealed->of == SealOf::Original ? Say::tr("line %1, of the original: %2, %3") : Say::tr("line %1: %2, %3");
    return fill(pattern,
                {number(static_cast<int>(recorded.number.value)), whatIsSigned(sealed->set), sealCode(sealed->digest)});
}

/// An entry that came after the seal and reaches back to what was sealed.
QString laterEntry(const Recorded& recorded) {
    const QString line = number(static_cast<int>(recorded.number.value));
    if (const auto* reopened = std::get_if<Reopened>(&recorded.entry))
        return fill(Say::tr("Line %1 reopens it (%2): %3, %4."),
                    {line, whatIsSigned(reopened->set), reopened->name, reopened->reason});
    if (const auto* strike = std::get_if<Strike>(&recorded.entry))
        return fill(Say::tr("Line %1 strikes entry %2."), {line, number(static_cast<int>(strike->target.value))});
    if (const auto* sealed = std::get_if<Sealed>(&recorded.entry))
        return fill(Say::tr("Line %1 seals it anew: %2."), {line, sealCode(sealed->digest)});
    const QString target = recorded.placed ? number(static_cast<int>(recorded.placed->target.value)) : QString();
    const bool replaces = recorded.placed && recorded.placed->how == Placed::How::InsteadOf;
    return replaces ? fill(Say::tr("Line %1 takes the place of entry %2."), {line, target})
                    : fill(Say::tr("Line %1 is put in before entry %2."), {line, target});
}

QString verdict(const SealCheck& check, const QString& path) {
    const QString line = number(check.line);
    if (check.line == 0)
        return fill(Say::tr("%1: this is not what was signed under this seal."), {path});
    if (check.reachBack.empty() && !check.damage)
        return fill(Say::tr("%1: lines 1 to %2 are, byte for byte, what was signed under this seal."), {path, line});
    if (check.damage)
        return fill(Say::tr("%1: lines 1 to %2 are what was signed under this seal, but the file is damaged or altered "
                            "after them."),
                    {path, line});
    return fill(Say::tr("%1: lines 1 to %2 are what was signed under this seal; it was reopened or corrected later."),
                {path, line});
}

/// Why no line has the digest, as far as it can be known.
QStringList wordsForNoLine(const SealCheck& check) {
    if (check.damage)
        return {};
    QStringList lines{Say::tr("The chain of the file is whole: it is another match, an older state of this one, or it "
                              "was written anew from some line on. Compare the code with the paper, and the file with "
                              "another copy.")};
    for (const Recorded& recorded : check.otherSeals)
        lines += fill(Say::tr("Seal in the file, %1."), {sealInFile(recorded)});
    return lines;
}

} // namespace

QStringList wordsFor(const SealCheck& check, const QString& path) {
    const QString shown = QDir::toNativeSeparators(path);
    QStringList lines{verdict(check, shown)};
    if (check.damage) {
        LedgerError damage = *check.damage;
        damage.path = path;
        lines += sentence(damage);
    }
    if (check.line == 0)
        return lines + wordsForNoLine(check);
    if (!check.seal && !check.damage)
        lines += Say::tr("No seal is recorded after them: its line was cut off, or never written.");
    for (const Recorded& recorded : check.reachBack)
        lines += laterEntry(recorded);
    if (check.after > 0)
        lines += fill(Say::tr("Entries after the seal that leave it alone: %1."), {number(check.after)});
    if (check.torn)
        lines += sentence(*check.torn, path);
    return lines;
}

} // namespace setfolio
