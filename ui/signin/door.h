// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>

#include "base/result.h"
#include "seal/secret.h"

namespace ui {

/// The first of the staff, or one who begins again.
struct Newcomer {
    QString name, initials;
};

/// What the windows before the first page need of the program. Everything that takes a passphrase
/// takes as long as Argon2id is meant to, and is called on a thread of its own, one call at a time.
class Door {
  public:
    virtual ~Door() = default;

    /// Whether anybody was ever let in; until then there is nothing to sign in to.
    virtual bool isFounded() const = 0;
    /// Makes the first educator and the keys, and signs them in. Gives the lines of the recovery
    /// sheet, which are kept nowhere.
    virtual base::Result<seal::Secret> found(const Newcomer& first, seal::Secret passphrase) = 0;
    /// Errors: SealWrongPassphrase, alike for an unknown name and a wrong passphrase.
    virtual base::Outcome signIn(const QString& name, seal::Secret passphrase) = 0;
    /// Opens by the recovery sheet's lines and lets this person in as an educator.
    virtual base::Outcome recover(seal::Secret letters, const Newcomer& person,
                                  seal::Secret passphrase) = 0;
    /// Milliseconds until the next try is looked at; 0 while nothing was typed wrong.
    virtual std::int64_t waitMs() const = 0;
};

}  // namespace ui
