// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QStringList>
#include <QWidget>

namespace ui {

/// While one of these lives, what is in `root` may be made anew: at its end the focus is where it
/// was, by object name, or at the next thing that stood behind it. Without it Qt would hand the
/// focus on as each old widget goes, and end in another part of the window. Where the focus was not
/// in `root`, nothing is done.
class KeptFocus {
  public:
    explicit KeptFocus(QWidget* root);
    ~KeptFocus();
    KeptFocus(const KeptFocus&) = delete;
    KeptFocus& operator=(const KeptFocus&) = delete;

  private:
    QPointer<QWidget> m_root;
    QStringList m_names;  ///< what had the focus, then all behind it, then all before it, backwards
};

/// Whether it, somewhere below `root`, is put away or can't be used: what is about to be deleted is
/// put away first.
bool isGone(const QWidget* widget, const QWidget* root);

/// The one of this name below `root` that takes the focus. Null: there is none.
QWidget* standing(const QWidget* root, const QString& name);

/// Gives it the focus, and shows it: also when it was only just put into a layout.
void focusOn(QWidget* widget);

}  // namespace ui
