// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"
#include "parts/page.h"
#include "signin/door.h"

class QLabel;

namespace ui {

class Choice;
class DoorWork;
class NewPassphrase;

/// Somebody new, let in by an educator. The passphrase is typed by the new person.
class AdmitPage : public Page {
    Q_OBJECT
  public:
    explicit AdmitPage(DoorWork& work, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    void done(const QString& sentence);
    void left();

  private:
    void admit();
    void admitted(const base::Outcome& outcome, const QString& name);

    DoorWork& m_work;
    WordsField *m_name, *m_initials;
    Choice* m_role;
    NewPassphrase* m_passphrase;
};

/// Another passphrase for somebody whose own is lost, given by an educator, typed by them.
class ResetPage : public Page {
    Q_OBJECT
  public:
    explicit ResetPage(DoorWork& work, QWidget* parent = nullptr);
    void begin(const Member& whom);

  Q_SIGNALS:
    void done(const QString& sentence);
    void left();

  private:
    void reset();

    DoorWork& m_work;
    Member m_whom;
    QLabel* m_name;
    NewPassphrase* m_passphrase;
};

/// Before somebody is retired: what becomes of what they did, and what can't be taken back.
class RetirePage : public Page {
    Q_OBJECT
  public:
    explicit RetirePage(DoorWork& work, QWidget* parent = nullptr);
    void begin(const Member& whom);

  Q_SIGNALS:
    void done(const QString& sentence);
    void left();

  private:
    void retire();

    DoorWork& m_work;
    Member m_whom;
    QLabel* m_name;
};

}  // namespace ui
