// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>
#include <vector>

class QAbstractButton;
class QButtonGroup;

namespace ui {

/// Something to choose: the word that is stored, the words that are read.
struct Option {
    QString word;
    QString label;
};

enum class Pick { One, Any };

/// Large buttons side by side, not a list to open; each shows its dot or tick, edge and ground.
/// Of one choice arrow keys move within and Tab goes past; where many may be chosen, Tab to each.
class Choice : public QWidget {
    Q_OBJECT
  public:
    Choice(const QString& objectName, Pick pick, const std::vector<Option>& options,
           QWidget* parent = nullptr);
    void setOptions(const std::vector<Option>& options);
    QString word() const;  ///< the chosen one; "" when none is
    QStringList words() const;
    void choose(const QString& word, bool isChosen = true);
    void clearChoice();
    QAbstractButton* button(const QString& word) const;
    bool hasOptions() const { return !m_options.empty(); }

    /// Its labels wrap: a long one never makes the page wider than the window.
    QSize minimumSizeHint() const override;

  Q_SIGNALS:
    void changed();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    /// Stands for one of its buttons: by itself it shows no focus and takes no key.
    void focusInEvent(QFocusEvent* event) override;

  private:
    QAbstractButton* standIn() const;
    void breakLongLabels();

    Pick m_pick;
    std::vector<Option> m_options;
    std::vector<QAbstractButton*> m_buttons;
    QButtonGroup* m_group;
};

}  // namespace ui
