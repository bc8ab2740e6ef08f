// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/recordfile.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <string_view>

namespace store {
namespace {

using base::Code;
using base::Error;

constexpr std::string_view sqliteMagic("SQLite format 3\0", 16);
constexpr std::size_t headerBytes = 100;

/// A file handle that is closed at the end of the block.
class Handle {
  public:
    explicit Handle(int handle) : m_handle(handle) {}
    Handle(const Handle&) = delete;
    Handle& operator=(const Handle&) = delete;
    ~Handle() {
        if (m_handle >= 0) ::close(m_handle);
    }
    int get() const { return m_handle; }

  private:
    int m_handle;
};

std::string folderOf(const std::string& path) {
    const std::string folder = std::filesystem::path(path).parent_path().string();
    return folder.empty() ? "." : folder;
}

Error systemError(Code code, const std::string& path) {
    return Error{code, {path, std::strerror(errno)}};
}

/// A number of SQLite's file header, most significant byte first.
std::uint32_t bigEndian(const std::array<char, headerBytes>& header, std::size_t at,
                        std::size_t bytes) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < bytes; ++i)
        number = (number << 8U) | static_cast<unsigned char>(header[at + i]);
    return number;
}

/// SQLite's file format, section 1.3: page size at 16 (1 means 65536), pages at 28,
/// application_id at 68.
base::Outcome checkHeader(const std::array<char, headerBytes>& header, std::uint64_t fileBytes,
                          const std::string& path) {
    if (std::string_view(header.data(), sqliteMagic.size()) != sqliteMagic ||
        bigEndian(header, 68, 4) != static_cast<std::uint32_t>(applicationId))
        return Error{Code::StoreNotOurs, {path}};
    const std::uint32_t stored = bigEndian(header, 16, 2);
    const std::uint64_t pageBytes = stored == 1 ? 65536 : stored;
    // While a journal holds pages, the header may be ahead of the file.
    if (fileBytes < pageBytes * bigEndian(header, 28, 4) && !hasJournal(path))
        return Error{Code::StoreCutShort, {path}};
    return base::Done{};
}

bool canWrite(const std::string& path) { return ::access(path.c_str(), W_OK) == 0; }

}  // namespace

std::string recordFileIn(const std::string& folder) {
    return (std::filesystem::path(folder) / "ward.record").string();
}

std::vector<std::string> copiesBeside(const std::string& path) {
    const std::string begin = std::filesystem::path(path).filename().string() + ".";
    std::vector<std::string> names;
    std::error_code failed;  // a folder that can't be listed has no copy that can be named
    for (std::filesystem::directory_iterator at(folderOf(path), failed), end; !failed && at != end;
         at.increment(failed)) {
        std::string name = at->path().filename().string();
        if (name.starts_with(begin) && !name.ends_with(".lock")) names.push_back(std::move(name));
    }
    std::sort(names.begin(), names.end());
    return names;
}

bool hasJournal(const std::string& path) {
    struct stat info {};
    return ::stat((path + "-wal").c_str(), &info) == 0 && info.st_size > 0;
}

base::Result<FileState> inspect(const std::string& path) {
    struct stat info {};
    if (::stat(path.c_str(), &info) != 0) {
        if (errno != ENOENT) return systemError(Code::FileUnreadable, path);
        // A journal without its file: what it belonged to is lost, and must not look like new.
        if (hasJournal(path)) return Error{Code::StoreCutShort, {path}};
        return FileState::Missing;
    }
    if (!S_ISREG(info.st_mode)) return Error{Code::StoreNotAFile, {path}};
    const Handle file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (file.get() < 0) return systemError(Code::FileUnreadable, path);
    std::array<char, headerBytes> header{};
    const auto got = ::read(file.get(), header.data(), header.size());
    if (got < 0) return systemError(Code::FileUnreadable, path);
    const auto length = static_cast<std::size_t>(got);
    if (length < header.size()) {
        const std::size_t seen = std::min(length, sqliteMagic.size());
        const bool begins = std::string_view(header.data(), seen) == sqliteMagic.substr(0, seen);
        return Error{begins ? Code::StoreCutShort : Code::StoreNotOurs, {path}};
    }
    const auto checked = checkHeader(header, static_cast<std::uint64_t>(info.st_size), path);
    if (!checked) return checked.error();
    return canWrite(path) && canWrite(folderOf(path)) ? FileState::Writable : FileState::Readable;
}

base::Outcome makeFolderOf(const std::string& path) {
    std::error_code failed;
    const std::string folder = folderOf(path);
    if (std::filesystem::create_directories(folder, failed)) ::chmod(folder.c_str(), S_IRWXU);
    if (failed) return Error{Code::FileUnwritable, {folder, failed.message()}};
    return base::Done{};
}

base::Outcome makeEmptyFile(const std::string& path) {
    ::unlink(path.c_str());
    const Handle file(
        ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, S_IRUSR | S_IWUSR));
    if (file.get() < 0) return systemError(Code::FileUnwritable, path);
    return base::Done{};
}

base::Outcome settle(const std::string& from, const std::string& to) {
    const Handle file(::open(from.c_str(), O_RDONLY | O_CLOEXEC));
    if (file.get() < 0 || ::fsync(file.get()) != 0 || ::rename(from.c_str(), to.c_str()) != 0)
        return systemError(Code::FileUnwritable, to);
    const Handle folder(::open(folderOf(to).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (folder.get() < 0 || ::fsync(folder.get()) != 0)
        return systemError(Code::FileUnwritable, to);
    return base::Done{};
}

void keepPrivate(const std::string& path) { ::chmod(path.c_str(), S_IRUSR | S_IWUSR); }

void removeDatabase(const std::string& path) {
    for (const char* ending : {"", "-wal", "-shm", "-journal"}) ::unlink((path + ending).c_str());
}

}  // namespace store
