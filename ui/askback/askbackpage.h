// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <map>
#include <optional>
#include <string>

#include "desk/desk.h"
#include "pieces/picklist.h"

class QLineEdit;
class QScrollArea;
class QVBoxLayout;

namespace ui {

class ErrorStrip;
class PressButton;
class Words;

/// Asking back: an open question in the learner's language and beside it the teacher's, the points
/// heard in the learner's own words, what was said differently, and the drills.
class AskBackPage : public QWidget {
    Q_OBJECT
  public:
    explicit AskBackPage(desk::Desk& desk, QWidget* parent = nullptr);
    /// The prompt that is shown; empty: none.
    const std::string& prompt() const { return m_prompt; }
    void showPrompt(const std::string& prompt);
    /// Somebody comes here: the first question that is not said back yet, or the drills; what was
    /// ticked or written and not kept yet stays in view.
    void begin();

  Q_SIGNALS:
    void signWanted();
    void learnersWanted();

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    /// Enter goes on from a line of words and from a point that is ticked, to what is to be
    /// pressed.
    void keyPressEvent(QKeyEvent* event) override;

  private:
    /// Where the question stands with this learner.
    struct Standing {
        int rounds = 0, plans = 0, most = 1;
        QStringList heard;   ///< ids of the points heard in the newest round
        QStringList before;  ///< and of those heard in any
        bool isAll = false;  ///< every essential point was heard in the newest round
        bool needsPlan = false;
    };
    /// Whose answer it is: who says it, to which questions, and who hears it.
    struct Answer {
        std::optional<base::LearnerId> learner;
        std::string pack;  ///< its digest
        std::optional<base::StaffId> teacher;
        bool operator==(const Answer&) const = default;
    };
    void build();
    QWidget* buildList();
    QWidget* buildQuestion();
    QWidget* buildNobody();
    void refresh();
    void followAnswer();
    void forgetTyped();
    bool isAnswering() const;
    const packs::Prompt* firstOpen() const;
    void focusOnNext();
    void focusOnDrills();
    void pressMain();
    void showList();
    void fitList();
    void showQuestion();
    void showDrills();
    void sayStanding(const packs::Prompt& prompt, const Standing& standing);
    std::vector<PickList::Entry> entriesOf(const packs::Prompt& prompt, const Standing& standing,
                                           bool isAsking) const;
    Standing standingOf(const packs::Prompt& prompt) const;
    const packs::Prompt* promptNow() const;
    const std::string& inTeachers(const packs::Text& texts) const;
    const std::string& inLearners(const packs::Text& texts) const;
    void keepRound();
    void keepPlan();
    void keepDrill(const std::string& drill, record::DrillResult result);
    void goOn();

    desk::Desk& m_desk;
    procedure::TaughtPtr m_taught;
    const record::Learner* m_learner = nullptr;
    Answer m_answer;  ///< what is ticked and typed
    std::string m_prompt;
    bool m_isShowingDrills = false;

    ErrorStrip* m_error;
    Words* m_whose;  ///< who says it back, and whose line it is
    QVBoxLayout* m_list;
    QScrollArea* m_listArea;
    PressButton* m_now = nullptr;  ///< in the list
    QWidget* m_question;
    QWidget* m_drills;
    QVBoxLayout* m_drillList;
    QWidget* m_nobody;  ///< instead of a question
    Words* m_nothing;
    PressButton* m_toLearners;
    Words* m_state;
    Words* m_ask;
    Words* m_askTeacher;
    Words* m_listen;
    PickList* m_points;
    Words* m_again;
    QLineEdit* m_differently;
    QLineEdit* m_words;
    QLineEdit* m_plan;
    PressButton* m_keep;
    PressButton* m_keepPlan;
    PressButton* m_next;
};

}  // namespace ui
