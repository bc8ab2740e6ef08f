// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/deskcommand.h"

#include <gtest/gtest.h>

#include "cli/deskplaces.h"
#include "cli/typed.h"

namespace app {

using support::SealedPlace;

/// Somebody who comes to the desk of a sealed record by the command line.
class DeskOfSealed : public testing::Test {
  protected:
    const SealedPlace m_place;
    std::string m_out, m_err;

    ExitCode come(const std::string& folder, const std::string& name, const std::string& typed,
                  gate::Terms terms, const std::string& lines = {}) {
        const support::Typed passphrase(typed);
        std::istringstream in(lines);
        std::ostringstream out, err;
        const auto code = DeskCommand(in, passphrase.descriptor(), terms)
                              .run({"--data", folder, "--as", name}, out, err);
        m_out = out.str();
        m_err = err.str();
        return code;
    }
    std::uint64_t entries() const { return m_place.read()->head().size; }
};

TEST_F(DeskOfSealed, TakesTheLinesOfWhoeverSignsIn) {
    const auto before = entries();
    desk::Command late = m_place.opening();
    EXPECT_EQ(come(m_place.folder(), "solveig aranda", m_place.hello(), SealedPlace::cheap(),
                   desk::toJson(late).dump() + '\n'),
              ExitCode::Done)
        << m_err;
    const auto answer = nlohmann::json::parse(m_out);
    EXPECT_EQ(answer["visit"]["id"], late.visit->text());
    const auto entry = m_place.read()->find(late.id).value();
    ASSERT_TRUE(entry && entry->isOpen);
    EXPECT_EQ(entry->body.by, late.by);
    EXPECT_GE(entries(), before + 3) << "that somebody came and whom they looked at stands there";
}

TEST_F(DeskOfSealed, LetsNobodyInByAWrongPassphraseOrNone) {
    const std::string line = desk::toJson(m_place.opening()).dump() + '\n';
    for (const auto& [name, typed, why] : {std::tuple(SealedPlace::name, "another\n", "is wrong"),
                                           std::tuple("Nobody", "another\n", "is wrong"),
                                           std::tuple(SealedPlace::name, "", "no passphrase")}) {
        EXPECT_EQ(come(m_place.folder(), name, typed, SealedPlace::cheap(), line),
                  ExitCode::Unreadable);
        EXPECT_EQ(m_out, "");
        EXPECT_NE(m_err.find(why), std::string::npos) << m_err;
    }
    EXPECT_FALSE(m_place.read()->find(m_place.opening().id).value());
}

TEST_F(DeskOfSealed, CheapKeysAreForInventedPeopleAlone) {
    EXPECT_EQ(come(m_place.folder(), SealedPlace::name, m_place.hello(), {}), ExitCode::Unreadable);
    EXPECT_NE(m_err.find("too cheap"), std::string::npos) << m_err;
}

TEST_F(DeskOfSealed, TakesNoOtherClockWhereRealPeopleAre) {
    const auto with = [&](const gate::Terms& terms) {
        const support::Typed passphrase(m_place.hello());
        support::DeskClock clock(m_place.folder() + "/clock.json", m_place.begin());
        clock.tick(1000);
        std::istringstream in;
        std::ostringstream out, err;
        const auto code = DeskCommand(in, passphrase.descriptor(), terms)
                              .run({"--data", m_place.folder(), "--as", SealedPlace::name,
                                    "--clock", clock.path()},
                                   out, err);
        m_err = err.str();
        return code;
    };
    EXPECT_EQ(with({}), ExitCode::Unreadable);
    EXPECT_NE(m_err.find("from this computer alone"), std::string::npos) << m_err;
    EXPECT_EQ(m_err.find("Passphrase"), std::string::npos) << "nobody is asked for one";
    EXPECT_EQ(with(SealedPlace::cheap()), ExitCode::Done) << m_err << "invented people have one";
}

TEST_F(DeskOfSealed, SaysSoWhereWhatIsWrittenWouldFallAway) {
    support::tamper(m_place.file(),
                    "CREATE TRIGGER quiet BEFORE INSERT ON entry BEGIN SELECT RAISE(IGNORE); END");
    const std::string line = desk::toJson(m_place.opening()).dump() + '\n';
    EXPECT_EQ(
        come(m_place.folder(), SealedPlace::name, m_place.hello(), SealedPlace::cheap(), line),
        ExitCode::Unreadable);
    EXPECT_EQ(m_out, "");
    EXPECT_NE(m_err.find("the rules that guard them"), std::string::npos) << m_err;
}

TEST_F(DeskOfSealed, MakesNoRecordAndMixesNoKinds) {
    const QTemporaryDir empty;
    EXPECT_EQ(come(empty.path().toStdString(), SealedPlace::name, m_place.hello(), {}),
              ExitCode::Unreadable);
    EXPECT_TRUE(QDir(empty.path()).isEmpty());
    const support::DemoFolder demo(support::DemoFolder::Visit::None);
    EXPECT_EQ(come(demo.path(), SealedPlace::name, m_place.hello(), {}), ExitCode::Unreadable);
    std::istringstream in;
    std::ostringstream out, err;
    EXPECT_EQ(DeskCommand(in).run({"--data", m_place.folder()}, out, err), ExitCode::Unreadable)
        << "without a name it is the desk of invented people";
    EXPECT_EQ(DeskCommand(in).run({"--data", m_place.folder(), "--as", ""}, out, err),
              ExitCode::Usage);
    EXPECT_EQ(out.str(), "");
}

}  // namespace app
