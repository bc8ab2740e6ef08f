// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>

#include "base/result.h"

namespace store {

/// Says to other copies of the program that a record is in use. Held as long as the object lives;
/// the system lets go of it when the process ends in whatever way. Works between processes and
/// between two opens in one.
class FileLock {
  public:
    /// Errors: StoreLocked when another holds it, FileUnwritable.
    static base::Result<FileLock> take(const std::string& path);

    FileLock(FileLock&& other) noexcept : m_handle(std::exchange(other.m_handle, -1)) {}
    FileLock& operator=(FileLock&& other) noexcept {
        std::swap(m_handle, other.m_handle);
        return *this;
    }
    ~FileLock();

  private:
    explicit FileLock(int handle) : m_handle(handle) {}
    int m_handle;
};

}  // namespace store
