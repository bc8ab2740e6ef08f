// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <memory>
#include <optional>

namespace ui {

/// Runs `work` on a thread of its own and `then` with its result on this one, while the window goes
/// on being drawn. `then` is not called when `owner` has gone. Whatever `work` touches must be left
/// alone until then.
template <class Work, class Then>
void later(QObject* owner, Work work, Then then) {
    using Answer = decltype(work());
    auto answer = std::make_shared<std::optional<Answer>>();
    auto* thread =
        QThread::create([answer, work = std::move(work)]() mutable { answer->emplace(work()); });
    thread->setParent(owner);
    QObject::connect(thread, &QThread::finished, owner, [answer, thread, then] {
        thread->deleteLater();
        then(std::move(**answer));
    });
    thread->start();
}

}  // namespace ui
