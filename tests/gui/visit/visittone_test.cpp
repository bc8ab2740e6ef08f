// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// One soft tone ends a phase. IEC 60601-1-8 gives alarm signals of medium and high priority bursts
// of three and more pulses (from memory); this is one pulse, never repeated.
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtEndian>
#include <cstdlib>

#include "gui/visit/visitdriver.h"
#include "visit/softtone.h"

namespace {

using gui::VisitDriver;
using practice::Way;

/// The page's wish for a tone, counted instead of played.
struct Tones {
    explicit Tones(VisitDriver& visit) : spy(&visit.page(), &ui::VisitPage::phaseRanOut) {}
    int count() const { return static_cast<int>(spy.count()); }
    QSignalSpy spy;
};

void beginWash(VisitDriver& visit) {
    visit.seeUntil("soap-wash");
    visit.press(Qt::Key_Space);
}

void tickFor(VisitDriver& visit, int seconds) {
    for (int i = 0; i < seconds; ++i) {
        visit.pass(1000);
        visit.page().tick();
    }
}

int targetSeconds(VisitDriver& visit) {
    return visit.ward().taught().pack.competencies[0].steps[1].phases[0].targetSeconds;
}

TEST(VisitTone, SoundsOnceWhenTheTimeAskedIsOver) {
    VisitDriver visit("clean-hands", Way::Guided);
    Tones tones(visit);
    beginWash(visit);
    tickFor(visit, targetSeconds(visit) - 2);
    EXPECT_EQ(tones.count(), 0);
    tickFor(visit, 3);
    EXPECT_EQ(tones.count(), 1);
    tickFor(visit, 300);
    visit.press(Qt::Key_C);
    visit.page().hide();
    visit.page().show();
    tickFor(visit, 3);
    EXPECT_EQ(tones.count(), 1) << "never repeated";
}

TEST(VisitTone, IsOffInReturnDemonstrations) {
    VisitDriver visit("clean-hands", Way::ReturnDemonstration);
    Tones tones(visit);
    beginWash(visit);
    tickFor(visit, targetSeconds(visit) + 5);
    EXPECT_EQ(tones.count(), 0);
}

TEST(VisitTone, OneKeyTurnsItOffAndTellsTheSettings) {
    VisitDriver visit("clean-hands", Way::Guided);
    Tones tones(visit);
    QSignalSpy kept(&visit.page(), &ui::VisitPage::toneChanged);
    visit.press(Qt::Key_F8);
    ASSERT_EQ(kept.count(), 1);
    EXPECT_FALSE(kept[0][0].toBool());
    beginWash(visit);
    tickFor(visit, targetSeconds(visit) + 5);
    EXPECT_EQ(tones.count(), 0);
    visit.press(Qt::Key_F8);
    tickFor(visit, 2);
    EXPECT_EQ(tones.count(), 0) << "not belatedly either";
}

TEST(VisitTone, APhaseLeftRunningDoesNotSoundOnTheWayIn) {
    VisitDriver visit("clean-hands", Way::Guided);
    beginWash(visit);
    visit.pass(10 * 60 * 1000);
    ui::VisitPage again(visit.ward().desk());
    QSignalSpy tones(&again, &ui::VisitPage::phaseRanOut);
    again.show();
    again.tick();
    EXPECT_EQ(tones.count(), 0);
}

// One swell: it grows to one height and fades, soft throughout.
TEST(VisitTone, IsASingleSwell) {
    const QByteArray wave = ui::SoftTone::wave();
    ASSERT_TRUE(wave.startsWith("RIFF"));
    const int samples = (static_cast<int>(wave.size()) - 44) / 2;
    const int parts = 20;
    std::vector<int> loudest(parts, 0);
    for (int i = 0; i < samples; ++i) {
        const int height = std::abs(qFromLittleEndian<qint16>(wave.constData() + 44 + 2 * i));
        int& part = loudest[static_cast<std::size_t>(i * parts / samples)];
        part = std::max(part, height);
    }
    const auto top = std::ranges::max_element(loudest);
    EXPECT_LT(*top, 32767 * 0.3);
    EXPECT_TRUE(std::is_sorted(loudest.begin(), top + 1));
    EXPECT_TRUE(std::is_sorted(top, loudest.end(), std::greater<>()));
    EXPECT_LT(loudest.front() + loudest.back(), *top / 5);
}

TEST(VisitTone, IsGivenOnceToThePlayerThatIsThere) {
    QTemporaryDir folder;
    for (const char* name : {"pw-play", "paplay", "aplay"}) {
        QFile file(folder.filePath(QLatin1String(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("#!/bin/sh\ncat \"$1\" >>\"" + folder.path().toUtf8() +
                   "/heard.part\"\n"
                   "mv \"" +
                   folder.path().toUtf8() + "/heard.part\" \"" + folder.path().toUtf8() +
                   "/heard\"\n");
        file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    }
    const QByteArray before = qgetenv("PATH");
    qputenv("PATH", folder.path().toUtf8() + ':' + before);
    ui::SoftTone tone(nullptr);
    tone.play();
    const QString heard = folder.filePath(QStringLiteral("heard"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return QFile::exists(heard); }, 20'000));
    qputenv("PATH", before);
    QFile file(heard);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), ui::SoftTone::wave());
}

TEST(VisitTone, WithoutAPlayerNothingBreaks) {
    const QTemporaryDir empty;
    const QByteArray before = qgetenv("PATH");
    qputenv("PATH", empty.path().toUtf8());
    ui::SoftTone tone(nullptr);
    qputenv("PATH", before);
    tone.play();
}

}  // namespace
