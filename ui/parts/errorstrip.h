// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include "base/result.h"

class QLabel;

namespace ui {

/// Says in place what was refused, or what a key did or did not do: hidden until there is something
/// to say. Put it where the eyes already are, above the button that was pressed.
class ErrorStrip : public QFrame {
    Q_OBJECT
  public:
    explicit ErrorStrip(QWidget* parent = nullptr);
    void say(const base::Error& error);
    void sayWords(const QString& sentence);
    /// What is no refusal: said calmly.
    void tell(const QString& sentence);
    void clear();
    /// What was told goes away; what was refused stays.
    void clearTold();
    /// Says the error of a refused outcome or goes away; true when there was none.
    template <class T>
    bool took(const base::Result<T>& outcome) {
        if (!outcome.ok()) {
            say(outcome.error());
            return false;
        }
        clear();
        return true;
    }
    QString words() const;

  Q_SIGNALS:
    void told(bool isSomething);  ///< there is something to read, or no longer

  private:
    void showWords(const QString& sentence);

    QLabel* m_glyph;
    QLabel* m_words;
    bool m_isTold = false;
};

}  // namespace ui
