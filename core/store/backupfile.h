// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <memory>
#include <string>
#include <vector>

#include "ledger/ledger.h"
#include "seal/keybox.h"
#include "seal/sealedstream.h"
#include "store/meta.h"

/// The file of a backup: a line that names its form, the length of the head and the head as
/// canonical JSON, then the pieces of the sealed stream, each after its length, see lengthText().
/// The head goes into the seal of the first piece.
namespace store {

/// What can be read of a backup without a key. Nothing of it is proven before a piece has opened.
struct BackupHead {
    ledger::Former ledger;  ///< its id and the head it was copied at: a known head for verify
    OpenMode kind = OpenMode::Real;
    int schema = 0;
    std::vector<ledger::AccessRow> access = {};  ///< what is needed to open it, and no more
    std::vector<seal::KeyBox> boxes = {};
    std::string stream = {};  ///< header of the sealed stream

    std::string text() const;
};

/// What every backup of this form begins with.
std::string backupBeginning();

/// Errors: BackupNotOurs, BackupNewer, BackupCutShort, BackupChanged, FileUnreadable.
base::Result<BackupHead> readBackupHead(const std::string& path);

/// Writes a backup beside its name; it gets the name when it is whole, and whatever had it before
/// stays until then. Errors of all: StoreFull, StoreBusy when another copy is being written there,
/// FileUnwritable.
class BackupWriter {
  public:
    static base::Result<BackupWriter> begin(const std::string& path);
    BackupWriter(BackupWriter&& other) noexcept;
    BackupWriter& operator=(BackupWriter&&) = delete;
    ~BackupWriter();

    /// First of all; `head.stream` and `head.boxes` are filled in here.
    base::Outcome writeHead(BackupHead head, const seal::KeyRows& rows);
    base::Outcome write(std::string_view plain);
    base::Outcome finish();

  private:
    BackupWriter(std::string path, int file) : m_path(std::move(path)), m_file(file) {}
    base::Outcome put(std::string_view bytes);
    base::Outcome putPiece(std::string_view plain, seal::Piece piece);

    std::string m_path;
    int m_file = -1;
    std::unique_ptr<seal::StreamSealer> m_sealer;
    std::string m_with;   ///< for the first piece
    std::string m_plain;  ///< not sealed yet
};

/// Reads what such a file holds, in pieces of any length. Errors: as readBackupHead().
class BackupReader {
  public:
    static base::Result<BackupReader> open(const std::string& path);

    const BackupHead& head() const { return m_head; }
    void unlock(const seal::Secret& key);
    /// The next piece; "" after the last one.
    base::Result<std::string> next();

  private:
    struct Close {
        void operator()(std::FILE* file) const { std::fclose(file); }
    };
    explicit BackupReader(std::FILE* file) : m_file(file) {}
    base::Outcome readHead(const std::string& path);
    base::Result<std::string> take(std::size_t size);
    base::Result<std::size_t> takeLength();

    std::unique_ptr<std::FILE, Close> m_file;
    BackupHead m_head;
    std::string m_with;
    std::unique_ptr<seal::StreamOpener> m_opener;
    bool m_isAtEnd = false;
};

}  // namespace store
