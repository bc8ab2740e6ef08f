// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Reading aloud, with a program of our own in the place of espeak-ng that writes down what it was
// given.
#include "learnerwindow/voice.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include "gui/learnerwindow/watching.h"
#include "pieces/pressbutton.h"

namespace {

using gui::Watching;
using practice::Way;

constexpr int patience = 20'000;  // of a wait that ends as soon as what it waits for is there

/// A folder that stands first on PATH while this lives, with a program of that name in it.
class ProgramOnPath {
  public:
    ProgramOnPath(const char* name, const QByteArray& script) : m_before(qgetenv("PATH")) {
        QFile file(m_folder.filePath(QLatin1String(name)));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("#!/bin/sh\n" + script);
        file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        qputenv("PATH", m_folder.path().toUtf8() + ':' + m_before);
        qputenv("NINEBARK_TEST_SAID", said().toUtf8());
    }
    ~ProgramOnPath() {
        qputenv("PATH", m_before);
        qunsetenv("NINEBARK_TEST_SAID");
    }
    QString said() const { return m_folder.filePath(QStringLiteral("said")); }
    QByteArray whatItSaid() const {
        QFile file(said());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

  private:
    QTemporaryDir m_folder;
    QByteArray m_before;
};

// Arguments, then what came in, then a line that says that it ended by itself.
const char* const writesDown =
    "printf '%s|' \"$@\" >\"$NINEBARK_TEST_SAID\"\ncat >>\"$NINEBARK_TEST_SAID\"\n"
    "echo end >>\"$NINEBARK_TEST_SAID\"\n";
// Never ends by itself: it reads from a pipe that nobody writes to.
const char* const neverEnds =
    "echo $$ >\"$NINEBARK_TEST_SAID\"\nmkfifo \"$NINEBARK_TEST_SAID.pipe\"\n"
    "exec cat \"$NINEBARK_TEST_SAID.pipe\"\n";

ui::PressButton* listen(Watching& watching) {
    return watching.window->findChild<ui::PressButton*>(QStringLiteral("readAloud"));
}

QString quietSentence(Watching& watching) {
    auto* label = watching.window->findChild<QLabel*>(QStringLiteral("cannotRead"));
    return label->isVisible() ? label->text() : QString();
}

bool isGone(const QByteArray& process) {
    return !QFile::exists(QStringLiteral("/proc/%1").arg(QString::fromUtf8(process.trimmed())));
}

TEST(Voice, IsSilentUntilAskedAndThenReadsTheSentenceInItsLanguage) {
    const ProgramOnPath program("espeak-ng", writesDown);
    Watching watching(Way::Guided, "ar");
    watching.ward.doStepInHand();
    QCoreApplication::processEvents();
    EXPECT_TRUE(program.whatItSaid().isEmpty()) << "nobody asked";
    QTest::mouseClick(listen(watching), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !watching.window->isReading(); }, patience));
    const auto& step = watching.ward.taught().pack.competencies[0].steps[1];
    EXPECT_EQ(program.whatItSaid().toStdString(),
              "-v|ar|-s|130|--stdin|" + step.doText.at("ar") + "\nend\n");
    EXPECT_EQ(quietSentence(watching), QString());
}

// A language the pack does not have: the sentence is English, so it is read as English.
TEST(Voice, ReadsTheLanguageTheSentenceIsReallyIn) {
    const ProgramOnPath program("espeak-ng", writesDown);
    Watching watching(Way::Guided, "vi");
    watching.window->readAloud();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !watching.window->isReading(); }, patience));
    EXPECT_TRUE(program.whatItSaid().startsWith("-v|en|")) << program.whatItSaid().constData();
}

TEST(Voice, IsKilledWhenTheVisitMovesOn) {
    const ProgramOnPath program("espeak-ng", neverEnds);
    Watching watching(Way::Guided);
    watching.window->readAloud();
    ASSERT_TRUE(QTest::qWaitFor([&] { return program.whatItSaid().endsWith('\n'); }, patience));
    const QByteArray process = program.whatItSaid();
    EXPECT_FALSE(isGone(process));
    watching.ward.doStepInHand();
    EXPECT_FALSE(watching.window->isReading());
    EXPECT_TRUE(QTest::qWaitFor([&] { return isGone(process); }, patience));
    EXPECT_EQ(quietSentence(watching), QString()) << "stopping is no failure";
}

TEST(Voice, AskedAgainItStops) {
    const ProgramOnPath program("espeak-ng", neverEnds);
    Watching watching(Way::Guided);
    watching.window->readAloud();
    EXPECT_TRUE(watching.window->isReading());
    watching.window->readAloud();
    EXPECT_FALSE(watching.window->isReading());
}

TEST(Voice, WhereItFailsASentenceSaysSoAndTheVisitGoesOn) {
    const ProgramOnPath program("espeak-ng", "exit 3\n");
    Watching watching(Way::Guided);
    QSignalSpy told(watching.window.get(), &ui::LearnerWindow::couldNotRead);
    const auto entries = watching.ward.ledger().head().size;
    watching.window->readAloud();
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.count() == 1; }, patience));
    EXPECT_TRUE(quietSentence(watching).contains(QStringLiteral("can't read it aloud")));
    EXPECT_EQ(watching.ward.ledger().head().size, entries);
    watching.picture("learner-cannot-read");
    watching.ward.doStepInHand();
    EXPECT_EQ(quietSentence(watching), QString()) << "the next sentence has no such note";
}

TEST(Voice, WhereTheProgramIsAbsentASentenceSaysSo) {
    Watching watching(Way::Guided);
    const QTemporaryDir empty;
    const QByteArray before = qgetenv("PATH");
    qputenv("PATH", empty.path().toUtf8());
    watching.window->readAloud();
    qputenv("PATH", before);
    EXPECT_NE(quietSentence(watching), QString());
    EXPECT_FALSE(watching.window->isReading());
}

TEST(Voice, InAReturnDemonstrationThereIsNothingToRead) {
    const ProgramOnPath program("espeak-ng", writesDown);
    Watching watching(Way::ReturnDemonstration);
    EXPECT_FALSE(listen(watching)->isVisible());
    watching.window->readAloud();
    EXPECT_FALSE(watching.window->isReading());
    EXPECT_TRUE(program.whatItSaid().isEmpty());
}

}  // namespace
