// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <cstdint>
#include <optional>

#include "pieces/band.h"
#include "render/scene.h"

namespace ui {

/// All that a learner may be told, and nothing from which more could be learned: no name, no count,
/// no result. Made by whoever sees the visit; the learner's window is given this alone.
struct LearnerSees {
    enum class Say { Nothing, ClockAlone, Step };
    bool isVisitOpen = false;
    QString notice;  ///< that nobody here is real, where that is so
    Say say = Say::Nothing;
    QString sentence;  ///< what to do now; empty unless Say::Step
    QString language;  ///< BCP 47, of the sentence as it is written
    Qt::LayoutDirection direction = Qt::LeftToRight;
    std::optional<Band::Reading> clock;  ///< without the names of what is timed
    render::SceneState scene;            ///< empty focus: no picture
    std::int64_t movedMs = 0;            ///< so far the hand of the picture has moved
};

/// Where it comes from.
class LearnerSource : public QObject {
    Q_OBJECT
  public:
    explicit LearnerSource(QObject* parent) : QObject(parent) {}
    virtual LearnerSees sees() const = 0;

  Q_SIGNALS:
    void changed();
};

}  // namespace ui
