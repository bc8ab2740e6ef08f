// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/parts.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QScreen>
#include <QStyle>
#include <QVBoxLayout>
#include <QVariant>

#include "desk/recordview.h"
#include "look.h"
#include "parts/wrappedtext.h"

namespace ui {
namespace {

const char* sizeWord(Size size) {
    switch (size) {
        case Size::Note:
            return "note";
        case Size::Body:
            return "body";
        case Size::Lead:
            return "lead";
        case Size::Title:
            return "title";
        case Size::Learner:
            return "learner";
    }
    return "body";
}

const char* toneWord(Tone tone) {
    switch (tone) {
        case Tone::Ink:
            return "ink";
        case Tone::Quiet:
            return "quiet";
        case Tone::Pine:
            return "pine";
        case Tone::Amber:
            return "amber";
        case Tone::Brick:
            return "brick";
        case Tone::Leaf:
            return "leaf";
    }
    return "ink";
}

QPushButton* buttonOf(const char* part, const QString& words, const QString& objectName) {
    auto* made = new QPushButton(words);
    made->setObjectName(objectName);
    made->setProperty("part", QLatin1String(part));
    made->setAutoDefault(false);
    made->setCursor(Qt::PointingHandCursor);
    return made;
}

}  // namespace

QSize fittingOn(const QScreen* screen, const QSize& wanted) {
    constexpr QSize least{1024, 600}, frame{8, 40};
    const QSize room = screen ? screen->availableGeometry().size() : wanted;
    if (room.width() < least.width() || room.height() < least.height()) return wanted;
    return wanted.boundedTo(room - frame);
}

QLabel* text(const QString& words, Size size, Tone tone, Weight weight) {
    auto* label = new WrappedText(words);
    // A label goes by the direction of its own words: those in Latin letters too stand where
    // reading starts.
    if (QGuiApplication::isRightToLeft())
        label->setAlignment(Qt::AlignRight | Qt::AlignAbsolute | Qt::AlignVCenter);
    label->setProperty("textSize", QLatin1String(sizeWord(size)));
    label->setProperty("tone", QLatin1String(toneWord(tone)));
    if (weight == Weight::Strong) label->setProperty("weight", QStringLiteral("strong"));
    return label;
}

void setPart(QWidget* widget, const char* property, const QVariant& value) {
    if (widget->property(property) == value) return;
    widget->setProperty(property, value);
    widget->style()->unpolish(widget);
    widget->style()->polish(widget);
    widget->update();
}

void setTone(QLabel* label, Tone tone) {
    setPart(label, "tone", QString::fromLatin1(toneWord(tone)));
}

QPushButton* primaryButton(const QString& words, const QString& objectName) {
    return buttonOf("primary", words, objectName);
}

QPushButton* plainButton(const QString& words, const QString& objectName) {
    return buttonOf("plain", words, objectName);
}

QPushButton* quietButton(const QString& words, const QString& objectName) {
    return buttonOf("quiet", words, objectName);
}

QFrame* frame(const char* part) {
    auto* made = new QFrame;
    made->setProperty("part", QLatin1String(part));
    return made;
}

QVBoxLayout* columnIn(QFrame* frame) {
    auto* column = new QVBoxLayout(frame);
    const int room = render::Theme::gap(render::Gap::Normal);
    column->setContentsMargins(room, room, room, room);
    column->setSpacing(render::Theme::gap(render::Gap::Tight));
    return column;
}

QFrame* rule() { return frame("rule"); }

QWidget* pageHeader(const QString& title, const QString& sentence) {
    auto* header = new QWidget;
    auto* column = new QVBoxLayout(header);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(render::Theme::gap(render::Gap::Hair));
    auto* name = text(title, Size::Title, Tone::Ink, Weight::Strong);
    name->setObjectName(QStringLiteral("pageTitle"));
    column->addWidget(name);
    if (!sentence.isEmpty()) column->addWidget(text(sentence, Size::Body, Tone::Quiet));
    return header;
}

void empty(QLayout* layout) {
    while (QLayoutItem* item = layout->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        if (QLayout* inner = item->layout()) empty(inner);
        delete item;
    }
}

QString inventedWords() {
    return QCoreApplication::translate("Parts", "Invented people, not a chart");
}

QString wardWords(const desk::RecordView& view) {
    QStringList owned;
    if (view.ward == desk::Ward::Demonstration) owned << inventedWords();
    if (view.simulatedClock) owned << QCoreApplication::translate("Parts", "Simulated clock");
    return owned.join(QStringLiteral("  ·  "));
}

QWidget* wardBand(const desk::RecordView& view) {
    const QString owned = wardWords(view);
    return owned.isEmpty() ? nullptr : noticeBand(owned);
}

QWidget* noticeBand(const QString& said) {
    QFrame* band = frame("ward");
    band->setObjectName(QStringLiteral("wardBand"));
    auto* row = new QHBoxLayout(band);
    row->setContentsMargins(16, 4, 16, 4);
    auto* words = text(said, Size::Note, Tone::Amber, Weight::Strong);
    words->setAlignment(Qt::AlignCenter);
    row->addWidget(words);
    return band;
}

EmptyState::EmptyState(const QString& title, const QString& sentence, const QString& action,
                       const QString& objectName, QWidget* parent)
    : QFrame(parent) {
    setProperty("part", QStringLiteral("card"));
    auto* column = columnIn(this);
    column->setContentsMargins(32, 48, 32, 48);
    column->setSpacing(16);
    QLabel* name = text(title, Size::Lead, Tone::Ink, Weight::Strong);
    QLabel* words = text(sentence, Size::Body, Tone::Quiet);
    name->setAlignment(Qt::AlignCenter);
    words->setAlignment(Qt::AlignCenter);
    column->addWidget(name);
    column->addWidget(words);
    if (action.isEmpty()) return;
    QPushButton* button = primaryButton(action, objectName);
    column->addWidget(button, 0, Qt::AlignHCenter);
    connect(button, &QPushButton::clicked, this, &EmptyState::pressed);
}

}  // namespace ui
