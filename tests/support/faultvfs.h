// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sqlite3.h>

#include <cstring>
#include <functional>

/// A layer below SQLite that lets a test decide what becomes of each write. It is the default of
/// the process from its first use on and does nothing until it is told to.
namespace support {

enum class DiskOperation { Write, Sync };

/// Asked before each write and each sync; answers a result code of SQLite, SQLITE_OK to let it be
/// done. `half` writes the first half of what was to be written: what a torn write leaves.
using DiskJudge = std::function<int(DiskOperation operation, const std::function<void()>& half)>;

inline DiskJudge& diskJudge() {
    static DiskJudge judge;
    return judge;
}

namespace faulty {

struct File {
    sqlite3_file base;
    sqlite3_file* real;
};

inline sqlite3_vfs* realVfs() {
    static sqlite3_vfs* const real = sqlite3_vfs_find("unix");
    return real;
}
inline sqlite3_file* below(sqlite3_file* file) { return reinterpret_cast<File*>(file)->real; }

inline int close(sqlite3_file* file) { return below(file)->pMethods->xClose(below(file)); }
inline int read(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
    return below(file)->pMethods->xRead(below(file), to, amount, at);
}
inline int write(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) {
    const auto real = [&](int bytes) {
        return below(file)->pMethods->xWrite(below(file), from, bytes, at);
    };
    if (diskJudge()) {
        const int answer = diskJudge()(DiskOperation::Write, [&] { real(amount / 2); });
        if (answer != SQLITE_OK) return answer;
    }
    return real(amount);
}
inline int truncate(sqlite3_file* file, sqlite3_int64 size) {
    return below(file)->pMethods->xTruncate(below(file), size);
}
inline int sync(sqlite3_file* file, int flags) {
    if (diskJudge()) {
        const int answer = diskJudge()(DiskOperation::Sync, [] {});
        if (answer != SQLITE_OK) return answer;
    }
    return below(file)->pMethods->xSync(below(file), flags);
}
inline int size(sqlite3_file* file, sqlite3_int64* bytes) {
    return below(file)->pMethods->xFileSize(below(file), bytes);
}
inline int lock(sqlite3_file* file, int level) {
    return below(file)->pMethods->xLock(below(file), level);
}
inline int unlock(sqlite3_file* file, int level) {
    return below(file)->pMethods->xUnlock(below(file), level);
}
inline int reserved(sqlite3_file* file, int* held) {
    return below(file)->pMethods->xCheckReservedLock(below(file), held);
}
inline int control(sqlite3_file* file, int operation, void* argument) {
    return below(file)->pMethods->xFileControl(below(file), operation, argument);
}
inline int sector(sqlite3_file* file) { return below(file)->pMethods->xSectorSize(below(file)); }
inline int traits(sqlite3_file* file) {
    return below(file)->pMethods->xDeviceCharacteristics(below(file));
}
inline int shmMap(sqlite3_file* file, int page, int bytes, int extend, void volatile** at) {
    return below(file)->pMethods->xShmMap(below(file), page, bytes, extend, at);
}
inline int shmLock(sqlite3_file* file, int offset, int count, int flags) {
    return below(file)->pMethods->xShmLock(below(file), offset, count, flags);
}
inline void shmBarrier(sqlite3_file* file) { below(file)->pMethods->xShmBarrier(below(file)); }
inline int shmUnmap(sqlite3_file* file, int remove) {
    return below(file)->pMethods->xShmUnmap(below(file), remove);
}

inline const sqlite3_io_methods methods = {
    2,       close,  read,   write,  truncate, sync,       size,     lock,    unlock, reserved,
    control, sector, traits, shmMap, shmLock,  shmBarrier, shmUnmap, nullptr, nullptr};

inline int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* got) {
    auto* const ours = reinterpret_cast<File*>(file);
    ours->real = reinterpret_cast<sqlite3_file*>(ours + 1);
    const int done = realVfs()->xOpen(realVfs(), name, ours->real, flags, got);
    ours->base.pMethods = ours->real->pMethods ? &methods : nullptr;
    return done;
}

}  // namespace faulty

/// Puts the layer in for connections that are opened from now on.
inline void useFaultyDisk() {
    static sqlite3_vfs vfs = [] {
        sqlite3_initialize();
        sqlite3_vfs made = *faulty::realVfs();
        made.szOsFile += static_cast<int>(sizeof(faulty::File));
        made.zName = "faulty";
        made.pNext = nullptr;
        made.xOpen = &faulty::open;
        return made;
    }();
    sqlite3_vfs_register(&vfs, 1);
}

}  // namespace support
