// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/fields.h"

namespace practice {

/// How a visit is done: the teacher shows it, the learner does it with the words in view, or the
/// learner does it from memory.
enum class Way { Show, Guided, ReturnDemonstration };
enum class On { Patient, PracticeArm, TalkedThrough };
enum class InterpreterMode { Present, Phone, Video };
enum class StopReason { PatientUnwell, CalledAway, Refused, Other };
enum class Moment { Found, Left };
enum class BackBy { Restart, Absence };

/// The pack as it was taught: the digest names its very words.
struct PackRef {
    std::string id;
    std::string version;
    std::string digest;  ///< SHA-256 of its RFC 8785 form, hex
    bool operator==(const PackRef&) const = default;
    template <class V>
    void fields(V& v) {
        v("id", id), v("version", version), v("digest", digest);
    }
};

struct Interpreter {
    InterpreterMode mode = InterpreterMode::Present;
    bool qualified = false;  ///< a qualified interpreter, not a relative
    std::string who;         ///< name or number of the interpreter
    bool operator==(const Interpreter&) const = default;
    template <class V>
    void fields(V& v) {
        v("mode", mode), v("qualified", qualified), v("who", who);
    }
};

/// The things used; words of shared/codes.
struct Kit {
    std::string dressing;
    std::string securement;
    std::string antiseptic;
    bool homeKit = false;  ///< the same kit that will be used at home
    bool operator==(const Kit&) const = default;
    template <class V>
    void fields(V& v) {
        v("dressing", dressing), v("securement", securement), v("antiseptic", antiseptic);
        v("home_kit", homeKit);
    }
};

}  // namespace practice

namespace base {

template <>
struct Names<practice::Way> {
    static constexpr std::array<std::pair<practice::Way, const char*>, 3> all{{
        {practice::Way::Show, "show"},
        {practice::Way::Guided, "guided"},
        {practice::Way::ReturnDemonstration, "return-demonstration"},
    }};
};
template <>
struct Names<practice::On> {
    static constexpr std::array<std::pair<practice::On, const char*>, 3> all{{
        {practice::On::Patient, "patient"},
        {practice::On::PracticeArm, "practice-arm"},
        {practice::On::TalkedThrough, "talked-through"},
    }};
};
template <>
struct Names<practice::InterpreterMode> {
    static constexpr std::array<std::pair<practice::InterpreterMode, const char*>, 3> all{{
        {practice::InterpreterMode::Present, "present"},
        {practice::InterpreterMode::Phone, "phone"},
        {practice::InterpreterMode::Video, "video"},
    }};
};
template <>
struct Names<practice::StopReason> {
    static constexpr std::array<std::pair<practice::StopReason, const char*>, 4> all{{
        {practice::StopReason::PatientUnwell, "patient-unwell"},
        {practice::StopReason::CalledAway, "called-away"},
        {practice::StopReason::Refused, "refused"},
        {practice::StopReason::Other, "other"},
    }};
};
template <>
struct Names<practice::Moment> {
    static constexpr std::array<std::pair<practice::Moment, const char*>, 2> all{{
        {practice::Moment::Found, "found"},
        {practice::Moment::Left, "left"},
    }};
};
template <>
struct Names<practice::BackBy> {
    static constexpr std::array<std::pair<practice::BackBy, const char*>, 2> all{{
        {practice::BackBy::Restart, "restart"},
        {practice::BackBy::Absence, "absence"},
    }};
};

}  // namespace base
