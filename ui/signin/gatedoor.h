// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gate/gate.h"
#include "signin/door.h"

namespace ui {

/// The door of a sealed record.
class GateDoor : public Door {
  public:
    explicit GateDoor(gate::Gate& gate) : m_gate(gate) {}

    bool isFounded() const override { return m_gate.isFounded(); }
    gate::Slow<seal::Secret> found(const Newcomer& first, seal::Secret passphrase) override;
    std::optional<Member> who() const override;
    Slow signIn(const QString& name, seal::Secret passphrase) override;
    Slow unlock(seal::Secret passphrase) override;
    Slow confirm(seal::Secret passphrase) override;
    void signOut() override { m_gate.signOut(); }
    std::int64_t waitMs() const override { return m_gate.waitMs(); }
    Slow recover(seal::Secret letters, const Newcomer& person, seal::Secret passphrase) override;
    Slow changePassphrase(seal::Secret old, seal::Secret fresh) override;
    std::vector<Member> people() const override;
    Slow admit(const Newcomer& person, record::Role role, seal::Secret passphrase) override;
    Slow reset(const base::StaffId& person, seal::Secret passphrase) override;
    base::Outcome retire(const base::StaffId& person) override { return m_gate.retire(person); }
    Slow erase(const Erasing& asked, seal::Secret own, seal::Secret others) override {
        return m_gate.erase({asked.patient, asked.why, asked.second}, std::move(own),
                            std::move(others));
    }
    render::SheetMark sheetMark() const override;
    base::Result<seal::Secret> newSheet() override { return m_gate.replaceRecovery(); }

  private:
    gate::Gate& m_gate;
};

}  // namespace ui
