// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "procedure/taught.h"
#include "record/record.h"
#include "support/paths.h"

namespace book {

inline procedure::TaughtPtr handsPack() {
    std::ifstream file(support::sourceDir() + "/shared/packs/clean-hands.json");
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return *procedure::readTaught(bytes.str());
}

/// Entries about one patient, written by hand: nothing is asked whether it may be said.
class Book {
  public:
    Book() { shelf.put(taught); }

    /// Written a minute after the last one, and it happened then.
    ledger::Entry& say(const record::Payload& payload, std::optional<base::VisitId> visit = {}) {
        ledger::Entry entry{.ledger = ledger, .seq = entries.size(), .tick = entries.size() + 1};
        entry.wallMs = wallMs += 60'000;
        entry.bootId = "boot";
        entry.bootMs = entry.wallMs / 2;
        entry.subject = patient;
        entry.body.id = base::CommandId::random();
        entry.body.type = record::typeOf(payload);
        entry.body.data = record::dataOf(payload);
        entry.body.atMs = entry.wallMs;
        entry.body.by = teacher;
        entry.body.visit = std::move(visit);
        return entries.emplace_back(std::move(entry));
    }
    base::LearnerId addLearner(const std::string& name) {
        const auto id = base::LearnerId::random();
        say(record::AddLearner{
            .learner = id, .name = name, .relationship = "wife", .language = "en", .phone = ""});
        return id;
    }
    practice::OpenVisit opening(const base::LearnerId& learner) const {
        practice::OpenVisit opened;
        opened.line = line;
        opened.learner = learner;
        opened.way = practice::Way::ReturnDemonstration;
        opened.on = practice::On::PracticeArm;
        opened.pack = {
            .id = taught->pack.id, .version = taught->pack.version, .digest = taught->digest};
        return opened;
    }
    base::VisitId openVisit(const base::LearnerId& learner) {
        const auto id = base::VisitId::random();
        say(opening(learner), id);
        return id;
    }
    record::Record fold() const { return record::foldRecord(entries, shelf); }

    procedure::TaughtPtr taught = handsPack();
    procedure::Shelf shelf;
    base::LedgerId ledger = base::LedgerId::random();
    base::PatientId patient = base::PatientId::random();
    base::StaffId teacher = base::StaffId::random();
    base::LineId line = base::LineId::random();
    std::int64_t wallMs = 1'764'000'000'000;
    std::vector<ledger::Entry> entries;
};

}  // namespace book
