// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include "gate/gate.h"
#include "ledger/memoryledger.h"

namespace gate {

inline seal::Secret phrase(const std::string& text) { return seal::Secret::copyOf(text); }

/// A ledger that can be told to refuse what is written, as a full disk does.
class RefusingLedger : public ledger::MemoryLedger {
  public:
    using MemoryLedger::MemoryLedger;
    bool isFull = false;
    base::Result<std::vector<ledger::Entry>> append(const std::vector<ledger::Draft>& drafts,
                                                    const base::Instant& now,
                                                    const ledger::Derived& derived) override {
        if (isFull) return base::Error{base::Code::StoreFull};
        return MemoryLedger::append(drafts, now, derived);
    }
};

/// A ward that Iris founded; Tam teaches there.
class GatedWard : public testing::Test {
  protected:
    const std::string m_irises = "nine slow herons wade", m_tams = "a cellar full of quinces",
                      m_fresh = "lanterns under the ford";
    base::ManualClock m_clock{{.wallMs = 1'700'000'000'000, .bootId = "boot", .zone = "UTC"}};
    RefusingLedger m_ledger;
    std::unique_ptr<Gate> m_gate = opened();
    std::string m_sheet;

    static Terms cheap() { return {seal::Cost::least(), true}; }
    std::unique_ptr<Gate> opened(const Terms& terms = cheap()) {
        auto made = Gate::open(m_ledger, m_clock, terms);
        EXPECT_TRUE(made.ok());
        return made.ok() ? std::move(*made) : nullptr;
    }
    void SetUp() override {
        EXPECT_FALSE(m_gate->isFounded());
        const auto sheet = m_gate->found({"Iris Mora", "IM"}, phrase(m_irises)).now();
        ASSERT_TRUE(sheet.ok());
        m_sheet = sheet->view();
        const Newcomer tam{"Tam Oduya", "TO", record::Role::Teacher};
        ASSERT_TRUE(m_gate->admit(tam, phrase(m_tams)).now().ok());
    }
    base::Outcome signIn(const std::string& name, const std::string& passphrase) {
        m_gate->signOut();
        return m_gate->signIn(name, phrase(passphrase)).now();
    }
    base::Outcome asIris() { return signIn("Iris Mora", m_irises); }
    base::Outcome asTam() { return signIn("Tam Oduya", m_tams); }
    base::StaffId idOf(const std::string& name) const {
        for (const record::Staff& one : m_gate->house().staff)
            if (one.said.name == name) return one.said.staff;
        return {};
    }
    std::vector<ledger::Entry> entries() const { return *m_ledger.readFrom(0, 1000); }
    /// Whether something was written since there were `size` entries.
    bool grewFrom(std::uint64_t size) const { return m_ledger.head().size > size; }
};

}  // namespace gate
