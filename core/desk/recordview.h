// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "ledger/entry.h"
#include "record/card.h"
#include "record/record.h"

namespace desk {

enum class Ward { Demonstration, Real };

/// All that screens may know: one page of cards, the record that is open, the house.
struct RecordView {
    Ward ward = Ward::Demonstration;  ///< "invented people, not a chart"
    bool simulatedClock = false;
    ledger::Head head;
    record::House house;
    std::optional<base::StaffId> teacher;  ///< who works at this desk now

    std::string search;
    std::vector<record::Card> cards;
    std::uint64_t cardOffset = 0, cardTotal = 0;

    std::optional<record::Record> record;    ///< the record that is open
    std::optional<base::LearnerId> learner;  ///< the learner in view
    std::string pack;  ///< digest of the pack that was chosen to be looked at; "": none was
    std::optional<base::VisitId> openVisit;  ///< of `record`, else of another (see visitPatient)
    std::optional<base::PatientId> visitPatient;

    const record::Visit* visit() const;  ///< the open visit, when its record is open
    const record::Learner* learnerInView() const;
};

}  // namespace desk
