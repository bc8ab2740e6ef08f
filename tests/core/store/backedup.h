// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gate/gate.h"
#include "store/backup.h"
#include "store/recordfile.h"
#include "store/restoreas.h"
#include "support/ledgerdrafts.h"
#include "support/recordfolder.h"

namespace support {

/// A sealed record of invented people that Iris founded and Tam can open, and a backup of it.
class BackedUp : public testing::Test {
  protected:
    RecordFolder m_folder;
    const std::string m_file = m_folder.path("ward.backup"), m_irises = "nine slow herons wade",
                      m_tams = "a cellar full of quinces";
    std::string m_sheet;
    base::ManualClock m_clock{{.wallMs = 1'700'000'000'000, .bootId = "boot", .zone = "UTC"}};
    base::PatientId m_patient = base::PatientId::random();
    ledger::Head m_head;
    base::LedgerId m_id;
    std::string m_blob;

    static seal::Secret secret(const std::string& text) { return seal::Secret::copyOf(text); }
    std::unique_ptr<gate::Gate> gateOf(ledger::Ledger& ledger) const {
        auto made = gate::Gate::open(ledger, m_clock, {seal::Cost::least(), true});
        if (!made) ADD_FAILURE() << base::english(made.error());
        return made ? std::move(*made) : nullptr;
    }
    void SetUp() override {
        const auto ledger = m_folder.open();
        m_id = ledger->id();
        const auto gate = gateOf(*ledger);
        m_sheet = gate->found({"Iris Mora", "IM"}, secret(m_irises)).now()->view();
        ASSERT_TRUE(
            gate->admit({"Tam Oduya", "TO", record::Role::Teacher}, secret(m_tams)).now().ok());
        ASSERT_TRUE(ledger
                        ->append({draftSaying("Quillfeather", m_patient)}, instantAt(7),
                                 {.cards = {cardOf("quillfeather", {"quillfeather"})}})
                        .ok());
        m_blob = ledger->putBlob("a pack").value();
        m_head = ledger->head();
        const auto copied = store::backUp(m_folder.path(), m_file);
        ASSERT_TRUE(copied.ok()) << base::english(copied.error());
        EXPECT_EQ(*copied, (ledger::Former{m_id, m_head}));
    }
    /// Signs Iris in and writes one more entry.
    ledger::Head grow(const std::string& name = "ward.record") {
        const auto ledger = m_folder.open(name);
        const auto gate = gateOf(*ledger);
        EXPECT_TRUE(gate->signIn("Iris Mora", secret(m_irises)).now().ok());
        EXPECT_TRUE(ledger->append({draftSaying("more", m_patient)}, instantAt(8), {}).ok());
        return ledger->head();
    }
    /// By name and passphrase, or by the sheet when there is no name.
    base::Outcome restore(const std::string& to, const std::string& name,
                          const std::string& typed) {
        return restoreFrom(m_file, to, name, typed);
    }
    base::Outcome restoreFrom(const std::string& file, const std::string& to,
                              const std::string& name, const std::string& typed) {
        const auto made =
            store::restoreAs(file, m_folder.path(to), {name, secret(typed)}, m_clock.now());
        if (!made) return made.error();
        return base::Done{};
    }
    base::Outcome asIris(const std::string& to) { return restore(to, "Iris Mora", m_irises); }
};

}  // namespace support
