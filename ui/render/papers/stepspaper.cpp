// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

/// The words in one column, or in two beside each other.
class Columns {
  public:
    explicit Columns(bool areTwo) {
        m_columns = {{{}, 0, 20, Align::End}, {{}, 1, 0, Align::Own}};
        if (areTwo) m_columns.push_back({{}, 1, 0, Align::Own});
    }
    Table table() const { return {m_columns, {}}; }
    Table bare(const PaperPair& words, TextStyle style) const {
        return {m_columns, {row({}, plain(words.ours), plain(words.theirs), style)}, Rules::None};
    }
    Row row(const QString& number, const QString& ours, const QString& theirs,
            TextStyle style) const {
        // A number is found again after a look away.
        Row made{{{number, TextStyle::LargeStrong}, {ours, style}}};
        if (m_columns.size() > 2) made.cells.push_back({theirs, style});
        return made;
    }

  private:
    std::vector<Column> m_columns;
};

/// How long, in words: a step that ends when something is seen lasts at least as long as is asked.
QString lengthWords(const PaperAskedPhase& phase) {
    const auto seconds = [](int count) { return Papers::tr("%n seconds", nullptr, count); };
    QString words = seconds(phase.targetSeconds);
    if (phase.minSeconds < phase.targetSeconds)
        words = Papers::tr("%1, never less than %2", "how long, and the least")
                    .arg(words, seconds(phase.minSeconds));
    else if (phase.until)
        words = Papers::tr("at least %1", "so many seconds").arg(words);
    if (phase.maxSeconds)
        words = Papers::tr("%1, never more than %2", "how long, and the most")
                    .arg(words, seconds(*phase.maxSeconds));
    return words;
}

/// The step, and below it its times in their order.
QString withTimes(const PaperHomeStep& step) {
    QString words = plain(step.text.ours);
    for (const PaperAskedPhase& phase : step.phases) {
        QString time = Papers::tr("%1: %2", "what is timed, and how long")
                           .arg(plain(phase.label.ours), lengthWords(phase));
        if (&phase != &step.phases.front()) time = Papers::tr("then %1", "a time").arg(time);
        if (phase.until)
            time = Papers::tr("%1. Keep on until: %2", "how long, and what is to be seen")
                       .arg(time, plain(phase.until->ours));
        words += QLatin1Char('\n') + time;
    }
    return words;
}

/// The same with the pack's words and the sign of the second, which is one in every language: the
/// sentences of the program are in the reader's.
QString withTheirTimes(const PaperHomeStep& step) {
    QString words = plain(step.text.theirs);
    for (const PaperAskedPhase& phase : step.phases) {
        QStringList parts{isolated(QStringLiteral("%1 s").arg(phase.targetSeconds))};
        if (phase.until) parts += plain(phase.until->theirs);
        words += QStringLiteral("\n%1: %2")
                     .arg(plain(phase.label.theirs), parts.join(QStringLiteral(" \u2013 ")));
    }
    return words;
}

/// Who does the change where it is not the learner; empty where it is.
// A box that is taller would leave much of a page empty before it.
constexpr size_t mostInBox = 6;

struct CautionGroup {
    packs::Level level = packs::Level::Notice;
    QStringList ours, theirs;
};

// Those of one level share a box; what the house itself says is a notice, the last of all.
std::vector<CautionGroup> cautionGroups(const PaperSteps& shown, const QString& policy) {
    std::vector<CautionGroup> groups;
    const auto groupFor = [&groups](packs::Level level) -> CautionGroup& {
        const bool isFull = !groups.empty() && groups.back().ours.size() == int(mostInBox);
        if (groups.empty() || isFull || groups.back().level != level) groups.push_back({level});
        return groups.back();
    };
    for (const PaperCautionPair& one : shown.cautions) {
        CautionGroup& group = groupFor(one.level);
        group.ours += plain(one.text.ours);
        if (!shown.language.empty()) group.theirs += plain(one.text.theirs);
    }
    groupFor(packs::Level::Notice).ours += policy;
    return groups;
}

void addCautionGroups(Blocks& blocks, const PaperSteps& shown, const QString& policy) {
    for (const CautionGroup& group : cautionGroups(shown, policy)) {
        CautionBox box{group.level, signalWords(group.level), group.ours + group.theirs};
        if (group.ours.size() > 1) box.look = CautionLook::List;
        blocks.push_back(box);
    }
}

void addWhomToCall(Blocks& blocks, const PaperData& data) {
    Table calls = keyValues();
    addCalls(calls, data);
    makeLarge(calls);
    // Its heading within, so that the code takes no room of its own.
    Row heading{{{Papers::tr("Whom to call"), TextStyle::Heading}}};
    heading.columns = {{{}, 1}};
    calls.rows.insert(calls.rows.begin(), std::move(heading));
    blocks.push_back(Space{8});
    blocks.push_back(codeBlock(data, std::move(calls)));
}

QString whoDoesIt(const PaperReadiness& found) {
    if (!found.isAllSigned)
        return Papers::tr(
            "You are not signed off yet. Until you are, a trained person does the change.");
    if (!found.isReady)
        return Papers::tr(
            "You were signed off, but not everything that is asked for holds now. "
            "Until it does, a trained person does the change.");
    return {};
}

}  // namespace

std::optional<Document> stepsPaper(const PaperData& data, const QLocale& locale) {
    if (!data.steps) return std::nullopt;
    const PaperSteps& shown = *data.steps;
    const bool areTwo = !shown.language.empty();
    const QString title =
        areTwo ? Papers::tr("Steps in two languages") : Papers::tr("Steps for home");
    Document document = framed(data, title, Identified::ByBirth, locale);
    Blocks& blocks = document.blocks;
    const Columns columns(areTwo);
    blocks.push_back(columns.bare(shown.title, TextStyle::Lead));
    if (areTwo && data.pack.isDraftTranslation)
        addText(blocks,
                Papers::tr("This translation is a draft: no qualified translator has signed it "
                           "off yet."),
                TextStyle::SmallStrong);
    if (shown.isLacking)
        addText(blocks,
                Papers::tr("The pack has no words in %1. Go through this with a qualified "
                           "interpreter.")
                    .arg(languageWords(data.learner.language, locale)),
                TextStyle::LargeStrong);
    if (const QString who = whoDoesIt(data.readiness); !who.isEmpty())
        addText(blocks, who, TextStyle::LargeStrong);
    addWhomToCall(blocks, data);
    int number = 0;
    for (const PaperStepsPart& part : shown.parts) {
        blocks.push_back(Space{8});
        blocks.push_back(columns.bare(part.title, TextStyle::Heading));
        Table table = columns.table();
        for (const PaperHomeStep& step : part.steps)
            table.rows.push_back(columns.row(QString::number(++number), withTimes(step),
                                             withTheirTimes(step), TextStyle::Large));
        blocks.push_back(table);
    }
    blocks.push_back(Space{12});
    addCautionGroups(blocks, shown, policyFirst(data));
    return document;
}

}  // namespace render
