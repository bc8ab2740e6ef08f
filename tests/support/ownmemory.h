// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/mman.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <sstream>
#include <vector>

#include "seal/secret.h"

/// Looking for a secret in one's own memory: proc(5), /proc/PID/maps and /proc/PID/mem.
namespace support {

/// A secret as nobody who looks for it finds it here.
class Masked {
  public:
    explicit Masked(const seal::Secret& secret, std::size_t from = 0, std::size_t size = 32) {
        for (std::size_t i = 0; i < size; ++i)
            m_bytes.push_back(static_cast<unsigned char>(secret.data()[from + i] ^ mask));
    }
    /// The same letters of 16 bits each, as a window has them.
    Masked wide() const {
        Masked made = *this;
        made.m_bytes.clear();
        for (const unsigned char one : m_bytes)
            made.m_bytes.push_back(one), made.m_bytes.push_back(mask);
        return made;
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

}  // namespace support
