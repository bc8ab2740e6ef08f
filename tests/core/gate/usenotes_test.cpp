// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/usenotes.h"

#include "gatedward.h"
#include "record/uselog.h"

namespace gate {

using record::Use;

/// The ward of Iris and Tam, with a log of who looks at what.
class UseLogged : public GatedWard {
  protected:
    base::PatientId m_patient = base::PatientId::random();
    base::StaffId m_iris, m_tam;

    void SetUp() override {
        GatedWard::SetUp();
        m_iris = idOf("Iris Mora");
        m_tam = idOf("Tam Oduya");
        m_gate = nullptr;
        m_gate = opened({seal::Cost::least(), true, true});
    }
    std::vector<Use> uses() const {
        std::vector<Use> said;
        const auto log = record::readUseLog(m_ledger);
        for (const record::UseLine& one : *log)
            if (one.use()) said.push_back(one.use()->what);
        return said;
    }
};

TEST_F(UseLogged, SaysWhoSignedInAndOutNewestFirst) {
    ASSERT_TRUE(asIris().ok());
    m_clock.advanceMs(60'000);
    ASSERT_TRUE(asTam().ok());
    const auto log = record::readUseLog(m_ledger);
    ASSERT_EQ(uses(), (std::vector<Use>{Use::SignedIn, Use::SignedOut, Use::SignedIn}));
    EXPECT_EQ((*log)[0].by, m_tam);
    EXPECT_EQ((*log)[1].by, m_iris);
    EXPECT_EQ((*log)[0].atMs - (*log)[2].atMs, 60'000);
    m_gate->signOut();
    EXPECT_TRUE(uses().empty()) << "nobody reads it while nobody is signed in";
}

TEST_F(UseLogged, AColleagueWhoComesInTheirPlaceSignsThemOut) {
    ASSERT_TRUE(asIris().ok());
    ASSERT_TRUE(m_gate->signIn("Tam Oduya", phrase(m_tams)).now().ok());
    const auto log = record::readUseLog(m_ledger);
    ASSERT_EQ(uses(), (std::vector<Use>{Use::SignedIn, Use::SignedOut, Use::SignedIn}));
    EXPECT_EQ((*log)[0].by, m_tam);
    EXPECT_EQ((*log)[1].by, m_iris);
    EXPECT_EQ((*log)[2].by, m_iris);
    EXPECT_FALSE(m_gate->signIn("Iris Mora", phrase("wrong")).now().ok());
    EXPECT_EQ(uses().size(), 3U) << "Tam is still there";
}

TEST_F(UseLogged, WhoComesByTheSheetIsInItToo) {
    ASSERT_TRUE(m_gate->recover(phrase(m_sheet), {"Iris Mora", "IM"}, phrase(m_fresh)).now().ok());
    EXPECT_EQ(uses(), std::vector<Use>{Use::SignedIn});
}

// 45 CFR 164.312(b) and the events of DICOM PS3.15 A.5 ask for attempts that failed, too; that they
// are told with the next sign-in is our own: before it nothing can be sealed.
TEST_F(UseLogged, WrongPassphrasesAreToldWithTheNextSignIn) {
    const auto newest = [this] { return *record::readUseLog(m_ledger)->front().use(); };
    ASSERT_TRUE(asIris().ok());
    EXPECT_EQ(newest().wrongBefore, 0);
    m_gate->signOut();
    EXPECT_FALSE(m_gate->signIn("Iris Mora", phrase("wrong")).now().ok());
    EXPECT_FALSE(m_gate->signIn("Nobody Here", phrase(m_tams)).now().ok());
    ASSERT_TRUE(asTam().ok());
    EXPECT_EQ(newest(), (record::NoteUse{.what = Use::SignedIn, .wrongBefore = 2}));
    EXPECT_FALSE(m_gate->confirm(phrase("wrong")).now().ok()) << "at the lock";
    EXPECT_EQ(uses().size(), 1U + 2U) << "no line of its own";
    ASSERT_TRUE(asTam().ok());
    EXPECT_EQ(newest().wrongBefore, 1);
    ASSERT_TRUE(asIris().ok());
    EXPECT_EQ(newest().wrongBefore, 0) << "told once";
}

TEST_F(UseLogged, ReadingDoesNotFloodIt) {
    ASSERT_TRUE(asIris().ok());
    const auto other = base::PatientId::random();
    for (int i = 0; i < 50; ++i)
        for (const auto& patient : {m_patient, other}) {
            ASSERT_TRUE(m_gate->note({Use::Opened, patient}).ok());
            ASSERT_TRUE(m_gate->note({Use::Searched}).ok());
        }
    EXPECT_EQ(uses(), (std::vector<Use>{Use::Opened, Use::Searched, Use::Opened, Use::SignedIn}));
    ASSERT_TRUE(asIris().ok());
    ASSERT_TRUE(m_gate->note({Use::Opened, m_patient}).ok());
    EXPECT_EQ(uses().front(), Use::Opened) << "once more after another sign-in";
}

TEST_F(UseLogged, WhatLeavesIsWrittenEachTimeWithItsKind) {
    ASSERT_TRUE(asTam().ok());
    for (int i = 0; i < 2; ++i)
        ASSERT_TRUE(m_gate->note({Use::Printed, m_patient, "home-guide", ""}).ok());
    ASSERT_TRUE(m_gate->note({Use::BreakGlass, m_patient, "", "arrest in room 4"}).ok());
    const auto log = record::readUseLog(m_ledger);
    EXPECT_EQ(uses(),
              (std::vector<Use>{Use::BreakGlass, Use::Printed, Use::Printed, Use::SignedIn}));
    EXPECT_EQ((*log)[0].use()->reason, "arrest in room 4");
    EXPECT_EQ((*log)[1].use()->object, "home-guide");
    EXPECT_EQ((*log)[1].use()->patient, m_patient);
}

TEST_F(UseLogged, AFullDiskKeepsNobodyFromReadingAndLosesNoLine) {
    ASSERT_TRUE(asTam().ok());
    m_ledger.isFull = true;
    EXPECT_EQ(m_gate->note({Use::Opened, m_patient}).error().code, base::Code::StoreFull);
    m_ledger.isFull = false;
    ASSERT_TRUE(m_gate->note({Use::Printed, m_patient, "chart", ""}).ok());
    EXPECT_EQ(uses(), (std::vector<Use>{Use::Printed, Use::Opened, Use::SignedIn}));
}

TEST_F(UseLogged, IsInNoPatientsRecordAndNotAmongTheStaff) {
    ASSERT_TRUE(asTam().ok());
    const auto house = m_ledger.withoutSubject()->size();
    ASSERT_TRUE(m_gate->note({Use::Opened, m_patient}).ok());
    EXPECT_TRUE(m_ledger.ofSubject(m_patient)->empty());
    EXPECT_EQ(m_ledger.withoutSubject()->size(), house);
    const auto log = m_ledger.ofSubject(record::useLogOf(m_ledger.id()));
    ASSERT_EQ(log->size(), 2U);
    for (const ledger::Entry& entry : *log) EXPECT_FALSE(entry.body.must);
}

TEST_F(UseLogged, NothingIsWrittenForNobody) {
    const auto size = m_ledger.head().size;
    EXPECT_EQ(m_gate->note({Use::Opened, m_patient}).error().code, base::Code::AccessSignedOut);
    m_gate->signOut();
    EXPECT_EQ(m_ledger.head().size, size);
}

// Codes: DICOM PS3.16, context groups 400 (Audit Event ID) and 401 (Audit Event Type Code), scheme
// DCM, as HL7's FHIR R4 lists them for AuditEvent (http://dicom.nema.org/resources/ontology/DCM).
// That printing and saving are an Export is said in DICOM PS3.15, A.5.3 "Data Export" (from
// memory). That a broken glass is a Security Alert (PS3.15, A.5.3.11) of the type Emergency
// Override Started is HL7 FHIR's example of an AuditEvent "example-breakglass-start" (R5 and R6
// ballot). That 110137 is of a Security Alert is PS3.15, A.5.3.11 (from memory).
TEST(UseLog, IsNamedByTheCodesOfDicom) {
    const auto code = [](auto what) {
        const record::EventCode one = record::eventCodeOf(what);
        std::string words = std::string(one.event.code) + " " + one.event.meaning;
        if (*one.type.code) words += std::string(", ") + one.type.code + " " + one.type.meaning;
        return words;
    };
    EXPECT_EQ(code(Use::SignedIn), "110114 User Authentication, 110122 Login");
    EXPECT_EQ(code(Use::SignedOut), "110114 User Authentication, 110123 Logout");
    EXPECT_EQ(code(Use::Searched), "110112 Query");
    EXPECT_EQ(code(Use::Opened), "110110 Patient Record");
    EXPECT_EQ(code(Use::BreakGlass), "110113 Security Alert, 110127 Emergency Override Started");
    for (const Use what : {Use::Printed, Use::Saved, Use::Exported})
        EXPECT_EQ(code(what), "110106 Export");
    for (const Use what : {Use::Verified, Use::ReadLog})
        EXPECT_EQ(code(what), "110101 Audit Log Used");
    for (const auto& [change, name] : base::Names<record::AccessChange>::all)
        EXPECT_EQ(code(change), "110113 Security Alert, 110137 User Security Attributes Changed")
            << name;
}

}  // namespace gate
