// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <map>
#include <vector>

#include "keys/keys.h"

class QStackedLayout;

namespace ui {

class PressButton;
class Words;

/// What every key does now, as buttons: the one next thing first and filled.
class KeyStrip : public QFrame {
    Q_OBJECT
  public:
    struct Item {
        Act act;
        QString words;
        bool isOffered = true;
        int rank = 0;  ///< the higher, the sooner it gives up its place; 0 never does
    };
    explicit KeyStrip(QWidget* parent);
    /// In one row: what has no room there is left out, the highest rank first.
    void show(const Keys& keys, const std::vector<Item>& items);
    /// From the next show() on: the keys are letters now, and the strip says so; the buttons stay.
    void setWriting(bool isWriting);
    /// Instead of the keys: "locked", "a question is open".
    void sayInstead(const QString& words);
    /// The button of an act; null until it was shown.
    PressButton* button(Act act) const;

  Q_SIGNALS:
    void pressed(ui::Act act);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    int heightForWidth(int width) const override;
    bool hasHeightForWidth() const override { return true; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {200, 44}; }

  private:
    void build();
    void fit();
    bool isOneRow() const;

    QWidget* m_keys;
    Words* m_instead;
    Words* m_writing = nullptr;
    bool m_isWriting = false;
    std::vector<Item> m_items;
    std::map<Act, PressButton*> m_buttons;
};

}  // namespace ui
