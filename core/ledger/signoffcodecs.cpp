// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/codec.h"
#include "core/ledger/limits.h"

#include <algorithm>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr auto strokesKey = "strokes"_L1;

std::optional<int> readSet(MemberReader& reader) {
    return reader.integerIfAny("set"_L1, 1, limits::sets);
}

void writeSet(std::optional<int> set, MemberWriter& writer) {
    if (set)
        writer.put("set"_L1, *set);
}

bool isOfATeam(Signer role) {
    return role == Signer::Captains || role == Signer::Coaches;
}

Signatory readSignatory(MemberReader& reader) {
    const auto role = reader.word<Signer>("role"_L1);
    return {role, isOfATeam(role) ? std::optional(reader.word<Team>("team"_L1)) : std::nullopt};
}

void writeSignatory(const Signatory& who, MemberWriter& writer) {
    writer.word("role"_L1, who.role);
    if (who.team)
        writer.word("team"_L1, *who.team);
}

bool isWithin(qint64 value, int most) {
    return value >= 0 && value <= most;
}

/// x, y, at, x, y, at ... of one stroke; none if that is not what the list holds.
std::optional<PenStroke> strokeFrom(const QJsonArray& numbers) {
    PenStroke stroke;
    if (numbers.isEmpty() || numbers.size() % 3 != 0)
        return std::nullopt;
    for (qsizetype i = 0; i < numbers.size(); i += 3) {
        const qint64 x = numbers[i].toInteger(-1), y = numbers[i + 1].toInteger(-1), at = numbers[i + 2].toInteger(-1);
        if (!isWithin(x, limits::strokeExtent) || !isWithin(y, limits::strokeExtent) ||
            !isWithin(at, limits::strokeMilliseconds))
            return std::nullopt;
        stroke.push_back({static_cast<int>(x), static_cast<int>(y), static_cast<int>(at)});
    }
    return stroke;
}

/// Whether they are within the limits and no point is earlier than the one before.
bool isDrawable(const std::vector<PenStroke>& strokes) {
    qsizetype points = 0;
    int newest = 0;
    for (const PenStroke& stroke : strokes)
        for (const PenPoint& point : stroke) {
            if (point.at < newest || ++points > limits::strokePoints)
                return false;
            newest = point.at;
        }
    return true;
}

std::vector<PenStroke> readStrokes(MemberReader& reader) {
    const MemberValue value = reader.take(strokesKey);
    if (value.isUndefined())
        return {};
    if (value.type() != QJsonValue::Array) {
        reader.report(EntryJsonError::Code::WrongType, strokesKey);
        return {};
    }
    std::vector<PenStroke> strokes;
    for (const QJsonValue& list : value.toArray()) {
        std::optional<PenStroke> stroke = strokeFrom(list.toArray());
        if (!stroke) {
            reader.report(EntryJsonError::Code::OutOfRange, strokesKey);
            return {};
        }
        strokes.push_back(*std::move(stroke));
    }
    if (!isDrawable(strokes))
        reader.report(EntryJsonError::Code::OutOfRange, strokesKey);
    return strokes;
}

QJsonArray strokeJson(const PenStroke& stroke) {
    QJsonArray numbers;
    for (const PenPoint& point : stroke) {
        numbers.append(point.x);
        numbers.append(point.y);
        numbers.append(point.at);
    }
    return numbers;
}

} // namespace

Signed Codec<Signed>::read(MemberReader& reader) {
    return {readSet(reader), readSignatory(reader), reader.name("name"_L1), readStrokes(reader),
            reader.textIfAny("protest"_L1)};
}

void Codec<Signed>::write(const Signed& given, MemberWriter& writer) {
    writeSet(given.set, writer);
    writeSignatory(given.who, writer);
    writer.text("name"_L1, given.name);
    if (!given.strokes.empty())
        writer.objects(strokesKey, given.strokes, strokeJson);
    if (given.protest)
        writer.put("protest"_L1, *given.protest);
}

LeftUnsigned Codec<LeftUnsigned>::read(MemberReader& reader) {
    return {readSet(reader), readSignatory(reader), reader.requiredText("reason"_L1)};
}

void Codec<LeftUnsigned>::write(const LeftUnsigned& left, MemberWriter& writer) {
    writeSet(left.set, writer);
    writeSignatory(left.who, writer);
    writer.put("reason"_L1, left.reason);
}

Sealed Codec<Sealed>::read(MemberReader& reader) {
    Sealed sealed{readSet(reader), reader.name("seal"_L1), reader.word<SealOf>("of"_L1, SealOf::ThisFile)};
    if (!sealed.digest.isEmpty() && !isDigest(sealed.digest))
        reader.report(EntryJsonError::Code::OutOfRange, "seal"_L1);
    return sealed;
}

void Codec<Sealed>::write(const Sealed& sealed, MemberWriter& writer) {
    writeSet(sealed.set, writer);
    writer.text("seal"_L1, sealed.digest);
    writer.wordUnless(SealOf::ThisFile, "of"_L1, sealed.of);
}

Reopened Codec<Reopened>::read(MemberReader& reader) {
    return {readSet(reader), reader.name("name"_L1), reader.requiredText("reason"_L1)};
}

void Codec<Reopened>::write(const Reopened& reopened, MemberWriter& writer) {
    writeSet(reopened.set, writer);
    writer.text("name"_L1, reopened.name);
    writer.put("reason"_L1, reopened.reason);
}

} // namespace setfolio
