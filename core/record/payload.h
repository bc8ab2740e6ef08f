// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <variant>

#include "base/result.h"
#include "practice/events.h"
#include "record/correctionpayloads.h"
#include "record/housepayloads.h"
#include "record/learnerpayloads.h"
#include "record/patientpayloads.h"
#include "record/signingpayloads.h"
#include "record/teachbackpayloads.h"
#include "record/usepayloads.h"

namespace record {

/// Everything a person can say to the record: one alternative, one kind of Command, one type of
/// entry. Each struct is at once the data of the Command and of the entry it becomes.
using Payload = std::variant<
    AddStaff, ChangeAccess, ErasePatient, SetUnit, AddPatient, AskAllergies, AddLine, CorrectLine,
    RemoveLine, KeepLine, AddLearner, AskConsent, AskNeeds, practice::OpenVisit,
    practice::BeginPhase, practice::EndPhase, practice::Pause, practice::Resume, practice::GiveCue,
    practice::HandsOn, practice::SeeStep, practice::SeeRest, practice::MissStep,
    practice::OverlookStep, practice::SkipStep, practice::SeeLapse, practice::CatchAlone,
    practice::ShowWayBack, practice::WithdrawLapse, practice::TakeBack, practice::TakeOver,
    practice::HandOver, practice::WriteNote, practice::TakeMeasure, practice::MissMeasure,
    practice::RecordChange, practice::StopVisit, practice::CloseVisit, practice::ComeBack, AskBack,
    MakePlan, DoDrill, SignOff, DecideHelp, IssuePaper, AddAddendum, AddLateEntry, MarkWrongChart,
    NoteUse, ContinueLedger>;

/// "step-seen" and its like.
std::string typeOf(const Payload& payload);
nlohmann::json dataOf(const Payload& payload);
/// Errors: UnknownType, BadField.
base::Result<Payload> readPayload(const std::string& type, const nlohmann::json& data);
/// The learners it names, for the `about` of its entry: one day a program that does not know the
/// type still has to see whom it concerns.
std::vector<std::string> learnersIn(const Payload& payload);
/// Whether it concerns the house and nobody's record.
bool isOfHouse(const Payload& payload);
/// Every type there is, in the order of the variant; for tests.
std::vector<std::string> allTypes();

}  // namespace record
