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
        return {m_columns, {row({}, words, style)}, Rules::None};
    }
    Row row(const QString& number, const PaperPair& words, TextStyle style) const {
        Row made{{{number, style}, {plain(words.ours), style}}};
        if (m_columns.size() > 2) made.cells.push_back({plain(words.theirs), style});
        return made;
    }

  private:
    std::vector<Column> m_columns;
};

/// Who does the change where it is not the learner; empty where it is.
QString whoDoesIt(const PaperReadiness& found) {
    if (!found.isAllSigned)
        return Papers::tr("Not signed off yet: until it is, a trained person does the change.");
    if (!found.isReady)
        return Papers::tr(
            "It was signed off, but not everything that is asked for holds now: "
            "until it does, a trained person does the change.");
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
    int number = 0;
    for (const PaperStepsPart& part : shown.parts) {
        blocks.push_back(Space{10});
        blocks.push_back(columns.bare(part.title, TextStyle::Heading));
        Table table = columns.table();
        for (const PaperPair& step : part.steps)
            table.rows.push_back(columns.row(QString::number(++number), step, TextStyle::Large));
        blocks.push_back(table);
    }
    blocks.push_back(Heading{Papers::tr("Whom to call")});
    Table calls = keyValues();
    addCalls(calls, data);
    makeLarge(calls);
    blocks.push_back(calls);
    blocks.push_back(Space{12});
    for (const PaperCautionPair& caution : shown.cautions) {
        QStringList words{plain(caution.text.ours)};
        if (areTwo) words += plain(caution.text.theirs);
        blocks.push_back(CautionBox{caution.level, signalWords(caution.level), words});
    }
    blocks.push_back(
        CautionBox{packs::Level::Notice, signalWords(packs::Level::Notice), {policyFirst(data)}});
    return document;
}

}  // namespace render
