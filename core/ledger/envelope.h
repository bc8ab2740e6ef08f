// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "ledger/codec.h"

namespace ledger {

inline constexpr int envelopeVersion = 1;
/// How a body is closed: not at all, or by XChaCha20-Poly1305.
inline constexpr std::string_view noAlg = "none", sealAlg = "xchacha20poly1305";
inline constexpr std::size_t sealNonceSize = 24;

/// An entry without what its body says: all that can be read of it without a key.
struct Envelope {
    base::LedgerId ledger;
    std::uint64_t seq = 0;
    std::uint64_t tick = 0;
    std::int64_t wallMs = 0;
    std::string bootId = {};
    std::int64_t bootMs = 0;
    std::optional<base::PatientId> subject = {};
    Closed closed = {};

    bool operator==(const Envelope&) const = default;
};

/// What the body is bound to: the entry without nonce and body. Goes no further than the envelope.
Binding bindingOf(const Envelope& envelope);
/// The same by the bytes that the envelope was read from; goes no further than they.
Binding bindingIn(const Envelope& envelope, std::string_view bytes);
/// The canonical bytes of the entry. Errors: LedgerBadEntry, those of entryJcs().
base::Result<std::string> envelopeBytes(const Envelope& envelope);
/// What becomes of a body that is sealed: whoever has no key needs none of its bytes.
enum class Box { Read, Checked };
/// Reads such bytes. Refuses bytes unequal to their own canonical form, unknown keys, an alg it
/// does not know, integers beyond 2^53 - 1 and fractions anywhere. A box that is only checked may
/// be left out.
base::Result<Envelope> readEnvelope(std::string_view bytes, Box box = Box::Read);

/// Whether ISO 8601 with a year of four digits can say this moment.
bool isWritable(std::int64_t wallMs);

}  // namespace ledger
