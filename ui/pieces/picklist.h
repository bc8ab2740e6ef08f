// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>
#include <vector>

class QVBoxLayout;

namespace ui {

class PressButton;

/// A column of large toggles, one or any of which are chosen. Their words wrap. While one of them
/// has the focus the digits they show choose.
class PickList : public QWidget {
    Q_OBJECT
  public:
    enum class Many { One, Any };
    struct Entry {
        QString id, words;
    };
    PickList(Many many, const QString& objectName, QWidget* parent);
    /// Keeps what is chosen, where it is still there.
    void setEntries(const std::vector<Entry>& entries);
    QStringList chosen() const;
    QString one() const;  ///< the first chosen; empty when there is none
    void choose(const QString& id);
    /// Enter on what is chosen goes on to the parent, which takes it for "done".
    void letEnterPass() { m_doesEnterPass = true; }
    /// A second press on the chosen one takes the answer back: none is one too.
    void letNoneBe() { m_mayBeNone = true; }
    PressButton* button(const QString& id) const;
    /// The digit of the first entry, 1 where nobody says another; 0: none has one.
    void setFirstDigit(int first);
    /// How many digits it takes: one entry alone needs none.
    int digits() const { return m_buttons.size() > 1 ? static_cast<int>(m_buttons.size()) : 0; }
    /// Chooses what shows this digit; false: none does.
    bool pressDigit(int digit);

  Q_SIGNALS:
    void changed();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void press(PressButton* button);
    void dress();
    void showDigits();

    Many m_many;
    int m_firstDigit = 1;
    bool m_doesEnterPass = false, m_mayBeNone = false;
    QVBoxLayout* m_column;
    std::vector<PressButton*> m_buttons;
};

}  // namespace ui
