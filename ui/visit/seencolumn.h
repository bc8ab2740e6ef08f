// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>
#include <vector>

#include "keys/keys.h"
#include "pieces/moment.h"

class QLineEdit;
class QVBoxLayout;

namespace ui {

class HowItWent;
class PressButton;
class SeenLapses;
class Words;

/// The right column: how the step in hand went, what is seen going wrong, a note.
class SeenColumn : public QWidget {
    Q_OBJECT
  public:
    explicit SeenColumn(QWidget* parent);
    void show(const Moment& moment, const Keys& keys, HelperAtHand helper);

    QLineEdit* note() const { return m_note; }
    /// Instead of the note, a button that asks to write one.
    void setVeiled(bool isVeiled);
    /// Puts the focus on the first lapse, where digits choose.
    void goToLapses();
    /// The lapse with this number in the list, 1 … 9, if the focus is among the lapses; 0 is
    /// something else.
    bool pressLapse(int number);

  Q_SIGNALS:
    void acted(ui::Act act);
    void lapseSeen(const QString& lapse);
    void lapseWithdrawn(const record::Payload& said);
    void noteWritten(const QString& text);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    bool isAmongLapses() const;
    void showDigits();
    void buildLapses(QVBoxLayout* column);
    void arrangeWent();
    void showLapses(const Moment& moment);
    void showRest(const Moment& moment, const Keys& keys, HelperAtHand helper);
    PressButton* lapseAct(Act act, const QString& name);
    PressButton* lapseButton(std::size_t index);

    QScrollArea* m_scroll;
    std::string m_shownStep;
    Words* m_wrongTitle;
    HowItWent* m_went;
    PressButton* m_several;
    PressButton* m_other;
    PressButton* m_earlier;
    PressButton* m_noHelper;
    QVBoxLayout* m_lapseList;
    SeenLapses* m_seenLapses;
    std::vector<PressButton*> m_lapses;
    QLineEdit* m_note;
    std::optional<base::StaffId> m_writer;  ///< who typed what stands in the note
    PressButton* m_unlock;
};

}  // namespace ui
