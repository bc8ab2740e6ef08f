// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>
#include <sys/mman.h>
#include <unistd.h>

#include <atomic>
#include <csignal>

#include "support/faultvfs.h"

namespace support {

/// What a process says of its writes in memory that outlives it.
class DiskMarks {
  public:
    DiskMarks() {
        void* const shared = ::mmap(nullptr, sizeof(Shared), PROT_READ | PROT_WRITE,
                                    MAP_SHARED | MAP_ANONYMOUS, -1, 0);
        EXPECT_NE(shared, MAP_FAILED);
        m_shared = new (shared) Shared;
    }
    DiskMarks(const DiskMarks&) = delete;
    DiskMarks& operator=(const DiskMarks&) = delete;
    ~DiskMarks() { ::munmap(m_shared, sizeof(Shared)); }

    /// In the process: dies by its own hand at its n-th write or sync, which is half done; 0:
    /// never.
    void dieAt(int operation) {
        useFaultyDisk();
        m_shared->seen = 0;
        m_shared->diedInside = false;
        diskJudge() = [shared = m_shared, operation](DiskOperation, const auto& half) {
            if (++shared->seen != operation) return SQLITE_OK;
            half();
            shared->diedInside = true;
            ::kill(::getpid(), SIGKILL);
            return SQLITE_OK;
        };
    }
    int seen() const { return m_shared->seen; }
    bool diedInside() const { return m_shared->diedInside; }

  private:
    struct Shared {
        std::atomic<int> seen = 0;
        std::atomic<bool> diedInside = false;
    };
    Shared* m_shared;
};

}  // namespace support
