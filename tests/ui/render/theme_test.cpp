// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/theme.h"

#include <gtest/gtest.h>

#include <QFontInfo>
#include <QFontMetricsF>

namespace render {
namespace {

QPalette blackOnWhite() {
    QPalette palette(Qt::white, Qt::white);
    palette.setColor(QPalette::WindowText, Qt::black);
    palette.setColor(QPalette::Highlight, QColor(0xff, 0xff, 0x00));
    return palette;
}

QPalette yellowOnBlack() {
    QPalette palette(Qt::black, Qt::black);
    palette.setColor(QPalette::WindowText, Qt::yellow);
    palette.setColor(QPalette::Highlight, Qt::cyan);
    return palette;
}

std::vector<Theme> themes() {
    return {Theme::light(), Theme::dark(), Theme::print(), Theme::fromPalette(blackOnWhite()),
            Theme::fromPalette(yellowOnBlack())};
}

// WCAG 2.2, "contrast ratio": 1:1 to 21:1. The greys are the customary borderline examples:
// #767676 on white just meets 4.5 : 1, #777777 just misses it (from memory).
TEST(ContrastRatio, AgreesWithWcag) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-6);
    EXPECT_NEAR(contrast(Qt::white, Qt::black), 21.0, 1e-6);
    EXPECT_NEAR(contrast(Qt::red, Qt::red), 1.0, 1e-9);
    EXPECT_GE(contrast(QColor(0x76, 0x76, 0x76), Qt::white), 4.5);
    EXPECT_LT(contrast(QColor(0x77, 0x77, 0x77), Qt::white), 4.5);
    // 0.2126 is the luminance of pure red, so (1 + 0.05) / (0.2126 + 0.05).
    EXPECT_NEAR(contrast(Qt::red, Qt::white), 1.05 / 0.2626, 1e-3);
}

// WCAG 2.2, 1.4.3 (text 4.5 : 1) and 1.4.11 (edges and glyphs 3 : 1).
TEST(ThemeColors, EveryUsedPairIsClearEnough) {
    for (const Theme& theme : themes()) {
        for (const Pair& pair : usedPairs()) {
            const double least = pair.use == Use::Text ? 4.5 : 3.0;
            EXPECT_GE(contrast(theme.color(pair.front), theme.color(pair.ground)), least)
                << "scheme " << int(theme.scheme()) << ": role " << int(pair.front) << " on "
                << int(pair.ground);
        }
    }
}

TEST(ThemeColors, TextOnAFillIsClear) {
    for (const Theme& theme : themes()) {
        for (int role = 0; role < roleCount; ++role) {
            if (Role(role) == Role::Rule) continue;  // carries no text
            EXPECT_GE(contrast(theme.on(Role(role)), theme.color(Role(role))), 4.5) << role;
        }
    }
}

TEST(ThemeColors, PaletteKeepsTextClear) {
    for (const Theme& theme : themes()) {
        const QPalette palette = theme.palette();
        const auto ratio = [&](QPalette::ColorRole front, QPalette::ColorRole ground) {
            return contrast(palette.color(front), palette.color(ground));
        };
        EXPECT_GE(ratio(QPalette::WindowText, QPalette::Window), 4.5);
        EXPECT_GE(ratio(QPalette::Text, QPalette::Base), 4.5);
        EXPECT_GE(ratio(QPalette::ButtonText, QPalette::Button), 4.5);
        EXPECT_GE(ratio(QPalette::HighlightedText, QPalette::Highlight), 4.5);
        EXPECT_GE(ratio(QPalette::PlaceholderText, QPalette::Base), 4.5);
    }
}

TEST(ThemeColors, PrintGroundsAreWhite) {
    const Theme print = Theme::print();
    for (const Role role :
         {Role::Paper, Role::Surface, Role::AmberGround, Role::BrickGround, Role::LeafGround}) {
        EXPECT_EQ(print.color(role), QColor(Qt::white));
    }
}

TEST(ThemeColors, HighContrastTakesOnlyThePlatformsColors) {
    const Theme theme = Theme::fromPalette(yellowOnBlack());
    EXPECT_EQ(theme.color(Role::Ink), QColor(Qt::yellow));
    EXPECT_EQ(theme.color(Role::Pine), QColor(Qt::cyan));
    EXPECT_TRUE(theme.isDark());
    // A highlight too faint to read on the ground is not taken.
    EXPECT_EQ(Theme::fromPalette(blackOnWhite()).color(Role::Pine), QColor(Qt::black));
}

TEST(ThemeType, FollowsTheTextFactorWithinItsRange) {
    EXPECT_DOUBLE_EQ(Theme::light().points(TextSize::Learner), 32);
    EXPECT_DOUBLE_EQ(Theme::light(1.5).points(TextSize::Body), 19.5);
    EXPECT_DOUBLE_EQ(Theme::light(9).points(TextSize::Note), 22);
    EXPECT_DOUBLE_EQ(Theme::light(0.1).points(TextSize::Clock), 56);
    EXPECT_DOUBLE_EQ(Theme::light(2).font(TextSize::Lead).pointSizeF(), 32);
}

TEST(ThemeType, DigitsHaveOneWidth) {
    const QFont font = Theme::light().font(TextSize::Clock);
    ASSERT_EQ(QFontInfo(font).family(), QStringLiteral("Noto Sans"));
    const QFontMetricsF metrics(font);
    for (char digit = '1'; digit <= '9'; ++digit) {
        EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(QLatin1Char(digit)),
                         metrics.horizontalAdvance(QLatin1Char('0')));
    }
}

}  // namespace
}  // namespace render
