// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/colourvision.h"

#include "tests/support/contrast.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace setfolio::testing {

namespace {

using Vector = std::array<double, 3>;
using Matrix = std::array<Vector, 3>;

Vector times(const Matrix& matrix, const Vector& vector) {
    Vector product{};
    for (std::size_t row = 0; row < 3; ++row)
        for (std::size_t column = 0; column < 3; ++column)
            product[row] += matrix[row][column] * vector[column];
    return product;
}

Matrix matrixOf(Sight sight) {
    // clang-format off
    switch (sight) {
    case Sight::Usual:
        return {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
    case Sight::Protanopia:
        return {{{ 0.152286,  1.052583, -0.204868}, { 0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
    case Sight::Deuteranopia:
        return {{{ 0.367322,  0.860646, -0.227968}, { 0.280085, 0.672501, 0.047413}, {-0.011820,  0.042940, 0.968881}}};
    case Sight::Tritanopia:
        return {{{ 1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, { 0.004733,  0.691367, 0.303900}}};
    }
    // clang-format on
    Q_UNREACHABLE();
}

Vector lightOf(QRgb colour) {
    return {linearChannel(qRed(colour)), linearChannel(qGreen(colour)), linearChannel(qBlue(colour))};
}

int channelOf(double light) {
    light = std::clamp(light, 0.0, 1.0);
    const double value = light <= 0.0031308 ? light * 12.92 : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
    return static_cast<int>(std::lround(value * 255));
}

double degrees(double radians) {
    return radians * 180 / std::numbers::pi;
}
double sine(double angle) {
    return std::sin(angle * std::numbers::pi / 180);
}
double cosine(double angle) {
    return std::cos(angle * std::numbers::pi / 180);
}

/// A colour as the formula of 2000 turns it: a' is stretched near the greys.
struct Polar {
    double lightness = 0, chroma = 0, hue = 0; ///< hue in degrees, 0 to 360
};

Polar polarOf(const Lab& lab, double stretch) {
    const double a = lab.a * stretch;
    const double hue = a == 0 && lab.b == 0 ? 0 : degrees(std::atan2(lab.b, a));
    return {lab.lightness, std::hypot(a, lab.b), hue < 0 ? hue + 360 : hue};
}

double seventh(double value) {
    return std::pow(value, 7) / (std::pow(value, 7) + std::pow(25.0, 7));
}

double meanHue(const Polar& one, const Polar& other) {
    if (one.chroma * other.chroma == 0)
        return one.hue + other.hue;
    const double mean = (one.hue + other.hue) / 2;
    if (std::abs(one.hue - other.hue) <= 180)
        return mean;
    return one.hue + other.hue < 360 ? mean + 180 : mean - 180;
}

double hueStep(const Polar& one, const Polar& other) {
    if (one.chroma * other.chroma == 0)
        return 0;
    const double step = other.hue - one.hue;
    return step > 180 ? step - 360 : step < -180 ? step + 360 : step;
}

} // namespace

QRgb seenBy(Sight sight, QRgb colour) {
    const Vector seen = times(matrixOf(sight), lightOf(colour));
    return qRgb(channelOf(seen[0]), channelOf(seen[1]), channelOf(seen[2]));
}

Lab labOf(QRgb colour) {
    constexpr Matrix toXyz{
        {{0.4124564, 0.3575761, 0.1804375}, {0.2126729, 0.7151522, 0.0721750}, {0.0193339, 0.1191920, 0.9503041}}};
    constexpr Vector white{0.95047, 1.0, 1.08883};
    Vector xyz = times(toXyz, lightOf(colour));
    for (std::size_t i = 0; i < 3; ++i) {
        const double share = xyz[i] / white[i];
        xyz[i] = share > 216.0 / 24389 ? std::cbrt(share) : (share * 24389 / 27 + 16) / 116;
    }
    return {116 * xyz[1] - 16, 500 * (xyz[0] - xyz[1]), 200 * (xyz[1] - xyz[2])};
}

double distance(const Lab& one, const Lab& other) {
    const double chroma = (std::hypot(one.a, one.b) + std::hypot(other.a, other.b)) / 2;
    const double stretch = 1 + 0.5 * (1 - std::sqrt(seventh(chroma)));
    const Polar first = polarOf(one, stretch), second = polarOf(other, stretch);
    const double lightness = (first.lightness + second.lightness) / 2 - 50;
    const double meanChroma = (first.chroma + second.chroma) / 2, hue = meanHue(first, second);
    const double t =
        1 - 0.17 * cosine(hue - 30) + 0.24 * cosine(2 * hue) + 0.32 * cosine(3 * hue + 6) - 0.20 * cosine(4 * hue - 63);
    const double lightnessWeight = 1 + 0.015 * lightness * lightness / std::sqrt(20 + lightness * lightness);
    const double turn = -sine(60 * std::exp(-std::pow((hue - 275) / 25, 2))) * 2 * std::sqrt(seventh(meanChroma));
    const double inLightness = (second.lightness - first.lightness) / lightnessWeight;
    const double inChroma = (second.chroma - first.chroma) / (1 + 0.045 * meanChroma);
    const double inHue =
        2 * std::sqrt(first.chroma * second.chroma) * sine(hueStep(first, second) / 2) / (1 + 0.015 * meanChroma * t);
    return std::sqrt(inLightness * inLightness + inChroma * inChroma + inHue * inHue + turn * inChroma * inHue);
}

} // namespace setfolio::testing
