// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>
#include <QTimer>

#include "signin/door.h"
#include "signin/later.h"

namespace ui {

/// Asks the door one thing at a time on a thread of its own, and follows how long it makes one wait
/// after a wrong passphrase. One for all windows of a door.
class DoorWork : public QObject {
    Q_OBJECT
  public:
    explicit DoorWork(Door& door, QObject* parent = nullptr);
    /// Waits for what was asked: the door must not go before it is done.
    ~DoorWork() override;

    Door& door() const { return m_door; }
    bool isBusy() const { return m_isBusy; }
    /// Nothing runs, and the next passphrase is looked at.
    bool isFree() const { return !m_isBusy && m_waitMs == 0; }
    /// So many seconds until then, rounded up.
    int waitSeconds() const { return static_cast<int>((m_waitMs + 999) / 1000); }

    /// Does what the door was asked, and then `then` with the result, unless `owner` has gone by
    /// then. To be called only while isFree().
    template <class T, class Then>
    void ask(QObject* owner, const gate::Slow<T>& slow, Then then) {
        setBusy(true);
        const QPointer<QObject> still(owner);
        later(this, slow.work, [this, still, finish = slow.finish, then] {
            auto answer = finish();
            setBusy(false);
            if (still) then(std::move(answer));
        });
    }
    /// Looks how long the wait still is; a timer calls it.
    void tick();

  Q_SIGNALS:
    /// Busy or not any more, or another number of seconds to wait.
    void changed();

  private:
    void setBusy(bool isBusy);

    Door& m_door;
    QTimer m_timer;
    std::int64_t m_waitMs = 0;
    bool m_isBusy = false;
};

}  // namespace ui
