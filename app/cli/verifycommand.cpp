// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/verifycommand.h"

#include "cli/qtcore.h"
#include "cli/recordarguments.h"
#include "cli/recordjson.h"
#include "cli/recordkeys.h"
#include "cli/recordreport.h"
#include "store/recordfile.h"
#include "verifying.h"

namespace app {
namespace {

using base::Code;
using proof::Report;
using store::OpenMode;
using store::SqlLedger;

using Heads = std::vector<proof::KnownHead>;

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
    OpenMode mode{};
    const auto ledger =
        ofEitherKind([&](OpenMode kind) { return SqlLedger::openToRead(file, kind); }, mode);
    if (!ledger && isDamage(ledger.error())) return ofFile(file, mode, *heads);
    if (!ledger) return ledger.error();
    if (!asked.as) return verifyOpen(**ledger, nullptr, *heads);
    const auto ring = readByKeysOf(*asked.as, **ledger, input, err);
    if (!ring) return ring.error();
    if (const auto proven = asked.proveBackups(*(*ring)->identity()); !proven)
        return proven.error();
    return verifyOpen(**ledger, *ring, *heads);
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
