// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/clock.h"
#include "base/id.h"
#include "base/result.h"
#include "ledger/envelope.h"

namespace ledger {

/// The ledger's size (number of entries) and the Merkle root over them, RFC 6962 section 2.1.
struct Head {
    std::uint64_t size = 0;
    std::string root = {};  ///< 32 bytes as 64 lower-case hex digits

    bool operator==(const Head&) const = default;
};

/// What an entry rests on: from the id of each ledger that was read, how many of its entries had
/// been. Their root is not repeated here, as the log proves it for any size; several ledgers may be
/// named, since one record can come to rest on the entries of several workstations.
using Basis = std::map<base::LedgerId, std::uint64_t>;

inline constexpr int largestVersion = 1'000'000, largestOffset = 100'000;

/// What an entry says. Everything that could name a person or tell what happened is in here; the
/// envelope around it stays readable when bodies are sealed.
struct Body {
    base::CommandId id;     ///< made by the caller of the Command: a repeat is the same entry
    std::string type = {};  ///< for instance "step-seen"
    int tv = 1;             ///< version of the shape of `data` for this type
    bool must = true;       ///< nothing is signed over it by a program that does not know it
    std::int64_t atMs = 0;  ///< when it happened, UTC
    int offsetMinutes = 0;  ///< local time minus UTC where it happened
    std::string zone = {};  ///< IANA name
    std::optional<base::StaffId> by = {};  ///< who says so; none only for the first of the staff
    std::string role = {};                 ///< "teacher", "educator", "auditor" or "system"
    std::string app = {};                  ///< program and version that wrote it
    std::optional<base::VisitId> visit = {};
    std::vector<std::string> about = {};  ///< ids of the things it concerns
    Basis basis = {};  ///< what it was said on the ground of; empty: nothing said
    nlohmann::json data = nlohmann::json::object();
    nlohmann::json sigs = nlohmann::json::array();

    bool operator==(const Body&) const = default;
};

/// The envelope, complete from the first entry on; design: v, ledger, seq, tick, wall, boot,
/// subject, key, alg, nonce, body. Canonical by RFC 8785; its leaf is SHA-256(0x00 || JCS(entry)).
struct Entry {
    base::LedgerId ledger;
    std::uint64_t seq = 0;    ///< index of its leaf, from 0
    std::uint64_t tick = 0;   ///< Lamport count
    std::int64_t wallMs = 0;  ///< when it was written, UTC
    std::string bootId = {};
    std::int64_t bootMs = 0;
    /// Whose record it is part of; none: the ledger's own.
    std::optional<base::PatientId> subject = {};
    std::string key = {};  ///< id of the key the body is sealed under; "" when it is not
    /// Nothing of the body was read when false: its key is not at hand, or was destroyed.
    bool isOpen = true;
    Body body = {};

    bool operator==(const Entry&) const = default;
};

/// What a caller hands in; the ledger adds the envelope.
struct Draft {
    std::optional<base::PatientId> subject = {};
    Body body;
};

/// The canonical bytes of an entry, exactly those that are stored and hashed. Errors:
/// LedgerBadEntry, those of entryJcs() and of the codec.
/// Sets the entry's key to the one the codec took.
base::Result<std::string> entryBytes(Entry& entry, Codec& codec);
/// Reads such bytes; refuses what readEnvelope() refuses and a body that is not canonical. When
/// the codec has no key for it, the entry comes back with isOpen false.
base::Result<Entry> readEntry(std::string_view bytes, Codec& codec);
/// The body of what readEnvelope() has read of these bytes; nothing when its key is not at hand.
base::Result<std::optional<Body>> readBody(const Envelope& envelope, std::string_view bytes,
                                           Codec& codec);
/// Both as one; not open without a body.
Entry entryOf(Envelope envelope, std::optional<Body> body);

/// The same by the plain codec.
base::Result<std::string> entryBytes(Entry entry);
base::Result<Entry> readEntry(std::string_view bytes);

}  // namespace ledger
