// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/look/appearance.h"

#include "ui/look/colours.h"
#include "ui/look/plate.h"

#include <QApplication>
#include <QFontDatabase>
#include <QFontInfo>
#include <QVariant>

#include <algorithm>

namespace setfolio {

namespace {

constexpr double usualPixels = 15;
constexpr const char* lookName = "setfolio-look";
constexpr const char* textSizeName = "setfolio-text-size";

Theme themeOf(LookChoice choice) {
    switch (choice) {
    case LookChoice::AsSystem:
    case LookChoice::Light:
        return Theme::Light;
    case LookChoice::Dark:
        return Theme::Dark;
    case LookChoice::HighContrast:
        return Theme::HighContrast;
    }
    return Theme::Light;
}

} // namespace

LookChoice programLook() {
    return static_cast<LookChoice>(qApp->property(lookName).toInt());
}

void setProgramLook(LookChoice choice) {
    qApp->setProperty(lookName, static_cast<int>(choice));
    // a palette that sets nothing brings the desktop's back
    QApplication::setPalette(choice == LookChoice::AsSystem ? QPalette() : paletteOf(themeOf(choice)));
}

int programTextSize() {
    const QVariant percent = qApp->property(textSizeName);
    return percent.isValid() ? percent.toInt() : textSizes.front();
}

void setProgramTextSize(int percent) {
    qApp->setProperty(textSizeName, percent);
    const int desktop = QFontInfo(QFontDatabase::systemFont(QFontDatabase::GeneralFont)).pixelSize();
    const double scale = std::max(1.0, desktop / usualPixels) * percent / 100;
    QApplication::setFont(typeface(qRound(usualPixels * std::clamp(scale, 1.0, 2.0))));
}

double textScale() {
    const int pixels = QApplication::font().pixelSize(); // none where nobody has set it
    return pixels <= 0 ? 1 : std::clamp(pixels / usualPixels, 1.0, 2.0);
}

int scaled(double pixels) {
    return qRound(pixels * textScale());
}

} // namespace setfolio
