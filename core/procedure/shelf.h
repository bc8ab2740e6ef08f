// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <memory>
#include <string>
#include <vector>

#include "packs/pack.h"
#include "procedure/model.h"

namespace procedure {

/// A pack ready to be taught: its words, its numbers and the digest of exactly these.
struct Taught {
    packs::Pack pack;
    Model model;
    std::string digest;  ///< SHA-256 of the pack's RFC 8785 form, hex
    std::string bytes;   ///< that form
};
using TaughtPtr = std::shared_ptr<const Taught>;

/// The packs at hand, by digest. A record keeps the digest of the pack it was taught with, so an
/// old record is shown with the words that were said.
class Shelf {
  public:
    /// To be taught from now on, in the place of another of the same id.
    void put(TaughtPtr taught);
    /// Only to show old records by.
    void keep(TaughtPtr taught);
    /// Null when there is none with this digest.
    TaughtPtr byDigest(const std::string& digest) const;
    /// The newest put of each pack id, in the order they came: what can be taught now.
    const std::vector<TaughtPtr>& current() const { return m_current; }

  private:
    std::map<std::string, TaughtPtr> m_all;
    std::vector<TaughtPtr> m_current;
};

}  // namespace procedure
