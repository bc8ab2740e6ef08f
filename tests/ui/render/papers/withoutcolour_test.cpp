// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QPainter>

#include "render/papers/sections.h"
#include "ui/render/papers/sample.h"

/// Pages as a printer shows them that has no colour, and no grey either: whatever differs in the
/// record differs there by a word or a shape. The principle is WCAG 2.2, 1.4.1 (use of colour); the
/// least number of dots is our own.
namespace render {
namespace {

constexpr int dotsAnInch = 100;
// Some three letters of 8.5 points; the same short word in bold is less.
constexpr int leastApart = 60;

std::vector<QImage> pagesInBlackAndWhite(const Document& document) {
    const Paper paper(document);
    std::vector<QImage> pages;
    for (int page = 0; page < paper.pageCount(); ++page) {
        QImage image((paper.pagePoints() * dotsAnInch / 72).toSize(), QImage::Format_Grayscale8);
        image.setDotsPerMeterX(int(dotsAnInch / 0.0254));
        image.setDotsPerMeterY(int(dotsAnInch / 0.0254));
        image.fill(Qt::white);
        QPainter painter(&image);
        paper.paintPage(painter, page);
        painter.end();
        pages.push_back(image.convertToFormat(QImage::Format_Mono, Qt::ThresholdDither));
    }
    return pages;
}

int dotsApart(const std::vector<QImage>& one, const std::vector<QImage>& other) {
    int apart = 0;
    for (size_t page = 0; page < std::min(one.size(), other.size()); ++page)
        for (int y = 0; y < one[page].height(); ++y)
            for (int x = 0; x < one[page].width(); ++x)
                apart += one[page].pixelIndex(x, y) != other[page].pixelIndex(x, y);
    return apart;
}

using States = std::vector<std::pair<std::string, Document>>;

void expectAllToldApart(const States& states) {
    std::vector<std::vector<QImage>> drawings;
    for (const auto& [name, document] : states) drawings.push_back(pagesInBlackAndWhite(document));
    for (size_t i = 0; i < states.size(); ++i)
        for (size_t k = i + 1; k < states.size(); ++k)
            EXPECT_GE(dotsApart(drawings[i], drawings[k]), leastApart)
                << states[i].first << " / " << states[k].first;
}

const PaperData& notYetOnPaper() {
    static const PaperData data = Sample(Stage::NotYet).data();
    return data;
}

/// The part of the chart that `add` makes, of a record that `change` changed.
template <class Add, class Change>
Document partOfChart(Add add, Change change) {
    PaperData data = notYetOnPaper();
    change(data);
    Document document;
    add(document.blocks, data, english());
    return document;
}

TEST(PageWithoutColour, TellsWhatHelpAStepHad) {
    States states;
    for (const auto& [help, name] : base::Names<practice::Help>::all)
        states.push_back({name, partOfChart(addSteps, [help = help](PaperData& data) {
                              PaperStep& step = data.visits.back().steps[9];
                              step.help = help;
                              step.cues = help == practice::Help::Cued;
                          })});
    states.push_back({"lapse", partOfChart(addSteps, [](PaperData& data) {
                          data.visits.back().steps[9].lapses = {"A"};
                          data.visits.back().steps[9].isLapsed = true;
                      })});
    states.push_back({"by judgement", partOfChart(addSteps, [](PaperData& data) {
                          data.visits.back().steps[9].byJudgement = true;
                      })});
    ASSERT_EQ(states.size(), 10u);
    expectAllToldApart(states);
}

TEST(PageWithoutColour, TellsHowATimedPhaseEnded) {
    const auto ended = [](practice::PhaseEnd end, std::int64_t measuredMs) {
        return partOfChart(addTimes, [=](PaperData& data) {
            PaperPhase& phase = data.visits.back().steps[9].phases.at(0);
            phase.end = end;
            phase.measuredMs = measuredMs;
        });
    };
    expectAllToldApart({{"done", ended(practice::PhaseEnd::Done, 30'000)},
                        {"stopped short", ended(practice::PhaseEnd::StoppedShort, 30'000)},
                        {"void", ended(practice::PhaseEnd::Voided, 30'000)},
                        {"running", ended(practice::PhaseEnd::Running, 30'000)}});
}

TEST(PageWithoutColour, TellsWhatBecameOfALapse) {
    const auto lapsed = [](auto change) {
        return partOfChart(addLapses,
                           [change](PaperData& data) { change(data.visits.back().lapses.at(0)); });
    };
    expectAllToldApart(
        {{"alone", lapsed([](PaperLapse&) {})},
         {"shown", lapsed([](PaperLapse& l) { l.caught = practice::Caught::Shown; })},
         {"not caught", lapsed([](PaperLapse& l) { l.caught = practice::Caught::No; })},
         {"not solved", lapsed([](PaperLapse& l) { l.solved = false; })},
         {"withdrawn", lapsed([](PaperLapse& l) { l.withdrawn = true; })},
         {"left out", lapsed([](PaperLapse& l) { l.isLeftOut = true; })},
         {"absence", lapsed([](PaperLapse& l) { l.byAbsence = true; })}});
}

Document verdictPage(Verdict verdict) {
    Document document;
    document.blocks.push_back(VerdictBox{verdict, QStringLiteral("word"), {}});
    return document;
}

Document cautionPage(packs::Level level, CautionLook look) {
    Document document;
    document.blocks.push_back(
        CautionBox{level, QStringLiteral("word"), {QStringLiteral("sentence")}, look});
    return document;
}

// Here the words are the same, so that the shapes alone have to tell.
TEST(PageWithoutColour, TellsVerdictsAndCautionsByShapeAlone) {
    expectAllToldApart(
        {{"ready", verdictPage(Verdict::Ready)}, {"not yet", verdictPage(Verdict::NotYet)}});
    for (const CautionLook look : {CautionLook::Framed, CautionLook::RunIn}) {
        States states;
        for (const auto& [level, name] : base::Names<packs::Level>::all)
            states.push_back({name, cautionPage(level, look)});
        expectAllToldApart(states);
    }
}

Document lanePage(std::vector<Bar> bars, bool isShort) {
    LanesData data;
    data.density = Density::Print;
    data.toMs = 100'000;
    data.lanes = {{QStringLiteral("skin"),
                   std::move(bars),
                   {{10'000, 40'000, QStringLiteral("30 s"), isShort}}}};
    Document document;
    document.blocks.push_back(LanesBlock{QStringLiteral("Visit 1"), data});
    return document;
}

TEST(PageWithoutColour, TellsWhatALaneShowsByShapeAlone) {
    const auto bar = [](BarKind kind) { return lanePage({{50'000, 80'000, kind}}, false); };
    expectAllToldApart({{"nothing", lanePage({}, false)},
                        {"held", bar(BarKind::Held)},
                        {"cut", bar(BarKind::Cut)},
                        {"won back", bar(BarKind::WonBack)},
                        {"not seen", bar(BarKind::Unseen)},
                        {"stopped short", lanePage({}, true)}});
}

TEST(PageWithoutColour, TellsWhetherACompetencyIsMetAndSigned) {
    const auto part = [](bool isMet, bool isSigned, bool isNew) {
        return partOfChart(addSteps, [=](PaperData& data) {
            data.pack.parts[1].isMet = isMet;
            data.pack.parts[1].isSigned = isSigned;
            data.pack.parts[1].isNewSinceSigning = isNew;
        });
    };
    expectAllToldApart({{"not yet", part(false, false, false)},
                        {"met", part(true, false, false)},
                        {"signed", part(true, true, false)},
                        {"signed before", part(true, true, true)}});
}

}  // namespace
}  // namespace render
