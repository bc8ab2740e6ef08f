// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>

#include "store/backupfile.h"
#include "store/recordfile.h"
#include "store/values.h"

namespace store {
namespace {

using base::Code;
using base::Error;

constexpr std::size_t pieceBytes = std::size_t{64} << 10U;

std::string partOf(const std::string& path) { return path + ".part"; }

Error unwritable(const std::string& path) {
    const int failed = errno;
    if (failed == ENOSPC || failed == EDQUOT || failed == EFBIG) return Error{Code::StoreFull};
    return Error{Code::FileUnwritable, {path, std::strerror(failed)}};
}

/// Whether the name still leads to this file: another copy may have finished and renamed it.
bool isStillAt(const std::string& path, int file) {
    struct stat named {
    }, opened{};
    return ::stat(path.c_str(), &named) == 0 && ::fstat(file, &opened) == 0 &&
           named.st_ino == opened.st_ino && named.st_dev == opened.st_dev;
}

/// A backup takes no other file's place.
base::Outcome mayTakePlaceOf(const std::string& path) {
    struct stat info {};
    if (::lstat(path.c_str(), &info) != 0) return base::Done{};
    if (!S_ISREG(info.st_mode)) return Error{Code::StoreNotAFile, {path}};
    const auto former = BackupReader::open(path);
    if (former) return base::Done{};
    // One of ours that is damaged or newer is still one that may be replaced on purpose.
    const Code code = former.error().code;
    if (code == Code::BackupNotOurs || code == Code::FileUnreadable) return former.error();
    return base::Done{};
}

}  // namespace

base::Result<BackupWriter> BackupWriter::begin(const std::string& path) {
    if (const auto may = mayTakePlaceOf(path); !may) return may.error();
    const std::string part = partOf(path);
    const int file = ::open(part.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);
    if (file < 0) return unwritable(path);
    if (::flock(file, LOCK_EX | LOCK_NB) != 0 || !isStillAt(part, file)) {
        ::close(file);
        return Error{Code::StoreBusy};
    }
    BackupWriter writer(path, file);
    if (::fchmod(file, S_IRUSR | S_IWUSR) != 0 || ::ftruncate(file, 0) != 0)
        return unwritable(path);
    return writer;
}

BackupWriter::BackupWriter(BackupWriter&& other) noexcept
    : m_path(std::move(other.m_path)),
      m_file(std::exchange(other.m_file, -1)),
      m_sealer(std::move(other.m_sealer)),
      m_with(std::move(other.m_with)),
      m_plain(std::move(other.m_plain)) {}

BackupWriter::~BackupWriter() {
    if (m_file < 0) return;
    ::unlink(partOf(m_path).c_str());
    ::close(m_file);
}

base::Outcome BackupWriter::put(std::string_view bytes) {
    while (!bytes.empty()) {
        const auto written = ::write(m_file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written <= 0) return unwritable(m_path);
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return base::Done{};
}

base::Outcome BackupWriter::writeHead(BackupHead head, const seal::KeyRows& rows) {
    const seal::Secret key = seal::Secret::random(seal::keySize);
    m_sealer = std::make_unique<seal::StreamSealer>(key);
    head.boxes = seal::boxKey(key, rows);
    head.stream = m_sealer->header();
    const std::string text = head.text();
    m_with = backupBeginning() + lengthText(text.size()) + text;
    return put(m_with);
}

base::Outcome BackupWriter::putPiece(std::string_view plain, seal::Piece piece) {
    const std::string box = m_sealer->seal(plain, m_with, piece);
    m_with.clear();
    return put(lengthText(box.size()) + box);
}

base::Outcome BackupWriter::write(std::string_view plain) {
    m_plain.append(plain);
    std::string_view left = m_plain;
    for (; left.size() > pieceBytes; left.remove_prefix(pieceBytes))
        if (const auto done = putPiece(left.substr(0, pieceBytes), seal::Piece::Middle); !done)
            return done;
    m_plain.erase(0, m_plain.size() - left.size());  // once, however long it was
    return base::Done{};
}

base::Outcome BackupWriter::finish() {
    if (const auto done = putPiece(m_plain, seal::Piece::Last); !done) return done;
    if (::fsync(m_file) != 0) return unwritable(m_path);
    if (const auto done = settle(partOf(m_path), m_path); !done) return done;
    ::close(std::exchange(m_file, -1));
    return base::Done{};
}

}  // namespace store
