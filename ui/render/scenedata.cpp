// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/scenedata.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

#include "render/scene.h"

namespace render {
namespace {

Words wordsOf(const QJsonValue& value) {
    Words words;
    for (const QJsonValue& word : value.toArray()) words.push_back(word.toString().toStdString());
    return words;
}

// ["a", ["b", "!c"]] is: a, or b without c.
AnyOf anyOf(const QJsonValue& value) {
    AnyOf any;
    for (const QJsonValue& choice : value.toArray()) {
        any.choices.push_back(
            {choice.isArray() ? wordsOf(choice) : Words{choice.toString().toStdString()}});
    }
    return any;
}

QRectF rectOf(const QJsonValue& value) {
    const QJsonArray array = value.toArray();
    return {array.at(0).toDouble(), array.at(1).toDouble(), array.at(2).toDouble(),
            array.at(3).toDouble()};
}

LayerSpec layerOf(const QJsonObject& object) {
    LayerSpec layer;
    layer.file = object[QStringLiteral("file")].toString().toStdString();
    layer.stage = object[QStringLiteral("stage")].toString().toStdString();
    layer.when = anyOf(object[QStringLiteral("when")]);
    layer.focus = wordsOf(object[QStringLiteral("focus")]);
    layer.notFocus = wordsOf(object[QStringLiteral("not_focus")]);
    layer.motion = wordsOf(object[QStringLiteral("motion")]);
    layer.moves = object[QStringLiteral("moves")].toDouble();
    layer.fades = object[QStringLiteral("fades")].toBool();
    layer.isHand = object[QStringLiteral("hand")].toBool();
    const QJsonArray phase = object[QStringLiteral("phase")].toArray();
    layer.phaseFrom = phase.at(0).toDouble(0);
    layer.phaseTo = phase.at(1).toDouble(1);
    return layer;
}

Recolor recolorOf(const QJsonObject& object) {
    Recolor recolor;
    for (auto it = object.begin(); it != object.end(); ++it) {
        recolor[it.key().toStdString()] = it.value().toString().toStdString();
    }
    return recolor;
}

std::map<std::string, Recolor> recolorsOf(const QJsonObject& object) {
    std::map<std::string, Recolor> recolors;
    for (auto it = object.begin(); it != object.end(); ++it) {
        recolors[it.key().toStdString()] = recolorOf(it.value().toObject());
    }
    return recolors;
}

std::map<std::string, FocusSpec> focusesOf(const QJsonObject& object, const QRectF& size) {
    std::map<std::string, FocusSpec> focuses;
    for (auto it = object.begin(); it != object.end(); ++it) {
        const QJsonObject spec = it.value().toObject();
        const QJsonValue view = spec[QStringLiteral("view")];
        focuses[it.key().toStdString()] = {spec[QStringLiteral("stage")].toString().toStdString(),
                                           view.isArray() ? rectOf(view) : size,
                                           spec[QStringLiteral("reach")].toDouble(36)};
    }
    return focuses;
}

bool has(const Words& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

}  // namespace

bool AllOf::holdIn(const std::set<std::string>& conditions) const {
    return std::all_of(words.begin(), words.end(), [&](const std::string& word) {
        return word.starts_with('!') ? !conditions.contains(word.substr(1))
                                     : conditions.contains(word);
    });
}

bool AnyOf::holdIn(const std::set<std::string>& conditions) const {
    return choices.empty() || std::any_of(choices.begin(), choices.end(),
                                          [&](const AllOf& all) { return all.holdIn(conditions); });
}

bool SceneData::shows(const LayerSpec& layer, const SceneState& state) const {
    const auto spec = focuses.find(state.focus);
    if (spec == focuses.end() || layer.stage != spec->second.stage) return false;
    const bool isInFocus =
        (layer.focus.empty() || has(layer.focus, state.focus)) && !has(layer.notFocus, state.focus);
    const bool isInMotion =
        layer.motion.empty() || has(layer.motion, state.motion ? wordOf(*state.motion) : "rest");
    return isInFocus && isInMotion && state.phase >= layer.phaseFrom &&
           state.phase < layer.phaseTo && layer.when.holdIn(state.conditions);
}

std::string SceneData::gloveFor(const std::set<std::string>& conditions) const {
    for (const GloveRule& rule : gloves) {
        if (rule.when.holdIn(conditions)) return rule.variant;
    }
    return {};
}

std::optional<SceneData> readSceneData(const QByteArray& json) {
    const QJsonDocument document = QJsonDocument::fromJson(json);
    if (!document.isObject()) return std::nullopt;
    const QJsonObject root = document.object();
    SceneData data;
    data.size = rectOf(root[QStringLiteral("size")]);
    const QJsonArray along = root[QStringLiteral("along")].toArray();
    data.along = QPointF(along.at(0).toDouble(), along.at(1).toDouble());
    for (const QJsonValue& layer : root[QStringLiteral("layers")].toArray()) {
        data.layers.push_back(layerOf(layer.toObject()));
    }
    data.focuses = focusesOf(root[QStringLiteral("focus")].toObject(), data.size);
    for (const QJsonValue& value : root[QStringLiteral("gloves")].toArray()) {
        const QJsonObject rule = value.toObject();
        data.gloves.push_back({rule[QStringLiteral("variant")].toString().toStdString(),
                               anyOf(rule[QStringLiteral("when")])});
    }
    data.variants = recolorsOf(root[QStringLiteral("variants")].toObject());
    data.schemes = recolorsOf(root[QStringLiteral("schemes")].toObject());
    return data;
}

}  // namespace render
