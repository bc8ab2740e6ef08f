// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/scene.h"

#include <QFile>
#include <QPainter>
#include <QPainterPath>
#include <QSvgRenderer>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "render/scenedata.h"

namespace render {
namespace {

constexpr double cornerOfPicture = 14;  // in units of the drawing

QByteArray readDrawing(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

std::string schemeWord(const Theme& theme) {
    switch (theme.scheme()) {
        case Scheme::Light:
            return "light";
        case Scheme::Dark:
            return "dark";
        case Scheme::Print:
            return "print";
        case Scheme::HighContrast:
            return theme.isDark() ? "dark" : "print";
    }
    return "light";
}

// The free strokes and the accent follow the theme; bodies and things keep their own colours.
Recolor themeColors(const Theme& theme) {
    const auto name = [&](Role role) { return theme.color(role).name().toStdString(); };
    return {{"#1d2a2e", name(Role::Ink)},
            {"#fbfaf6", name(Role::Paper)},
            {"#1f5c4d", name(Role::Pine)},
            {"#0b6e8f", name(Role::Water)},
            {"#9b2c1f", name(Role::Brick)}};
}

// In one pass, so that a colour put in is never taken for one to be replaced.
QByteArray recolored(const QByteArray& svg, const Recolor& recolor) {
    QByteArray result;
    result.reserve(svg.size());
    qsizetype at = 0;
    for (qsizetype hash = svg.indexOf('#'); hash >= 0; hash = svg.indexOf('#', hash + 1)) {
        const auto found = recolor.find(svg.mid(hash, 7).toStdString());
        if (found == recolor.end()) continue;
        result += svg.mid(at, hash - at);
        result += QByteArray::fromStdString(found->second);
        at = hash + 7;
    }
    return result + svg.mid(at);
}

QPointF strokeOffset(Motion motion, double phase, const QPointF& along, double reach) {
    const double angle = 2 * std::numbers::pi * phase;
    const QPointF across(-along.y(), along.x());
    switch (motion) {
        case Motion::Across:
            return across * (reach * std::sin(angle));
        case Motion::Along:
            return along * (reach * std::sin(angle));
        case Motion::Circles:
            return along * (reach * 0.5 * std::sin(angle)) +
                   across * (reach * 0.5 * (1 - std::cos(angle)));
        case Motion::Peel:
            return along * (reach * phase);
        case Motion::Press:
            return across * (reach * 0.3 * (1 - std::cos(angle)));
        case Motion::Rise:
            return QPointF(0, -reach * phase);
    }
    return {};
}

}  // namespace

std::optional<Motion> motionFromWord(const std::string& word) {
    if (word == "across") return Motion::Across;
    if (word == "along") return Motion::Along;
    if (word == "circles") return Motion::Circles;
    if (word == "peel") return Motion::Peel;
    if (word == "press") return Motion::Press;
    return std::nullopt;
}

std::string wordOf(Motion motion) {
    switch (motion) {
        case Motion::Across:
            return "across";
        case Motion::Along:
            return "along";
        case Motion::Circles:
            return "circles";
        case Motion::Peel:
            return "peel";
        case Motion::Press:
            return "press";
        case Motion::Rise:
            return "rise";
    }
    return {};
}

double strokePhase(Motion motion, std::int64_t elapsedMs) {
    const auto period = [&]() -> std::int64_t {
        switch (motion) {
            case Motion::Across:
            case Motion::Along:
                return 1000;
            case Motion::Circles:
                return 1500;
            case Motion::Peel:
                return 6000;  // slowly
            case Motion::Press:
                return 2000;
            case Motion::Rise:
                return 4000;
        }
        return 1000;
    }();
    return double(std::max<std::int64_t>(elapsedMs, 0) % period) / double(period);
}

struct Scene::Parts {
    QString folder;
    SceneData data;
    // Parsed drawings by file and colours; painting is const for whoever looks.
    mutable std::map<std::string, std::unique_ptr<QSvgRenderer>> drawings;

    QSvgRenderer& drawing(const LayerSpec& layer, const std::string& glove,
                          const Theme& theme) const;
    Recolor colors(const LayerSpec& layer, const std::string& glove, const Theme& theme) const;
    void paintLayer(QPainter& painter, const LayerSpec& layer, const SceneState& state,
                    const Theme& theme) const;
};

Recolor Scene::Parts::colors(const LayerSpec& layer, const std::string& glove,
                             const Theme& theme) const {
    Recolor recolor;
    if (layer.isHand && data.variants.contains(glove)) recolor = data.variants.at(glove);
    const auto scheme = data.schemes.find(schemeWord(theme));
    if (scheme != data.schemes.end()) recolor.insert(scheme->second.begin(), scheme->second.end());
    recolor.merge(themeColors(theme));
    return recolor;
}

QSvgRenderer& Scene::Parts::drawing(const LayerSpec& layer, const std::string& glove,
                                    const Theme& theme) const {
    const Recolor recolor = colors(layer, glove, theme);
    std::string key = layer.file;
    for (const auto& [from, to] : recolor) key += from + to;
    auto& slot = drawings[key];
    if (!slot) {
        const QString path = folder + QLatin1Char('/') + QString::fromStdString(layer.file);
        slot = std::make_unique<QSvgRenderer>(
            recolored(readDrawing(path + QStringLiteral(".svg")), recolor));
    }
    return *slot;
}

void Scene::Parts::paintLayer(QPainter& painter, const LayerSpec& layer, const SceneState& state,
                              const Theme& theme) const {
    const std::string glove = data.gloveFor(state.conditions);
    painter.save();
    if (state.motion && layer.moves != 0) {
        const double reach = data.focuses.at(state.focus).reach * layer.moves;
        painter.translate(strokeOffset(*state.motion, state.phase, data.along, reach));
    }
    if (layer.fades) painter.setOpacity(1 - std::clamp(state.dried, 0.0, 1.0));
    if (state.motion == Motion::Rise && layer.moves != 0) {
        painter.setOpacity(std::sin(std::numbers::pi * state.phase));
    }
    drawing(layer, glove, theme).render(&painter, data.size);
    painter.restore();
}

Scene::Scene(const QString& folder) : m_parts(std::make_unique<Parts>()) {
    m_parts->folder = folder;
    if (auto data = readSceneData(readDrawing(folder + QStringLiteral("/scene.json")))) {
        m_parts->data = std::move(*data);
    }
}

Scene::~Scene() = default;

bool Scene::has(const std::string& focus) const { return m_parts->data.focuses.contains(focus); }

std::vector<std::string> Scene::focuses() const {
    std::vector<std::string> names;
    for (const auto& [name, spec] : m_parts->data.focuses) names.push_back(name);
    return names;
}

double Scene::aspectRatio() const {
    const QRectF& size = m_parts->data.size;
    return size.height() > 0 ? size.width() / size.height() : 1;
}

void Scene::paint(QPainter& painter, const QRectF& area, const SceneState& state,
                  const Theme& theme) const {
    const auto focus = m_parts->data.focuses.find(state.focus);
    if (focus == m_parts->data.focuses.end() || area.isEmpty()) return;
    const QRectF& view = focus->second.view;
    const double scale = std::min(area.width() / view.width(), area.height() / view.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(area.center());
    painter.scale(scale, scale);
    painter.translate(-view.center());
    QPainterPath frame;
    const double corner = cornerOfPicture * view.width() / m_parts->data.size.width();
    frame.addRoundedRect(view, corner, corner);
    painter.setClipPath(frame, Qt::IntersectClip);
    for (const LayerSpec& layer : m_parts->data.layers) {
        if (m_parts->data.shows(layer, state)) {
            m_parts->paintLayer(painter, layer, state, theme);
        }
    }
    painter.restore();
}

std::vector<std::string> Scene::shownLayers(const SceneState& state) const {
    std::vector<std::string> files;
    for (const LayerSpec& layer : m_parts->data.layers) {
        if (m_parts->data.shows(layer, state)) {
            files.push_back(layer.file);
        }
    }
    return files;
}

std::vector<std::string> Scene::problems() const {
    std::vector<std::string> lines;
    if (m_parts->data.layers.empty()) lines.push_back("scene.json: no layers");
    for (const LayerSpec& layer : m_parts->data.layers) {
        const QSvgRenderer& drawing = m_parts->drawing(layer, {}, Theme::light());
        if (!drawing.isValid()) lines.push_back(layer.file + ".svg: can't be read");
    }
    return lines;
}

}  // namespace render
