// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <cstdint>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "render/theme.h"

class QPainter;

namespace render {

/// How the hand moves, in the words of the pack language; Rise, which no pack says, is what leaves
/// the skin while it dries.
enum class Motion { Across, Along, Circles, Peel, Press, Rise };

std::optional<Motion> motionFromWord(const std::string& word);
std::string wordOf(Motion motion);

/// Where within one stroke, 0 to 1, a hand is after `elapsedMs` of moving. Deterministic: who
/// paints brings the time. One back-and-forth stroke a second: common practice, no source.
double strokePhase(Motion motion, std::int64_t elapsedMs);

/// What the picture has to agree with.
struct SceneState {
    std::set<std::string> conditions;  ///< ids of the pack's conditions that hold now
    std::string focus;                 ///< the step's picture.focus
    std::optional<Motion> motion;      ///< none: the hand rests
    double phase = 0;                  ///< 0 to 1 within one stroke
    double dried = 0;                  ///< 0 to 1 of the time asked for drying
};

/// The one picture of the program: an arm, what lies on it, and the hands, as layers that the
/// conditions switch. Which layer shows when is data, in illustrations/scene.json.
class Scene {
  public:
    /// Reads the drawings of `folder`; what is missing or broken there is named by problems().
    explicit Scene(const QString& folder = QStringLiteral(":/illustrations"));
    ~Scene();
    Scene(const Scene&) = delete;
    Scene& operator=(const Scene&) = delete;

    /// False: there is no such picture; show none, not an empty frame.
    bool has(const std::string& focus) const;
    std::vector<std::string> focuses() const;

    /// Fits the picture into `area`, keeping its shape; draws nothing where has() is false.
    void paint(QPainter& painter, const QRectF& area, const SceneState& state,
               const Theme& theme) const;

    /// Files of the layers that `state` shows, from back to front.
    std::vector<std::string> shownLayers(const SceneState& state) const;

    /// Width divided by height of every picture.
    double aspectRatio() const;

    /// One line for each layer whose drawing can't be read.
    std::vector<std::string> problems() const;

  private:
    struct Parts;
    std::unique_ptr<Parts> m_parts;
};

}  // namespace render
