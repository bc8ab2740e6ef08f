// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/issued.h"

#include "render/papers/papers.h"

namespace render {
namespace {

PaperContext contextOf(const record::PaperGround& ground, const std::string& root) {
    base::Instant now;
    now.wallMs = ground.printedMs;
    now.offsetMinutes = ground.offsetMinutes;
    return {.ward = ground.isDemonstration ? desk::Ward::Demonstration : desk::Ward::Real,
            .isSimulatedClock = ground.isSimulatedClock,
            .head = {ground.size, root},
            .now = now,
            .language = ground.language,
            .sentences = ground.sentences,
            .version = ground.version};
}

/// No program hands out a certificate too early, though its data may be right.
bool canBeMade(record::PaperKind kind, const PaperData& data) {
    if (kind == record::PaperKind::Certificate) return isCertified(data);
    return kind != record::PaperKind::GoingHomeWithHelp || data.help;
}

}  // namespace

record::IssuePaper issued(const PaperData& data) {
    return {
        .learner = data.learner.learner,
        .kind = base::valueOf<record::PaperKind>(data.kind).value_or(record::PaperKind::Chart),
        .digest = digestOf(data),
        .ground = record::PaperGround{.form = paperForm,
                                      .size = data.ledgerSize,
                                      .pack = {data.pack.id, data.pack.version, data.pack.digest},
                                      .printedMs = data.printedMs,
                                      .offsetMinutes = data.offsetMinutes,
                                      .language = data.language,
                                      .sentences = data.sentences,
                                      .version = data.version,
                                      .isDemonstration = data.isDemonstration,
                                      .isSimulatedClock = data.isSimulatedClock,
                                      .unknown = static_cast<int>(data.unknown.size())}};
}

std::optional<PaperHolds> withoutRecord(const record::IssuePaper& said) {
    if (!said.ground) return PaperHolds::Before;
    if (said.ground->form != paperForm) return PaperHolds::OtherForm;
    return std::nullopt;
}

PaperHolds holdAgainst(const record::IssuePaper& said, const RecordOfThen& then) {
    if (const auto known = withoutRecord(said)) return *known;
    const record::PaperGround& ground = *said.ground;
    // Another program may read what this one can't, and the other way round.
    if (then.record.unknown.size() != static_cast<std::size_t>(ground.unknown))
        return PaperHolds::OtherForm;
    const procedure::TaughtPtr taught = then.shelf.byDigest(ground.pack.digest);
    if (!taught) return PaperHolds::OtherForm;
    if (!then.record.learner(said.learner)) return PaperHolds::No;
    const PaperContext context = contextOf(ground, then.root);
    const auto readiness = readiness::assess(then.record, said.learner, *taught, context.now);
    const auto data =
        gather(said.kind, then.record, said.learner, *taught, readiness, then.house, context);
    if (!data || !canBeMade(said.kind, *data)) return PaperHolds::No;
    return issued(*data) == said ? PaperHolds::Yes : PaperHolds::No;
}

}  // namespace render
