// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <map>

namespace ui {

/// A label whose words wrap. Each layout around it asks for its sizes again and again, and QLabel
/// shapes its letters anew for every answer: a list of fifty learners waits for that alone longer
/// than for all else. Here an answer is kept as long as the words and the letters are the same.
class WrappedText : public QLabel {
    Q_OBJECT
  public:
    explicit WrappedText(const QString& words);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    int heightForWidth(int width) const override;

  protected:
    void changeEvent(QEvent* event) override;

  private:
    struct Known {
        QString words;
        QFont letters;
        QMargins margins;
        QSize size, least;
        std::map<int, int> heights;  ///< by width
    };
    Known& known() const;

    mutable Known m_known;
};

}  // namespace ui
