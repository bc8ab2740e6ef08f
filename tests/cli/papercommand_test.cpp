// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/papercommand.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include "store/recordfile.h"
#include "store/sqlledger.h"
#include "support/paths.h"
#include "support/ward.h"

namespace app {
namespace {

QString qs(const std::string& text) { return QString::fromStdString(text); }

/// The record of a small ward, written to a file as it stands.
void writeRecord(support::Ward& ward, const std::string& folder) {
    const auto entries = ward.ledger().readFrom(0, 10'000);
    ASSERT_TRUE(entries.ok());
    std::vector<ledger::Draft> drafts;
    for (const ledger::Entry& entry : *entries) drafts.push_back({entry.subject, entry.body});
    const auto file =
        store::SqlLedger::open(store::recordFileIn(folder), store::OpenMode::Demonstration);
    ASSERT_TRUE(file.ok());
    const auto written =
        (*file)->append(drafts, ward.clock().now(), record::derive(*ward.desk().view().record));
    ASSERT_TRUE(written.ok());
}

/// Runs the program itself: fonts need more than the tests' own application.
int runPaper(const QStringList& words, QByteArray* out = nullptr) {
    QProcess process;
    process.start(qs(support::buildDir() + "/ninebark"),
                  QStringList{QStringLiteral("paper")} + words);
    EXPECT_TRUE(process.waitForFinished(60'000));
    if (out) *out = process.readAllStandardOutput();
    return process.exitCode();
}

TEST(PaperCommand, WritesChartAndNoteButNoCertificateYet) {
    QTemporaryDir folder;
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    ward.doAllSteps();
    ward.must(practice::CloseVisit{});
    writeRecord(ward, folder.path().toStdString());
    const auto asked = [&](const char* kind, const char* file) {
        return QStringList{QString::fromUtf8(kind),
                           QStringLiteral("--data"),
                           folder.path(),
                           QStringLiteral("--learner"),
                           qs(ward.learner().text()),
                           QStringLiteral("--out"),
                           folder.filePath(QString::fromUtf8(file))};
    };
    QByteArray digest;
    EXPECT_EQ(runPaper(asked("chart", "chart.pdf"), &digest), 0);
    EXPECT_EQ(digest.size(), 65);
    QByteArray asJson;
    EXPECT_EQ(runPaper(asked("steps", "steps.pdf") << QStringLiteral("--json"), &asJson), 0);
    auto said = nlohmann::json::parse(asJson.toStdString(), nullptr, false);
    EXPECT_EQ(said["ok"], true) << asJson.constData();
    said.erase("ok");
    said["id"] = base::CommandId::random().text(), said["by"] = ward.teacher().text();
    said["patient"] = ward.desk().view().record->id.text();
    const auto command = desk::readCommand(said);
    ASSERT_TRUE(command.ok()) << base::english(command.error());
    EXPECT_TRUE(ward.desk().handle(*command).ok()) << "it is all that a desk wants to know";
    QFile chart(folder.filePath(QStringLiteral("chart.pdf")));
    ASSERT_TRUE(chart.open(QIODevice::ReadOnly));
    EXPECT_TRUE(chart.readAll().startsWith("%PDF"));
    EXPECT_EQ(runPaper(asked("note", "note.txt")), 0);
    QFile note(folder.filePath(QStringLiteral("note.txt")));
    ASSERT_TRUE(note.open(QIODevice::ReadOnly));
    EXPECT_TRUE(note.readAll().contains("Not yet ready"));
    EXPECT_EQ(runPaper(asked("certificate", "certificate.pdf")), 1);
    EXPECT_EQ(runPaper(asked("certificate", "none.pdf") << QStringLiteral("--json"), &asJson), 1);
    EXPECT_EQ(nlohmann::json::parse(asJson.toStdString(), nullptr, false)["ok"], false);
    EXPECT_FALSE(QFile::exists(folder.filePath(QStringLiteral("certificate.pdf"))));
    EXPECT_EQ(runPaper(asked("chart", "missing/chart.pdf")), 2);
}

// The same clock file as that of `ninebark desk`: what it says is now, and that it is made up.
TEST(PaperCommand, AScriptedClockIsTheOneOnThePaper) {
    QTemporaryDir folder;
    support::Ward ward("clean-hands");
    ward.openVisit(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
    ward.doAllSteps();
    ward.must(practice::CloseVisit{});
    writeRecord(ward, folder.path().toStdString());
    QFile clock(folder.filePath(QStringLiteral("clock.json")));
    ASSERT_TRUE(clock.open(QIODevice::WriteOnly));
    clock.write(R"({"wall_ms": 1930262400000, "boot_ms": 900000000, "mono_ms": 900000000,
                    "boot_id": "scripted", "offset_minutes": 0, "zone": "UTC"})");
    clock.close();
    const auto noteBy = [&](const QString& file) {
        QFile::remove(folder.filePath(QStringLiteral("note.txt")));
        QFile note(folder.filePath(QStringLiteral("note.txt")));
        const int code =
            runPaper({QStringLiteral("note"), QStringLiteral("--data"), folder.path(),
                      QStringLiteral("--learner"), qs(ward.learner().text()),
                      QStringLiteral("--out"), note.fileName(), QStringLiteral("--clock"), file});
        return note.open(QIODevice::ReadOnly) ? note.readAll() : QByteArray::number(code);
    };
    EXPECT_EQ(noteBy(folder.filePath(QStringLiteral("nowhere.json"))), "2");
    const QByteArray note = noteBy(clock.fileName());
    EXPECT_TRUE(note.contains("Simulated clock")) << note.constData();
    EXPECT_TRUE(note.contains("days ago")) << "five years are long: " << note.constData();
}

TEST(PaperCommand, WrongWordsAreUsageAndMissingRecordsUnreadable) {
    QTemporaryDir folder;
    EXPECT_EQ(runPaper({}), 64);
    EXPECT_EQ(runPaper({QStringLiteral("poster")}), 64);
    EXPECT_EQ(runPaper({QStringLiteral("chart"), QStringLiteral("--data"), folder.path(),
                        QStringLiteral("--learner"), qs(base::LearnerId::random().text()),
                        QStringLiteral("--out"), folder.filePath(QStringLiteral("a.pdf"))}),
              2);
}

}  // namespace
}  // namespace app
