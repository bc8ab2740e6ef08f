// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "base/fields.h"
#include "base/id.h"

/// The staff and the unit: what is true of the whole house.
namespace record {

enum class Role { Teacher, Educator, Auditor };

/// What became of somebody's keys. The keys themselves lie beside the entries.
enum class AccessChange {
    Founded,        ///< the first person and the first keys of all
    Admitted,       ///< a person who could not sign in before
    NewPassphrase,  ///< the same keys under another passphrase, by the person
    RaisedCost,     ///< the same keys and passphrase, dearer to guess
    Reset,          ///< new keys, let in by another person; what the former open ends here
    Retired,        ///< signs in no more
    Recovered,      ///< let in by the recovery sheet
    NewRecovery,    ///< another recovery sheet; the former opens nothing from now on
};

struct AddStaff {
    static constexpr const char* type = "staff-added";
    base::StaffId staff;
    std::string name, initials;
    Role role = Role::Teacher;
    bool operator==(const AddStaff&) const = default;
    template <class V>
    void fields(V& v) {
        v("staff", staff), v("name", name), v("initials", initials), v("role", role);
    }
};

/// Somebody's keys were made, changed or taken away.
struct ChangeAccess {
    static constexpr const char* type = "access-changed";
    /// 1 had no `recovery`, 2 no `box` and no `recovery_box`, 3 no `role`.
    static constexpr int version = 4;
    base::StaffId staff;  ///< whose
    AccessChange what = AccessChange::Founded;
    std::string kid;  ///< what their signatures are made by from now on; "" when by none
    /// The epoch of keys that begins with it, and the digest of its key; "" when none does. Said
    /// under the epoch before, so that nobody slips in one of their own.
    std::string epoch, epochDigest;
    /// The public key by which whoever comes in by the recovery sheet proves that they hold it, in
    /// base 64; "" when there is no new sheet.
    std::string recovery = {};
    /// The public keys that epochs are given to from now on, in base 64: the person's that belongs
    /// to `kid`, and the sheet's that belongs to `recovery`. "" says nothing of it.
    std::string box = {}, recoveryBox = {};
    std::optional<Role> role = {};  ///< theirs from now on, where they come in by the sheet
    bool operator==(const ChangeAccess&) const = default;
    template <class V>
    void fields(V& v) {
        v("staff", staff), v("what", what), v("kid", kid), v("epoch", epoch);
        v("epoch_digest", epochDigest), v("recovery", recovery);
        v("box", box), v("recovery_box", recoveryBox), v("role", role);
    }
};

/// A patient's key was destroyed: nobody can read what is sealed under it any more. Said by an
/// educator and an auditor together, both of whom sign it.
struct ErasePatient {
    static constexpr const char* type = "patient-erased";
    base::PatientId patient;  ///< a random id: it names nobody
    base::StaffId with;       ///< the second of the two
    std::string why;          ///< names nobody of the record
    bool operator==(const ErasePatient&) const = default;
    template <class V>
    void fields(V& v) {
        v("patient", patient), v("with", with), v("why", why);
    }
};

/// Whether these two may erase a patient together.
inline bool mayErase(Role one, Role other) {
    return (one == Role::Educator && other == Role::Auditor) ||
           (one == Role::Auditor && other == Role::Educator);
}

/// The unit's own words on the papers: whom to call.
struct SetUnit {
    static constexpr const char* type = "unit-set";
    std::string name;
    std::string emergency;  ///< number for "call an ambulance"
    std::string teamNow;    ///< number that is answered day and night
    std::string teamToday;  ///< number for the same day
    std::string policy;     ///< name of the local policy that comes first
    bool operator==(const SetUnit&) const = default;
    template <class V>
    void fields(V& v) {
        v("name", name), v("emergency", emergency), v("team_now", teamNow);
        v("team_today", teamToday), v("policy", policy);
    }
};

}  // namespace record

namespace base {

template <>
struct Names<record::Role> {
    static constexpr std::array<std::pair<record::Role, const char*>, 3> all{{
        {record::Role::Teacher, "teacher"},
        {record::Role::Educator, "educator"},
        {record::Role::Auditor, "auditor"},
    }};
};

template <>
struct Names<record::AccessChange> {
    static constexpr std::array<std::pair<record::AccessChange, const char*>, 8> all{{
        {record::AccessChange::Founded, "founded"},
        {record::AccessChange::Admitted, "admitted"},
        {record::AccessChange::NewPassphrase, "new-passphrase"},
        {record::AccessChange::RaisedCost, "raised-cost"},
        {record::AccessChange::Reset, "reset"},
        {record::AccessChange::Retired, "retired"},
        {record::AccessChange::Recovered, "recovered"},
        {record::AccessChange::NewRecovery, "new-recovery"},
    }};
};

}  // namespace base
