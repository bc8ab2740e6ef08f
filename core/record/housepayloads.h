// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/fields.h"
#include "base/id.h"

/// The staff and the unit: what is true of the whole house.
namespace record {

enum class Role { Teacher, Educator, Auditor };

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

}  // namespace base
