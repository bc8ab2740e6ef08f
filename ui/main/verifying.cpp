// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/verifying.h"

#include <QThread>

namespace ui {

void Verifying::start(Auditor::Run run) {
    m_shared = std::make_shared<Shared>();
    m_shared->run = std::move(run);
    m_thread = QThread::create([this, shared = m_shared] { runOnItsThread(shared); });
    connect(m_thread, &QThread::finished, this, [this, shared = m_shared] { finish(shared); });
    m_thread->start();
}

void Verifying::runOnItsThread(const std::shared_ptr<Shared>& shared) {
    const auto goOn = [this, &shared](std::uint64_t looked) {
        const auto tell = [this, shared, looked] {
            if (m_shared == shared) Q_EMIT progressed(looked);
        };
        QMetaObject::invokeMethod(this, tell, Qt::QueuedConnection);
        return !shared->isStopped;
    };
    shared->result = shared->run(goOn);
    shared->run = nullptr;  // and the keys in it
}

void Verifying::stop() {
    if (!m_thread) return;
    m_shared->isStopped = true;
    m_thread->wait();
    delete std::exchange(m_thread, nullptr);
    m_shared.reset();
}

/// What was sent before it was stopped arrives after; it is of a run that nobody waits for.
void Verifying::finish(const std::shared_ptr<Shared>& shared) {
    if (m_shared != shared) return;
    stop();
    Q_EMIT ended(*shared->result);
}

}  // namespace ui
