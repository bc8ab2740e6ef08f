// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>

#include "signin/door.h"

namespace ui {

/// A door without keys: whoever is in `known` signs in with the passphrase there.
class FakeDoor : public Door {
  public:
    struct Known {
        Member member;
        std::string passphrase;
    };

    bool founded = true;
    std::int64_t wait = 0, waitAfterWrong = 0;
    render::SheetMark mark{QStringLiteral("ABCD-EFGH"), 1'764'000'000'000, 60};
    std::string lettersSaid;  ///< of the recovery sheet
    std::string said;         ///< what was asked of it last, passphrase included
    std::vector<Known> known{{{base::StaffId::random(), QStringLiteral("Ilse Marchetti"),
                               QStringLiteral("IM"), record::Role::Educator},
                              "four words that fit"},
                             {{base::StaffId::random(), QStringLiteral("Kwame Brandt"),
                               QStringLiteral("KB"), record::Role::Teacher},
                              "a lamp beside the sea"}};
    std::optional<base::StaffId> signedIn;

    bool isFounded() const override { return founded; }
    gate::Slow<seal::Secret> found(const Newcomer& first, seal::Secret passphrase) override {
        say(first.name + QStringLiteral(", ") + first.initials, passphrase);
        return {
            [] {},
            [] {
                return seal::Secret::copyOf("AAAAA-BBBBB\nCCCCC-DDDDD\nEEEEE-FFFFF\nGGGGG-HHHHH");
            }};
    }
    std::optional<Member> who() const override {
        for (const Known& one : known)
            if (signedIn == one.member.staff) return one.member;
        return std::nullopt;
    }
    Slow signIn(const QString& name, seal::Secret passphrase) override {
        say(name, passphrase);
        for (const Known& one : known)
            if (one.member.name == name && !one.member.isRetired &&
                passphrase.equals(one.passphrase))
                return slow([this, staff = one.member.staff] { signedIn = staff; });
        return wrong();
    }
    Slow unlock(seal::Secret passphrase) override {
        say(QStringLiteral("unlock"), passphrase);
        return passphrase.equals(own().passphrase) ? slow([] {}) : wrong();
    }
    Slow confirm(seal::Secret passphrase) override { return unlock(std::move(passphrase)); }
    void signOut() override { signedIn.reset(); }
    std::int64_t waitMs() const override { return wait; }
    Slow recover(seal::Secret letters, const Newcomer& person, seal::Secret passphrase) override {
        say(person.name, passphrase);
        lettersSaid = letters.view();
        return refused({base::Code::SealCodeLine, {"2"}});
    }
    Slow changePassphrase(seal::Secret old, seal::Secret fresh) override {
        if (!old.equals(own().passphrase)) return wrong();
        return slow([this, text = std::string(fresh.view())] { own().passphrase = text; });
    }
    std::vector<Member> people() const override {
        std::vector<Member> all;
        if (!who() || who()->role == record::Role::Teacher) return all;
        for (const Known& one : known) all.push_back(one.member);
        return all;
    }
    Slow admit(const Newcomer& person, record::Role role, seal::Secret passphrase) override {
        const Known one{{base::StaffId::random(), person.name, person.initials, role},
                        std::string(passphrase.view())};
        return slow([this, one] { known.push_back(one); });
    }
    Slow reset(const base::StaffId& person, seal::Secret passphrase) override {
        return slow([this, person, text = std::string(passphrase.view())] {
            of(person).passphrase = text;
        });
    }
    base::Outcome retire(const base::StaffId& person) override {
        of(person).member.isRetired = true;
        return base::Done{};
    }
    render::SheetMark sheetMark() const override { return mark; }
    base::Result<seal::Secret> newSheet() override {
        return seal::Secret::copyOf("22222-33333\n44444-55555\n66666-77777\n88888-99999");
    }
    Slow erase(const Erasing& asked, seal::Secret own, seal::Secret others) override {
        say(QString::fromStdString(asked.why + ", " + asked.second), others);
        return own.equals(this->own().passphrase) ? slow([] {}) : wrong();
    }
    Known& of(const base::StaffId& person) {
        for (Known& one : known)
            if (one.member.staff == person) return one;
        throw std::out_of_range("nobody of that id");
    }

  private:
    Known& own() { return of(signedIn.value()); }
    static Slow slow(const std::function<void()>& then) {
        return {[] {},
                [then]() -> base::Outcome {
                    then();
                    return base::Done{};
                }};
    }
    static Slow refused(const base::Error& error) {
        return {[] {}, [error]() -> base::Outcome { return error; }};
    }
    Slow wrong() {
        return {[] {},
                [this]() -> base::Outcome {
                    wait = waitAfterWrong;
                    return base::Error{base::Code::SealWrongPassphrase};
                }};
    }
    void say(const QString& who, const seal::Secret& passphrase) {
        said = who.toStdString() + ": " + std::string(passphrase.view());
    }
};

}  // namespace ui
