// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainterPath>
#include <QWidget>
#include <string>

namespace ui {

/// A place to sign with finger, pen or mouse. The drawing is kept as lines, never as a picture.
class SignaturePad : public QWidget {
    Q_OBJECT
  public:
    explicit SignaturePad(QWidget* parent = nullptr);
    bool isEmpty() const { return m_lines.isEmpty(); }
    void clear();
    /// The drawing as SVG of 600 x 160 units; "" when nothing was drawn.
    std::string svg() const;
    QSize sizeHint() const override { return {600, 160}; }

  Q_SIGNALS:
    void changed();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

  private:
    QPainterPath m_lines;
};

/// The name typed instead, as SVG: for whoever can't draw with a pointer.
std::string typedSignature(const QString& name);

}  // namespace ui
