// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "keys/keys.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"
#include "settings/settings.h"

namespace ui {

/// Whom to call, which goes into the record, and how this computer looks and listens, which goes
/// into its settings. The first is saved by the button, the rest as soon as it is chosen.
class SettingsPage : public Page {
    Q_OBJECT
  public:
    SettingsPage(desk::Desk& desk, Settings& settings, QWidget* parent = nullptr);
    void begin();
    /// Whether there is a lock to be set, from the next begin() on.
    void offerLock(bool isThere) { m_offersLock = isThere; }

  Q_SIGNALS:
    void left();
    /// The table of keys, the tone or the learner's window is another now; the settings have it.
    void visitSettingsChanged();
    void lockAfterChanged(int minutes);

  protected:
    /// What holds as soon as it is chosen saves nobody else's number.
    void goOn(QWidget* from) override;

  private:
    void addUnit();
    void addLook();
    void addVisit();
    void addKeys();
    void addLock();
    void saveUnit();
    Choice* onOrOff(const QString& objectName, Setting setting);

    desk::Desk& m_desk;
    Settings& m_settings;
    WordsField *m_name = nullptr, *m_emergency = nullptr, *m_teamNow = nullptr,
               *m_teamToday = nullptr, *m_policy = nullptr;
    bool m_offersLock = false;
    QLabel* m_saved = nullptr;
    QVBoxLayout* m_keys = nullptr;  ///< the card where the keys are set
};

}  // namespace ui
