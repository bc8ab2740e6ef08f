// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of the arm against the state, at every step of the dressing change, after every
// single lapse, and all along the way back from it. The rules below are written here, apart from
// scene.json. That no bare hand comes near cleaned skin: CDC 2011, on gloves, as the pack cites it.
#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <map>
#include <random>

#include "core/packs/clinicalpack.h"
#include "procedure/check.h"
#include "procedure/model.h"
#include "render/scene.h"
#include "render/scenedata.h"
#include "support/paths.h"

namespace render {
namespace {

using procedure::Conditions;
using Names = std::set<std::string>;

/// A state of the visit with the step that is in hand.
struct PictureMoment {
    Names before;
    const packs::Step* step = nullptr;
    std::string how;

    bool has(const char* condition) const { return before.contains(condition); }
    bool gives(const char* condition) const { return isIn(step->gives, condition); }
    bool ends(const char* condition) const { return isIn(step->ends, condition); }
    bool changes(const char* condition) const { return gives(condition) || ends(condition); }
    bool isAt(const char* focus) const { return step->picture->focus == focus; }

    static bool isIn(const std::vector<std::string>& ids, const char* id) {
        return std::ranges::find(ids, id) != ids.end();
    }
};

const clinical::Taken& taughtPack() {
    static const clinical::Taken pack("weekly-dressing-upper-arm");
    return pack;
}

Names namesOf(Conditions state) {
    Names names;
    const auto& ids = taughtPack().model.conditionIds;
    for (std::size_t i = 0; i < ids.size(); ++i)
        if (state.has(static_cast<int>(i))) names.insert(ids[i]);
    return names;
}

/// Collects each pair of a state and a step with a picture once.
class PictureMoments {
  public:
    PictureMoments() {
        const procedure::Model& model = taughtPack().model;
        run(model.start, 0, "no lapse");
        for (const procedure::WayBack& way : taughtPack().report.ways) follow(way);
    }
    const std::vector<PictureMoment>& all() const { return m_all; }

  private:
    void follow(const procedure::WayBack& way) {
        const procedure::Model& model = taughtPack().model;
        const int step = model.operatorIndex(way.step).value();
        const bool isAfter = way.seen == procedure::Seen::After;
        const auto& lapse = model.lapses[static_cast<std::size_t>(*model.lapseIndex(way.lapse))];
        Conditions state =
            procedure::nominalStates(model).at(static_cast<std::size_t>(step + (isAfter ? 1 : 0)));
        state = state.without(lapse.breaks).with(lapse.sets);
        const std::string how = way.lapse + (isAfter ? " after " : " during ") + way.step;
        const int inHand = isAfter ? step + 1 : step;
        if (inHand < model.stepCount) look(state, inHand, how);
        if (way.outcome != procedure::PlanOutcome::Found) return;
        for (const std::string& id : way.plan)
            state = look(state, model.operatorIndex(id).value(), how);
        run(state, inHand, how);
    }
    void run(Conditions state, int from, const std::string& how) {
        for (int op = from; op < taughtPack().model.stepCount; ++op) state = look(state, op, how);
    }
    /// Keeps the moment, and says what holds once the step is done.
    Conditions look(Conditions state, int index, const std::string& how) {
        const auto& op = taughtPack().model.operators[static_cast<std::size_t>(index)];
        const packs::Step& step = taughtPack().step(op.id);
        if (step.picture && m_seen.insert({index, state.bits()}).second)
            m_all.push_back({namesOf(state), &step, how + ", at " + op.id});
        return state.without(op.ends).with(op.gives);
    }

    std::set<std::pair<int, std::uint64_t>> m_seen;
    std::vector<PictureMoment> m_all;
};

const std::vector<PictureMoment>& allMoments() {
    static const PictureMoments moments;
    return moments.all();
}

SceneData sceneOfTheProgram() {
    QFile file(QStringLiteral(":/illustrations/scene.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return readSceneData(file.readAll()).value();
}

/// What one picture shows, and what is wrong with it.
class PictureRules {
  public:
    PictureRules(const SceneData& data, const PictureMoment& moment, const SceneState& state)
        : m_moment(moment), m_glove(data.gloveFor(state.conditions)) {
        for (const LayerSpec& layer : data.layers) {
            if (!data.shows(layer, state)) continue;
            m_shown.insert(layer.file);
            if (layer.isHand) m_hands.insert(layer.file);
        }
    }

    std::vector<std::string> faults() {
        hands();
        if (m_shown.contains("arm")) {
            things();
            skin();
            line();
            cover();
        } else {
            elsewhere();
        }
        return m_faults;
    }

  private:
    bool shows(const Names& any) const {
        return std::ranges::any_of(any, [&](const auto& file) { return m_shown.contains(file); });
    }
    void expect(bool isRight, const std::string& rule) {
        if (!isRight) m_faults.push_back(m_moment.how + ": " + rule);
    }
    /// A thing is there when its condition holds, or when the step in hand puts it there or takes
    /// it away; the picture shows that as being done.
    void follows(const Names& layers, const char* condition) {
        if (m_moment.changes(condition)) return;
        expect(shows(layers) == m_moment.has(condition),
               *layers.begin() + " goes with " + condition);
    }

    void things() {
        follows({"dressing-old", "peel-1", "peel-2", "peel-3"}, "dressing-old-on");
        follows({"device-old-doors"}, "device-old-on");
        follows({"device-new-doors"}, "device-new-on");
        follows({"dressing-new"}, "dressing-new-on");
        follows({"barrier"}, "film-on");
        follows({"label-new"}, "labelled");
        if (!m_moment.isAt("device-close")) follows({"device-new-pad"}, "device-on-skin");
        expect(m_shown.contains("clamps-closed") != m_shown.contains("clamps-open"), "one clamp");
        follows({"clamps-closed"}, "clamps-closed");
    }
    void skin() {
        const bool isScrubbing = m_moment.gives("skin-scrubbed") || m_moment.gives("line-scrubbed");
        const bool isWet = m_moment.has("skin-scrubbed") && !m_moment.has("skin-dry") &&
                           !m_moment.has("dressing-new-on");
        expect(shows({"skin-wet"}) == (isWet || isScrubbing), "wet from the scrub until dry");
        expect(shows({"skin-shine"}) == shows({"skin-wet"}), "what is wet shines");
        const bool isDry = m_moment.has("skin-dry") && !m_moment.has("dressing-new-on");
        if (!isScrubbing && !m_moment.changes("dressing-new-on"))
            expect(shows({"skin-clean"}) == isDry, "dry skin has no shine");
        const bool isFilmWet = m_moment.has("film-on") && !m_moment.has("film-dry");
        if (!m_moment.changes("film-on"))
            expect(shows({"barrier-shine"}) == isFilmWet, "wet film shines");
        const bool hasBlood = !m_moment.has("blood-off") && !m_moment.has("skin-scrubbed");
        if (!isScrubbing) expect(shows({"blood"}) == hasBlood, "dried blood until wiped off");
        for (const char* const part : {"gauze-wipe", "hand-wipe"})
            expect(shows({part}) == m_moment.gives("blood-off"), "gauze wipes the blood");
        if (m_moment.isAt("site"))
            expect(shows({"look-ring"}) != m_moment.gives("blood-off"), "the ring: only look");
    }
    void line() {
        // The pack does not say whether a strip or a hand holds the line, so the picture does not.
        if (!m_moment.changes("line-held")) {
            expect(shows({"held"}) == m_moment.has("line-held"), "a held line is marked");
            expect(!shows({"strip"}), "a strip only while one is laid");
        }
        const bool isBare = m_moment.has("device-open") && !m_moment.has("device-on-skin") &&
                            !m_moment.has("pad-off");
        if (!m_moment.isAt("device-open") && !m_moment.isAt("device-off"))
            expect(shows({"device-old-open"}) == isBare,
                   "the opened old device until its pad is off");
        const bool hasOldPad = m_moment.has("device-old-on") || isBare;
        if (!m_moment.isAt("device-off"))
            expect(shows({"device-old-pad"}) == hasOldPad, "the old pad while it sticks");
        const bool isOpen = m_moment.has("device-on-skin") && !m_moment.has("device-new-on");
        if (!m_moment.changes("device-on-skin") && !m_moment.changes("device-new-on"))
            expect(shows({"device-new-open"}) == isOpen, "the new device open until closed");
    }
    void cover() {
        if (!m_moment.changes("dressing-new-on") && !m_moment.changes("frame-off")) {
            const bool hasFrame = m_moment.has("dressing-new-on") && !m_moment.has("frame-off");
            expect(shows({"frame"}) == hasFrame, "the frame until it is taken off");
            expect(!shows({"frame-peel", "frame-flap", "hand-frame"}), "the frame lies flat");
        }
        if (m_moment.gives("frame-off") && m_moment.has("edges-firm"))
            expect(shows({"frame-peel"}) && shows({"hand-frame"}) && !shows({"hand-dressing"}),
                   "a hand takes the frame off");
        if (m_moment.isAt("dressing") && !m_moment.gives("frame-off") &&
            (!m_moment.has("edges-firm") || m_moment.has("frame-off")))
            expect(shows({"hand-dressing"}), "a hand lays and presses");
        const bool isLoosening = m_moment.isAt("peel") && !m_moment.has("line-steady");
        if (isLoosening) expect(!shows({"peel-2", "peel-3"}), "loosening is not yet peeling");
        if (m_moment.isAt("peel")) {
            int stages = 0;
            for (const char* const peel : {"peel-1", "peel-2", "peel-3"})
                stages += m_shown.contains(peel) ? 1 : 0;
            expect(stages == 1, "one stage of the peel at a time");
            expect(shows({"label-old"}) == shows({"peel-1"}), "the label folds away with its edge");
        } else if (!m_moment.changes("dressing-old-on")) {
            expect(shows({"label-old"}) == m_moment.has("dressing-old-on"), "the old label");
        }
    }
    void hands() {
        const std::string worn = m_moment.has("gloves-sterile") ? "sterile"
                                 : m_moment.has("gloves-clean") ? "clean"
                                 : m_moment.has("gloves-on")    ? "spoiled"
                                                                : "";
        expect(m_glove == worn, "the hands wear what is on: " + worn);
        for (const std::string& file : m_shown)
            if (m_shown.contains("arm") && (file.starts_with("hand-") || file.starts_with("peel-")))
                expect(m_hands.contains(file), file + " wears the gloves");
        const bool isCleanSkin = m_moment.has("skin-scrubbed") && m_moment.has("site-bare");
        // Whoever sees the line slide holds it at once, gloved or not; the pack says so.
        if (m_shown.contains("arm") && !m_moment.has("gloves-on") && !m_moment.has("line-loose"))
            expect(m_hands.empty() || !isCleanSkin, "no bare hand near cleaned skin");
    }
    void elsewhere() {
        if (m_moment.isAt("mask") || m_moment.isAt("faces")) {
            follows({"mask-learner"}, "mask-on");
            follows({"mask-patient"}, "faces-away");
            expect(shows({"mask-learner"}) || !m_moment.gives("mask-on"), "the mask goes on");
            expect(shows({"mask-patient"}) || !m_moment.gives("faces-away"), "faces covered");
        }
        if (m_shown.contains("rub-left"))
            expect(shows({"jewels"}) == !m_moment.has("jewels-off"), "rings until they are off");
        if (m_moment.isAt("hands"))
            expect(shows({"towel"}) == (m_moment.has("hands-washed") && !m_moment.has("hands-dry")),
                   "a towel for wet hands");
        if (m_moment.isAt("place"))
            expect(shows({"cloth"}) == m_moment.has("place-ready") &&
                       shows({"shine"}) == m_moment.has("place-ready"),
                   "wiped once the place is chosen");
        if (m_moment.isAt("field"))
            expect(shows({"field-pieces"}) == m_moment.has("field-open"),
                   "pieces on an open field");
        if (m_moment.isAt("waste"))
            expect(shows({"waste-dressing"}) != m_moment.has("old-away") &&
                       shows({"waste-used"}) == m_moment.has("old-away"),
                   "the old dressing goes once");
        if (m_moment.isAt("write"))
            expect(shows({"label-paper"}) == m_moment.gives("label-written") &&
                       shows({"sheet"}) != m_moment.gives("label-written"),
                   "a label, or a page");
    }

    const PictureMoment& m_moment;
    std::string m_glove;
    Names m_shown, m_hands;
    std::vector<std::string> m_faults;
};

/// All motions that the step in hand may be painted with.
std::vector<std::optional<Motion>> motionsOf(const packs::Step& step) {
    std::vector<std::optional<Motion>> motions = {std::nullopt};
    if (step.picture->focus == "dry") motions.push_back(Motion::Rise);
    if (step.picture->focus == "peel" || step.picture->focus == "dressing")
        motions.push_back(Motion::Peel);
    if (step.picture->focus.starts_with("scrub"))
        for (const Motion motion : {Motion::Across, Motion::Along}) motions.push_back(motion);
    return motions;
}

std::vector<std::string> faultsOf(const SceneData& data, const PictureMoment& moment) {
    std::vector<std::string> faults;
    for (const auto& motion : motionsOf(*moment.step))
        for (const double phase : {0.0, 0.33, 0.34, 0.66, 0.67, 0.999}) {
            const SceneState state{.conditions = moment.before,
                                   .focus = moment.step->picture->focus,
                                   .motion = motion,
                                   .phase = phase};
            for (std::string& fault : PictureRules(data, moment, state).faults())
                faults.push_back(std::move(fault));
            if (!motion) break;
        }
    return faults;
}

TEST(SceneStates, ThePictureAgreesAtEveryStepAndAfterEveryLapse) {
    const SceneData data = sceneOfTheProgram();
    EXPECT_GT(allMoments().size(), 300u);
    std::map<std::string, std::string> firstOfRule;
    for (const PictureMoment& moment : allMoments())
        for (const std::string& fault : faultsOf(data, moment)) {
            const std::size_t colon = fault.rfind(": ");
            firstOfRule.try_emplace(moment.step->id + fault.substr(colon), fault);
        }
    for (const auto& [rule, fault] : firstOfRule) ADD_FAILURE() << fault;
    RecordProperty("moments", static_cast<int>(allMoments().size()));
}

// Two conditions that only a second lapse could bring into a picture: an open clamp under a
// dressing change, and a new device that is closed while it is being stuck on.
const Names beyondOneLapse = {"clamps-closed", "device-new-open"};

// The rules are worth something only if they see a layer that is switched wrongly.
TEST(SceneStates, TheRulesSeeEveryConditionThatIsLost) {
    const SceneData data = sceneOfTheProgram();
    ASSERT_TRUE(std::ranges::all_of(
        allMoments(), [&](const auto& moment) { return faultsOf(data, moment).empty(); }));
    int lost = 0;
    for (std::size_t i = 0; i < data.layers.size(); ++i) {
        if (data.layers[i].when.choices.empty()) continue;
        SceneData broken = data;
        broken.layers[i].when.choices.clear();
        const bool isSeen = std::ranges::any_of(
            allMoments(), [&](const auto& moment) { return !faultsOf(broken, moment).empty(); });
        EXPECT_TRUE(isSeen || beyondOneLapse.contains(data.layers[i].file))
            << data.layers[i].file << ", layer " << i;
        ++lost;
    }
    EXPECT_GT(lost, 30);
}

TEST(SceneStates, TheRulesSeeEveryGloveThatIsLost) {
    const SceneData data = sceneOfTheProgram();
    for (std::size_t i = 0; i < data.gloves.size(); ++i) {
        SceneData broken = data;
        broken.gloves.erase(broken.gloves.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_TRUE(std::ranges::any_of(allMoments(), [&](const auto& moment) {
            return !faultsOf(broken, moment).empty();
        })) << data.gloves[i].variant;
    }
}

/// Sheets of pictures, each under what it shows, beside the test program.
void writeSheet(const std::string& name, const std::vector<const PictureMoment*>& moments,
                const Theme& theme) {
    constexpr int wide = 360, high = 252, line = 22, columns = 4;
    const int rows = (static_cast<int>(moments.size()) + columns - 1) / columns;
    QImage sheet(columns * (wide + 8), std::max(rows, 1) * (high + line), QImage::Format_RGB32);
    sheet.fill(theme.color(Role::Paper));
    QPainter painter(&sheet);
    painter.setPen(theme.color(Role::Ink));
    const Scene scene;
    for (int i = 0; i < static_cast<int>(moments.size()); ++i) {
        const PictureMoment& moment = *moments[static_cast<std::size_t>(i)];
        const QRectF place(i % columns * (wide + 8), i / columns * (high + line), wide, high);
        const auto motions = motionsOf(*moment.step);
        scene.paint(painter, place,
                    {.conditions = moment.before,
                     .focus = moment.step->picture->focus,
                     .motion = motions.back(),
                     .phase = 0.2},
                    theme);
        painter.drawText(place.translated(4, high).adjusted(0, 0, 0, line - high),
                         Qt::AlignVCenter | Qt::TextSingleLine, QString::fromStdString(moment.how));
    }
    painter.end();
    EXPECT_TRUE(sheet.save(QString::fromStdString(support::forLooking(name))));
}

TEST(SceneStates, AreWrittenForLookingAt) {
    std::vector<const PictureMoment*> taught, back;
    for (const PictureMoment& moment : allMoments())
        (moment.how.starts_with("no lapse") ? taught : back).push_back(&moment);
    const QByteArray seed = qgetenv("NINEBARK_SEED");
    std::mt19937 random(seed.isEmpty() ? 1u : seed.toUInt());
    std::ranges::shuffle(back, random);
    back.resize(std::min<std::size_t>(back.size(), 40));
    writeSheet("scene_taught_light.png", taught, Theme::light());
    writeSheet("scene_taught_dark.png", taught, Theme::dark());
    writeSheet("scene_taught_print.png", taught, Theme::print());
    writeSheet("scene_back_light.png", back, Theme::light());
}

}  // namespace
}  // namespace render
