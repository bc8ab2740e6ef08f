// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QBoxLayout>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMainWindow>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTextStream>

#include "bench/start/widgettree.h"

namespace bench {
namespace {

/// The class of Qt that this widget's own class comes from.
QString qtClassOf(const QWidget& widget) {
    const QMetaObject* meta = widget.metaObject();
    while (QString::fromLatin1(meta->className()).contains(QStringLiteral("::")))
        meta = meta->superClass();
    return QString::fromLatin1(meta->className());
}

QString wordsOf(const QWidget& widget) {
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) return label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) return button->text();
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) return line->placeholderText();
    return {};
}

class TreeWriter {
  public:
    explicit TreeWriter(QTextStream& out, const QMainWindow& window)
        : m_out(out), m_window(window) {}

    void widget(const QWidget& one, int depth, int stretch) {
        if (!one.isVisibleTo(&m_window)) return;
        const auto* label = qobject_cast<const QLabel*>(&one);
        const QString wraps =
            label && label->wordWrap() ? QStringLiteral("wrap") : QStringLiteral("line");
        const QString words = QString::fromLatin1(wordsOf(one).toUtf8().toPercentEncoding(" "));
        put(depth, {qtClassOf(one), QString::number(stretch), wraps, words});
        if (const auto* area = qobject_cast<const QScrollArea*>(&one)) {
            if (area->widget()) widget(*area->widget(), depth + 1, 0);
        } else if (const auto* stack = qobject_cast<const QStackedWidget*>(&one)) {
            if (stack->currentWidget()) widget(*stack->currentWidget(), depth + 1, 0);
        } else if (one.layout()) {
            layout(*one.layout(), depth + 1, 0);
        }
    }

  private:
    void put(int depth, const QStringList& fields) {
        m_out << depth << '\t' << fields.join(u'\t') << '\n';
    }

    void layout(const QLayout& one, int depth, int stretch) {
        const auto* box = qobject_cast<const QBoxLayout*>(&one);
        const bool isDown = box && (box->direction() == QBoxLayout::TopToBottom);
        put(depth, {isDown ? QStringLiteral("Down") : QStringLiteral("Across"),
                    QString::number(stretch),
                    QStringLiteral("line"),
                    {}});
        for (int i = 0; i < one.count(); ++i) {
            QLayoutItem* item = one.itemAt(i);
            const int part = box ? box->stretch(i) : 0;
            if (item->widget()) widget(*item->widget(), depth + 1, part);
            if (item->layout()) layout(*item->layout(), depth + 1, part);
        }
    }

    QTextStream& m_out;
    const QMainWindow& m_window;
};

}  // namespace

void writeTree(const QMainWindow& window, const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return;
    QTextStream out(&file);
    if (window.centralWidget()) TreeWriter(out, window).widget(*window.centralWidget(), 0, 0);
}

int countOf(const QMainWindow& window) {
    int count = 0;
    for (const QWidget* one : window.findChildren<QWidget*>())
        if (one->isVisibleTo(&window)) ++count;
    return count;
}

}  // namespace bench
