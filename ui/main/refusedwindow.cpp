// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/refusedwindow.h"

#include <QAccessible>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "text/errortext.h"

namespace ui {

RefusedWindow::RefusedWindow(const base::Error& error, const QString& folder, const QString& notice,
                             QWidget* parent)
    : QWidget(parent), m_words(text({}, Size::Lead)) {
    setObjectName(QStringLiteral("refusedWindow"));
    setProperty("part", QStringLiteral("page"));
    setWindowTitle(tr("Ninebark"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    if (!notice.isEmpty()) whole->addWidget(noticeBand(notice));
    auto* column = new QVBoxLayout;
    whole->addLayout(column, 1);
    column->setContentsMargins(48, 48, 48, 32);
    column->setSpacing(16);
    column->addWidget(
        text(tr("The record was not opened"), Size::Title, Tone::Ink, Weight::Strong));
    QFrame* card = frame("brick");
    m_words->setObjectName(QStringLiteral("refusedWords"));
    columnIn(card)->addWidget(m_words);
    column->addWidget(card);
    column->addWidget(text(tr("It is looked for in %1").arg(folder), Size::Note, Tone::Quiet));
    column->addStretch(1);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    row->addStretch(1);
    QPushButton* close = plainButton(tr("Close"), QStringLiteral("refused.close"));
    QPushButton* again = primaryButton(tr("Try again"), QStringLiteral("refused.again"));
    row->addWidget(close);
    row->addWidget(again);
    column->addLayout(row);
    connect(close, &QPushButton::clicked, this, &RefusedWindow::given);
    connect(again, &QPushButton::clicked, this, &RefusedWindow::again);
    resize(820, 440);
    say(error);
    again->setFocus();
}

void RefusedWindow::closeEvent(QCloseEvent* event) {
    QWidget::closeEvent(event);
    Q_EMIT given();
}

// Outside of dialogs a button leaves Enter to its window.
void RefusedWindow::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    auto* button = qobject_cast<QAbstractButton*>(focusWidget());
    if (event->key() == Qt::Key_Escape)
        close();
    else if (isEnter && button != nullptr && !event->isAutoRepeat())
        button->click();
    else
        QWidget::keyPressEvent(event);
}

void RefusedWindow::say(const base::Error& error) {
    m_words->setText(ErrorText::of(error));
    setAccessibleName(m_words->text());
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

}  // namespace ui
