// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <functional>

#include "pieces/moment.h"
#include "record/payload.h"
#include "render/theme.h"

class QLineEdit;
class QVBoxLayout;

namespace ui {

class PickList;
class PressButton;
class Words;

/// Something asked in place, in the right column: nothing pops up during a visit.
class Question : public QWidget {
    Q_OBJECT
  public:
    Question(const QString& title, const QString& accept, QWidget* parent);

    /// What is to be said to the record when the question is answered.
    std::function<void(const record::Payload&)> say;
    /// What is said after that, once the answer is in the record.
    std::optional<record::Payload> then;
    /// Keys that mean something here; true: this one did.
    std::function<bool(QKeyEvent*)> onKey;

    QVBoxLayout* room() const { return m_room; }
    PressButton* acceptButton() const { return m_accept; }
    PressButton* leaveButton() const { return m_leave; }
    QLineEdit* addLine(const QString& name, const QString& objectName);
    Words* addWords(const QString& words, render::Role role);
    /// Tab goes as the eye does: what is asked, then the two buttons. To be called again when the
    /// room got other widgets. Returns the first.
    QWidget* orderTabs();
    /// Until one is chosen there the first button is off, and this is said.
    void needs(PickList* list, const QString& sentence);
    /// Called by Enter in a line and by the first button.
    std::function<void()> onAccept;

  Q_SIGNALS:
    /// It is over, answered or not.
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void accept();
    std::vector<PickList*> lists() const;
    void numberLists();

    QVBoxLayout* m_room;
    PressButton* m_accept;
    PressButton* m_leave;
};

// One function makes each question; whoever asks shows it.
// Those about lapses are told whether a helper is at hand for the way back.
Question* askSeveral(const Moment& moment, HelperAtHand helper, QWidget* parent);
Question* askOther(const Moment& moment, HelperAtHand helper, QWidget* parent);
Question* askEarlier(const Moment& moment, HelperAtHand helper, QWidget* parent);
Question* askStop(const Moment& moment, QWidget* parent);
Question* askTakeOver(QWidget* parent);
Question* askHandOver(const Moment& moment, QWidget* parent);
Question* askMeasures(const Moment& moment, QWidget* parent);
/// The measure that is the point of this step, before `pass` is said of it; or why there is none.
Question* askStepMeasure(const Moment& moment, const packs::Step& step, record::Payload pass,
                         QWidget* parent);
Question* askChange(const Moment& moment, QWidget* parent);

}  // namespace ui
