// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/gatedoor.h"

#include <algorithm>

#include "render/words.h"

namespace ui {
namespace {

gate::Newcomer newcomerAs(const Newcomer& person, record::Role role) {
    return {person.name.toStdString(), person.initials.toStdString(), role};
}

Member memberOf(const record::Staff& staff) {
    return {staff.said.staff, render::plain(staff.said.name), render::plain(staff.said.initials),
            staff.said.role, staff.isRetired};
}

}  // namespace

gate::Slow<seal::Secret> GateDoor::found(const Newcomer& first, seal::Secret passphrase) {
    return m_gate.found(newcomerAs(first, record::Role::Educator), std::move(passphrase));
}

std::optional<Member> GateDoor::who() const {
    const record::Staff* person = m_gate.person();
    return person ? std::optional(memberOf(*person)) : std::nullopt;
}

Door::Slow GateDoor::signIn(const QString& name, seal::Secret passphrase) {
    return m_gate.signIn(name.toStdString(), std::move(passphrase));
}

Door::Slow GateDoor::unlock(seal::Secret passphrase) {
    Slow asked = m_gate.confirm(std::move(passphrase));
    asked.finish = [this, finish = std::move(asked.finish)] {
        auto outcome = finish();
        m_gate.takeConfirmation();  // coming back is no reason to sign
        return outcome;
    };
    return asked;
}

Door::Slow GateDoor::confirm(seal::Secret passphrase) {
    return m_gate.confirm(std::move(passphrase));
}

Door::Slow GateDoor::recover(seal::Secret letters, const Newcomer& person,
                             seal::Secret passphrase) {
    return m_gate.recover(std::move(letters), newcomerAs(person, record::Role::Educator),
                          std::move(passphrase));
}

Door::Slow GateDoor::changePassphrase(seal::Secret old, seal::Secret fresh) {
    return m_gate.changePassphrase(std::move(old), std::move(fresh));
}

std::vector<Member> GateDoor::people() const {
    std::vector<Member> all;
    const record::Staff* own = m_gate.person();
    if (!own || own->said.role == record::Role::Teacher) return all;
    for (const record::Staff& one : m_gate.house().staff) all.push_back(memberOf(one));
    std::sort(all.begin(), all.end(), [](const Member& one, const Member& other) {
        return QString::localeAwareCompare(one.name, other.name) < 0;
    });
    return all;
}

Door::Slow GateDoor::admit(const Newcomer& person, record::Role role, seal::Secret passphrase) {
    return m_gate.admit(newcomerAs(person, role), std::move(passphrase));
}

render::SheetMark GateDoor::sheetMark() const {
    const base::Instant now = m_gate.now();
    return {render::recordName(m_gate.begunAs()), now.wallMs, now.offsetMinutes};
}

Door::Slow GateDoor::reset(const base::StaffId& person, seal::Secret passphrase) {
    return m_gate.reset(person, std::move(passphrase));
}

}  // namespace ui
