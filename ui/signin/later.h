// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <functional>

namespace ui {

/// Runs `work` on a thread of its own and `then` on this one, while the window goes on being drawn.
/// `then` is not called when `owner` has gone; the thread is the owner's child. Whatever `work`
/// touches must be left alone until then.
inline void later(QObject* owner, const std::function<void()>& work,
                  const std::function<void()>& then) {
    auto* thread = QThread::create(work);
    thread->setParent(owner);
    QObject::connect(thread, &QThread::finished, owner, [thread, then] {
        thread->deleteLater();
        then();
    });
    thread->start();
}

}  // namespace ui
