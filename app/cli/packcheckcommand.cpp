// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/packcheckcommand.h"

#include <ostream>

#include "cli/fileargument.h"
#include "cli/packfile.h"
#include "packs/names.h"
#include "packs/tree.h"
#include "procedure/check.h"

namespace app {
namespace {

Json wayJson(const procedure::WayBack& way) {
    const bool isFound = way.outcome == procedure::PlanOutcome::Found;
    Json json{{"step", way.step},
              {"lapse", way.lapse},
              {"seen", way.seen == procedure::Seen::During ? "during" : "after"},
              {"alone", way.company == procedure::Company::Alone},
              {"plan", isFound ? Json(way.plan) : Json(nullptr)}};
    if (isFound) {
        json["seconds"] = way.seconds;
        json["strain"] = way.strain;
    }
    json["action"] = packs::name(way.action);
    return json;
}

Json findingsJson(const procedure::CheckReport& report, procedure::FindingLevel level,
                  const packs::Node& root) {
    Json list = Json::array();
    for (const procedure::Finding& finding : report.findings)
        if (finding.level == level)
            list.push_back(faultJson(
                {finding.pointer, packs::byteAt(root, finding.pointer), finding.sentence}));
    return list;
}

Json reportJson(const packs::Pack& pack, const procedure::CheckReport& report,
                const packs::Node& root) {
    Json ways = Json::array();
    for (const procedure::WayBack& way : report.ways) ways.push_back(wayJson(way));
    return {{"ok", !report.isRefused()},
            {"id", pack.id},
            {"version", pack.version},
            {"errors", findingsJson(report, procedure::FindingLevel::Error, root)},
            {"advice", findingsJson(report, procedure::FindingLevel::Advice, root)},
            {"least_s", report.leastSeconds},
            {"usual_s", report.usualSeconds},
            {"states", report.statesStored},
            {"ways", ways}};
}

void writeWords(const packs::Pack& pack, const procedure::CheckReport& report, std::ostream& out) {
    for (const procedure::Finding& finding : report.findings)
        out << (finding.level == procedure::FindingLevel::Error ? "error: " : "advice: ")
            << printable(finding.pointer) << ": " << printable(finding.sentence)
            << (finding.remedy.empty() ? "" : " ") << printable(finding.remedy) << '\n';
    out << pack.id << ' ' << pack.version << ": " << report.ways.size() << " ways back, "
        << report.statesStored << " states, "
        << (report.isRefused() ? "the pack is refused; nothing is taught from it, and no record "
                                 "was touched"
                               : "no error")
        << '\n';
}

}  // namespace

ExitCode PackCheckCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                               std::ostream& err) const {
    const auto asked = FileArgument::parse(arguments);
    if (!asked) return ExitCode::Usage;
    const auto bytes = readPackFile(asked->path);
    if (!bytes) return sayError(bytes.error(), ExitCode::Unreadable, asked->asJson, out, err);
    const packs::Reading reading = packs::read(*bytes);
    if (!reading.pack) return sayRefusal(reading, asked->asJson, out, err);
    const procedure::CheckReport report = procedure::check(*reading.pack);
    if (asked->asJson)
        writeJson(reportJson(*reading.pack, report, packs::parseTree(*bytes).root), out);
    else
        writeWords(*reading.pack, report, out);
    return report.isRefused() ? ExitCode::Wrong : ExitCode::Done;
}

}  // namespace app
