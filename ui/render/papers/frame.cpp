// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

// Longer names and numbers than nearly all there are; two or three lines of the header.
constexpr int againLetters = 60;

/// On every page, so that each can be held against the record by itself.
QString ledgerWords(const PaperData& data) {
    if (!data.issuedAs) return Papers::tr("Not issued: it gets its code when it leaves.");
    return Papers::tr("Ledger: %n entries, code %1", nullptr, int(data.issuedAs->size))
        .arg(isolated(codeLetters(data)));
}

}  // namespace

Document framed(const PaperData& data, const QString& title, Identified by, const QLocale& locale) {
    Document document;
    document.title = title;
    document.language = locale.bcp47Name();
    document.direction = locale.textDirection();
    const QString name = plain(data.patient.name), number = plain(data.patient.number);
    const auto both = [&](const QString& whose, const QString& numbered) {
        const QString second =
            by == Identified::ByNumber
                ? Papers::tr("record number %1").arg(isolated(numbered))
                : Papers::tr("born %1").arg(bornWords(data.patient.born, locale));
        return Papers::tr("%1, %2", "a name and a second identifier").arg(isolated(whose), second);
    };
    document.identifiers = both(name, number);
    document.identifiersAgain =
        both(shortened(name, againLetters), shortened(number, againLetters));
    if (data.isDemonstration) document.bands += Papers::tr("Invented people, not a chart");
    if (data.isSimulatedClock) document.bands += Papers::tr("Simulated clock");
    document.footer = Papers::tr("Printed %1 (%2). Ninebark %3.")
                          .arg(momentWords(data.printedMs, data.offsetMinutes, locale),
                               offsetWords(data.offsetMinutes), plain(data.version)) +
                      QLatin1Char('\n') + ledgerWords(data);
    return document;
}

namespace {

constexpr double keyWidth = 92;
// So many letters fit beside their key in half a page.
constexpr int halfLetters = 34;

bool isHalf(const Row& row) {
    const QString& value = row.cells[1].text;
    return value.size() <= halfLetters && !value.contains(QLatin1Char('\n'));
}

}  // namespace

Table keyValues() {
    return {{{{}, 0, keyWidth}, {{}, 1}}, {}, Rules::None, TextStyle::SmallStrong};
}

void makeLarge(Table& table) {
    table.columns.front().points = 150;
    for (Row& row : table.rows)
        for (Text& cell : row.cells)
            cell.style = cell.style == TextStyle::Quiet ? TextStyle::LargeQuiet : TextStyle::Large;
}

Table paired(const Table& table) {
    Table pairs = keyValues();
    for (size_t i = 0; i < table.rows.size(); ++i) {
        Row row = table.rows[i];
        if (i + 1 < table.rows.size() && isHalf(row) && isHalf(table.rows[i + 1])) {
            const std::vector<Text>& next = table.rows[++i].cells;
            row.cells.insert(row.cells.end(), next.begin(), next.end());
            row.columns = {{{}, 0, keyWidth}, {{}, 1}, {{}, 0, keyWidth}, {{}, 1}};
        }
        pairs.rows.push_back(row);
    }
    return pairs;
}

void addKeyValue(Table& table, const QString& key, const QString& value) {
    const bool isKnown = !value.isEmpty();
    table.rows.push_back({{{key, TextStyle::Quiet},
                           {isKnown ? value : Papers::tr("not recorded"),
                            isKnown ? TextStyle::Body : TextStyle::Quiet}}});
}

void addText(Blocks& blocks, const QString& text, TextStyle style) {
    blocks.push_back(Paragraph{{text, style}, Align::Start});
}

QString joinedWords(const std::vector<std::string>& words, const QString& between) {
    QStringList items;
    for (const std::string& word : words) items += plain(word);
    return listWords(items, between);
}

QString joinedWords(const std::vector<std::string>& words) {
    return joinedWords(words, Papers::tr("; ", "between items"));
}

QString stampWords(const Stamp& stamp, const QLocale& locale) {
    return Papers::tr("%1, %2 (%3)", "who, when, offset")
        .arg(isolated(plain(stamp.by)), momentWords(stamp.atMs, stamp.offsetMinutes, locale),
             offsetWords(stamp.offsetMinutes));
}

QString kitWords(const practice::Kit& kit) {
    QStringList parts;
    for (const std::string* part : {&kit.dressing, &kit.securement, &kit.antiseptic})
        if (!part->empty()) parts += codeWordsWithin(*part);
    parts += kit.homeKit ? Papers::tr("the kit for home") : Papers::tr("not the kit for home");
    return parts.join(QStringLiteral(", "));
}

QStringList findingNames(const PaperFinding& finding) {
    QStringList names;
    for (const std::string& name : finding.names) names += plain(name);
    return names;
}

readiness::Finding asFinding(const PaperFinding& finding) {
    return {finding.rule, finding.isMet, finding.args, finding.ground};
}

QString policyFirst(const PaperData& data) {
    const QString policy = data.unit ? plain(data.unit->policy) : QString();
    return policy.isEmpty()
               ? Papers::tr("Local policy and the judgement of the licensed clinician come first.")
               : Papers::tr(
                     "Local policy (%1) and the judgement of the licensed clinician come "
                     "first.")
                     .arg(isolated(policy));
}

void addCautions(Blocks& blocks, const PaperData& data, size_t most, CautionLook look) {
    std::vector<CautionBox> boxes;
    for (const PaperCaution& caution : data.pack.cautions) {
        if (boxes.empty() || boxes.back().level != caution.level)
            boxes.push_back({caution.level, signalWords(caution.level), {}, look});
        boxes.back().sentences += plain(caution.text);
    }
    boxes.resize(std::min(boxes.size(), most));
    for (CautionBox& box : boxes) blocks.push_back(std::move(box));
    blocks.push_back(CautionBox{
        packs::Level::Notice, signalWords(packs::Level::Notice), {policyFirst(data)}, look});
}

void addNotYet(Blocks& blocks, const PaperData& data) {
    Table table{{{Papers::tr("Why not yet"), 0.6}, {Papers::tr("What is missing"), 0.4}}, {}};
    for (const PaperFinding& finding : data.readiness.findings) {
        if (finding.isMet) continue;
        const QStringList names = findingNames(finding);
        table.rows.push_back(
            {{{findingWords(asFinding(finding), names)}, {nextWords(asFinding(finding), names)}}});
    }
    if (!table.rows.empty()) blocks.push_back(table);
}

const PaperVisit* lastChange(const PaperData& data) {
    const PaperVisit* last = nullptr;
    for (const PaperVisit& visit : data.visits)
        if (visit.change && (!data.line || visit.said.line == data.line->line)) last = &visit;
    return last;
}

void addCalls(Table& table, const PaperData& data) {
    const record::SetUnit unit = data.unit.value_or(record::SetUnit());
    const auto number = [](const std::string& dialled) {
        // As it is dialled, whatever direction the words around it have.
        return dialled.empty() ? Papers::tr("number not entered, write it here: ____________")
                               : QChar(0x2066) + plain(dialled) + QChar(0x2069);
    };
    addKeyValue(table, Papers::tr("Ambulance"), number(unit.emergency));
    addKeyValue(table, Papers::tr("Care team, day and night"), number(unit.teamNow));
    addKeyValue(table, Papers::tr("Care team, the same day"), number(unit.teamToday));
}

std::vector<Signer> signersOf(const PaperData& data) {
    std::vector<Signer> signers;
    for (const PaperPart& part : data.pack.parts) {
        const auto isFor = [&part](const PaperSignature& act) {
            return act.isOfPack && std::ranges::find(act.parts, part.title) != act.parts.end();
        };
        const auto act = std::find_if(data.signatures.rbegin(), data.signatures.rend(), isFor);
        if (act == data.signatures.rend()) continue;
        auto known = std::ranges::find_if(signers, [&act](const Signer& one) {
            return one.last->signedBy.person == act->signedBy.person;
        });
        if (known == signers.end()) known = signers.insert(signers.end(), {&*act, {}});
        if (known->last->signedBy.atMs < act->signedBy.atMs) known->last = &*act;
        known->parts.push_back(part.title);
    }
    return signers;
}

}  // namespace render
