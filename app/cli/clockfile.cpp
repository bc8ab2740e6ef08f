// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/clockfile.h"

#include "base/fields.h"
#include "cli/jsonline.h"
#include "cli/packfile.h"

namespace app {
namespace {

struct ClockFile {
    std::int64_t wallMs = 0, bootMs = 0, monoMs = 0;
    std::string bootId, zone;
    int offsetMinutes = 0;
    template <class V>
    void fields(V& v) {
        v("wall_ms", wallMs), v("boot_ms", bootMs), v("mono_ms", monoMs), v("boot_id", bootId);
        v("offset_minutes", offsetMinutes), v("zone", zone);
    }
};

}  // namespace

base::Result<base::Instant> readClockFile(const std::string& path) {
    const auto bytes = readPackFile(path);
    if (!bytes) return bytes.error();
    const auto json = readJsonLine(*bytes);
    if (!json) return json.error();
    const auto read = base::fromJson<ClockFile>(*json);
    if (!read) return read.error();
    return base::Instant{.wallMs = read->wallMs,
                         .bootMs = read->bootMs,
                         .monoMs = read->monoMs,
                         .bootId = read->bootId,
                         .offsetMinutes = read->offsetMinutes,
                         .zone = read->zone};
}

}  // namespace app
