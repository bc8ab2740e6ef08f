// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Keys lie in memory that is not swapped out, and after signing out nowhere at all. proc(5): VmLck
// of /proc/PID/status, /proc/PID/maps and /proc/PID/mem.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/mman.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "support/sealedhistory.h"

namespace gate {
namespace {

using support::SealedHistory;

/// A secret as nobody who looks for it finds it here.
class Masked {
  public:
    explicit Masked(const seal::Secret& secret, std::size_t from = 0, std::size_t size = 32) {
        for (std::size_t i = 0; i < size; ++i)
            m_bytes.push_back(static_cast<unsigned char>(secret.data()[from + i] ^ mask));
    }
    std::size_t size() const { return m_bytes.size(); }
    bool isAt(const unsigned char* at) const {
        for (std::size_t i = 0; i < m_bytes.size(); ++i)
            if ((at[i] ^ mask) != m_bytes[i]) return false;
        return true;
    }

  private:
    static constexpr unsigned char mask = 0xa7;
    std::vector<unsigned char> m_bytes;
};

/// Reads all of this process's memory that can be written to, piece by piece.
class OwnMemory {
  public:
    OwnMemory() : m_handle(::open("/proc/self/mem", O_RDONLY | O_CLOEXEC)) {
        void* const made =
            ::mmap(nullptr, pieceSize, PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
        EXPECT_NE(made, MAP_FAILED);
        m_piece = static_cast<unsigned char*>(made);
    }
    OwnMemory(const OwnMemory&) = delete;
    OwnMemory& operator=(const OwnMemory&) = delete;
    ~OwnMemory() {
        ::munmap(m_piece, pieceSize);
        ::close(m_handle);
    }
    /// At how many places it is.
    int placesOf(const Masked& secret) {
        int found = 0;
        std::ifstream maps("/proc/self/maps");
        for (std::string line; std::getline(maps, line);) {
            std::istringstream words(line);
            std::uint64_t begin = 0, end = 0;
            char dash = 0;
            std::string rights;
            words >> std::hex >> begin >> dash >> end >> rights;
            // What is larger is a sanitizer's own.
            const bool isOurs = end - begin < largest && !isPiece(begin, end);
            if (rights.starts_with("rw") && isOurs) found += placesIn(begin, end, secret);
        }
        std::fill_n(m_piece, pieceSize, 0);
        return found;
    }

  private:
    static constexpr std::size_t pieceSize = std::size_t{1} << 20U;
    static constexpr std::uint64_t largest = std::uint64_t{1} << 28U;

    /// What was read is no place of its own.
    bool isPiece(std::uint64_t begin, std::uint64_t end) const {
        const auto piece = reinterpret_cast<std::uintptr_t>(m_piece);
        return begin < piece + pieceSize && piece < end;
    }
    int placesIn(std::uint64_t begin, std::uint64_t end, const Masked& secret) {
        int found = 0;
        while (begin + secret.size() <= end) {
            const auto wanted = std::min<std::uint64_t>(pieceSize, end - begin);
            const auto got = ::pread(m_handle, m_piece, wanted, static_cast<off_t>(begin));
            if (got < static_cast<ssize_t>(secret.size())) return found;  // of the system's own
            const auto last = static_cast<std::size_t>(got) - secret.size();
            for (std::size_t i = 0; i <= last; ++i) found += secret.isAt(m_piece + i) ? 1 : 0;
            begin += last + 1;
        }
        return found;
    }

    int m_handle;
    unsigned char* m_piece;
};

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
