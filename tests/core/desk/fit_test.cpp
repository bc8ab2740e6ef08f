// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Why a pack can't be used for a line, a kit, a learner or a patient. What `applies` and `avoid`
// mean is said by the pack language; months are whole months of the Gregorian calendar.
#include "desk/fit.h"

#include <gtest/gtest.h>

#include "core/record/book.h"

namespace desk {
namespace {

using base::Code;
using base::Error;

class Fit : public testing::Test {
  protected:
    Fit() {
        pack.applies = {.line = {"picc", "midline"},
                        .securement = {"adhesive-device"},
                        .dressing = {"transparent"},
                        .antiseptic = {"chlorhexidine-alcohol"},
                        .monthsFrom = 2,
                        .monthsTo = 216,
                        .learner = {packs::LearnerKind::Carer}};
        record.patient.born = "2020-11-24";
        line.said.kind = "picc";
    }
    std::vector<Error> why() const {
        return whyNot(pack, {.record = record,
                             .learner = learner,
                             .line = line,
                             .kit = kit,
                             .today = "2026-11-24"});
    }
    void expectOnly(const Error& reason) const {
        EXPECT_EQ(why(), std::vector<Error>{reason}) << base::slug(reason.code);
    }
    packs::Pack pack = book::handsPack()->pack;
    record::Record record;
    record::Learner learner;
    record::Line line;
    practice::Kit kit{.dressing = "transparent",
                      .securement = "adhesive-device",
                      .antiseptic = "chlorhexidine-alcohol"};
};

TEST_F(Fit, WhatItIsForFits) {
    EXPECT_TRUE(why().empty());
    line.said.kind = "midline";
    EXPECT_TRUE(why().empty()) << "any word of the list";
}

TEST_F(Fit, EachWordThatIsNotOnItsListIsAReasonOfItsOwn) {
    line.said.kind = "port";
    expectOnly({Code::PackLine, {"port"}});
    line.said.kind = "picc";
    kit.securement = "sutures";
    expectOnly({Code::PackSecurement, {"sutures"}});
    kit.securement = "adhesive-device";
    kit.dressing = "gauze";
    expectOnly({Code::PackDressing, {"gauze"}});
    kit.dressing = "transparent";
    kit.antiseptic = "";
    expectOnly({Code::PackAntiseptic, {""}});
}

TEST_F(Fit, AllReasonsAreTold) {
    line.said.kind = "port";
    kit = {.dressing = "a", .securement = "b", .antiseptic = "c"};
    learner.said.isPatient = true;
    record.patient.born = "2026-11-01";
    record.allergies = {{.allergies = {{.allergen = "alcohol", .reaction = ""}}}, {}};
    std::vector<Code> codes;
    for (const Error& error : why()) codes.push_back(error.code);
    EXPECT_EQ(codes, (std::vector{Code::PackLine, Code::PackSecurement, Code::PackDressing,
                                  Code::PackAntiseptic, Code::PackLearner, Code::PackAge,
                                  Code::PackAllergy}));
}

TEST_F(Fit, AnEmptyListFitsAll) {
    pack.applies = {};
    line.said.kind = "port";
    kit = {};
    learner.said.isPatient = true;
    record.patient.born = "1921-01-01";
    EXPECT_TRUE(why().empty());
}

TEST_F(Fit, KindsOfLearner) {
    using packs::LearnerKind;
    learner.said.isPatient = true;
    expectOnly({Code::PackLearner, {}});
    pack.applies.learner = {LearnerKind::Patient};
    EXPECT_TRUE(why().empty());
    learner.said.isPatient = false;
    expectOnly({Code::PackLearner, {}});
    pack.applies.learner = {LearnerKind::Patient, LearnerKind::Carer};
    EXPECT_TRUE(why().empty());
}

struct AgeLimitRow {
    const char* born;
    const char* months;  ///< in the refusal; null: it fits
};

// On 24 November 2026, for two to 216 months (18 years).
TEST_F(Fit, AgeInWholeMonthsBothEndsIncluded) {
    for (const AgeLimitRow& row :
         {AgeLimitRow{"2026-11-24", "0"}, AgeLimitRow{"2026-09-25", "1"},
          AgeLimitRow{"2026-09-24", nullptr}, AgeLimitRow{"2008-11-24", nullptr},
          AgeLimitRow{"2008-10-25", nullptr}, AgeLimitRow{"2008-10-24", "217"},
          AgeLimitRow{"1961-05-03", "786"}}) {
        record.patient.born = row.born;
        if (row.months)
            expectOnly({Code::PackAge, {row.months}});
        else
            EXPECT_TRUE(why().empty()) << row.born;
    }
    pack.applies.monthsTo.reset();
    EXPECT_TRUE(why().empty()) << "no upper end";
    pack.applies.monthsFrom.reset();
    record.patient.born = "2026-11-24";
    EXPECT_TRUE(why().empty()) << "no lower end";
}

TEST_F(Fit, AnAllergyForbidsASupplyUnlessAnotherTakesItsPlace) {
    EXPECT_TRUE(why().empty()) << "not asked yet";
    record.allergies = {{.allergies = {{.allergen = "latex", .reaction = "itch"}}}, {}};
    EXPECT_TRUE(why().empty()) << "of something else";
    record.allergies->said.allergies.push_back({.allergen = "alcohol", .reaction = "burns"});
    expectOnly({Code::PackAllergy, {"hand-rub", "alcohol"}});
    packs::Supply& rub = pack.supplies.back();
    rub.instead = packs::Instead{.kind = packs::Instead::Kind::Pack, .id = "other-pack"};
    expectOnly({Code::PackAllergy, {"hand-rub", "alcohol"}});
    rub.instead = packs::Instead{.kind = packs::Instead::Kind::Supply, .id = "soap"};
    EXPECT_TRUE(why().empty());
}

class BestFit : public Fit {
  protected:
    void shelve(const std::string& id, const packs::Applies& applies) {
        procedure::Taught taught{.pack = pack, .model = {}, .digest = id, .bytes = {}};
        taught.pack.id = id;
        taught.pack.applies = applies;
        shelf.put(std::make_shared<const procedure::Taught>(std::move(taught)));
    }
    std::string best() const {
        const auto found = bestFit(shelf, {.record = record,
                                           .learner = learner,
                                           .line = line,
                                           .kit = kit,
                                           .today = "2026-11-24"});
        return found ? found->pack.id : "";
    }
    procedure::Shelf shelf;
};

TEST_F(BestFit, IsTheOneThatAsksForMost) {
    EXPECT_EQ(best(), "");
    shelve("any", {});
    EXPECT_EQ(best(), "any");
    shelve("too-special", {.line = {"port"}, .dressing = {"transparent"}});
    EXPECT_EQ(best(), "any");
    shelve("special", {.line = {"picc"}});
    EXPECT_EQ(best(), "special");
    shelve("another", {.dressing = {"transparent"}});
    EXPECT_EQ(best(), "special") << "of equals the first";
    shelve("most", {.line = {"picc"}, .dressing = {"transparent"}, .monthsFrom = 2});
    EXPECT_EQ(best(), "most");
    shelf.keep(shelf.byDigest("most"));
    shelve("most", {.line = {"port"}});
    EXPECT_EQ(best(), "special") << "the newest of an id counts";
}

}  // namespace
}  // namespace desk
