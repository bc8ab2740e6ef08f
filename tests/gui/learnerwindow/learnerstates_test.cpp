// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the learner never sees, in every state of a visit and in both themes: a name, a count, a
// result, the word lapse, red.
#include <QAccessible>
#include <QRegularExpression>
#include <functional>
#include <set>

#include "gui/learnerwindow/watching.h"
#include "parts/parts.h"

namespace {

using gui::Watching;
using practice::Way;

struct LearnerState {
    const char* name;
    Way way;
    std::function<void(Watching&)> reach;
};

std::string inHand(Watching& watching) {
    return practice::recordInHand(watching.ward.visit().state)->step;
}

void wash(Watching& watching) {
    watching.ward.doStepInHand();
    watching.ward.must(practice::BeginPhase{.step = "soap-wash", .phase = "rub-with-soap"});
    watching.ward.clock().advanceMs(9000);
}

void soil(Watching& watching) {
    for (int i = 0; i < 4; ++i) watching.ward.doStepInHand();
    watching.ward.must(practice::SeeLapse{.lapses = {"hands-soiled"}});
}

/// A condition that nothing in the pack gives back once it is lost.
void loseTheWay(Watching& watching) {
    for (const packs::Condition& one : watching.ward.taught().pack.conditions) {
        watching.ward.must(practice::SeeLapse{
            .other = practice::OtherLapse{.what = "spoiled", .touched = {one.id}}});
        const auto& state = watching.ward.visit().state;
        if (state.wayBack && state.wayBack->outcome == procedure::PlanOutcome::None) return;
        watching.ward.must(practice::TakeBack{.entry = state.lapses.back().entry});
    }
}

const std::vector<LearnerState>& learnerStates() {
    static const std::vector<LearnerState> all{
        {"step", Way::Guided, [](Watching&) {}},
        {"cue", Way::Guided,
         [](Watching& w) { w.ward.must(practice::GiveCue{{.step = inHand(w)}}); }},
        {"phase waits", Way::Guided, [](Watching& w) { w.ward.doStepInHand(); }},
        {"phase runs", Way::Guided, wash},
        {"phase over its time", Way::Guided,
         [](Watching& w) {
             wash(w);
             w.ward.clock().advanceMs(90'000);
         }},
        {"paused", Way::Guided,
         [](Watching& w) {
             wash(w);
             w.ward.must(practice::Pause{});
         }},
        {"stopped short", Way::Guided,
         [](Watching& w) {
             wash(w);
             w.ward.must(practice::EndPhase{.step = "soap-wash", .phase = "rub-with-soap"});
         }},
        {"way back", Way::Guided, soil},
        {"no way back", Way::Guided, loseTheWay},
        {"taken over", Way::Guided,
         [](Watching& w) { w.ward.must(practice::TakeOver{.why = "to keep the patient safe"}); }},
        {"all done", Way::Guided, [](Watching& w) { w.ward.doAllSteps(); }},
        {"demonstration", Way::ReturnDemonstration, [](Watching& w) { w.ward.doStepInHand(); }},
        {"demonstration, lapse", Way::ReturnDemonstration, soil},
        {"demonstration, way back shown", Way::ReturnDemonstration,
         [](Watching& w) {
             soil(w);
             w.ward.must(practice::ShowWayBack{});
         }},
        {"shown", Way::Show, [](Watching& w) { w.ward.doStepInHand(); }},
    };
    return all;
}

/// Everything in sight or spoken by a screen reader.
QStringList everyWord(const QWidget& window) {
    QStringList words{window.windowTitle(), window.accessibleName()};
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible()) continue;
        words << widget->accessibleName() << widget->accessibleDescription() << widget->toolTip();
        if (const auto* label = qobject_cast<QLabel*>(widget)) words << label->text();
        if (auto* face = QAccessible::queryAccessibleInterface(widget))
            words << face->text(QAccessible::Name) << face->text(QAccessible::Value)
                  << face->text(QAccessible::Description);
    }
    words.removeAll(QString());
    return words;
}

/// All sentences the pack has for a learner to do.
std::set<QString> sentencesOf(const packs::Pack& pack) {
    std::set<QString> all;
    for (const packs::StepPlace& place : packs::stepsInOrder(pack))
        all.insert(QString::fromStdString(place.step->doText.at("en")));
    for (const packs::Step& step : pack.recoveries)
        all.insert(QString::fromStdString(step.doText.at("en")));
    return all;
}

/// Red as alarm colours are: hue within 12 degrees of it, strong and bright, not the brown of skin
/// or its outline.
int redPixels(const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); y += 2)
        for (int x = 0; x < image.width(); x += 2) {
            const QColor color = image.pixelColor(x, y);
            const bool isRed = color.hsvHue() >= 0 && (color.hsvHue() < 12 || color.hsvHue() > 348);
            if (isRed && color.hsvSaturation() > 85 && color.value() > 110) ++count;
        }
    return count;
}

TEST(LearnerStates, EveryWordIsTheStepAClockOrOneOfTheFixedOnes) {
    const QRegularExpression clock(QStringLiteral("^\\d{1,2}:\\d{2}$"));
    // The last three are for the teacher, where this covers the only screen.
    const std::set<QString> fixed{QStringLiteral("For the learner"), QStringLiteral("Read aloud"),
                                  QStringLiteral("The keys of the visit rest meanwhile."),
                                  QStringLiteral("Back to the visit"), QStringLiteral("Esc, F11")};
    for (const LearnerState& state : learnerStates()) {
        Watching watching(state.way);
        state.reach(watching);
        watching.window->tick();
        const auto sentences = sentencesOf(watching.ward.taught().pack);
        // Of no person and no result: that none of it is real, where it is not.
        const QString notice = ui::wardWords(watching.ward.desk().view());
        for (const QString& word : everyWord(*watching.window))
            EXPECT_TRUE(sentences.contains(word) || fixed.contains(word) || word == notice ||
                        clock.match(word).hasMatch())
                << state.name << ": " << word.toStdString();
    }
}

TEST(LearnerStates, NothingIsRedInEitherTheme) {
    for (const auto scheme : {ui::SchemeChoice::Light, ui::SchemeChoice::Dark})
        for (const LearnerState& state : learnerStates()) {
            Watching watching(state.way);
            ui::Look::instance().apply(scheme, 1.0);
            state.reach(watching);
            watching.window->tick();
            const QString name =
                QLatin1String(scheme == ui::SchemeChoice::Dark ? "dark " : "light ") +
                QLatin1String(state.name);
            watching.picture(("learner-" + name.toStdString()).c_str());
            EXPECT_EQ(redPixels(watching.window->grab().toImage()), 0) << name.toStdString();
        }
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

// The measure of red above finds the colour that the teacher's page says lapses in.
TEST(LearnerStates, TheTestKnowsRedWhenItSeesIt) {
    for (const auto scheme : {ui::SchemeChoice::Light, ui::SchemeChoice::Dark}) {
        ui::Look::instance().apply(scheme, 1.0);
        QImage image(20, 20, QImage::Format_RGB32);
        image.fill(ui::Look::instance().theme().color(render::Role::Brick));
        EXPECT_EQ(redPixels(image), 100);
    }
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}

}  // namespace
