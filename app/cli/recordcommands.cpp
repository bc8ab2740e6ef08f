// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recordcommands.h"

#include <ostream>

#include "cli/logreport.h"
#include "cli/qtcore.h"
#include "cli/recordarguments.h"
#include "cli/recordjson.h"
#include "cli/recordkeys.h"
#include "cli/recordreport.h"
#include "compose.h"
#include "record/derivation.h"
#include "store/recordfile.h"
#include "store/sqlledger.h"

namespace app {
namespace {

using base::Code;
using store::OpenMode;
using store::SqlLedger;

std::string fileOf(const RecordArguments& asked) { return store::recordFileIn(asked.data); }

/// All cards, page by page.
base::Result<std::vector<record::Card>> allCards(desk::Desk& desk) {
    std::vector<record::Card> cards;
    do {
        if (const auto read = desk.lookFor("", cards.size()); !read) return read.error();
        const auto& page = desk.view().cards;
        if (page.empty()) break;
        cards.insert(cards.end(), page.begin(), page.end());
    } while (cards.size() < desk.view().cardTotal);
    return cards;
}

ExitCode showList(desk::Desk& desk, bool asJson, std::ostream& out, std::ostream& err) {
    const auto cards = allCards(desk);
    if (!cards) return sayError(cards.error(), ExitCode::Unreadable, asJson, out, err);
    if (asJson)
        writeJson(listJson(desk.view(), *cards), out);
    else
        writeList(desk.view(), *cards, out);
    return ExitCode::Done;
}

ExitCode showPatient(desk::Desk& desk, const RecordArguments& asked, std::ostream& out,
                     std::ostream& err) {
    if (const auto opened = desk.openRecord(*asked.patient, std::nullopt); !opened) {
        const bool isKnown = opened.error().code != Code::PatientUnknown;
        return sayError(opened.error(), isKnown ? ExitCode::Unreadable : ExitCode::Wrong,
                        asked.asJson, out, err);
    }
    if (asked.asJson)
        writeJson(recordJson(*desk.view().record), out);
    else
        writeRecord(*desk.view().record, out);
    return ExitCode::Done;
}

ExitCode sayRefused(const base::Error& error, const RecordArguments& asked, std::ostream& out,
                    std::ostream& err) {
    const bool isDamaged = error.code == Code::StoreDamaged || error.code == Code::StoreEdgeWrong;
    return sayError(error, isDamaged ? ExitCode::Wrong : ExitCode::Unreadable, asked.asJson, out,
                    err);
}

ExitCode showLog(const SqlLedger& ledger, const RecordArguments& asked, std::ostream& out,
                 std::ostream& err) {
    const auto log = record::readUseLog(ledger);
    if (!log) return sayRefused(log.error(), asked, out, err);
    if (asked.asJson)
        writeJson(logJson(*log), out);
    else
        writeLog(*log, out);
    return ExitCode::Done;
}

base::Result<proof::Report> rebuilt(const RecordArguments& asked, int input, std::ostream& err) {
    OpenMode mode{};
    const auto before = ofEitherKind(
        [&](OpenMode kind) { return SqlLedger::checkFile(fileOf(asked), kind); }, mode);
    if (!before) return before.error();
    const auto ledger = SqlLedger::openToRebuild(fileOf(asked), mode);
    if (!ledger) return ledger.error();
    if (asked.as)
        if (const auto ring = readByKeysOf(*asked.as, **ledger, input, err); !ring)
            return ring.error();
    const auto shelf = compiledShelf();
    if (!shelf) return shelf.error();
    const auto derived = record::deriveAll(**ledger, **shelf);
    if (!derived) return derived.error();
    proof::Report report{.head = (*ledger)->head(), .signatures = 0};
    if (report.head.size > 0)  // an empty record has no derived rows at all
        if (const auto done = (*ledger)->rebuild(*derived); !done) return done.error();
    if (before->edgeSize > report.head.size)
        report.findings.push_back({proof::Kind::CutOff, report.head.size, before->edgeSize - 1});
    return report;
}

desk::Ward wardOf(OpenMode mode) {
    return mode == OpenMode::Real ? desk::Ward::Real : desk::Ward::Demonstration;
}

/// The way into a record that is only read: nothing is noted, no passphrase is made dearer.
/// Nobody's rows are believed that the entries do not tell of. Errors: those of Gate::open(),
/// askSecret() and Gate::signIn().
base::Result<std::unique_ptr<gate::Gate>> enteredAs(const std::string& name, SqlLedger& ledger,
                                                    const base::Clock& clock, OpenMode mode,
                                                    int input, std::ostream& err) {
    auto gate = gate::Gate::open(
        ledger, clock,
        {.usual = seal::Cost::least(), .takesCheaper = mode == OpenMode::Demonstration});
    if (!gate) return gate.error();
    auto typed = askSecret("Passphrase", input, err);
    if (!typed) return typed.error();
    const auto done = (*gate)->signIn(name, std::move(*typed)).now();
    if (!done) return done.error();
    return gate;
}

}  // namespace

ExitCode RecordShowCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                                std::ostream& err) const {
    const auto asked = RecordArguments::parse(arguments, {"--data", "--as", "--patient", "--log"});
    if (!asked) return ExitCode::Usage;
    const QtCore qt;
    const auto refuse = [&](const base::Error& error) {
        return sayRefused(error, *asked, out, err);
    };
    OpenMode mode{};
    const auto ledger = ofEitherKind(
        [&](OpenMode kind) { return SqlLedger::openToRead(fileOf(*asked), kind); }, mode);
    if (!ledger) return refuse(ledger.error());
    const base::SystemClock clock;
    std::unique_ptr<gate::Gate> gate;
    if (asked->as) {
        auto entered = enteredAs(*asked->as, **ledger, clock, mode, m_input, err);
        if (!entered) return refuse(entered.error());
        gate = std::move(*entered);
    }
    const auto shelf = compiledShelf();
    if (!shelf) return refuse(shelf.error());
    const auto desk = desk::Desk::open(**ledger, **shelf, clock, wardOf(mode));
    if (!desk) return refuse(desk.error());
    if (asked->asLog) return showLog(**ledger, *asked, out, err);
    return asked->patient ? showPatient(**desk, *asked, out, err)
                          : showList(**desk, asked->asJson, out, err);
}

ExitCode RecordRebuildCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                                   std::ostream& err) const {
    const auto asked = RecordArguments::parse(arguments, {"--data", "--as"});
    if (!asked) return ExitCode::Usage;
    const QtCore qt;
    const auto report = rebuilt(*asked, m_input, err);
    if (!report) return sayRefused(report.error(), *asked, out, err);
    return tell(*report, asked->asJson, out, err);
}

}  // namespace app
