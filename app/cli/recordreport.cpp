// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recordreport.h"

#include <algorithm>
#include <ostream>

#include "cli/recordjson.h"
#include "seal/papercode.h"

namespace app {
namespace {

const char* sentenceFor(proof::Kind kind) {
    using proof::Kind;
    switch (kind) {
        case Kind::Gap:
            return "missing";
        case Kind::Unreadable:
            return "can't be read as an entry";
        case Kind::OtherPlace:
            return "of another place or another ledger";
        case Kind::TickBack:
            return "its count is not above the one before";
        case Kind::Doubled:
            return "has the id of an earlier entry";
        case Kind::NotSealed:
            return "lies open in a record that is sealed";
        case Kind::Changed:
            return "does not open: it was changed, or its key was";
        case Kind::NoSignature:
            return "not signed, and what it says always is";
        case Kind::BadSignature:
            return "a signature does not hold";
        case Kind::UnknownKey:
            return "signed by a key that its author did not have then, or for another purpose";
        case Kind::NoSpeaker:
            return "its author could not sign in then";
        case Kind::OtherRole:
            return "its author had another role then than it says";
        case Kind::KeysChanged:
            return "changes who can open the record, by nobody who may";
        case Kind::KeyGone:
            return "its key is not to be had, and no entry says that two people erased it";
        case Kind::NotErased:
            return "erased by two people, and its key is there again";
        case Kind::Basis:
            return "its signature names other entries as its ground than those before it";
        case Kind::Index:
            return "not found by its id or its patient; record rebuild mends this";
        case Kind::Fences:
            return "the tables they lie in, or the rules that guard those, are not those of the "
                   "program; a backup, restored to another folder, has them again";
        case Kind::RightEdge:
            return "the stored end of the record is not that of its entries";
        case Kind::Derived:
            return "the list of learners or the open visit is not as the entries say; "
                   "record rebuild mends this";
        case Kind::Blob:
            return "a stored pack or drawing is not what its digest says, or is missing";
        case Kind::Paper:
            return "says that a paper was issued, and the record of then shows another one";
        case Kind::Rewritten:
            return "not the entries that were known once";
        case Kind::CutOff:
            return "were known once and are gone";
        case Kind::Forked:
            return "told in two ways by what was known of them";
        case Kind::OtherRecord:
            return "known from another record";
        case Kind::Emptied:
            return "its key was destroyed; whether two people said so is seen with a key alone";
        case Kind::Erased:
            return "erased on purpose, by two people";
    }
    return "";
}

std::string placeOf(const proof::Finding& finding) {
    const std::string from = std::to_string(finding.from);
    return finding.from == finding.to ? from : from + " to " + std::to_string(finding.to);
}

Json jsonOf(const proof::Finding& finding) {
    Json json{{"damage", base::nameOf(finding.kind)},
              {"seq", finding.from},
              {"to", finding.to},
              {"text", sentenceFor(finding.kind)}};
    if (finding.paper) json["paper"] = base::nameOf(*finding.paper);
    return json;
}

Json jsonOf(const std::optional<proof::Papers>& papers) {
    if (!papers) return nullptr;
    return {{"checked", papers->checked},
            {"issued_before", papers->before},
            {"other_form", papers->others}};
}

/// What was looked at of the papers; of those that can't be looked at, that they are there.
void tellPapers(const proof::Papers& papers, std::ostream& out) {
    if (papers.checked > 0)
        out << "papers held against the record of then: " << papers.checked << '\n';
    if (papers.before > 0)
        out << "papers issued before the record said what they were made of, not checked: "
            << papers.before << '\n';
    if (papers.others > 0)
        out << "papers made by another form than this program's, not checked: " << papers.others
            << '\n';
}

std::string labelOf(const proof::Finding& finding) {
    std::string name = base::nameOf(finding.kind);
    if (finding.paper) name += std::string(" (") + base::nameOf(*finding.paper) + ')';
    return name;
}

/// The head as a paper has it, on one line; empty where a paper would have none.
std::string lettersOf(const ledger::Head& head) {
    std::string letters = seal::paperLetters(head).value_or("");
    std::replace(letters.begin(), letters.end(), '\n', ' ');
    return letters;
}

ExitCode exitAfter(const proof::Report& report) {
    if (report.isWrong()) return ExitCode::Wrong;
    return report.isComplete() ? ExitCode::Done : ExitCode::Unsealed;
}

}  // namespace

ExitCode tell(const proof::Report& report, bool asJson, std::ostream& out, std::ostream& err) {
    Json list = Json::array();
    for (const proof::Finding& one : report.findings) {
        err << labelOf(one) << " at " << placeOf(one) << ": " << sentenceFor(one.kind) << '\n';
        list.push_back(jsonOf(one));
    }
    const ExitCode code = exitAfter(report);
    if (asJson)
        writeJson({{"ok", !report.isWrong()},
                   {"complete", report.isComplete()},
                   {"size", report.head.size},
                   {"root", report.head.root},
                   {"letters", lettersOf(report.head)},
                   {"signatures", report.signatures},
                   {"opened", report.opened},
                   {"closed", report.closed},
                   {"erased", report.erased},
                   {"papers", jsonOf(report.papers)},
                   {"findings", list}},
                  out);
    else if (code != ExitCode::Wrong)
        out << (code == ExitCode::Done ? "intact: "
                                       : "intact as far as can be seen without a key: ")
            << report.head.size << " entries, root " << report.head.root
            << "\nto be kept elsewhere, for a later --paper: " << lettersOf(report.head) << '\n';
    if (!asJson && report.papers) tellPapers(*report.papers, out);
    return code;
}

}  // namespace app
