// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/ask.h"

#include <QFileDialog>
#include <QMessageBox>

namespace ui::ask {
namespace {

struct Beforehand {
    bool isOffScreen = false;
    QStringList answers, asked;
};

Beforehand& beforehand() {
    static Beforehand one;
    return one;
}

}  // namespace

void tell(QWidget* parent, const QString& title, const QString& sentence) {
    beforehand().asked << sentence;
    if (beforehand().isOffScreen) return;
    QMessageBox box(QMessageBox::NoIcon, title, sentence, QMessageBox::Ok, parent);
    box.setTextFormat(Qt::PlainText);
    box.exec();
}

std::optional<QString> saveAs(QWidget* parent, const QString& title, const QString& suggested,
                              const QString& filter) {
    beforehand().asked << title;
    QString chosen;
    if (!beforehand().answers.isEmpty())
        chosen = beforehand().answers.takeFirst();
    else if (!beforehand().isOffScreen)
        chosen = QFileDialog::getSaveFileName(parent, title, suggested, filter);
    return chosen.isEmpty() ? std::nullopt : std::optional(chosen);
}

void answerNext(const QString& answer) {
    stayOffScreen();
    beforehand().answers << answer;
}

QStringList takeAsked() { return std::exchange(beforehand().asked, {}); }

void stayOffScreen() { beforehand().isOffScreen = true; }

bool isOffScreen() { return beforehand().isOffScreen; }

}  // namespace ui::ask
