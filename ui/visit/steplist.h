// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>
#include <QScrollArea>
#include <map>
#include <string>
#include <vector>

#include "pieces/moment.h"

class QVBoxLayout;

namespace ui {

/// One line of the list: a part, or a step of the part in hand.
class StepRow : public QAbstractButton {
    Q_OBJECT
  public:
    enum class Kind { Part, Step };
    struct Look {
        Kind kind = Kind::Part;
        QString glyph, words, state;  ///< state: "2 cues", under the words
        bool isInHand = false;
        bool isQuiet = false;  ///< still to come
        bool isLapsed = false;
        bool operator==(const Look&) const = default;
    };
    explicit StepRow(QWidget* parent);
    void show(const Look& look);
    QSize sizeHint() const override { return {200, heightForWidth(200)}; }
    QSize minimumSizeHint() const override { return {80, 24}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    int indent() const;
    QRect wordsRect(int width) const;
    QFont wordsFont() const;
    QString wordsFor(int room) const;

    Look m_look;
};

/// The parts of the procedure, and the steps of the one in hand, each with its sign and its word.
class StepList : public QScrollArea {
    Q_OBJECT
  public:
    explicit StepList(QWidget* parent);
    void show(const Moment& moment);

  Q_SIGNALS:
    /// A later step that may be marked now was pressed.
    void stepPressed(const QString& step);

  private:
    StepRow* row(std::size_t index);
    StepRow::Look partLook(const Moment& moment, const packs::Competency& part, bool isOpen) const;
    StepRow::Look stepLook(const Moment& moment, int op) const;

    QWidget* m_column;
    QVBoxLayout* m_layout;
    std::vector<StepRow*> m_rows;
};

}  // namespace ui
