// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/doorwork.h"

namespace ui {
namespace {

constexpr int waitTickMs = 200;  // only for what is shown; the door measures the wait

}  // namespace

DoorWork::DoorWork(Door& door, QObject* parent) : QObject(parent), m_door(door) {
    m_timer.setInterval(waitTickMs);
    connect(&m_timer, &QTimer::timeout, this, &DoorWork::tick);
    tick();
}

DoorWork::~DoorWork() {
    for (QThread* thread : findChildren<QThread*>()) thread->wait();
}

void DoorWork::tick() {
    if (m_isBusy) return;
    const int before = waitSeconds();
    m_waitMs = m_door.waitMs();
    if (m_waitMs > 0 && !m_timer.isActive()) m_timer.start();
    if (m_waitMs == 0) m_timer.stop();
    if (waitSeconds() != before) Q_EMIT changed();
}

void DoorWork::setBusy(bool isBusy) {
    m_isBusy = isBusy;
    tick();  // a wrong passphrase may have made it wait
    Q_EMIT changed();
}

}  // namespace ui
