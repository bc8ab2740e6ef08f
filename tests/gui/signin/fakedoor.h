// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "signin/door.h"

namespace ui {

/// A door without keys: one name and passphrase fit.
class FakeDoor : public Door {
  public:
    bool founded = true;
    std::int64_t wait = 0;
    std::string lettersSaid;  ///< of the recovery sheet
    std::string said;         ///< what was asked of it last, passphrase included

    bool isFounded() const override { return founded; }
    base::Result<seal::Secret> found(const Newcomer& first, seal::Secret passphrase) override {
        say(first.name + QStringLiteral(", ") + first.initials, passphrase);
        return seal::Secret::copyOf("AAAAA-BBBBB\nCCCCC-DDDDD\nEEEEE-FFFFF\nGGGGG-HHHHH");
    }
    base::Outcome signIn(const QString& name, seal::Secret passphrase) override {
        say(name, passphrase);
        if (passphrase.equals("four words that fit")) return base::Done{};
        return base::Error{base::Code::SealWrongPassphrase};
    }
    base::Outcome recover(seal::Secret letters, const Newcomer& person,
                          seal::Secret passphrase) override {
        say(person.name, passphrase);
        lettersSaid = letters.view();
        return base::Error{base::Code::SealCodeLine, {"2"}};
    }
    std::int64_t waitMs() const override { return wait; }

  private:
    void say(const QString& who, const seal::Secret& passphrase) {
        said = who.toStdString() + ": " + std::string(passphrase.view());
    }
};

}  // namespace ui
