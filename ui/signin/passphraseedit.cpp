// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/passphraseedit.h"

#include <QAccessibleWidget>
#include <QKeyEvent>

#include "signin/passphrasefield.h"

namespace ui {
namespace {

/// What a screen reader is given: no text interface, so nothing to read letter by letter, and
/// Qt 6.4 passes no letters on as they are typed where there is none.
class PassphraseFace : public QAccessibleWidget {
  public:
    explicit PassphraseFace(PassphraseEdit* edit)
        : QAccessibleWidget(edit, QAccessible::EditableText) {}

    QString text(QAccessible::Text what) const override {
        if (what != QAccessible::Value) return QAccessibleWidget::text(what);
        return QString(static_cast<PassphraseEdit*>(widget())->text().size(), u'●');
    }
    QAccessible::State state() const override {
        QAccessible::State state = QAccessibleWidget::state();
        state.passwordEdit = true;
        state.editable = true;
        return state;
    }
};

QAccessibleInterface* passphraseFace(const QString&, QObject* object) {
    auto* edit = qobject_cast<PassphraseEdit*>(object);
    return edit ? new PassphraseFace(edit) : nullptr;
}

bool takesAway(const QKeyEvent* key) {
    return key->matches(QKeySequence::Copy) || key->matches(QKeySequence::Cut);
}

}  // namespace

PassphraseEdit::PassphraseEdit(const QString& objectName, QWidget* parent) : QLineEdit(parent) {
    static const bool isInstalled = [] {
        QAccessible::installFactory(passphraseFace);
        return true;
    }();
    Q_UNUSED(isInstalled)
    setObjectName(objectName);
    setEchoMode(Password);
    setDragEnabled(false);
    setContextMenuPolicy(Qt::NoContextMenu);
    // Neither a keyboard that learns nor one that corrects.
    setInputMethodHints(Qt::ImhHiddenText | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText |
                        Qt::ImhNoAutoUppercase);
}

PassphraseEdit::~PassphraseEdit() { overwrite(this); }

void PassphraseEdit::hideEvent(QHideEvent* event) {
    if (!event->spontaneous()) overwrite(this);  // the window system's own: it is only put aside
    QLineEdit::hideEvent(event);
}

/// The keys to copy stay with the field: nothing around it copies either.
bool PassphraseEdit::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && takesAway(static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QLineEdit::event(event);
}

void PassphraseEdit::keyPressEvent(QKeyEvent* event) {
    if (!takesAway(event)) QLineEdit::keyPressEvent(event);
}

void PassphraseEdit::mouseMoveEvent(QMouseEvent*) {}

void PassphraseEdit::mouseDoubleClickEvent(QMouseEvent*) {}

}  // namespace ui
