// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/theme.h"

#include <QFontDatabase>
#include <algorithm>
#include <cmath>

namespace render {
namespace {

using Hex = std::array<QRgb, roleCount>;

// In the order of Role.
constexpr Hex lightHex = {0xfffbfaf6, 0xffffffff, 0xff1d2a2e, 0xff4f5e64, 0xffd8d5cb,
                          0xff1f5c4d, 0xff0b6e8f, 0xff8a5a00, 0xfffff3d6, 0xff9b2c1f,
                          0xfffbe6e1, 0xff2e6b34, 0xffe6f1e4};
constexpr Hex darkHex = {0xff14201f, 0xff1b2a29, 0xffedefea, 0xffa9b6b2, 0xff344644,
                         0xff7cc7b0, 0xff63bcd8, 0xffe9b95a, 0xff33280f, 0xfff0a197,
                         0xff3a1b16, 0xff93cf98, 0xff16301a};
// Grounds are white: a faint tint comes out of a black-and-white printer as dots under the text.
constexpr Hex printHex = {0xffffffff, 0xffffffff, 0xff000000, 0xff3c4448, 0xff8c8c86,
                          0xff174a3e, 0xff0a5670, 0xff6b4600, 0xffffffff, 0xff7e2016,
                          0xffffffff, 0xff24552a, 0xffffffff};

std::array<QColor, roleCount> colorsOf(const Hex& hex) {
    std::array<QColor, roleCount> colors;
    std::transform(hex.begin(), hex.end(), colors.begin(), [](QRgb rgb) { return QColor(rgb); });
    return colors;
}

size_t indexOf(Role role) { return static_cast<size_t>(role); }

// WCAG 2.2, "relative luminance": sRGB, with the threshold 0.04045 of its 2021 erratum.
double channel(double value) {
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& color) {
    return 0.2126 * channel(color.redF()) + 0.7152 * channel(color.greenF()) +
           0.0722 * channel(color.blueF());
}

QColor clearer(const QColor& wanted, const QColor& fallback, const QColor& ground) {
    return contrast(wanted, ground) >= 4.5 ? wanted : fallback;
}

}  // namespace

Theme::Theme(Scheme scheme, const Colors& colors, double textFactor)
    : m_scheme(scheme), m_colors(colors), m_textFactor(std::clamp(textFactor, 1.0, 2.0)) {}

Theme Theme::light(double textFactor) { return {Scheme::Light, colorsOf(lightHex), textFactor}; }

Theme Theme::dark(double textFactor) { return {Scheme::Dark, colorsOf(darkHex), textFactor}; }

Theme Theme::print(double textFactor) { return {Scheme::Print, colorsOf(printHex), textFactor}; }

Theme Theme::fromPalette(const QPalette& palette, double textFactor) {
    const QColor ground = palette.color(QPalette::Window);
    const QColor ink = palette.color(QPalette::WindowText);
    const QColor press = clearer(palette.color(QPalette::Highlight), ink, ground);
    Colors colors;
    colors.fill(ink);
    for (const Role role :
         {Role::Paper, Role::Surface, Role::AmberGround, Role::BrickGround, Role::LeafGround}) {
        colors[indexOf(role)] = ground;
    }
    colors[indexOf(Role::Pine)] = press;
    colors[indexOf(Role::Water)] = press;
    return {Scheme::HighContrast, colors, textFactor};
}

bool Theme::isDark() const { return luminance(color(Role::Paper)) < 0.18; }

QColor Theme::color(Role role) const { return m_colors[indexOf(role)]; }

QColor Theme::on(Role role) const {
    const QColor paper = color(Role::Paper);
    const QColor ink = color(Role::Ink);
    return contrast(paper, color(role)) >= contrast(ink, color(role)) ? paper : ink;
}

QPalette Theme::palette() const {
    QPalette palette(color(Role::Surface), color(Role::Paper));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText,
                            QPalette::BrightText, QPalette::ToolTipText}) {
        palette.setColor(role, color(Role::Ink));
    }
    palette.setColor(QPalette::Window, color(Role::Paper));
    palette.setColor(QPalette::Base, color(Role::Surface));
    palette.setColor(QPalette::AlternateBase, color(Role::Paper));
    palette.setColor(QPalette::Button, color(Role::Surface));
    palette.setColor(QPalette::ToolTipBase, color(Role::Surface));
    palette.setColor(QPalette::PlaceholderText, color(Role::QuietInk));
    palette.setColor(QPalette::Highlight, color(Role::Pine));
    palette.setColor(QPalette::HighlightedText, on(Role::Pine));
    palette.setColor(QPalette::Link, color(Role::Pine));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, color(Role::QuietInk));
    }
    return palette;
}

QFont Theme::font(TextSize size, QFont::Weight weight) const {
    QFont font;
    font.setFamilies(fontFamilies());
    font.setPointSizeF(points(size));
    font.setWeight(weight);
    return font;
}

double Theme::points(TextSize size) const {
    constexpr std::array<double, 6> sizes = {11, 13, 16, 22, 32, 56};
    return sizes[static_cast<size_t>(size)] * m_textFactor;
}

int Theme::gap(Gap step) {
    constexpr std::array<int, 7> steps = {4, 8, 12, 16, 24, 32, 48};
    return steps[static_cast<size_t>(step)];
}

QStringList fontFamilies() {
    return {QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Arabic"),
            QStringLiteral("Noto Naskh Arabic"),
            QFontDatabase::systemFont(QFontDatabase::GeneralFont).family()};
}

double contrast(const QColor& one, const QColor& other) {
    const auto [darker, lighter] = std::minmax({luminance(one), luminance(other)});
    return (lighter + 0.05) / (darker + 0.05);
}

const std::vector<Pair>& usedPairs() {
    static const std::vector<Pair> pairs = [] {
        std::vector<Pair> all;
        for (const Role ground : {Role::Paper, Role::Surface}) {
            for (const Role text : {Role::Ink, Role::QuietInk, Role::Pine, Role::Water, Role::Amber,
                                    Role::Brick, Role::Leaf}) {
                all.push_back({text, ground, Use::Text});
            }
        }
        for (const auto& [front, ground] :
             {std::pair{Role::Amber, Role::AmberGround}, std::pair{Role::Brick, Role::BrickGround},
              std::pair{Role::Leaf, Role::LeafGround}}) {
            all.push_back({front, ground, Use::Text});
            all.push_back({Role::Ink, ground, Use::Text});
            all.push_back({Role::QuietInk, ground, Use::Glyph});
        }
        for (const Role fill : {Role::Pine, Role::Water, Role::Brick, Role::Leaf, Role::Ink}) {
            all.push_back({Role::Paper, fill, Use::Text});
        }
        return all;
    }();
    return pairs;
}

}  // namespace render
