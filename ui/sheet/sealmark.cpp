// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/sealmark.h"

#include <memory>

#include <qrencode.h>

namespace setfolio::sheet {

namespace {

constexpr double quietZone = 4; ///< in squares, on each side: ISO/IEC 18004

} // namespace

std::vector<std::vector<bool>> qrSquares(const QString& text) {
    const QByteArray bytes = text.toUtf8();
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
        QRcode_encodeData(static_cast<int>(bytes.size()), reinterpret_cast<const unsigned char*>(bytes.constData()), 0,
                          QR_ECLEVEL_L),
        QRcode_free);
    if (!code)
        return {};
    const auto side = static_cast<std::size_t>(code->width);
    std::vector<std::vector<bool>> dark(side, std::vector<bool>(side));
    for (std::size_t row = 0; row < side; ++row)
        for (std::size_t column = 0; column < side; ++column)
            dark[row][column] = (code->data[row * side + column] & 1) != 0;
    return dark;
}

const SignOffRecord* sealIn(const std::vector<SignOffRecord>& signOffs) {
    for (auto signOff = signOffs.rbegin(); signOff != signOffs.rend(); ++signOff)
        if (signOff->seal && !signOff->reopened)
            return &*signOff;
    return nullptr;
}

void drawQr(Draft& draft, const Tag& tag, QPointF corner, double side, const QString& text) {
    SquaresShape squares{corner, 0, qrSquares(text), soot};
    if (squares.dark.empty())
        return;
    squares.size = side / (static_cast<double>(squares.dark.size()) + 2 * quietZone);
    squares.corner += QPointF(quietZone, quietZone) * squares.size;
    draft.squares(tag.as(ItemRole::SealSquares), std::move(squares));
}

} // namespace setfolio::sheet
