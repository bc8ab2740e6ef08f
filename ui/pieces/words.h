// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

#include "render/theme.h"

namespace ui {

/// Text in a size and a role of the theme. Wraps; plain text only, so that a name can't be markup.
class Words : public QLabel {
    Q_OBJECT
  public:
    Words(render::TextSize size, render::Role role, QWidget* parent,
          QFont::Weight weight = QFont::Normal);

    void setRole(render::Role role);
    void setSize(render::TextSize size);
    /// Leading is where the program begins to read, whatever letters the words are of; a label by
    /// itself goes by those.
    void setAlignment(Qt::Alignment side);
    /// Nothing to say: the label takes no room.
    void say(const QString& text);
    render::TextSize size() const { return m_size; }

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void dress();

    void stand();

    Qt::Alignment m_side = Qt::AlignLeading | Qt::AlignVCenter;
    render::TextSize m_size;
    render::Role m_role;
    QFont::Weight m_weight;
    bool m_isDressing = false;
};

}  // namespace ui
