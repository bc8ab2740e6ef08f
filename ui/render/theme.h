// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>
#include <QStringList>
#include <array>
#include <vector>

namespace render {

/// What a colour is for. Windows, papers and pictures name roles, never colours.
enum class Role {
    Paper,        ///< the ground of a window or page
    Surface,      ///< the ground of a field, a card, a list
    Ink,          ///< what is read
    QuietInk,     ///< what is read second, and the edge of a control
    Rule,         ///< parts things; never the only sign of a control
    Pine,         ///< what to press
    Water,        ///< a clock filling
    Amber,        ///< waiting, due soon
    AmberGround,  ///< ground under Amber and Ink
    Brick,        ///< a lapse, overdue
    BrickGround,  ///< ground under Brick and Ink
    Leaf,         ///< held, done
    LeafGround    ///< ground under Leaf and Ink
};
constexpr int roleCount = 13;

enum class Scheme { Light, Dark, Print, HighContrast };

/// Sizes of type, in points before the text factor: 11, 13, 16, 22, 32, 56.
enum class TextSize { Note, Body, Lead, Title, Learner, Clock };

/// Steps of spacing, in device-independent pixels: 4, 8, 12, 16, 24, 32, 48.
enum class Gap { Hair, Tight, Snug, Normal, Wide, Broad, Vast };

/// How strongly two colours must differ, by WCAG 2.2 (1.4.3 and 1.4.11).
enum class Use { Text, Glyph };

/// A foreground on a ground as the program draws it.
struct Pair {
    Role front;
    Role ground;
    Use use;
};

/// Colours, type and measures of everything drawn: a value, handed to whoever paints.
class Theme {
  public:
    /// `textFactor` is held within 1.0 and 2.0.
    static Theme light(double textFactor = 1.0);
    static Theme dark(double textFactor = 1.0);
    /// White ground and dark inks: every role stays legible on a black-and-white printer.
    static Theme print(double textFactor = 1.0);
    /// High contrast: only what the platform's palette offers.
    static Theme fromPalette(const QPalette& palette, double textFactor = 1.0);

    Scheme scheme() const { return m_scheme; }
    bool isDark() const;
    double textFactor() const { return m_textFactor; }
    QColor color(Role role) const;
    /// Ink for text and glyphs on a ground filled with `role`: paper or ink, whichever is clearer.
    QColor on(Role role) const;
    /// For QApplication::setPalette.
    QPalette palette() const;

    /// Noto Sans in the size asked for, times the text factor.
    QFont font(TextSize size, QFont::Weight weight = QFont::Normal) const;
    double points(TextSize size) const;
    static int gap(Gap step);

    static constexpr int cornerRadius = 6;      ///< px
    static constexpr double strokeWidth = 2.0;  ///< px, of icons at 24 px and of edges in focus
    static constexpr int leastTarget = 24;      ///< px, WCAG 2.2, 2.5.8
    static constexpr int handTarget = 44;       ///< px, for gloved fingers; common practice

  private:
    using Colors = std::array<QColor, roleCount>;
    Theme(Scheme scheme, const Colors& colors, double textFactor);

    Scheme m_scheme;
    Colors m_colors;
    double m_textFactor;
};

/// Noto Sans, its Arabic companions, then the platform's own. Noto Sans' digits all have one
/// width, so running clocks do not jitter; where it is missing, the platform's digits are used as
/// they are (Qt 6.4 can't ask a font for its tabular figures).
QStringList fontFamilies();

/// Contrast ratio of WCAG 2.2, 1 to 21; both colours opaque.
double contrast(const QColor& one, const QColor& other);

/// Every pair the program uses; tests hold each against WCAG 2.2 in every theme.
const std::vector<Pair>& usedPairs();

}  // namespace render
