// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QBoxLayout>
#include <QFile>
#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QMainWindow>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QToolButton>

#include "bench/start/widgettree.h"

namespace bench {
namespace {

struct Line {
    int depth = 0;
    QString kind;
    int stretch = 0;
    bool wraps = false;
    QString words;
};

QWidget* plainWidget(const Line& line) {
    if (line.kind == QLatin1String("QLabel")) {
        auto* label = new QLabel(line.words);
        label->setWordWrap(line.wraps);
        return label;
    }
    if (line.kind == QLatin1String("QPushButton")) return new QPushButton(line.words);
    if (line.kind == QLatin1String("QToolButton")) return new QToolButton;
    if (line.kind == QLatin1String("QLineEdit")) {
        auto* edit = new QLineEdit;
        edit->setPlaceholderText(line.words);
        return edit;
    }
    if (line.kind == QLatin1String("QFrame")) return new QFrame;
    if (line.kind == QLatin1String("QStackedWidget")) return new QStackedWidget;
    if (line.kind == QLatin1String("QScrollArea")) {
        auto* area = new QScrollArea;
        area->setWidgetResizable(true);
        return area;
    }
    return new QWidget;
}

class TreeReader {
  public:
    explicit TreeReader(std::vector<Line> lines) : m_lines(std::move(lines)) {}

    QWidget* widget() {
        const Line& line = m_lines[m_next++];
        QWidget* made = plainWidget(line);
        while (hasChildOf(line.depth)) {
            if (isLayout(m_lines[m_next]))
                made->setLayout(layout(made));
            else
                putInto(made, widget());
        }
        // A button is as large as its words; with a layout in it, as large as that.
        if (made->layout() && qobject_cast<QPushButton*>(made))
            made->setMinimumHeight(made->layout()->sizeHint().height());
        return made;
    }

  private:
    static bool isLayout(const Line& line) {
        return line.kind == QLatin1String("Down") || line.kind == QLatin1String("Across");
    }

    bool hasChildOf(int depth) const {
        return m_next < m_lines.size() && m_lines[m_next].depth == depth + 1;
    }

    static void putInto(QWidget* holder, QWidget* child) {
        if (auto* area = qobject_cast<QScrollArea*>(holder)) area->setWidget(child);
        if (auto* stack = qobject_cast<QStackedWidget*>(holder)) stack->addWidget(child);
    }

    QBoxLayout* layout(QWidget* holder) {
        const Line& line = m_lines[m_next++];
        const bool isDown = line.kind == QLatin1String("Down");
        auto* box = new QBoxLayout(isDown ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
        while (hasChildOf(line.depth)) {
            const Line& child = m_lines[m_next];
            if (isLayout(child))
                box->addLayout(layout(holder), child.stretch);
            else
                box->addWidget(widget(), child.stretch);
        }
        return box;
    }

    std::vector<Line> m_lines;
    std::size_t m_next = 0;
};

}  // namespace

bool readTree(QMainWindow& window, const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return false;
    std::vector<Line> lines;
    while (!file.atEnd()) {
        const QList<QByteArray> fields = file.readLine().chopped(1).split('\t');
        if (fields.size() != 5) return false;
        lines.push_back({.depth = fields[0].toInt(),
                         .kind = QString::fromLatin1(fields[1]),
                         .stretch = fields[2].toInt(),
                         .wraps = fields[3] == "wrap",
                         .words = QString::fromUtf8(QByteArray::fromPercentEncoding(fields[4]))});
    }
    if (lines.empty()) return false;
    window.setCentralWidget(TreeReader(std::move(lines)).widget());
    return true;
}

}  // namespace bench
