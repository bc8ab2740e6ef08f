// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Linked into a program with windows, this ends it in the turn of the event loop after its main
// window was painted for the first time, and writes when that was to the descriptor named by
// NINEBARK_BENCH_REPORT. With NINEBARK_BENCH_TREE it also writes the window's visible widgets
// there, for the bare window to be made alike.
#include <unistd.h>

#include <QApplication>
#include <QEvent>
#include <QFile>
#include <QMainWindow>

#include "bench/start/report.h"
#include "bench/start/widgettree.h"

namespace bench {
namespace {

class FirstPaint : public QObject {
  public:
    using QObject::QObject;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() != QEvent::Paint) return false;
        const auto* window = qobject_cast<QMainWindow*>(watched);
        if (!window) return false;
        qApp->removeEventFilter(this);
        QMetaObject::invokeMethod(
            this, [this, window] { painted(*window); }, Qt::QueuedConnection);
        return false;
    }

  private:
    void painted(const QMainWindow& window) {
        const Report report{.paintedNs = monotonicNs(),
                            .widgets = static_cast<std::int64_t>(countOf(window))};
        const int descriptor = qEnvironmentVariableIntValue("NINEBARK_BENCH_REPORT");
        if (descriptor > 0 && write(descriptor, &report, sizeof report) != sizeof report) _exit(3);
        const QString tree = qEnvironmentVariable("NINEBARK_BENCH_TREE");
        if (!tree.isEmpty()) writeTree(window, tree);
        QApplication::quit();
    }
};

void watchFirstPaint() { qApp->installEventFilter(new FirstPaint(qApp)); }

}  // namespace

Q_COREAPP_STARTUP_FUNCTION(watchFirstPaint)

}  // namespace bench
