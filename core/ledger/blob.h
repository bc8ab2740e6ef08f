// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "ledger/codec.h"

/// Bytes that are kept beside the entries under their SHA-256: packs, which anybody may read, and
/// drawings, which are somebody's. What is kept for a patient is closed as their entries are, by
/// the same key: to destroy it is to destroy these too. Its digest is over random bytes as well,
/// closed with it: a name that was typed as a signature can't be found by hashing names.
namespace ledger {

struct KeptBlob {
    std::string digest;  ///< what it is asked for by, 64 hex digits
    std::string stored;
};
/// `subject`: whose it is; none: anybody may read it. Errors: those of close().
base::Result<KeptBlob> keptBlob(Codec& codec, const std::string& bytes,
                                const std::optional<base::PatientId>& subject);
/// The bytes; nothing when their key is not at hand. Errors: StoreBlobWrong, those of open().
base::Result<std::optional<std::string>> openedBlob(Codec& codec, const std::string& digest,
                                                    const std::string& stored);

}  // namespace ledger
