// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/scene.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QPainter>
#include <QPdfWriter>
#include <QProcess>
#include <algorithm>
#include <map>

#include "render/scenedata.h"
#include "support/paths.h"

namespace render {
namespace {

QImage pictureOf(const Scene& scene, const SceneState& state, const Theme& theme = Theme::light(),
                 QSize size = {320, 224}) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    scene.paint(painter, QRectF(QPointF(), size), state, theme);
    painter.end();
    return image;
}

QJsonDocument jsonFile(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QJsonDocument::fromJson(file.readAll());
}

std::vector<QJsonObject> sharedPacks() {
    const QDir folder(QString::fromStdString(support::sourceDir()) +
                      QStringLiteral("/shared/packs"));
    std::vector<QJsonObject> packs;
    for (const QString& name : folder.entryList({QStringLiteral("*.json")})) {
        packs.push_back(jsonFile(folder.filePath(name)).object());
    }
    return packs;
}

std::vector<QJsonObject> stepsOf(const QJsonObject& pack) {
    std::vector<QJsonObject> steps;
    for (const QJsonValue& competency : pack[QStringLiteral("competencies")].toArray()) {
        for (const QJsonValue& step : competency[QStringLiteral("steps")].toArray()) {
            steps.push_back(step.toObject());
        }
    }
    for (const QJsonValue& step : pack[QStringLiteral("recoveries")].toArray()) {
        steps.push_back(step.toObject());
    }
    return steps;
}

TEST(SceneFiles, EveryLayerCanBeRead) {
    const Scene scene;
    EXPECT_EQ(scene.problems(), std::vector<std::string>());
    EXPECT_NEAR(scene.aspectRatio(), 10.0 / 7.0, 1e-9);
}

TEST(SceneFiles, AMissingFolderIsNamedAndDrawsNothing) {
    const Scene scene(QStringLiteral("/nowhere"));
    EXPECT_EQ(scene.problems().size(), 1u);
    EXPECT_FALSE(scene.has("peel"));
    EXPECT_EQ(pictureOf(scene, {{}, "peel", {}, 0}), pictureOf(scene, {{}, "", {}, 0}));
}

SceneData sceneFile() {
    QFile file(QStringLiteral(":/illustrations/scene.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return readSceneData(file.readAll()).value();
}

TEST(SceneFiles, EveryDrawingIsUsed) {
    const SceneData data = sceneFile();
    for (const QString& name :
         QDir(QStringLiteral(":/illustrations")).entryList({QStringLiteral("*.svg")})) {
        const std::string file = name.chopped(4).toStdString();
        EXPECT_TRUE(std::any_of(data.layers.begin(), data.layers.end(),
                                [&](const LayerSpec& layer) { return layer.file == file; }))
            << file;
    }
}

// A condition spelled otherwise than in the packs would leave its layer off for ever.
TEST(SceneFiles, EveryConditionIsOneOfASharedPack) {
    std::set<std::string> known;
    for (const QJsonObject& pack : sharedPacks()) {
        for (const QJsonValue& condition : pack[QStringLiteral("conditions")].toArray()) {
            known.insert(condition[QStringLiteral("id")].toString().toStdString());
        }
    }
    const SceneData data = sceneFile();
    std::vector<AllOf> choices;
    for (const LayerSpec& layer : data.layers) {
        choices.insert(choices.end(), layer.when.choices.begin(), layer.when.choices.end());
    }
    for (const GloveRule& rule : data.gloves) {
        choices.insert(choices.end(), rule.when.choices.begin(), rule.when.choices.end());
    }
    for (const AllOf& all : choices) {
        for (const std::string& word : all.words) {
            EXPECT_TRUE(known.contains(word.starts_with('!') ? word.substr(1) : word)) << word;
        }
    }
}

TEST(SceneMapping, EveryFocusOfASharedPackHasAPicture) {
    const Scene scene;
    int seen = 0;
    for (const QJsonObject& pack : sharedPacks()) {
        for (const QJsonObject& step : stepsOf(pack)) {
            const QJsonValue picture = step[QStringLiteral("picture")];
            if (!picture.isObject()) continue;
            const std::string focus = picture[QStringLiteral("focus")].toString().toStdString();
            EXPECT_TRUE(scene.has(focus))
                << step[QStringLiteral("id")].toString().toStdString() << ": " << focus;
            ++seen;
        }
    }
    EXPECT_GT(seen, 0);
}

void applyStep(const QJsonObject& step, std::set<std::string>& state) {
    for (const QJsonValue& id : step[QStringLiteral("ends")].toArray()) {
        state.erase(id.toString().toStdString());
    }
    for (const QJsonValue& id : step[QStringLiteral("gives")].toArray()) {
        state.insert(id.toString().toStdString());
    }
}

// What lies on the arm in the picture of the marks must be what the visit says, step by step.
TEST(SceneMapping, AgreesWithTheStateAllThroughTheDressingChange) {
    const Scene scene;
    const QJsonObject pack =
        jsonFile(QString::fromStdString(support::sourceDir()) +
                 QStringLiteral("/shared/packs/weekly-dressing-upper-arm.json"))
            .object();
    std::set<std::string> state;
    for (const QJsonValue& id : pack[QStringLiteral("start")].toArray()) {
        state.insert(id.toString().toStdString());
    }
    const std::map<std::string, std::string> layerOfCondition = {
        {"dressing-old-on", "dressing-old"},
        {"device-old-on", "device-old-doors"},
        {"dressing-new-on", "dressing-new"},
        {"device-new-on", "device-new-doors"},
        {"device-on-skin", "device-new-pad"},
        {"labelled", "label-new"},
        {"clamps-closed", "clamps-closed"},
        {"line-held", "held"},
        {"film-on", "barrier"}};
    std::set<std::string> everShown;
    for (const QJsonValue& competency : pack[QStringLiteral("competencies")].toArray()) {
        for (const QJsonValue& step : competency[QStringLiteral("steps")].toArray()) {
            applyStep(step.toObject(), state);
            const auto layers = scene.shownLayers({state, "marks", {}, 0});
            const std::set<std::string> shown(layers.begin(), layers.end());
            for (const auto& [condition, layer] : layerOfCondition) {
                EXPECT_EQ(shown.contains(layer), state.contains(condition))
                    << layer << " after " << step[QStringLiteral("id")].toString().toStdString();
                if (shown.contains(layer)) everShown.insert(layer);
            }
        }
    }
    EXPECT_EQ(everShown.size(), layerOfCondition.size());
}

TEST(SceneMapping, SwitchingAConditionChangesThePicture) {
    const Scene scene;
    const QImage bare = pictureOf(scene, {{}, "marks", {}, 0});
    for (const char* const condition :
         {"dressing-old-on", "device-old-on", "device-open", "clamps-closed", "line-held",
          "skin-scrubbed", "skin-dry", "film-on", "device-on-skin", "device-new-on",
          "dressing-new-on", "labelled"}) {
        EXPECT_NE(bare, pictureOf(scene, {{condition}, "marks", {}, 0})) << condition;
    }
    const QImage bareHands = pictureOf(scene, {{}, "feel", {}, 0});
    const QImage clean = pictureOf(scene, {{"gloves-clean"}, "feel", {}, 0});
    EXPECT_NE(bareHands, clean);
    EXPECT_NE(clean, pictureOf(scene, {{"gloves-sterile"}, "feel", {}, 0}));
}

TEST(SceneMapping, EveryPictureShowsSomething) {
    const Scene scene;
    const QImage nothing = pictureOf(scene, {{}, "no-such-picture", {}, 0});
    EXPECT_FALSE(scene.has("no-such-picture"));
    ASSERT_FALSE(scene.focuses().empty());
    for (const std::string& focus : scene.focuses()) {
        EXPECT_TRUE(scene.has(focus));
        EXPECT_NE(pictureOf(scene, {{}, focus, {}, 0}), nothing) << focus;
        EXPECT_FALSE(scene.shownLayers({{}, focus, {}, 0}).empty()) << focus;
    }
}

TEST(SceneMapping, PicturesOfTheHandsDifferFromEachOther) {
    const Scene scene;
    EXPECT_NE(pictureOf(scene, {{}, "hands-wash", {}, 0}),
              pictureOf(scene, {{}, "hands-rub", {}, 0}));
    EXPECT_NE(pictureOf(scene, {{}, "scrub-across", {}, 0}),
              pictureOf(scene, {{}, "scrub-along", {}, 0}));
}

TEST(SceneMapping, ReadsConditionsJoinedAndAsAlternatives) {
    const auto data = readSceneData(R"({"size":[0,0,10,7],
        "focus":{"f":{"stage":"s"}},
        "layers":[{"file":"x","stage":"s","when":["a",["b","!c"]]}]})");
    ASSERT_TRUE(data);
    const LayerSpec& layer = data->layers.at(0);
    const auto shows = [&](const std::set<std::string>& conditions) {
        return data->shows(layer, {.conditions = conditions, .focus = "f"});
    };
    EXPECT_TRUE(shows({"a", "c"}));
    EXPECT_TRUE(shows({"b"}));
    EXPECT_FALSE(shows({"b", "c"}));
    EXPECT_FALSE(shows({}));
    EXPECT_FALSE(data->shows(layer, {.conditions = {"a"}, .focus = "other"}));
    EXPECT_FALSE(readSceneData("[]"));
    EXPECT_FALSE(readSceneData("{"));
}

TEST(SceneMotion, MovesWithThePhaseAndOnlyWithIt) {
    const Scene scene;
    for (const char* const focus : {"scrub-across", "scrub-along", "scrub-line", "hands-rub"}) {
        const Motion motion = std::string(focus) == "scrub-across" ? Motion::Across : Motion::Along;
        const QImage first = pictureOf(scene, {{}, focus, motion, 0.25});
        EXPECT_NE(first, pictureOf(scene, {{}, focus, motion, 0.75})) << focus;
        EXPECT_EQ(first, pictureOf(scene, {{}, focus, motion, 0.25})) << focus;
        EXPECT_EQ(pictureOf(scene, {{}, focus, {}, 0.25}), pictureOf(scene, {{}, focus, {}, 0.75}))
            << focus;
    }
    EXPECT_NE(pictureOf(scene, {{"line-steady"}, "peel", Motion::Peel, 0}),
              pictureOf(scene, {{"line-steady"}, "peel", Motion::Peel, 0.9}));
}

// The shine of what is wet goes with the time asked, and is gone when that is over.
TEST(SceneMotion, DryingRisesAndTheShineGoes) {
    const Scene scene;
    const std::set<std::string> wet = {"skin-scrubbed", "gloves-on", "gloves-sterile"};
    const auto drying = [&](double phase, double dried) {
        return pictureOf(scene, {wet, "dry", Motion::Rise, phase, dried});
    };
    EXPECT_NE(drying(0.2, 0), drying(0.5, 0));
    EXPECT_NE(drying(0.2, 0), drying(0.2, 0.5));
    EXPECT_NE(drying(0.2, 0.5), drying(0.2, 1));
    EXPECT_EQ(drying(0.2, 1), drying(0.2, 1.5));
}

TEST(SceneMotion, GoesByTheTimeGiven) {
    EXPECT_DOUBLE_EQ(strokePhase(Motion::Across, 0), 0);
    EXPECT_DOUBLE_EQ(strokePhase(Motion::Across, 250), 0.25);
    EXPECT_DOUBLE_EQ(strokePhase(Motion::Across, 7'250), 0.25);
    EXPECT_DOUBLE_EQ(strokePhase(Motion::Along, -5), 0);
    for (const Motion motion :
         {Motion::Across, Motion::Along, Motion::Circles, Motion::Peel, Motion::Press}) {
        for (std::int64_t ms = 0; ms < 20'000; ms += 333) {
            EXPECT_GE(strokePhase(motion, ms), 0);
            EXPECT_LT(strokePhase(motion, ms), 1);
        }
    }
}

TEST(SceneMotion, KnowsTheWordsOfThePackLanguage) {
    EXPECT_EQ(motionFromWord("across"), Motion::Across);
    EXPECT_EQ(motionFromWord("along"), Motion::Along);
    EXPECT_EQ(motionFromWord("circles"), Motion::Circles);
    EXPECT_EQ(motionFromWord("peel"), Motion::Peel);
    EXPECT_EQ(motionFromWord("press"), Motion::Press);
    EXPECT_EQ(motionFromWord("sideways"), std::nullopt);
    EXPECT_EQ(motionFromWord("rise"), std::nullopt);
    for (const char* const word : {"across", "along", "circles", "peel", "press"})
        EXPECT_EQ(wordOf(*motionFromWord(word)), word);
    EXPECT_EQ(wordOf(Motion::Rise), "rise");
}

TEST(ScenePicture, KeepsItsShapeInsideTheArea) {
    const Scene scene;
    const QImage image = pictureOf(scene, {{}, "place", {}, 0}, Theme::light(), {400, 100});
    EXPECT_EQ(image.pixel(20, 50), qRgb(255, 255, 255));
    EXPECT_EQ(image.pixel(379, 50), qRgb(255, 255, 255));
    EXPECT_NE(image.pixel(200, 50), qRgb(255, 255, 255));
}

TEST(ScenePicture, FollowsTheTheme) {
    const Scene scene;
    const SceneState state{{}, "peel", {}, 0};
    const QImage light = pictureOf(scene, state, Theme::light());
    EXPECT_NE(light, pictureOf(scene, state, Theme::dark()));
    EXPECT_NE(light, pictureOf(scene, state, Theme::print()));
    EXPECT_EQ(light, pictureOf(scene, state, Theme::light(2.0)));
}

TEST(ScenePicture, IsVectorsOnPaper) {
    const QString path = QDir::temp().filePath(QStringLiteral("scene.pdf"));
    const Scene scene;
    {
        QPdfWriter writer(path);
        QPainter painter(&writer);
        for (const std::string& focus : scene.focuses()) {
            scene.paint(painter, QRectF(0, 0, writer.width(), writer.width() * 0.7),
                        {{}, focus, Motion::Along, 0.3}, Theme::print());
            writer.newPage();
        }
    }
    // pdfimages (poppler-utils) lists the raster images of a PDF below two lines of heading.
    QProcess list;
    list.start(QStringLiteral("pdfimages"), {QStringLiteral("-list"), path});
    ASSERT_TRUE(list.waitForFinished()) << "pdfimages of poppler-utils is missing";
    ASSERT_EQ(list.exitCode(), 0);
    EXPECT_EQ(list.readAllStandardOutput().count('\n'), 2);
}

}  // namespace
}  // namespace render
