// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

#include "base/result.h"
#include "parts/field.h"
#include "seal/newpassphrase.h"

class QCheckBox;

namespace ui {

/// A passphrase being typed: hidden, or shown while its box is ticked, as NIST SP 800-63B-4 asks
/// for. What was typed is taken once; the field is empty afterwards.
class PassphraseField : public Field {
    Q_OBJECT
  public:
    PassphraseField(const QString& name, const QString& objectName, const QString& hint = {});

    bool isEmpty() const { return m_edit->text().isEmpty(); }
    /// Says in place that nothing was typed, if so.
    bool checkTyped();
    /// Empties it and says in place that it was the wrong one, if that is the error.
    void refuse(const base::Error& error);
    /// What was typed, in locked memory. Qt's own copies can't be wiped for certain; they are
    /// overwritten as far as it lets us.
    seal::Secret take();
    seal::Secret typed() const;
    void clear();
    QLineEdit* edit() const { return m_edit; }

  Q_SIGNALS:
    void entered();  ///< Enter in the field

  private:
    QLineEdit* m_edit;
};

/// Empties a field that held a secret: writes over the letters as far as Qt lets us, and leaves
/// nothing to be brought back by undo.
void overwrite(QLineEdit* edit);

/// The sentence for what is wrong with a new passphrase.
QString weaknessSentence(seal::Weakness weakness);

/// A new passphrase, typed twice.
class NewPassphrase : public QWidget {
    Q_OBJECT
  public:
    explicit NewPassphrase(const QString& objectName, const QString& name = {},
                           QWidget* parent = nullptr);
    /// Says in place what is wrong with it, if anything is. `name` is the person's own.
    bool check(const QString& name);
    seal::Secret take();
    /// While it stays, to be tried again.
    seal::Secret copy() const { return m_first->typed(); }
    void clear();
    PassphraseField* first() const { return m_first; }
    /// Where check() said that something is wrong.
    QLineEdit* wrong() const;

  private:
    PassphraseField *m_first, *m_again;
};

}  // namespace ui
