// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QPointF>
#include <QRectF>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace render {

struct SceneState;

using Words = std::vector<std::string>;
/// A colour of the drawings, as written there, to the colour painted in its place.
using Recolor = std::map<std::string, std::string>;

/// Conditions joined by "and"; one that starts with "!" must not hold.
struct AllOf {
    Words words;
    bool holdIn(const std::set<std::string>& conditions) const;
};

/// Conditions as alternatives; none at all means always.
struct AnyOf {
    std::vector<AllOf> choices;
    bool holdIn(const std::set<std::string>& conditions) const;
};

struct LayerSpec {
    std::string file;   ///< name of the SVG, without its ending
    std::string stage;  ///< which view it belongs to: arm, sink, table, ...
    AnyOf when;
    Words focus;          ///< shown with these alone; empty: with all of its stage
    Words notFocus;       ///< never shown with these
    Words motion;         ///< shown while it moves so, or is at "rest"; empty: always
    double moves = 0;     ///< share of the motion it takes part in; negative: the other way
    bool fades = false;   ///< grows fainter as it dries
    bool isHand = false;  ///< the learner's hand: wears what the gloves rule says
    double phaseFrom = 0;
    double phaseTo = 1;  ///< shown while the phase is in [from, to)
};

struct FocusSpec {
    std::string stage;
    QRectF view;        ///< part of the drawing that is shown
    double reach = 36;  ///< how far a stroke goes to either side
};

struct GloveRule {
    std::string variant;
    AnyOf when;
};

/// scene.json as values.
struct SceneData {
    QRectF size;
    QPointF along;  ///< unit vector toward the shoulder
    std::vector<LayerSpec> layers;
    std::map<std::string, FocusSpec> focuses;
    std::vector<GloveRule> gloves;
    std::map<std::string, Recolor> variants;  ///< by glove
    std::map<std::string, Recolor> schemes;   ///< by colour scheme

    bool shows(const LayerSpec& layer, const SceneState& state) const;
    /// The glove the hands wear; empty: bare.
    std::string gloveFor(const std::set<std::string>& conditions) const;
};

/// None where the text is no JSON object; missing keys are empty.
std::optional<SceneData> readSceneData(const QByteArray& json);

}  // namespace render
