// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/trust.h"

#include <map>

#include "record/shapes.h"
#include "seal/signature.h"

namespace gate {
namespace {

using base::Code;
using base::Done;
using base::Error;
using base::Outcome;
using record::AccessChange;
using record::AddStaff;
using record::ChangeAccess;

Outcome refused(const char* what) { return Error{Code::AccessChanged, {what}}; }

/// Goes through the entries from the first on and knows who could sign at each.
class Follower {
  public:
    Follower(const ledger::Lineage& lineage, const seal::KeyRows& rows)
        : m_lineage(lineage), m_rows(rows) {}

    Outcome take(const ledger::Entry& entry) {
        if (!entry.isOpen) return refused("epoch");
        const auto payload = record::lifted(entry.body).payload;
        if (!payload) return Done{};
        const auto* adds = std::get_if<AddStaff>(&*payload);
        const auto* changes = std::get_if<ChangeAccess>(&*payload);
        if (const auto* continues = std::get_if<record::ContinueLedger>(&*payload))
            return take(*continues, entry.seq);
        if (!adds && !changes) return Done{};
        if (!m_digests.empty() && !m_digests.contains(entry.key)) return refused("epoch");
        const auto kid = signerOf(entry);
        if (!kid) return kid.error();
        return adds ? take(*adds, *kid) : take(*changes, *kid, entry.key);
    }

    Outcome knows(const seal::Keyring& ring) const {
        if (m_isWaiting) return refused("staff");
        if (m_continued != m_lineage.former().size()) return refused("ledger");
        for (const auto& [id, key] : ring.epochs()) {
            const auto told = m_digests.find(id.text());
            if (told == m_digests.end() || told->second != key.digest()) return refused("epoch");
        }
        return Done{};
    }

  private:
    base::Result<std::string> signerOf(const ledger::Entry& entry) const {
        if (entry.body.sigs.size() != 1) return Error{Code::AccessChanged, {"signature"}};
        const auto claim = seal::readSignature(entry.body.sigs[0]);
        if (!claim) return claim.error();
        const auto key = m_rows.identityOf(claim->kid);
        if (!key) return Error{Code::AccessChanged, {"signature"}};
        const auto holds =
            seal::verifyBody(entry.body.sigs[0], entry.ledger, seal::signedPart(entry.body), *key);
        if (!holds) return holds.error();
        return claim->kid;
    }

    bool isEducator(const std::string& kid) const {
        for (const auto& [person, known] : m_people)
            if (known.kid == kid && known.role == record::Role::Educator) return true;
        return false;
    }

    /// The first entry under another id says from which head the ledger went on.
    Outcome take(const record::ContinueLedger& said, std::uint64_t seq) {
        const auto& former = m_lineage.former();
        if (m_continued == former.size()) return refused("ledger");
        const ledger::Former& from = former[m_continued++];
        const bool fits = seq == from.head.size && said.from == from.ledger &&
                          static_cast<std::uint64_t>(said.size) == seq &&
                          said.root == from.head.root;
        return fits ? Outcome(Done{}) : refused("ledger");
    }

    /// Somebody comes onto the list: by an educator, or by the entry after this one.
    Outcome take(const AddStaff& said, const std::string& kid) {
        if (m_isWaiting || m_people.contains(said.staff)) return refused("staff");
        m_people[said.staff] = {{}, said.role};
        m_isWaiting = !isEducator(kid);
        m_waiting = {said.staff, kid};
        return Done{};
    }

    Outcome take(const ChangeAccess& said, const std::string& kid, const std::string& epoch) {
        const auto person = m_people.find(said.staff);
        if (person == m_people.end()) return refused("staff");
        if (!maySay(said, kid)) return refused("signature");
        m_isWaiting = false;
        // The first epoch is told of under itself: there is none before it.
        if (m_digests.empty() && said.epoch != epoch) return refused("epoch");
        if (!said.epoch.empty() && !m_digests.emplace(said.epoch, said.epochDigest).second)
            return refused("epoch");
        if (said.what == AccessChange::Retired)
            person->second.kid.clear();
        else if (said.what != AccessChange::NewRecovery)
            person->second.kid = said.kid;
        return Done{};
    }

    bool maySay(const ChangeAccess& said, const std::string& kid) const {
        if (m_isWaiting && (said.staff != m_waiting.first || kid != m_waiting.second)) return false;
        const std::string& present = m_people.at(said.staff).kid;
        switch (said.what) {
            case AccessChange::Founded:
                return m_digests.empty() && m_people.size() == 1 && kid == said.kid;
            case AccessChange::Recovered:
                return !m_digests.empty() && kid == said.kid;
            case AccessChange::NewPassphrase:
            case AccessChange::RaisedCost:
                return !m_isWaiting && kid == present && said.kid == present;
            case AccessChange::Admitted:
            case AccessChange::Reset:
            case AccessChange::Retired:
            case AccessChange::NewRecovery:
                return isEducator(kid);
        }
        return false;
    }

    struct Known {
        std::string kid = {};  ///< "" while they can't sign
        record::Role role = record::Role::Teacher;
    };
    const ledger::Lineage& m_lineage;
    std::size_t m_continued = 0;  ///< former ids that were told of
    const seal::KeyRows& m_rows;
    std::map<base::StaffId, Known> m_people;
    std::map<std::string, std::string> m_digests;  ///< of the epochs that were told of, by id
    /// Somebody was put onto the list by a key nobody has yet: the next entry has to let them in.
    bool m_isWaiting = false;
    std::pair<base::StaffId, std::string> m_waiting;
};

}  // namespace

Outcome trust(const std::vector<ledger::Entry>& entries, const ledger::Lineage& lineage,
              const seal::KeyRows& rows, const seal::Keyring& ring) {
    Follower follower(lineage, rows);
    for (const ledger::Entry& entry : entries)
        if (const auto taken = follower.take(entry); !taken) return taken;
    return follower.knows(ring);
}

}  // namespace gate
