// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <atomic>
#include <memory>
#include <optional>

#include "audit/auditor.h"

class QThread;

namespace ui {

/// Has a record verified on a thread of its own, one run at a time, while the windows go on.
class Verifying : public QObject {
    Q_OBJECT
  public:
    using QObject::QObject;
    ~Verifying() override { stop(); }

    bool isRunning() const { return m_thread != nullptr; }
    /// Only while nothing runs.
    void start(Auditor::Run run);
    /// Returns when the run has ended and holds no key any more; nothing more is told of it.
    void stop();

  Q_SIGNALS:
    void progressed(quint64 looked);
    void ended(const base::Result<proof::Report>& result);

  private:
    struct Shared {
        Auditor::Run run;
        std::atomic<bool> isStopped = false;
        std::optional<base::Result<proof::Report>> result = {};
    };
    void runOnItsThread(const std::shared_ptr<Shared>& shared);
    void finish(const std::shared_ptr<Shared>& shared);

    QThread* m_thread = nullptr;
    std::shared_ptr<Shared> m_shared;  ///< with the thread, and in what it sends
};

}  // namespace ui
