// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Keys lie in memory that is not swapped out, and after signing out nowhere at all. proc(5): VmLck
// of /proc/PID/status, /proc/PID/maps and /proc/PID/mem.
#include <gtest/gtest.h>
#include <sys/mman.h>
#include <unistd.h>

#include <fstream>

#include "support/ownmemory.h"
#include "support/sealedhistory.h"

namespace gate {
namespace {

using support::Masked;
using support::OwnMemory;
using support::SealedHistory;

long lockedKiB() {
    std::ifstream status("/proc/self/status");
    for (std::string word; status >> word;)
        if (word == "VmLck:") {
            long amount = -1;
            status >> amount;
            return amount;
        }
    return -1;
}

/// Whether so much memory can be locked here at all: a limit or a sanitizer may be against it.
bool canLock(std::size_t bytes) {
    void* const made =
        ::mmap(nullptr, bytes, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
    const long before = lockedKiB();
    const bool isLocked = ::mlock(made, bytes) == 0 && lockedKiB() > before;
    ::munmap(made, bytes);
    return isLocked;
}

TEST(KeysInMemory, AreLockedWhileTheyAreThere) {
    if (!canLock(std::size_t{1} << 18U)) GTEST_SKIP() << "hardly any memory can be locked here";
    const base::LedgerId home = base::LedgerId::random();
    const long before = lockedKiB();
    {
        seal::KeyRows rows;
        const auto sheet = seal::Recovery::generate();
        const auto phrase = support::SealedPeople::phrase(support::SealedPeople::iris);
        const long without = lockedKiB();
        const auto ring =
            seal::Keyring::found(rows, {home, base::StaffId::random(), std::string(16, 'h')},
                                 phrase, seal::Cost::least(), sheet);
        ASSERT_TRUE(ring.ok());
        // Its seed, what it signs with, its secret key and the epoch's, a page each at least.
        EXPECT_GE(lockedKiB(), without + 4 * ::sysconf(_SC_PAGESIZE) / 1024);
    }
    EXPECT_EQ(lockedKiB(), before);
}

TEST(KeysInMemory, AreNowhereAfterSigningOut) {
    SealedHistory history;
    history.signIn(SealedHistory::tam);
    history.note(SealedHistory::tam, 0, "signed in");
    const auto kept = [&] {
        const auto secret = history.gate().identity()->secret();
        const auto row = **history.ledger().keyShelf().ofSubject(history.patient(0));
        const auto wrapped = seal::WrappedPatientKey::parse(nlohmann::json::parse(row.text));
        const auto ring = history.gate().keyring();
        return std::vector<std::pair<std::string, Masked>>{
            {"the seed of the signatures", Masked(secret)},
            {"the secret key", Masked(secret, 32)},
            {"the epoch's key", Masked(ring->current().key)},
            {"the patient's key", Masked(ring->open(*wrapped)->key)}};
    }();
    OwnMemory memory;
    for (const auto& [what, secret] : kept) EXPECT_GE(memory.placesOf(secret), 1) << what;
    history.gate().signOut();
    for (const auto& [what, secret] : kept) EXPECT_EQ(memory.placesOf(secret), 0) << what;
}

}  // namespace
}  // namespace gate
