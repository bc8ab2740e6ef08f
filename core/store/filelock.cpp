// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/filelock.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

namespace store {

base::Result<FileLock> FileLock::take(const std::string& path) {
    const int handle = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);
    if (handle < 0) return base::Error{base::Code::FileUnwritable, {path, std::strerror(errno)}};
    FileLock lock(handle);
    // The file stays when the lock is let go: removing it would let two holders have one each.
    if (::flock(handle, LOCK_EX | LOCK_NB) != 0) return base::Error{base::Code::StoreLocked};
    return lock;
}

FileLock::~FileLock() {
    if (m_handle >= 0) ::close(m_handle);
}

}  // namespace store
