// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What the program says on standard error, where systems keep logs of it, names nobody.
#include <gtest/gtest.h>

#include <QProcess>
#include <QTemporaryDir>
#include <fstream>
#include <set>
#include <sstream>

#include "cli/demofolder.h"
#include "support/paths.h"

namespace app {
namespace {

struct Told {
    int exit = -1;
    std::string out, err;
};

Told toldBy(const std::vector<std::string>& words, const std::string& input) {
    QProcess program;
    QStringList arguments;
    for (const std::string& word : words) arguments << QString::fromStdString(word);
    program.start(QString::fromStdString(support::buildDir() + "/ninebark"), arguments);
    program.write(input.data(), static_cast<qint64>(input.size()));
    program.closeWriteChannel();
    EXPECT_TRUE(program.waitForFinished(120'000));
    return {program.exitCode(), program.readAllStandardOutput().toStdString(),
            program.readAllStandardError().toStdString()};
}

/// The words of a text that are long enough to be known again.
void addWords(std::set<std::string>& words, const std::string& text) {
    std::istringstream in(text);
    for (std::string word; in >> word;)
        if (word.size() > 3) words.insert(word);
}

/// Everybody of the demonstration ward, word by word.
std::set<std::string> everybody() {
    const base::ManualClock clock(support::demoStart());
    const QTemporaryDir folder;
    const auto ward = composeWard(folder.path(), clock);
    std::set<std::string> words;
    for (const record::Staff& one : ward->desk->view().house.staff) addWords(words, one.said.name);
    for (const record::Card& one : ward->desk->view().cards)
        for (const std::string& text : {one.patientName, one.learnerName, one.number, one.born})
            addWords(words, text);
    return words;
}

void expectNone(const std::set<std::string>& words, const Told& told) {
    EXPECT_GT(words.size(), 10U);
    for (const std::string& word : words)
        EXPECT_EQ(told.err.find(word), std::string::npos) << word << " in: " << told.err;
}

TEST(Logs, OfAPlayedVisitNameNobody) {
    const QTemporaryDir out;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const Told told = toldBy({"visit", "--out", out.path().toStdString()}, {});
    EXPECT_EQ(told.exit, 0) << told.err;
    expectNone(everybody(), told);
}

}  // namespace

/// Names that are planted in commands, good ones and every kind that is refused.
class PlantedNames : public testing::Test {
  protected:
    const std::set<std::string> m_words = {"Quillfeather", "Zwetschge", "Aprikose",   "PLANT-7731",
                                           "1931-02-03",   "Mirabelle", "Kumquatowa", "Bergamotte",
                                           "Physalis",     "Karambole", "Rambutan"};
    const support::DemoFolder m_folder{support::DemoFolder::Visit::None};

    std::string lines() const {
        const auto ledger = m_folder.open();
        const auto shelf = compiledShelf();
        const base::ManualClock clock(support::demoStart());
        const auto opened = desk::Desk::open(*ledger, **shelf, clock, desk::Ward::Demonstration);
        desk::Desk& desk = **opened;
        desk.workAs(desk.view().house.staff.front().said.staff);
        auto added = desk.command(
            record::AddPatient{"Quillfeather Zwetschge", "1931-02-03", "PLANT-7731", "en"});
        added.patient = base::PatientId::random();
        auto again = added;
        again.id = base::CommandId::random();
        auto note = desk.command(practice::WriteNote{{}, "Mirabelle weeps at night"});
        note.patient = added.patient;
        auto unknown = desk::toJson(again);
        unknown["do"] = "Kumquatowa";
        auto odd = desk::toJson(again);
        odd["data"]["Bergamotte"] = "Physalis";
        auto badDate = desk::toJson(again);
        badDate["data"]["born"] = "Karambole";
        return desk::toJson(added).dump() + '\n' + desk::toJson(again).dump() + '\n' +
               desk::toJson(note).dump() + '\n' + unknown.dump() + '\n' + odd.dump() + '\n' +
               badDate.dump() + "\n{\"name\": Aprikose}\nRambutan\xff\n";
    }
};

TEST_F(PlantedNames, AreInNoLogWhateverBecomesOfTheCommand) {
    const Told told = toldBy({"desk", "--data", m_folder.path()}, lines());
    EXPECT_NE(told.out.find("\"ok\":true"), std::string::npos) << told.out;
    EXPECT_NE(told.out.find("\"ok\":false"), std::string::npos) << told.out;
    expectNone(m_words, told);
    const Told shown = toldBy({"record", "show", "--data", m_folder.path()}, {});
    expectNone(m_words, shown);
    const Told verified = toldBy({"record", "verify", "--data", m_folder.path()}, {});
    EXPECT_EQ(verified.exit, 0) << verified.err;
    expectNone(m_words, verified);
}

}  // namespace app
