// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// `ninebark backup` itself, killed while it writes.
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <random>

#include "cli/backupcommands.h"
#include "cli/deskplaces.h"
#include "cli/typed.h"
#include "store/backupfile.h"
#include "support/kills.h"
#include "support/longrun.h"
#include "support/recordfolder.h"

namespace app {

using support::SealedPlace;

class BackupKill : public testing::Test {
  protected:
    const SealedPlace m_place;
    const QTemporaryDir m_to;
    const std::string m_file = m_place.folder() + "/ward.backup", m_part = m_file + ".part";
    std::mt19937 m_random{static_cast<unsigned>(support::longRunNumber("NINEBARK_SEED", 7))};

    /// Something that takes many pieces to copy.
    void SetUp() override {
        const base::ManualClock clock(m_place.begin());
        auto ward =
            composeSealed(QString::fromStdString(m_place.folder()), clock, SealedPlace::cheap());
        ASSERT_TRUE(ward.ok());
        ASSERT_TRUE(ward->gate->signIn(SealedPlace::name, support::Ward::passphrase()).now().ok());
        ASSERT_TRUE(ward->ledger->putBlob(seal::randomBytes(pieces << 16U)).ok());
        ward->gate->signOut();
    }
    static constexpr std::size_t pieces = 128;

    /// Its exit code, or less than 0 when it was killed once its file had so many bytes.
    int backUp(off_t killAt) const {
        const pid_t child = ::fork();
        if (child == 0) {
            const std::string program = support::buildDir() + "/ninebark", data = m_place.folder();
            const int silence = ::open("/dev/null", O_WRONLY);
            ::dup2(silence, STDOUT_FILENO);
            ::execl(program.c_str(), program.c_str(), "backup", m_file.c_str(), "--data",
                    data.c_str(), nullptr);
            ::_exit(127);
        }
        EXPECT_GT(child, 0);
        int status = 0;
        while (child > 0 && ::waitpid(child, &status, WNOHANG) == 0) {
            struct stat part {};
            if (killAt > 0 && ::stat(m_part.c_str(), &part) == 0 && part.st_size >= killAt)
                ::kill(child, SIGKILL);
        }
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    ExitCode restored() const {
        const support::Typed typed(m_place.hello());
        std::ostringstream out, err;
        return RestoreCommand(typed.descriptor())
            .run({m_file, m_to.path().toStdString(), "--as", SealedPlace::name}, out, err);
    }
};

TEST_F(BackupKill, LeavesTheFormerBackupWholeAndNothingInTheWay) {
    ASSERT_EQ(backUp(0), 0);
    std::string former = support::bytesOfFile(m_file);
    ASSERT_GT(former.size(), pieces << 16U);
    const int rounds = support::longRunNumber("NINEBARK_ROUNDS", 12);
    int killed = 0;
    for (int i = 0; i < rounds && !HasFailure(); ++i) {
        const auto most = static_cast<std::mt19937::result_type>(former.size() * 3 / 4);
        const bool isKilled = backUp(1 + static_cast<off_t>(m_random() % most)) < 0;
        const bool isHalf = QFile::exists(QString::fromStdString(m_part));
        const std::string now = support::bytesOfFile(m_file);
        killed += isKilled && isHalf ? 1 : 0;
        if (isHalf) {
            EXPECT_TRUE(now == former) << "half of it took the place of a whole one";
        }
        former = now;
        EXPECT_TRUE(store::readBackupHead(m_file).ok());
        EXPECT_TRUE(m_place.read()->check({}, m_place.ring())->isIntact());
    }
    support::expectKills(support::whileBackingUp, {killed, 0});
    EXPECT_GE(killed, rounds / 3) << "too few were killed while they wrote";
    ASSERT_EQ(backUp(0), 0) << "what a killed one left is in nobody's way";
    EXPECT_FALSE(QFile::exists(QString::fromStdString(m_part)));
    EXPECT_EQ(restored(), ExitCode::Done);
}

}  // namespace app
