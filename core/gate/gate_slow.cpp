// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The acts of Gate that take a passphrase.
#include "gate/gate.h"

namespace gate {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;
using seal::Secret;

namespace {

/// A secret that a std::function can carry.
std::shared_ptr<const Secret> carried(Secret secret) {
    return std::make_shared<const Secret>(std::move(secret));
}

template <class T>
Slow<T> refusal(const Error& error) {
    return {[] {}, [error]() -> base::Result<T> { return error; }};
}

}  // namespace

template <class T, class Work, class Take>
Slow<T> Gate::slow(Work work, Take take) {
    auto made = std::make_shared<std::optional<Changed>>();
    return {[made, work] { made->emplace(work()); },
            [made, take]() -> base::Result<T> {
                if (!(*made)->ok()) return take(Changed((*made)->error()));
                return take(std::move(**made));
            }};
}

Outcome Gate::mayTry() const {
    constexpr std::int64_t second = 1'000;
    const std::int64_t wait = waitMs();
    if (wait > 0) return Error{Code::AccessWait, {std::to_string((wait + second - 1) / second)}};
    return Done{};
}

Outcome Gate::mayConfirm() const {
    if (!isSignedIn()) return Error{Code::AccessSignedOut};
    return mayTry();
}

Outcome Gate::mayChangeStaff() const {
    const record::Staff* by = person();
    if (!by) return Error{Code::AccessSignedOut};
    if (by->said.role != record::Role::Educator) return Error{Code::AccessEducators};
    return Done{};
}

Slow<Secret> Gate::found(const Newcomer& first, Secret passphrase) {
    if (isFounded()) return refusal<Secret>(Error{Code::AccessFounded});
    const auto work = [home = m_ledger.id(), first, cost = m_terms.usual,
                       typed = carried(std::move(passphrase))] {
        return founded(home, first, *typed, cost);
    };
    return slow<Secret>(work, [this](Changed change) -> base::Result<Secret> {
        if (!change) return change.error();
        if (isFounded()) return Error{Code::AccessFounded};
        Secret sheet = std::move(*change->sheet);
        if (const auto done = write(std::move(*change)); !done) return done.error();
        return sheet;
    });
}

Slow<Done> Gate::signIn(const std::string& name, Secret passphrase) {
    if (const auto may = mayTry(); !may) return refusal<Done>(may.error());
    const seal::KeyRows rows = m_rows.value_or(seal::KeyRows());
    const auto whose = std::make_shared<WrongPassphrases::Whose>();
    const auto work = [rows, name, whose, usual = m_terms.usual,
                       typed = carried(std::move(passphrase))] {
        return signedIn(rows, name, *typed, usual, whose.get());
    };
    return slow<Done>(work, [this, whose](Changed change) -> Outcome {
        if (!change) return counted(change.error(), *whose);
        return counted(enter(std::move(*change)), *whose);
    });
}

Slow<Done> Gate::recover(Secret letters, const Newcomer& person, Secret passphrase) {
    if (const auto may = mayTry(); !may) return refusal<Done>(may.error());
    const seal::KeyRows rows = m_rows.value_or(seal::KeyRows());
    const auto work = [rows, person, cost = m_terms.usual, sheet = carried(std::move(letters)),
                       typed = carried(std::move(passphrase))] {
        return recovered(rows, *sheet, person, *typed, cost);
    };
    return slow<Done>(work, [this](Changed change) -> Outcome {
        if (!change) return change.error();
        signOut();
        return write(std::move(*change));
    });
}

Slow<Done> Gate::confirm(Secret passphrase) {
    if (const auto may = mayConfirm(); !may) return refusal<Done>(may.error());
    const seal::WrappedIdentity* row = seal::rowOf(*m_rows, *m_person);
    if (row == nullptr) return refusal<Done>(Error{Code::AccessRetired});
    const auto work = [row = *row, typed = carried(std::move(passphrase))]() -> Changed {
        const auto opened = seal::unwrap(row, *typed);
        if (!opened) return opened.error();
        return KeyChange{};
    };
    return slow<Done>(work,
                      [this, whose = m_person, ring = m_ring](const Changed& change) -> Outcome {
                          if (!change.ok()) return counted(change.error(), whose);
                          if (m_ring != ring) return Error{Code::AccessSignedOut};
                          m_isConfirmed = true;
                          return counted(Done{}, whose);
                      });
}

Slow<Done> Gate::changePassphrase(Secret old, Secret passphrase) {
    if (const auto may = mayConfirm(); !may) return refusal<Done>(may.error());
    const auto work = [rows = *m_rows, person = *m_person, cost = m_terms.usual,
                       name = this->person()->said.name, former = carried(std::move(old)),
                       typed = carried(std::move(passphrase))] {
        return withNewPassphrase(rows, person, name, *former, *typed, cost);
    };
    return slow<Done>(work, [this, whose = m_person](Changed change) -> Outcome {
        if (!change) return counted(change.error(), whose);
        if (!isSignedIn()) return Error{Code::AccessSignedOut};
        return counted(write(std::move(*change)), whose);
    });
}

/// `work` is given the rows and the keyring as they are now.
template <class Work>
Slow<Done> Gate::byEducator(Work work) {
    if (const auto may = mayChangeStaff(); !may) return refusal<Done>(may.error());
    return slow<Done>([work, rows = *m_rows, ring = m_ring] { return work(rows, *ring); },
                      [this, ring = m_ring](Changed change) -> Outcome {
                          if (!change) return change.error();
                          // Somebody else, or keys that were changed meanwhile.
                          if (m_ring != ring) return Error{Code::AccessSignedOut};
                          return write(std::move(*change));
                      });
}

Slow<Done> Gate::admit(const Newcomer& person, Secret passphrase) {
    return byEducator([person, cost = m_terms.usual, typed = carried(std::move(passphrase))](
                          const seal::KeyRows& rows, const seal::Keyring& by) {
        return admitted(rows, by, person, *typed, cost);
    });
}

Slow<Done> Gate::reset(const base::StaffId& person, Secret passphrase) {
    if (m_person == person) return refusal<Done>(Error{Code::AccessNotOneself});
    const record::Staff* whose = m_house.person(person);
    if (whose == nullptr) return refusal<Done>(Error{Code::StaffUnknown});
    return byEducator([person, name = whose->said.name, cost = m_terms.usual,
                       typed = carried(std::move(passphrase))](const seal::KeyRows& rows,
                                                               const seal::Keyring& by) {
        return gate::reset(rows, by, person, name, *typed, cost);
    });
}

}  // namespace gate
