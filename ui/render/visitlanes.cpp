// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/visitlanes.h"

#include <algorithm>
#include <array>
#include <map>

#include "render/words.h"

namespace render {
namespace {

using practice::Change;
using procedure::Conditions;

std::map<packs::Lane, Conditions> laneMasks(const packs::Pack& pack) {
    std::map<packs::Lane, Conditions> masks;
    for (std::size_t i = 0; i < pack.conditions.size(); ++i) {
        Conditions& mask = masks[pack.conditions[i].lane];
        mask = mask.with(Conditions::single(static_cast<int>(i)));
    }
    return masks;
}

struct ShownRule {
    Conditions whileAll;
    BarKind kind = BarKind::Open;
    QString name;
};

QString nameOf(const packs::LaneRule& rule, const packs::Pack& pack, const LaneWords& words) {
    QStringList parts;
    if (words.label)
        for (const std::string& id : rule.whileAll)
            if (const auto* one = packs::findCondition(pack, id)) parts << words.label(one->label);
    return parts.join(Papers::tr(", ", "between items"));
}

std::vector<ShownRule> rulesOf(const packs::Pack& pack, packs::Lane lane, const LaneWords& words) {
    std::vector<ShownRule> rules;
    for (const packs::LaneRule& rule : pack.lanes) {
        if (rule.lane != lane) continue;
        Conditions all;
        for (std::size_t i = 0; i < pack.conditions.size(); ++i)
            if (std::ranges::count(rule.whileAll, pack.conditions[i].id) > 0)
                all = all.with(Conditions::single(static_cast<int>(i)));
        const auto kind = rule.shows == packs::Shows::Safe ? BarKind::Held : BarKind::Open;
        rules.push_back({all, kind, nameOf(rule, pack, words)});
    }
    return rules;
}

/// What a change gave, and whether anybody saw the step that did.
struct Given {
    Conditions gives;
    bool wasSeen = true;
};

/// One for each change of the trail: steps, those of ways back too, are done in its order.
std::vector<Given> givenBy(const procedure::Taught& taught, const practice::State& state) {
    std::vector<Given> given;
    auto done = state.done.begin();
    for (const Change& change : state.trail) {
        given.emplace_back();
        const bool isStep =
            change.cause == Change::Cause::Step || change.cause == Change::Cause::WayBack;
        const auto isOther = [&change](const practice::DoneOperator& one) {
            return one.atMs != change.atMs || one.after != change.holds;
        };
        while (isStep && done != state.done.end() && isOther(*done)) ++done;
        if (!isStep || done == state.done.end()) continue;
        if (!done->changedNothing)
            given.back() = {taught.model.operators.at(static_cast<std::size_t>(done->op)).gives,
                            done->wasSeen};
        ++done;
    }
    return given;
}

/// Walks the changes of one lane and lays its bars end to end.
class LaneWalk {
  public:
    LaneWalk(Conditions mask, std::vector<ShownRule> rules, std::int64_t fromMs)
        : m_mask(mask), m_rules(std::move(rules)), m_fromMs(fromMs) {}

    void pass(const Change& change, const Given& given) {
        const Conditions after = change.holds.within(m_mask);
        const Conditions unseen =
            (given.wasSeen ? m_unseen.without(given.gives) : m_unseen.with(given.gives))
                .within(after);
        if (change.cause == Change::Cause::Lapse) {
            m_lost = m_lost.with(m_before.without(after));
        } else {
            m_lost = m_lost.without(after);
        }
        const bool isCut = !m_lost.isEmpty();
        const ShownRule* shown = fitting(after);
        if (m_isCut && !isCut)
            close(change.atMs, BarKind::WonBack);
        else if (isCut != m_isCut ||
                 (isCut ? after.isEmpty() != m_before.isEmpty()
                        : shown != m_shown || restsOnUnseen(shown, unseen) != m_isUnseen))
            close(change.atMs, m_isCut ? BarKind::Cut : BarKind::Held);
        m_isCut = isCut;
        m_shown = shown;
        m_before = after;
        m_unseen = unseen;
        m_isUnseen = restsOnUnseen(shown, unseen);
    }

    std::vector<Bar> finish(std::int64_t toMs) {
        close(toMs, m_isCut ? BarKind::Cut : BarKind::Held);
        return std::move(m_bars);
    }
    QString nameNow() const {
        if (m_isCut || !m_shown) return {};
        return m_isUnseen && !m_shown->name.isEmpty()
                   ? Papers::tr("Not seen: %1", "what a lane says holds").arg(m_shown->name)
                   : m_shown->name;
    }

  private:
    /// The first that fits; what a pack says nothing of is never solid.
    const ShownRule* fitting(Conditions holds) const {
        for (const ShownRule& rule : m_rules)
            if (holds.contains(rule.whileAll)) return &rule;
        return m_rules.empty() && !holds.isEmpty() ? &m_unsaid : nullptr;
    }
    static bool restsOnUnseen(const ShownRule* shown, Conditions unseen) {
        return shown && shown->kind == BarKind::Held && !unseen.within(shown->whileAll).isEmpty();
    }
    void close(std::int64_t atMs, BarKind kind) {
        if (atMs > m_fromMs && m_isCut) m_bars.push_back({m_fromMs, atMs, kind});
        if (atMs > m_fromMs && !m_isCut && m_shown)
            m_bars.push_back(
                {m_fromMs, atMs, m_isUnseen ? BarKind::Unseen : m_shown->kind, m_shown->name});
        m_fromMs = atMs;
    }

    Conditions m_mask, m_before, m_lost, m_unseen;
    std::vector<ShownRule> m_rules;
    ShownRule m_unsaid;
    const ShownRule* m_shown = nullptr;
    bool m_isCut = false, m_isUnseen = false;
    std::int64_t m_fromMs;
    std::vector<Bar> m_bars;
};

/// The lane a step's phases are drawn under: that of the first thing it gives.
packs::Lane laneOfStep(const packs::Pack& pack, const std::string& id) {
    const packs::Step* step = packs::findStep(pack, id).step;
    if (step == nullptr || step->gives.empty()) return packs::Lane::Hands;
    const packs::Condition* condition = packs::findCondition(pack, step->gives.front());
    return condition == nullptr ? packs::Lane::Hands : condition->lane;
}

class SpanCollector {
  public:
    SpanCollector(const packs::Pack& pack, const LaneWords& words) : m_pack(pack), m_words(words) {}

    void add(const std::vector<practice::StepRecord>& records) {
        for (const practice::StepRecord& record : records)
            for (const practice::PhaseRun& run : record.phases)
                if (run.measuredMs > 0) add(record.step, run);
    }
    std::vector<MeasuredSpan> of(packs::Lane lane) {
        auto& spans = m_spans[lane];
        std::ranges::sort(spans, {}, &MeasuredSpan::fromMs);
        return spans;
    }

  private:
    void add(const std::string& step, const practice::PhaseRun& run) {
        m_spans[laneOfStep(m_pack, step)].push_back(
            {.fromMs = run.begunWallMs,
             .toMs = run.begunWallMs + run.pausedMs + run.measuredMs,
             .label = m_words.length(run.measuredMs / 1000),
             .isShort = run.measuredMs < run.minMs});
    }

    const packs::Pack& m_pack;
    const LaneWords& m_words;
    std::map<packs::Lane, std::vector<MeasuredSpan>> m_spans;
};

/// At most eight ticks, on whole minutes of 1, 2, 5, 10, 15 or 30.
std::vector<Tick> ticksOf(std::int64_t fromMs, std::int64_t toMs, const LaneWords& words) {
    constexpr std::array<std::int64_t, 7> minutes = {1, 2, 5, 10, 15, 30, 60};
    std::int64_t step = 60'000 * minutes.back();
    for (const std::int64_t one : minutes) {
        if ((toMs - fromMs) / (one * 60'000) > 8) continue;
        step = one * 60'000;
        break;
    }
    std::vector<Tick> ticks;
    for (std::int64_t at = (fromMs + step - 1) / step * step; at <= toMs; at += step)
        ticks.push_back({at, words.time(at)});
    return ticks;
}

}  // namespace

QString lapseLetter(std::size_t index) {
    const QString last(QChar(u'A' + static_cast<char16_t>(index % 26)));
    return index < 26 ? last : lapseLetter(index / 26 - 1) + last;
}

LanesData lanesOf(const procedure::Taught& taught, const practice::State& state,
                  const LaneWords& words, std::optional<std::int64_t> nowMs) {
    LanesData data;
    data.fromMs = state.openedMs;
    data.toMs = nowMs ? *nowMs : std::max(state.endedMs, state.lastWallMs);
    data.nowMs = nowMs;
    SpanCollector spans(taught.pack, words);
    spans.add(state.steps);
    spans.add(state.waysBack);
    if (state.wayBack) spans.add(state.wayBack->steps);
    const std::vector<Given> given = givenBy(taught, state);
    data.hasNames = words.label && !taught.pack.lanes.empty();
    for (const auto& [lane, mask] : laneMasks(taught.pack)) {
        if (lane == packs::Lane::Record) continue;  // paper work is no part of asepsis
        LaneWalk walk(mask, rulesOf(taught.pack, lane, words), data.fromMs);
        for (std::size_t i = 0; i < state.trail.size(); ++i) walk.pass(state.trail[i], given[i]);
        const QString now = walk.nameNow();
        data.lanes.push_back({words.lane(lane), walk.finish(data.toMs), spans.of(lane), now});
    }
    for (std::size_t i = 0; i < state.lapses.size(); ++i)
        if (!state.lapses[i].withdrawn)
            data.notches.push_back({state.lapses[i].atMs, lapseLetter(i)});
    data.ticks = ticksOf(data.fromMs, data.toMs, words);
    return data;
}

}  // namespace render
