// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "keys/keyquestion.h"

#include <QKeySequenceEdit>
#include <QLineEdit>
#include <QVBoxLayout>
#include <memory>

#include "pieces/pressbutton.h"
#include "pieces/words.h"
#include "visit/question.h"

namespace ui {

namespace {

QString refusalWords(const Keys& keys, Keys::Outcome outcome, const QKeySequence& key) {
    const QString name = key.toString(QKeySequence::NativeText);
    switch (outcome) {
        case Keys::Outcome::Set:
            return {};
        case Keys::Outcome::Taken:
            return Question::tr("%1 already means “%2”. Choose another key.")
                .arg(name, actWords(*keys.holder(key)));
        case Keys::Outcome::Refused:
            return Question::tr("%1 is needed in every window. Choose another key.").arg(name);
        case Keys::Outcome::Empty:
            return Question::tr("Press the key that is wanted.");
    }
    return {};
}

}  // namespace

Question* askKeys(const Keys& keys, const std::function<void(const Keys&)>& onSet,
                  QWidget* parent) {
    auto* question = new Question(Question::tr("Set the keys"), Question::tr("Done"), parent);
    question->addWords(Question::tr("Choose a line, press the key. A pedal is a key too."),
                       render::Role::QuietInk);
    auto* problem = question->addWords({}, render::Role::Brick);
    problem->setObjectName(QStringLiteral("keyProblem"));
    const auto table = std::make_shared<Keys>(keys);
    for (const Act act : allActs()) {
        question->addWords(actWords(act), render::Role::Ink);
        auto* edit = new QKeySequenceEdit(table->of(act), question);
        edit->setObjectName(QStringLiteral("set-") + storedName(act));
        edit->setAccessibleName(actWords(act));
        if (auto* line = edit->findChild<QLineEdit*>()) line->setAccessibleName(actWords(act));
        QObject::connect(edit, &QKeySequenceEdit::editingFinished, question, [=] {
            const QKeySequence key = edit->keySequence();
            if (key == table->of(act)) return;
            const auto outcome = table->set(act, key);
            problem->say(refusalWords(*table, outcome, key));
            if (outcome == Keys::Outcome::Set)
                onSet(*table);
            else
                edit->setKeySequence(table->of(act));
        });
        question->room()->addWidget(edit);
    }
    auto* reset = new PressButton(Question::tr("All as at first"), Dress::Plain, question);
    reset->setObjectName(QStringLiteral("resetKeys"));
    QObject::connect(reset, &PressButton::clicked, question, [=] {
        table->reset();
        onSet(*table);
        Q_EMIT question->left();
    });
    question->room()->addWidget(reset);
    question->onAccept = [question] { Q_EMIT question->left(); };
    return question;
}

}  // namespace ui
