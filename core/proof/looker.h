// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "ledger/entry.h"
#include "ledger/merkle.h"
#include "record/payload.h"
#include "seal/keyring.h"
#include "seal/signature.h"

namespace proof {

/// What becomes of a signature, whoever could sign by then.
enum class Holding { Holds, Bad, UnknownKey };
struct SeenSignature {
    Holding how = Holding::Bad;
    std::string kid = {};                       ///< of the key, when it holds
    std::optional<seal::Purpose> purpose = {};  ///< that it claims
};

/// Of one entry, all that does not depend on another one.
struct Seen {
    std::uint64_t seq = 0;  ///< where it is stored
    ledger::Digest leaf{};
    /// Without its nonce and body; nothing when its bytes are no entry.
    std::optional<ledger::Envelope> envelope = {};
    /// Nothing when its key is not at hand, or as `refused` says. What no later entry depends on is
    /// left out of it, see Looker.
    std::optional<ledger::Body> body = {};
    std::optional<base::Code> refused = {};     ///< why its body did not open or is none
    bool isUnderstood = false;                  ///< this program knows what it says
    std::optional<seal::Purpose> purpose = {};  ///< by which it has to be signed; none: by none
    bool isSigned = false;                      ///< by anybody
    std::vector<std::string> blobs = {};        ///< without which it does not say what it said
    /// All that it has, or up to the first that does not hold. None of an entry about keys.
    std::vector<SeenSignature> signatures = {};
    /// The root over all entries before it, as who signed it off names it; "": it names none.
    std::string root = {};
    bool mustNameRoot = false;  ///< it is of a version that always names one
    /// What it says, when later entries depend on it.
    std::optional<record::Payload> payload = {};
};

/// Whether it says who may come in; Follower holds its signatures against who could by then.
bool isAboutKeys(const record::Payload& payload);

/// Looks at entries one at a time, in any order. Several of them may do so on several threads. Of a
/// body that no later entry depends on it keeps no payload, signatures, things it is about, nor
/// what program wrote it.
class Looker {
  public:
    using Keys = std::map<std::string, seal::PublicIdentity>;

    /// `keys` has all that anybody signs or signed by, by their kid; null where nothing is signed.
    Looker(std::shared_ptr<ledger::Codec> codec, std::shared_ptr<const Keys> keys)
        : m_codec(std::move(codec)), m_keys(std::move(keys)) {}
    static std::shared_ptr<const Keys> keysIn(const seal::KeyRows& rows);

    Seen look(std::uint64_t seq, std::string_view bytes);

  private:
    void open(Seen& seen, std::string_view bytes) const;
    void read(Seen& seen) const;
    void lookSignatures(Seen& seen) const;
    SeenSignature lookSignature(const Seen& seen, const nlohmann::json& signature) const;

    std::shared_ptr<ledger::Codec> m_codec;
    std::shared_ptr<const Keys> m_keys;
};

}  // namespace proof
