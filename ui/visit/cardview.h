// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <vector>

#include "keys/keys.h"
#include "render/theme.h"

class QBoxLayout;
class QScrollArea;
class QVBoxLayout;

namespace ui {

class PressButton;
class Words;

/// What a full-width card says and offers: used where nothing else may be done first.
struct Card {
    enum class Weight { Calm, Grave };
    struct Offer {
        QString name;  ///< of the button, and what pressed() says
        QString words;
        bool isFirst = false;
        bool operator==(const Offer&) const = default;
    };
    Weight weight = Weight::Calm;
    QString title, sentence;
    QString call;       ///< whom, with the number: the largest thing on the card
    QStringList steps;  ///< what to do, in order
    QString after;
    std::vector<Offer> offers;
    bool operator==(const Card&) const = default;
};

/// What can still be said by a key where no way on is known.
bool mayOnCard(Act what);

class CardView : public QFrame {
    Q_OBJECT
  public:
    explicit CardView(QWidget* parent);
    void show(const Card& card);
    /// Page Down and the like, where what is said has no room; whether it was such a key.
    bool turnPage(int key);
    /// What is offered first; null: nothing is.
    QWidget* first() const;

  Q_SIGNALS:
    void pressed(const QString& name);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void showOffers();
    void sayWhetherMore();
    struct Sizes;
    struct Heights {
        int needed = 0, room = 0;
    };
    static const std::vector<Sizes>& allSizes();
    void take(const Sizes& sizes);
    void saySteps(int columns);
    int innerWidth() const;
    Heights heights() const;
    void fit();
    void fitCall();

    Card m_card;
    Words* m_title;
    Words* m_sentence;
    Words* m_call;
    Words* m_steps;
    Words* m_stepsOn;  ///< those beside the first half, where two columns are needed
    QBoxLayout* m_beside;
    Words* m_after;
    std::vector<PressButton*> m_buttons;
    QLayout* m_offers;
    QScrollArea* m_area;  ///< what is said scrolls in it
    PressButton* m_more;  ///< says that it does
};

}  // namespace ui
