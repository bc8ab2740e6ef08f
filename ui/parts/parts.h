// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <functional>

class QScreen;
class QVBoxLayout;

namespace desk {
struct RecordView;
}

/// The few parts every window is made of. What they look like is decided by the style sheet from
/// the properties `part`, `textSize`, `tone` and `weight`, so they follow the look live.
namespace ui {

enum class Size { Note, Body, Lead, Title, Learner };
enum class Tone { Ink, Quiet, Pine, Amber, Brick, Leaf };
enum class Weight { Normal, Strong };

/// The size, or what this screen has room for with a title bar. A screen that is below the least
/// size windows are made for, 1024 by 600, is not heeded.
QSize fittingOn(const QScreen* screen, const QSize& wanted);

/// A label that wraps and reads plain text only: names never become markup.
QLabel* text(const QString& words, Size size = Size::Body, Tone tone = Tone::Ink,
             Weight weight = Weight::Normal);
void setTone(QLabel* label, Tone tone);
/// Sets a dynamic property and has the style sheet looked at again.
void setPart(QWidget* widget, const char* property, const QVariant& value);

/// What to press: one on a page.
QPushButton* primaryButton(const QString& words, const QString& objectName);
QPushButton* plainButton(const QString& words, const QString& objectName);
/// For what is seldom wanted: looks like a link.
QPushButton* quietButton(const QString& words, const QString& objectName);

/// A frame with room inside. `part` is "card", "amber", "brick", "leaf", "bar" or "foot".
QFrame* frame(const char* part);
/// The column inside a new card.
QVBoxLayout* columnIn(QFrame* frame);
QFrame* rule();

/// The name of a page and one sentence under it.
QWidget* pageHeader(const QString& title, const QString& sentence = {});

/// Takes everything out of a layout and deletes it, now or once the event in hand is over.
void empty(QLayout* layout);

/// What every window has to own up to: "Invented people, not a chart" in the demonstration ward,
/// "Simulated clock" where the time is made up. Null where there is nothing to own up to.
QWidget* wardBand(const desk::RecordView& view);
/// What it says; empty where there is nothing to say.
QString wardWords(const desk::RecordView& view);
/// That nobody here is real.
QString inventedWords();
/// The band of these words.
QWidget* noticeBand(const QString& words);

/// An empty list says what will be there and offers the one action that fills it.
class EmptyState : public QFrame {
    Q_OBJECT
  public:
    EmptyState(const QString& title, const QString& sentence, const QString& action,
               const QString& objectName, QWidget* parent = nullptr);

  Q_SIGNALS:
    void pressed();
};

}  // namespace ui
