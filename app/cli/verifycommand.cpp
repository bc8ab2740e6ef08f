// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/verifycommand.h"

#include "cli/qtcore.h"
#include "cli/recordarguments.h"
#include "cli/recordjson.h"
#include "cli/recordreport.h"
#include "seal/accessrows.h"
#include "seal/sealingcodec.h"
#include "store/recordfile.h"
#include "store/sqlledger.h"
#include "verifying.h"

namespace app {
namespace {

using base::Code;
using proof::Report;
using store::OpenMode;
using store::SqlLedger;

using Heads = std::vector<proof::KnownHead>;
using Ring = std::shared_ptr<const seal::Keyring>;

/// The keys of whoever types their passphrase; none where nobody signs in. Whether the rows on the
/// disk are those that the record tells of is for verify to say, so nobody is kept out by it here.
base::Result<Ring> ringOf(const SqlLedger& ledger, const std::string& name, int input,
                          std::ostream& err) {
    const auto stored = ledger.access();
    if (!stored) return stored.error();
    const auto rows = seal::readKeyRows(*stored);
    if (!rows) return rows.error();
    if (!*rows) return Ring();
    const auto typed = askSecret("Passphrase", input, err);
    if (!typed) return typed.error();
    const auto handle = seal::nameHandle(name, (*rows)->names);
    if (!handle) return handle.error();
    auto ring = seal::Keyring::signIn(**rows, *handle, *typed);
    if (!ring) return ring.error();
    return Ring(std::make_shared<const seal::Keyring>(std::move(*ring)));
}

/// What can be said of a record that does not open, because its end is damaged.
base::Result<Report> ofFile(const std::string& file, OpenMode mode, const Heads& heads) {
    auto report = SqlLedger::checkFile(file, mode, heads);
    if (!report) return report.error();
    return Report(*report);
}

bool isDamage(const base::Error& error) {
    return error.code == Code::StoreEdgeWrong || error.code == Code::StoreDamaged;
}

base::Result<Report> verified(const RecordArguments& asked, int input, std::ostream& err) {
    const auto heads = asked.heads();
    if (!heads) return heads.error();
    const std::string file = store::recordFileIn(asked.data);
    OpenMode mode = OpenMode::Demonstration;
    auto ledger = SqlLedger::openToRead(file, mode);
    if (!ledger && ledger.error().code == Code::StoreOtherKind) {
        mode = OpenMode::Real;
        ledger = SqlLedger::openToRead(file, mode);
    }
    if (!ledger && isDamage(ledger.error())) return ofFile(file, mode, *heads);
    if (!ledger) return ledger.error();
    Ring ring;
    if (asked.as) {
        auto opened = ringOf(**ledger, *asked.as, input, err);
        if (!opened) return opened.error();
        ring = std::move(*opened);
    }
    if (ring) (*ledger)->use(std::make_shared<seal::SealingCodec>(ring, (*ledger)->keyShelf()));
    return verifyOpen(**ledger, ring, *heads);
}

}  // namespace

ExitCode RecordVerifyCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                                  std::ostream& err) const {
    const auto asked = RecordArguments::parse(arguments, {"--data", "--as", "--paper", "--backup"});
    if (!asked) return ExitCode::Usage;
    const QtCore qt;
    const auto report = verified(*asked, m_input, err);
    if (!report) return sayError(report.error(), ExitCode::Unreadable, asked->asJson, out, err);
    return tell(*report, asked->asJson, out, err);
}

}  // namespace app
