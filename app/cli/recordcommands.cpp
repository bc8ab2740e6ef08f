// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recordcommands.h"

#include <ostream>

#include "cli/qtcore.h"
#include "cli/recordarguments.h"
#include "cli/recordjson.h"
#include "compose.h"
#include "record/derivation.h"
#include "store/recordfile.h"
#include "store/sqlledger.h"

namespace app {
namespace {

using base::Code;
using store::OpenMode;
using store::SqlLedger;

const char* wordFor(store::Damage damage) {
    switch (damage) {
        case store::Damage::Gap:
            return "gap";
        case store::Damage::Unreadable:
            return "unreadable";
        case store::Damage::OtherPlace:
            return "other-place";
        case store::Damage::TickBack:
            return "tick-back";
        case store::Damage::DoubledId:
            return "doubled-id";
        case store::Damage::Index:
            return "index";
        case store::Damage::RightEdge:
            return "right-edge";
        case store::Damage::Blob:
            return "blob";
    }
    return "";
}

const char* sentenceFor(store::Damage damage) {
    switch (damage) {
        case store::Damage::Gap:
            return "the entry is missing";
        case store::Damage::Unreadable:
            return "the entry can't be read";
        case store::Damage::OtherPlace:
            return "the entry belongs to another place or another ledger";
        case store::Damage::TickBack:
            return "the entry's count is not above the one before";
        case store::Damage::DoubledId:
            return "the entry has the id of an earlier one";
        case store::Damage::Index:
            return "the entry is not found by its id or its patient; record rebuild mends this";
        case store::Damage::RightEdge:
            return "the stored end of the record is not that of its entries";
        case store::Damage::Blob:
            return "the stored file in this row is not what its digest says";
    }
    return "";
}

/// What was found, gathered for both kinds of answer.
class Findings {
  public:
    void add(const std::string& word, std::uint64_t at, const std::string& sentence) {
        m_list.push_back({{"damage", word}, {"seq", at}, {"text", sentence}});
    }
    ExitCode tell(const ledger::Head& head, bool asJson, std::ostream& out,
                  std::ostream& err) const {
        for (const Json& one : m_list)
            err << one["damage"].get<std::string>() << " at " << one["seq"] << ": "
                << one["text"].get<std::string>() << '\n';
        if (asJson)
            writeJson({{"ok", m_list.empty()},
                       {"size", head.size},
                       {"root", head.root},
                       {"findings", m_list}},
                      out);
        else if (m_list.empty())
            out << "intact: " << head.size << " entries, root " << head.root << '\n';
        return m_list.empty() ? ExitCode::Done : ExitCode::Wrong;
    }

  private:
    Json m_list = Json::array();
};

std::string fileOf(const RecordArguments& asked) { return store::recordFileIn(asked.data); }

/// Holds what is derived against the entries; only for a record whose entries are sound.
base::Outcome checkDerived(const RecordArguments& asked, Findings& findings) {
    const auto ledger = SqlLedger::openToRead(fileOf(asked), OpenMode::Demonstration);
    if (!ledger) return ledger.error();
    if ((*ledger)->head().size == 0) return base::Done{};
    const auto shelf = compiledShelf();
    if (!shelf) return shelf.error();
    const auto derived = record::deriveAll(**ledger, **shelf);
    if (!derived) return derived.error();
    const auto fits = (*ledger)->areDerived(*derived);
    if (!fits) return fits.error();
    if (!*fits)
        findings.add("derived", 0,
                     "the list of learners or the open visit is not as the entries say; "
                     "record rebuild mends this");
    return base::Done{};
}

base::Result<PaperHead> paperHead(const RecordArguments& asked) {
    if (!asked.saysNumbers()) return PaperHead::ofLetters(*asked.paper);
    return *PaperHead::ofNumbers(*asked.paper);
}

/// Holds what a paper says against the record. A root may be shortened, as on paper.
base::Outcome checkPaper(const RecordArguments& asked, Findings& findings) {
    if (!asked.paper) return base::Done{};
    const auto paper = paperHead(asked);
    if (!paper) return paper.error();
    const auto ledger = SqlLedger::openToRead(fileOf(asked), OpenMode::Demonstration);
    if (!ledger) return ledger.error();
    const auto head = (*ledger)->headAt(paper->size);
    if (!head) return head.error();
    if (!*head)
        findings.add("paper", paper->size, "the record has fewer entries than the paper says");
    else if (!paper->agreesWith((*head)->root))
        findings.add("paper", paper->size, "the record had another root at this size");
    return base::Done{};
}

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

}  // namespace

ExitCode RecordShowCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                                std::ostream& err) const {
    const auto asked = RecordArguments::parse(arguments, {"--data", "--patient"});
    if (!asked) return ExitCode::Usage;
    const QtCore qt;
    const auto ledger = SqlLedger::openToRead(fileOf(*asked), OpenMode::Demonstration);
    if (!ledger) return sayRefused(ledger.error(), *asked, out, err);
    const auto shelf = compiledShelf();
    if (!shelf) return sayRefused(shelf.error(), *asked, out, err);
    const base::SystemClock clock;
    const auto desk = desk::Desk::open(**ledger, **shelf, clock, desk::Ward::Demonstration);
    if (!desk) return sayRefused(desk.error(), *asked, out, err);
    return asked->patient ? showPatient(**desk, *asked, out, err)
                          : showList(**desk, asked->asJson, out, err);
}

ExitCode RecordVerifyCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                                  std::ostream& err) const {
    const auto asked = RecordArguments::parse(arguments, {"--data", "--paper"});
    if (!asked) return ExitCode::Usage;
    const QtCore qt;
    const auto report = SqlLedger::checkFile(fileOf(*asked), OpenMode::Demonstration);
    if (!report) return sayError(report.error(), ExitCode::Unreadable, asked->asJson, out, err);
    Findings findings;
    for (const store::Finding& one : report->findings)
        findings.add(wordFor(one.damage), one.seq, sentenceFor(one.damage));
    if (report->isIntact())
        for (const auto& check : {checkDerived, checkPaper})
            if (const auto done = check(*asked, findings); !done)
                return sayRefused(done.error(), *asked, out, err);
    return findings.tell(report->head, asked->asJson, out, err);
}

ExitCode RecordRebuildCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                                   std::ostream& err) const {
    const auto asked = RecordArguments::parse(arguments, {"--data"});
    if (!asked) return ExitCode::Usage;
    const QtCore qt;
    const auto before = SqlLedger::checkFile(fileOf(*asked), OpenMode::Demonstration);
    if (!before) return sayRefused(before.error(), *asked, out, err);
    const auto ledger = SqlLedger::openToRebuild(fileOf(*asked), OpenMode::Demonstration);
    if (!ledger) return sayRefused(ledger.error(), *asked, out, err);
    const auto shelf = compiledShelf();
    if (!shelf) return sayRefused(shelf.error(), *asked, out, err);
    const auto derived = record::deriveAll(**ledger, **shelf);
    if (!derived) return sayRefused(derived.error(), *asked, out, err);
    const ledger::Head head = (*ledger)->head();
    if (head.size > 0)  // an empty record has no derived rows at all
        if (const auto done = (*ledger)->rebuild(*derived); !done)
            return sayRefused(done.error(), *asked, out, err);
    Findings findings;
    if (before->edgeSize > head.size)
        findings.add("entries-missing", head.size,
                     "the record once had " + std::to_string(before->edgeSize) +
                         " entries; those after the " + std::to_string(head.size) +
                         " that are there are gone");
    return findings.tell(head, asked->asJson, out, err);
}

}  // namespace app
