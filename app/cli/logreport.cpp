// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/logreport.h"

#include <ostream>

#include "base/clock.h"

namespace app {
namespace {

Json jsonOf(const record::Coded& coded) {
    if (!*coded.code) return nullptr;
    return {{"system", "DCM"}, {"code", coded.code}, {"meaning", coded.meaning}};
}

template <class T>
Json idOf(const std::optional<T>& id) {
    return id ? Json(id->text()) : Json(nullptr);
}

/// What was done to whom.
Json saidJson(const record::UseLine& line) {
    if (const record::ChangeAccess* change = line.change())
        return {{"what", base::nameOf(change->what)}, {"staff", change->staff.text()}};
    const record::NoteUse& use = *line.use();
    return {{"what", base::nameOf(use.what)},
            {"patient", idOf(use.patient)},
            {"object", use.object},
            {"reason", use.reason},
            {"wrong_before", use.wrongBefore}};
}

std::string whatIn(const record::UseLine& line) {
    if (const record::ChangeAccess* change = line.change()) return base::nameOf(change->what);
    const record::NoteUse& use = *line.use();
    return base::nameOf(use.what) + (use.object.empty() ? std::string() : " " + use.object);
}

}  // namespace

Json logJson(const std::vector<record::UseLine>& log) {
    Json list = Json::array();
    for (const record::UseLine& line : log) {
        const record::EventCode code = record::eventCodeOf(line);
        Json one = saidJson(line);
        one["at"] = base::isoUtc(line.atMs);
        one["offset_minutes"] = line.offsetMinutes;
        one["by"] = idOf(line.by);
        one["who"] = line.who;
        one["whose"] = line.whose;
        one["event"] = jsonOf(code.event);
        one["event_type"] = jsonOf(code.type);
        list.push_back(std::move(one));
    }
    return {{"log", list}};
}

void writeLog(const std::vector<record::UseLine>& log, std::ostream& out) {
    for (const record::UseLine& line : log) {
        const record::EventCode code = record::eventCodeOf(line);
        out << base::isoUtc(line.atMs) << "  " << printable(line.who) << "  " << whatIn(line);
        if (!line.whose.empty()) out << "  " << printable(line.whose);
        out << "  (DCM";
        for (const record::Coded& one : {code.event, code.type})
            if (*one.code) out << ' ' << one.code << ' ' << one.meaning;
        out << ")\n";
    }
    out << log.size() << " lines\n";
}

}  // namespace app
