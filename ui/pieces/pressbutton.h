// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

#include "render/theme.h"

namespace ui {

/// How a button looks: what it weighs, not what it does.
enum class Dress {
    Main,   ///< the one next thing: filled
    Plain,  ///< an edge and ink
    Quiet,  ///< no edge until it is pointed at
    Wrong,  ///< something seen going wrong: turns brick when pointed at
};

/// A button of one or more lines with the key that does the same in a small box. Enter presses it;
/// Space only where `Space::Presses`, because in a visit Space marks what was seen.
class PressButton : public QAbstractButton {
    Q_OBJECT
  public:
    enum class Space { Presses, PassesOn };

    PressButton(const QString& text, Dress dress, QWidget* parent, Space space = Space::Presses);

    void setKeyHint(const QString& key);
    const QString& keyHint() const { return m_keyHint; }
    /// Drawn before the text, for instance "✓"; never spoken.
    void setGlyph(const QString& glyph);
    void setDress(Dress dress);
    void setTextSize(render::TextSize size);
    /// Drawn with a line through it: kept, but no longer so.
    void setStruck(bool isStruck);
    /// Text stands at the side where reading starts instead of in the middle.
    void setStartAligned(bool isStart);

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

  private:
    struct Colors {
        QColor ground, edge, ink;
    };
    Colors colorsNow() const;
    QFont textFont() const;
    QFont widestFont() const;
    int sidePadding() const;
    int extrasWidth() const;  ///< key box and glyph with their gaps
    int hintWidth() const;
    void paintHint(QPainter& painter, const QRectF& box, const Colors& colors) const;

    Dress m_dress;
    Space m_space;
    QString m_keyHint, m_glyph;
    render::TextSize m_size = render::TextSize::Body;
    bool m_isStartAligned = false;
    bool m_isStruck = false;
    bool m_isPointedAt = false;
};

}  // namespace ui
