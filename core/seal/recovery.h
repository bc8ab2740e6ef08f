// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "seal/checkedcode.h"
#include "seal/identity.h"

namespace seal {

/// The key on a sheet in the safe: it opens every epoch when nobody's passphrase is left. Made
/// once, shown once, kept nowhere; the ledger knows its public half alone.
class Recovery {
  public:
    /// 160 random bits: too many to try, so nothing has to be stretched.
    static Recovery generate();
    /// Errors: those of readCode().
    static base::Result<Recovery> fromLetters(const Secret& typed);

    /// Four lines as in checkedcode.h, to be printed.
    Secret letters() const { return writeCode(CodeKind::Recovery, m_bytes); }
    const BoxPair& pair() const { return m_pair; }
    /// What whoever holds the sheet signs with, to prove that they do.
    const Identity& signer() const { return m_signer; }
    /// The name of its public half.
    std::string kid() const { return thumbprint(Curve::X25519, m_pair.publicKey); }

  private:
    explicit Recovery(Secret bytes);

    Secret m_bytes;
    BoxPair m_pair;
    Identity m_signer;
};

}  // namespace seal
