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

namespace {

/// What was answered beforehand, or what `choose` says.
template <class Choose>
std::optional<QString> chosen(const QString& title, const Choose& choose) {
    beforehand().asked << title;
    QString answer;
    if (!beforehand().answers.isEmpty())
        answer = beforehand().answers.takeFirst();
    else if (!beforehand().isOffScreen)
        answer = choose();
    return answer.isEmpty() ? std::nullopt : std::optional(answer);
}

}  // namespace

std::optional<QString> saveAs(QWidget* parent, const QString& title, const QString& suggested,
                              const QString& filter) {
    return chosen(title,
                  [&] { return QFileDialog::getSaveFileName(parent, title, suggested, filter); });
}

std::optional<QString> openFile(QWidget* parent, const QString& title) {
    return chosen(title, [&] { return QFileDialog::getOpenFileName(parent, title); });
}

void answerNext(const QString& answer) {
    stayOffScreen();
    beforehand().answers << answer;
}

QStringList takeAsked() { return std::exchange(beforehand().asked, {}); }

void stayOffScreen() { beforehand().isOffScreen = true; }

bool isOffScreen() { return beforehand().isOffScreen; }

}  // namespace ui::ask
