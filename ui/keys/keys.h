// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeySequence>
#include <QString>
#include <array>
#include <optional>
#include <vector>

class QKeyEvent;

namespace ui {

/// Everything that a key does in a visit.
enum class Act {
    Next,  ///< the one next obvious thing
    Cue,
    CueBack,
    HandsOn,
    NotDone,
    NotSeen,
    DoesNotApply,
    Lapse,
    SeveralLapses,  ///< seen at one moment: one lapse
    OtherLapse,     ///< something the pack does not list
    EarlierLapse,   ///< noticed late, or left out
    NoHelper,       ///< the way back has to do without a helper
    CaughtAlone,
    ShowWayBack,
    RestSeen,
    Back,
    TakeOver,
    HandOver,
    Stop,
    Pause,
    Note,
    Measures,
    TurnScreen,
    ReadAloud,  ///< what the learner sees now, in the learner's language
    Tone,
    More,  ///< everything else that has a key
    Wipe   ///< locks every key but itself, so that the keyboard can be wiped
};
constexpr int actCount = 27;
std::vector<Act> allActs();

/// The name it is stored under; never changes.
QString storedName(Act act);
/// What it does, in words.
QString actWords(Act act);

/// Which key does what: one table, no key twice.
class Keys {
  public:
    enum class Outcome {
        Set,
        Taken,    ///< another act has it: see holder()
        Refused,  ///< keys that move about or type in every window: Tab, Enter, Esc, digits, arrows
        Empty
    };

    Keys();
    QKeySequence of(Act act) const;
    /// "Space", "Shift+C", as the platform writes it.
    QString words(Act act) const;
    std::optional<Act> actFor(const QKeyEvent& event) const;
    std::optional<Act> holder(const QKeySequence& key) const;
    Outcome set(Act act, const QKeySequence& key);
    void reset();

    /// What differs from the defaults, as one line: "cue=F2 note=F3".
    QString stored() const;
    /// A stored key that is not allowed, or that two acts would have, is left at its default.
    void read(const QString& stored);

  private:
    std::array<QKeySequence, actCount> m_keys;
};

}  // namespace ui
