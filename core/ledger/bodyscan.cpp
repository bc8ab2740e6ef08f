// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/bodytext.h"
#include "ledger/canonical.h"
#include "ledger/plainscan.h"

namespace ledger {
namespace {

template <class Id>
std::optional<Id> takeId(PlainScan& in, std::string_view before) {
    auto id = Id::parse(in.textAfter(before));
    if (!id) return in.fail(), std::nullopt;
    return std::move(*id);
}

template <class Id>
std::optional<Id> takeIdOrNull(PlainScan& in, std::string_view before) {
    in.take(before);
    if (in.next() == 'n') return in.take("null"), std::nullopt;
    return takeId<Id>(in, "");
}

bool takeBool(PlainScan& in, std::string_view before) {
    const bool isTrue = in.take(before) && in.next() == 't';
    in.take(isTrue ? "true" : "false");
    return isTrue;
}

int takeInteger(PlainScan& in, std::string_view before, int least, int most) {
    const std::int64_t number = in.integerAfter(before);
    if (number >= least && number <= most) return static_cast<int>(number);
    in.fail();
    return least;
}

std::int64_t takeMoment(PlainScan& in, std::string_view before) {
    const auto ms = base::parseIsoUtc(in.textAfter(before));
    if (!ms) in.fail();
    return ms.value_or(0);
}

std::vector<std::string> takeAbout(PlainScan& in) {
    std::vector<std::string> about;
    for (in.take("\"about\":["); in.isGood();) {
        about.emplace_back(in.text());
        if (!base::isIdText(about.back())) in.fail();
        if (in.next() == ']') break;
        in.take(",");
    }
    in.take("],");
    return about;
}

Basis takeBasis(PlainScan& in) {
    Basis basis;
    for (in.take(",\"basis\":{"); in.isGood();) {
        auto ledger = takeId<base::LedgerId>(in, "");
        in.take(":");
        const std::int64_t size = in.integer();
        const bool isLater = basis.empty() || (ledger && basis.rbegin()->first < *ledger);
        if (!ledger || size < 0 || !isLater) in.fail();
        if (in.isGood())
            basis.emplace_hint(basis.end(), std::move(*ledger), static_cast<std::uint64_t>(size));
        if (in.next() == '}') break;
        in.take(",");
    }
    in.take("}");
    return basis;
}

void takeValue(PlainScan& in, std::string_view before, nlohmann::json& value, char opening) {
    if (!in.take(before) || in.next() != opening || !takePlain(in, value)) in.fail();
}

}  // namespace

/// The members come in their canonical order.
std::optional<Body> scanBody(std::string_view text) {
    PlainScan in(text);
    Body read{.data = nullptr, .sigs = nullptr};
    in.take("{");
    if (in.meets("\"about\":")) read.about = takeAbout(in);
    read.app = in.textAfter("\"app\":");
    read.atMs = takeMoment(in, ",\"at\":");
    if (in.meets(",\"basis\":")) read.basis = takeBasis(in);
    read.by = takeIdOrNull<base::StaffId>(in, ",\"by\":");
    takeValue(in, ",\"data\":", read.data, '{');
    const auto id = takeId<base::CommandId>(in, ",\"id\":");
    read.must = takeBool(in, ",\"must\":");
    read.offsetMinutes = takeInteger(in, ",\"offset\":", -largestOffset, largestOffset);
    read.role = in.textAfter(",\"role\":");
    takeValue(in, ",\"sigs\":", read.sigs, '[');
    read.tv = takeInteger(in, ",\"tv\":", 1, largestVersion);
    read.type = in.textAfter(",\"type\":");
    if (in.meets(",\"visit\":")) read.visit = takeId<base::VisitId>(in, ",\"visit\":");
    read.zone = in.textAfter(",\"zone\":");
    in.take("}");
    if (!in.isAtEnd() || !id || read.type.empty()) return std::nullopt;
    read.id = *id;
    return read;
}

}  // namespace ledger
